package io.github.bedjoint.cutting;

import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.skyline.Lying;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Panels gathered in sections on shelves: for each width of roll, and some for one width and the rest for a narrower one. */
final class Gathering {
    /** Shares of the sections that are kept for the wider rolls. */
    private static final int MIXES = 8;

    private final List<Cut> cuts;
    private final List<Stock> stock;
    private final CuttingTerms terms;
    private final Map<String, Integer> rows = new HashMap<>();

    Gathering(List<Cut> cuts, List<Stock> stock, CuttingTerms terms) {
        this.cuts = cuts;
        this.stock = stock;
        this.terms = terms;
        for (int c = 0; c < cuts.size(); c++) {
            rows.put(cuts.get(c).id(), c);
        }
    }

    /** The widths of rolls that can be had. */
    long[] widths() {
        return stock.stream().filter(s -> s.available() != 0).mapToLong(Stock::widthSteps).distinct().toArray();
    }

    /** A panel in a section of its own: as short as it may lie on a width, or else on any. */
    Section aloneIn(Cut cut, int quantity, long width) {
        Lying way = Lying.of(cut, stock, terms).stream()
                .min(Comparator.<Lying, Boolean>comparing(l -> l.across() > width).thenComparing(Lying::along))
                .orElseThrow();
        return new Section(List.of(PlacedCut.of(cut, 0, 0, way.turned())), quantity);
    }

    /** Every panel in a section of its own, as it lies on rolls of one width. */
    List<Section> alone(long width) {
        return cuts.stream().map(cut -> aloneIn(cut, cut.quantity(), width)).toList();
    }

    /** Offers all sections in one way after another, as long as more are wanted. */
    void each(BooleanSupplier wanted, Consumer<List<Section>> offer) {
        if (terms.cuts() == CutKind.CROSS) {
            return;
        }
        boolean turns = cuts.stream().anyMatch(Cut::rotate);
        for (long width : widths()) {
            for (Shelves.Way way : Shelves.Way.values()) {
                if (wanted.getAsBoolean() && (turns || way == Shelves.Way.UPRIGHT)) {
                    offer.accept(on(width, quantities(), way));
                }
            }
        }
        for (long width : widths()) {
            for (long narrow : widths()) {
                if (narrow < width) {
                    mix(width, narrow, wanted, offer);
                }
            }
        }
    }

    private int[] quantities() {
        return cuts.stream().mapToInt(Cut::quantity).toArray();
    }

    private boolean fits(Cut cut, long width) {
        return Lying.of(cut, stock, terms).stream().anyMatch(way -> way.across() <= width);
    }

    /** So many of each panel in sections of a width; those that do not fit it are on their own. */
    private List<Section> on(long width, int[] times, Shelves.Way way) {
        List<Section> sections = new ArrayList<>();
        int[] open = new int[cuts.size()];
        for (int c = 0; c < open.length; c++) {
            if (fits(cuts.get(c), width)) {
                open[c] = times[c];
            } else if (times[c] > 0) {
                sections.add(aloneIn(cuts.get(c), times[c], width));
            }
        }
        sections.addAll(Shelves.of(cuts, open, stock, terms, width, way));
        return sections;
    }

    /** Keeps some sections of one width, first those with a panel that a narrower one has no room for, then the fullest, and gathers the rest for that. */
    private void mix(long width, long narrow, BooleanSupplier wanted, Consumer<List<Section>> offer) {
        List<Section> all = on(width, quantities(), Shelves.Way.UPRIGHT).stream()
                .sorted(Comparator.<Section, Boolean>comparing(section -> goesOn(narrow, section)).thenComparing(section -> -section.filled()))
                .toList();
        int total = all.stream().mapToInt(Section::quantity).sum();
        int must = all.stream().filter(section -> !goesOn(narrow, section)).mapToInt(Section::quantity).sum();
        int step = Math.max(1, (total - must) / MIXES);
        for (int kept = Math.max(1, must); kept < total && wanted.getAsBoolean(); kept += step) {
            offer.accept(mixed(all, kept, narrow));
        }
    }

    private List<Section> mixed(List<Section> all, int kept, long narrow) {
        List<Section> sections = new ArrayList<>();
        int[] rest = quantities();
        int left = kept;
        for (Section section : all) {
            int times = Math.min(left, section.quantity());
            if (times > 0) {
                sections.add(new Section(section.placed(), times));
                section.placed().forEach(piece -> rest[row(piece)] -= times);
                left -= times;
            }
        }
        sections.addAll(on(narrow, rest, Shelves.Way.UPRIGHT));
        return sections;
    }

    private boolean goesOn(long width, Section section) {
        return section.placed().stream().allMatch(piece -> fits(cuts.get(row(piece)), width));
    }

    private int row(PlacedCut piece) {
        return Objects.requireNonNull(rows.get(piece.cutId()));
    }
}
