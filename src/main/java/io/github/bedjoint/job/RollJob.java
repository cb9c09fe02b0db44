package io.github.bedjoint.job;

import io.github.bedjoint.cutting.LaminatePlan;
import io.github.bedjoint.cutting.RollPlanner;
import io.github.bedjoint.layout.Panel;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.layout.Places;
import io.github.bedjoint.layout.PrintList;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.waste.WasteAccount;
import io.github.bedjoint.waste.WastePart;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Hands the panels of all walls to the roll planner, and gets film, waste account and laminate back. */
final class RollJob {
    /** How much work a plan may take that is not one of many. */
    static final long WORK = RollPlanner.DEFAULT_WORK;

    private RollJob() {}

    /** How a panel is called on the cut list: its wall and its number there. */
    static String id(Panel panel) {
        return panel.wall() + " " + panel.number();
    }

    /** The film's roll plan within so much work. */
    static RollPlan film(Job job, List<PanelLayout> layouts, long work) {
        List<Cut> cuts = new ArrayList<>();
        for (PanelLayout layout : layouts) {
            for (Panel panel : layout.panels()) {
                cuts.add(cut(job, id(panel), panel));
            }
            int number = 0;
            for (Panel panel : spares(job, layout)) {
                number++;
                cuts.add(cut(job, panel.wall() + " spare " + number, panel));
            }
        }
        List<Stock> stock = new FilmWidths(job.materials()).filmStock();
        return RollPlanner.withDefaults().withTerms(job.cutting()).withWorkLimit(work).plan(cuts, stock);
    }

    private static Cut cut(Job job, String id, Panel panel) {
        return new Cut(id, panel.cutWidthSteps(), panel.cutLengthSteps(), 1, panel.wall(), job.turnsPanels());
    }

    /** What the print room needs for a layout, panels turned as the plan lays them. */
    static PrintList prints(Job job, PanelLayout layout, RollPlan film) {
        Set<String> turned = film.rolls().stream()
                .flatMap(roll -> roll.placed().stream())
                .filter(PlacedCut::turned)
                .map(PlacedCut::cutId)
                .collect(Collectors.toSet());
        return job.prints(layout).withTurned(panel -> turned.contains(id(panel)));
    }

    /** The laminate of a film plan within so much work. */
    static Optional<LaminatePlan> laminate(Job job, RollPlan film, long work) {
        Materials materials = job.materials();
        return materials.laminate().map(laminate -> LaminatePlan.of(
                film, materials.film().edgeMarginSteps(), materials.leadInSteps(), new FilmWidths(materials).laminateStock(),
                RollPlanner.withDefaults().withWorkLimit(work)));
    }

    /**
     * A plan whose lower bound no laminate of any film plan of these cuts undercuts: the panels themselves cut from laminate rolls.
     *
     * <p>A laminate roll holds runs one behind the other, a run the panels of its web, each in its place. Put there, the panels keep clear of
     * one another, lie within the printed width of a film that the laminate covers, and are parted by cuts of the same kind; beyond them each
     * roll opened gives up one lead-in at least. So every laminate is also a way to cut the panels from these rolls, at the same price.
     */
    static RollPlan leastLaminate(Job job, RollPlan film, long work) {
        return RollPlanner.withDefaults()
                .withLead(job.materials().leadInSteps())
                .withCuts(job.cutting().cuts())
                .withWorkLimit(work)
                .plan(film.cuts(), new FilmWidths(job.materials()).printedUnderLaminate());
    }

    /** What is printed of a wall: the panels and their spares. */
    static double printedM2(Job job, PanelLayout layout) {
        return layout.places().totalM2() + spares(job, layout).stream().mapToDouble(panel -> panel.places().totalM2()).sum();
    }

    private static List<Panel> spares(Job job, PanelLayout layout) {
        return job.spares().equals(Spares.NONE) ? List.of() : job.prints(layout).sparePanels();
    }

    static WasteAccount waste(Job job, List<PanelLayout> layouts, RollPlan film) {
        Map<WastePart, Double> parts = new EnumMap<>(WastePart.class);
        for (PanelLayout layout : layouts) {
            Places places = layout.places();
            parts.merge(WastePart.VISIBLE, places.visibleM2(), Double::sum);
            parts.merge(WastePart.OVERLAP, places.overlapM2(), Double::sum);
            parts.merge(WastePart.BLEED, places.bleedM2(), Double::sum);
            parts.merge(WastePart.SHAPE_TRIM, places.trimM2(), Double::sum);
            parts.merge(WastePart.CUT_OUT, places.cutOutM2(), Double::sum);
            if (places.takeUpM2() > 0) {
                parts.merge(WastePart.TAKE_UP, places.takeUpM2(), Double::sum);
            }
            for (Panel panel : spares(job, layout)) {
                parts.merge(WastePart.SPARE, panel.places().totalM2(), Double::sum);
            }
        }
        return WasteAccount.of(film, job.materials().film(), parts);
    }
}
