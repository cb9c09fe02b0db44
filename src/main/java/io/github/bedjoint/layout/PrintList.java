package io.github.bedjoint.layout;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What the print room needs for one wall: a file for each panel with its place in the picture, and spare prints.
 *
 * <p>Spares are counted, or follow from the share of prints that the shop has to repeat. Which panel will fail is not known, so they
 * are planned for the longest ones, going round again when there are more spares than panels: film bought for them is then enough for
 * any other. Immutable.
 */
public final class PrintList implements Explained {
    /** Spare prints from the share that is repeated. */
    public static final Formula SPARES = Formula.of(
            "layout.spares", "Spare prints", Symbol.number("N_s", "spare prints"), "ceil(q * N)",
            Source.shop("share of prints that are repeated"),
            Symbol.number("q", "share of prints that are repeated"), Symbol.number("N", "panels"));
    /** Length of film that spare prints take. */
    public static final Formula SPARE_LENGTH = Formula.of(
            "layout.spare-length", "Film for spare prints", new Symbol("l_s", Measure.LENGTH, "film for spare prints"), "sum(l_i)",
            Source.geometry("cut lengths of the panels that are printed again"),
            new Symbol("l_i", Measure.LENGTH, "cut length of a spare"));

    private final PanelLayout layout;
    private final double rate;
    private final int spares;
    private final List<PrintFile> files;
    private final List<Panel> sparePanels;
    private final List<Panel> turned;

    private PrintList(PanelLayout layout, Picture picture, double rate, int spares) {
        this.layout = layout;
        this.rate = rate;
        this.spares = spares;
        List<Panel> longest = layout.panels().stream()
                .sorted(Comparator.comparingLong(Panel::cutLengthSteps).reversed().thenComparing(Panel::number))
                .toList();
        List<Panel> again = new ArrayList<>();
        for (int i = 0; i < spares && !longest.isEmpty(); i++) {
            again.add(longest.get(i % longest.size()));
        }
        sparePanels = List.copyOf(again);
        int count = layout.panels().size();
        files = layout.panels().stream()
                .map(panel -> PrintFile.of(panel, count, picture, 1 + (int) again.stream().filter(panel::equals).count()))
                .toList();
        turned = List.of();
    }

    private PrintList(PrintList other, List<Panel> turned) {
        layout = other.layout;
        rate = other.rate;
        spares = other.spares;
        sparePanels = other.sparePanels;
        files = other.files.stream().map(file -> turned.contains(file.panel()) ? file.turned() : file).toList();
        this.turned = turned;
    }

    /**
     * The print files of a layout with a number of spares.
     *
     * @param layout  a layout that is possible
     * @param picture where the picture lies on the wall
     * @param spares  prints beyond one of each panel, 0 to 1000
     * @return the list
     * @throws io.github.bedjoint.units.RefusedException if the number is out of range
     */
    public static PrintList withSpares(PanelLayout layout, Picture picture, int spares) {
        return new PrintList(layout, picture, -1, Door.count("spare panels", spares, 0, 1000));
    }

    /**
     * The print files of a layout with as many spares as the shop's share of repeated prints asks for, rounded up.
     *
     * @param layout  a layout that is possible
     * @param picture where the picture lies on the wall
     * @param rate    the share of prints that are repeated, 0 to 1
     * @return the list
     * @throws io.github.bedjoint.units.RefusedException if the share is out of range
     */
    public static PrintList withReprintRate(PanelLayout layout, Picture picture, double rate) {
        double share = Door.number("reprint rate", rate, Range.SHARE);
        return new PrintList(layout, picture, share, (int) Math.ceil(share * layout.panels().size()));
    }

    /**
     * The same with panels that a roll plan lays across the roll: their files are turned by a quarter. A spare may lie otherwise than its
     * panel; the roll plan tells.
     *
     * @param across whether a panel lies so
     * @return a new list, from one without turned panels
     */
    public PrintList withTurned(Predicate<Panel> across) {
        return new PrintList(this, layout.panels().stream().filter(across).toList());
    }

    /**
     * The files.
     *
     * @return one for each panel, in the order of application
     */
    public List<PrintFile> files() {
        return files;
    }

    /**
     * A caution where the picture leaves a part of panels blank.
     *
     * @return which panels, or empty where the picture covers all of them
     */
    public Optional<Verdict> blank() {
        List<Panel> partly = files.stream().filter(file -> !file.whole()).map(PrintFile::panel).toList();
        if (partly.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Verdict(Verdict.Level.CAUTION, layout.wall().name() + ": picture",
                "it does not cover the whole of " + numbers(partly) + " of " + files.size()
                        + "; what it does not cover stays blank",
                Source.shop("place of the picture given with the job")));
    }

    /**
     * A caution where panels lie across the roll.
     *
     * @return which panels, or empty where all lie along it
     */
    public Optional<Verdict> acrossTheRoll() {
        return turned.isEmpty()
                ? Optional.empty()
                : Optional.of(new Verdict(Verdict.Level.CAUTION, layout.wall().name() + ": panels across the roll",
                        numbers(turned) + " of " + files.size() + " " + (turned.size() == 1 ? "lies" : "lie")
                                + " turned by a quarter on the roll: print and film shrink and stretch differently along it and across it, so"
                                + " a picture or courses that go on over the seam may not meet",
                        Source.practice("print and film have an up and a grain")));
    }

    private static String numbers(List<Panel> panels) {
        return (panels.size() == 1 ? "panel " : "panels ")
                + panels.stream().map(panel -> Integer.toString(panel.number())).collect(Collectors.joining(", "));
    }

    /**
     * The panels that are printed again.
     *
     * @return one for each spare, the longest first
     */
    public List<Panel> sparePanels() {
        return sparePanels;
    }

    /**
     * The film that spares take, in metres.
     *
     * @return metres
     * @see #SPARE_LENGTH
     */
    public double spareM() {
        return sparePanels.stream().mapToDouble(panel -> Steps.toM(panel.cutLengthSteps())).sum();
    }

    /** How many spares, where a rate asks for them, and the film that they take. */
    @Override
    public Working working() {
        List<Working> parts = new ArrayList<>();
        if (rate >= 0) {
            parts.add(Working.of(SPARES, spares, rate, layout.panels().size()));
        }
        parts.add(Working.sum(SPARE_LENGTH, spareM(),
                sparePanels.stream().map(panel -> Steps.toM(panel.cutLengthSteps())).toList()));
        return Working.group("Prints for " + layout.wall().name(), parts);
    }

    /** How many files and spares, and of what. */
    @Override
    public String toString() {
        return Print.count(files.size(), "file") + " for " + layout.wall().name() + ", " + Print.count(sparePanels.size(), "spare panel") + " with "
                + Measure.LENGTH.print(spareM(), UnitStyle.METRIC) + " of film";
    }
}
