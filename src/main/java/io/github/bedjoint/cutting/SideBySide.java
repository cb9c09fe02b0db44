package io.github.bedjoint.cutting;

import io.github.bedjoint.bounds.ModelMaker;
import io.github.bedjoint.bounds.SideBySideBound;
import io.github.bedjoint.checker.PlanChecker;
import io.github.bedjoint.patterns.Work;
import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.skyline.Lying;
import io.github.bedjoint.skyline.Pieces;
import io.github.bedjoint.skyline.Skyline;
import io.github.bedjoint.skyline.SkylineSearch;
import io.github.bedjoint.skyline.StripSearch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Plans a job in which panels may lie side by side or be turned: gathers them in sections between cross cuts and plans the rolls for
 * these as for full-width panels; then tries to lay all panels at once on the cheapest rolls that no price list forbids.
 */
final class SideBySide {

    /** More panels are only gathered in shelves. */
    private static final int MAX_PIECES = 3_000;

    /** Outlines drawn for each panel of a search, up to so many panels: after so many orders of few panels, more hardly help. */
    private static final long OUTLINES = 1_000;
    private static final int FEW = 25;

    /** Choices of rolls on which all panels are laid at once. */
    private static final int MAX_CHOICES = 200;

    /** Work on the rolls for one set of sections. */
    private static final long SECTION_WORK = 6_000_000;

    private final List<Cut> cuts;
    private final List<Stock> stock;
    private final CuttingTerms terms;
    private Work work;
    private final SideBySideBound bound;
    private final Gathering gathering;
    private final Map<String, Stock> rows = new HashMap<>();
    private final Map<String, Cut> named = new HashMap<>();
    private final int pieces;
    private List<OpenedRoll> best = List.of();
    private long bestCost = Long.MAX_VALUE;
    private long least;

    private SideBySide(List<Cut> cuts, List<Stock> stock, CuttingTerms terms, Work work) {
        this.cuts = cuts;
        this.stock = stock;
        this.terms = terms;
        this.work = work;
        stock.forEach(row -> rows.put(row.id(), row));
        cuts.forEach(cut -> named.put(cut.id(), cut));
        pieces = cuts.stream().mapToInt(Cut::quantity).sum();
        bound = new SideBySideBound(cuts, stock, terms, work);
        gathering = new Gathering(cuts, stock, terms);
    }

    /** Whether two panels can lie side by side, or one of them in two ways. */
    static boolean concerns(List<Cut> cuts, List<Stock> stock, CuttingTerms terms) {
        long widest = stock.stream().filter(s -> s.available() != 0).mapToLong(Stock::widthSteps).max().orElse(0);
        long narrowest = Long.MAX_VALUE / 4;
        long second = narrowest;
        for (Cut cut : cuts) {
            List<Lying> ways = Lying.of(cut, stock, terms);
            if (ways.size() > 1 || ways.get(0).turned()) {
                return true;
            }
            second = Math.min(second, Math.max(narrowest, cut.widthSteps()));
            narrowest = Math.min(narrowest, cut.widthSteps());
            second = cut.quantity() > 1 ? Math.min(second, cut.widthSteps()) : second;
        }
        return terms.cuts() != CutKind.CROSS && narrowest + second + terms.gapSteps() <= widest;
    }

    static RollPlan plan(List<Cut> cuts, List<Stock> stock, CuttingTerms terms, Work work) {
        return new SideBySide(cuts, stock, terms, work).plan();
    }

    private RollPlan plan() {
        for (long width : gathering.widths()) {
            offer(planned(gathering.alone(width)));
        }
        raise();
        gathering.each(this::isOpen, sections -> offer(planned(sections)));
        bound.search();
        raise();
        if (terms.cuts() != CutKind.CROSS && pieces <= MAX_PIECES) {
            Work all = work;
            work = all.part(enough(pieces));
            search();
            all.take(work);
            work = all;
        }
        return answer();
    }

    private void search() {
        if (isOpen()) {
            strips();
        }
        if (isOpen() && terms.cuts() == CutKind.FREE) {
            rolls();
        }
        if (terms.cuts() == CutKind.FREE) {
            compact();
        }
    }

