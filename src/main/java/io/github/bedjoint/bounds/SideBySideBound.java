package io.github.bedjoint.bounds;

import io.github.bedjoint.patterns.RollCounts;
import io.github.bedjoint.patterns.Work;
import io.github.bedjoint.rolls.AcrossScale;
import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.Stock;
import java.util.ArrayList;
import java.util.List;

/** A lower bound for panels side by side: price lists of several scales across the roll, all forbidding roll counts together. */
public final class SideBySideBound {

    /** Work on the search of one scale. */
    private static final long SEARCH = 8_000_000;

    private final ModelMaker maker;
    private final Work work;
    private final List<Relaxation> relaxations = new ArrayList<>();
    private final List<Relaxation.Shown> shown = new ArrayList<>();
    private RollCounts counts;

    public SideBySideBound(List<Cut> cuts, List<Stock> stock, CuttingTerms terms, Work work) {
        this.work = work;
        maker = new ModelMaker(cuts, stock, terms);
        counts = new RollCounts(maker.model);
        List<AcrossScale> scales = new ArrayList<>();
        if (terms.cuts() == CutKind.CROSS) {
            scales.add(AcrossScale.oneAcross(stock.size()));
        } else {
            AcrossScales found = new AcrossScales(cuts, stock, terms, work);
            scales.add(found.byWidth());
            scales.add(found.alone());
            scales.addAll(found.byPrice());
        }
        for (AcrossScale scale : scales) {
            Relaxation relaxation = new Relaxation(cuts, stock, terms, maker, scale);
            relaxations.add(relaxation);
            add(relaxation.bySize());
        }
    }

    /** Adds the price lists of a search in each scale. */
    public void search() {
        for (Relaxation relaxation : relaxations) {
            Work part = work.part(SEARCH);
            relaxation.bySearch(part).forEach(this::add);
            work.take(part);
        }
    }

    private void add(Relaxation.Shown list) {
        shown.add(list);
        counts.add(list.row());
    }

    /**
     * The cheapest roll counts that nothing forbids.
     *
     * @param under only counts cheaper than this
     * @return counts of each type, or none; not reliable if the work is over
     */
    public int[] cheapest(long under) {
        return counts.next(under, work);
    }

    /** These counts are not given again; that says nothing about the bound. */
    public void skip(int[] tried) {
        counts.exclude(tried);
    }

    public long cost(int[] count) {
        return counts.cost(count);
    }

    public ModelMaker maker() {
        return maker;
    }

    /** The price lists that a bound needs. */
    public Certificate certificate(long bound) {
        List<Relaxation.Shown> needed = new ArrayList<>(shown);
        for (int k = needed.size() - 1; k >= 0 && needed.size() > 1 && !work.isOver(); k--) {
            Relaxation.Shown idle = needed.remove(k);
            counts = new RollCounts(maker.model);
            needed.forEach(list -> counts.add(list.row()));
            if (counts.next(bound, work).length > 0 || work.isOver()) {
                needed.add(k, idle);
            }
        }
        return new Certificate(needed.stream().map(Relaxation.Shown::list).toList(), List.of(), List.of());
    }
}