    private static long enough(long panels) {
        return OUTLINES * Math.min(panels, FEW) * panels * panels;
    }

    private boolean isOpen() {
        return least < bestCost && !work.isOver();
    }

    private void raise() {
        int[] next = bound.cheapest(bestCost);
        if (!work.isOver()) {
            least = Math.max(least, next.length == 0 ? bestCost : bound.cost(next));
        }
    }

    private long cost(List<OpenedRoll> rolls) {
        return rolls.stream().mapToLong(roll -> rows.get(roll.stockId()).cost() - roll.credit()).sum();
    }

    private void offer(List<OpenedRoll> rolls) {
        long cost = rolls.isEmpty() ? Long.MAX_VALUE : cost(rolls);
        if (cost < bestCost) {
            best = rolls;
            bestCost = cost;
        }
    }

    private List<OpenedRoll> planned(List<Section> sections) {
        Work part = work.part(SECTION_WORK);
        List<OpenedRoll> rolls = Section.plan(sections, stock, terms, part);
        work.take(part);
        return rolls;
    }

    private void strips() {
        long[] widths = gathering.widths();
        for (int k = 0; k < widths.length && isOpen(); k++) {
            Work share = work.part(work.left() / 2 / (widths.length - k));
            strip(widths[k], share);
            work.take(share);
        }
    }

    /** Shortens a strip of the panels that can lie beside another one, and plans the rolls for its sections now and then. */
    private void strip(long width, Work share) {
        List<Stock> own = stock.stream().filter(row -> row.widthSteps() == width).toList();
        long narrowest = cuts.stream()
                .flatMap(cut -> Lying.of(cut, own, terms).stream())
                .mapToLong(Lying::across)
                .min()
                .orElse(width);
        List<Section> alone = new ArrayList<>();
        List<Integer> beside = new ArrayList<>();
        for (int c = 0; c < cuts.size(); c++) {
            Cut cut = cuts.get(c);
            boolean goes = Lying.of(cut, own, terms).stream()
                    .anyMatch(way -> way.across() + narrowest + terms.gapSteps() <= width);
            if (goes) {
                beside.addAll(Collections.nCopies(cut.quantity(), c));
            } else {
                alone.add(gathering.aloneIn(cut, cut.quantity(), width));
            }
        }
        if (beside.isEmpty()) {
            return;
        }
        StripSearch search = new StripSearch(new Pieces(cuts, beside, own, terms), width, share);
        long next = share.left() / 32;
        long known = Long.MAX_VALUE;
        while (least < bestCost && !share.isOver() && !search.placed().isEmpty()) {
            if (search.length() < known) {
                known = search.length();
                List<Section> sections = new ArrayList<>(alone);
                sections.addAll(sections(search.placed(), width));
                Work part = share.part(SECTION_WORK);
                offer(Section.plan(sections, stock, terms, part));
                share.take(part);
            }
            if (search.isShortest()) {
                break;
            }
            Work part = share.part(next);
            search.improve(part);
            share.take(part);
            next *= 2;
        }
    }

    /** Sections of a strip; those that no guillotine can part are gathered anew where that is asked for. */
    private List<Section> sections(List<PlacedCut> strip, long width) {
        List<Section> sections = Section.of(strip, terms.gapSteps());
        if (terms.cuts() == CutKind.FREE) {
            return sections;
        }
        List<Section> parted = new ArrayList<>();
        int[] open = new int[cuts.size()];
        List<String> ids = cuts.stream().map(Cut::id).toList();
        for (Section section : sections) {
            if (CutKind.of(section.placed()) == CutKind.FREE) {
                section.placed().forEach(piece -> open[ids.indexOf(piece.cutId())]++);
            } else {
                parted.add(section);
            }
        }
        parted.addAll(Shelves.of(cuts, open, stock, terms, width, Shelves.Way.UPRIGHT));
        return parted;
    }

    /**
     * Tries to lay all panels on rolls that no price list forbids: half-way between what is too cheap and what is dear enough, then
     * ever closer below the best.
     */
    private void rolls() {
        List<Integer> all = new ArrayList<>();
        for (int c = 0; c < cuts.size(); c++) {
            all.addAll(Collections.nCopies(cuts.get(c).quantity(), c));
        }
        Pieces every = new Pieces(cuts, all, stock, terms);
        List<int[]> choices = new ArrayList<>();
        for (int[] next = bound.cheapest(bestCost); next.length > 0 && choices.size() < MAX_CHOICES && isOpen(); ) {
            choices.add(next);
            bound.skip(next);
            next = bound.cheapest(bestCost);
        }
        int low = 0;
        int high = choices.size();
        while (low < high && isOpen()) {
            int middle = (low + high) / 2;
            if (lay(every, choices.get(middle), work.left() / 16)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        for (int k = high - 1; k >= 0 && isOpen(); k--) {
            lay(every, choices.get(k), work.left() / 2);
        }
    }

    private boolean lay(Pieces every, int[] counts, long most) {
        ModelMaker maker = bound.maker();
        int[] types = IntStream.range(0, counts.length).flatMap(t -> IntStream.generate(() -> t).limit(counts[t])).toArray();
        int[] width = Arrays.stream(types).map(t -> every.acrossUnits(maker.model.typeWidth[t])).toArray();
        int[] length = Arrays.stream(types).map(t -> every.alongUnits(maker.room[t] - terms.gapSteps())).toArray();
        SkylineSearch search = new SkylineSearch(every, width, length);
        Work part = work.part(most);
        boolean found = search.run(part);
        work.take(part);
        if (found) {
            offer(laid(every, search.skyline, types));
        }
        return found;
    }

    private List<OpenedRoll> laid(Pieces every, Skyline skyline, int[] types) {
        List<List<PlacedCut>> placed = new ArrayList<>();
        for (int k = 0; k < types.length; k++) {
            placed.add(new ArrayList<>());
        }
        for (int i = 0; i < every.count(); i++) {
            placed.get(skyline.roll[i]).add(every.placed(i, skyline.acrossAt[i], skyline.alongAt[i], skyline.turned[i]));
        }
        List<Stock> opened = bound.maker().rowsOf(types);
        return IntStream.range(0, types.length)
                .filter(k -> !placed.get(k).isEmpty())
                .mapToObj(k -> OpenedRoll.of(opened.get(k), placed.get(k), terms))
                .toList();
    }

    /** Shortens each roll's used length while there is work. */
    private void compact() {
        List<OpenedRoll> shorter = new ArrayList<>();
        for (int k = 0; k < best.size(); k++) {
            OpenedRoll roll = best.get(k);
            Work part = work.part(Math.min(enough(roll.placed().size()), work.left() / (best.size() - k)));
            shorter.add(compact(roll, part));
            work.take(part);
        }
        if (!shorter.isEmpty()) {
            best = shorter;
            bestCost = cost(best);
        }
    }

    private OpenedRoll compact(OpenedRoll roll, Work part) {
        Stock row = rows.get(roll.stockId());
        List<Cut> own = roll.placed().stream().map(piece -> named.get(piece.cutId())).toList();
        if (roll.cuts() == CutKind.CROSS && roll.remnantSteps() == 0) {
            return roll;
        }
        StripSearch search = new StripSearch(new Pieces(own, IntStream.range(0, own.size()).boxed().toList(), List.of(row), terms), row.widthSteps(), part);
        search.improve(part);
        OpenedRoll shorter = OpenedRoll.of(row, search.placed(), terms);
        return shorter.usedSteps() < roll.usedSteps() ? shorter : roll;
    }

    private RollPlan answer() {
        least = Math.min(least, bestCost);
        Certificate certificate = bound.certificate(least);
        if (!PlanChecker.checkBound(cuts, stock, terms, least, certificate).accepted()) {
            least = 0;
            certificate = Certificate.empty();
        }
        if (best.isEmpty()) {
            return PlainPlanning.noRolls(cuts, stock, terms, work, least, certificate);
        }
        return PlainPlanning.answer(cuts, stock, terms, work, best, bestCost, least, certificate);
    }
}
