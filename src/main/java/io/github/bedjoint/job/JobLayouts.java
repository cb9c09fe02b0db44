package io.github.bedjoint.job;

import io.github.bedjoint.cutting.LaminatePlan;
import io.github.bedjoint.film.Film;
import io.github.bedjoint.layout.Direction;
import io.github.bedjoint.layout.Fit;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.layout.Rates;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * The best layouts of each wall, in film of each width, against the rolls of the whole job: film and laminate as they are ordered.
 *
 * <p>Combinations are tried by what they would about cost in whole rolls, as many as {@link #MOST_PLANS}; for the others, and for layouts that
 * are not among the best of their wall, a bound stands: the area of their panels, or of the wall, by
 * {@link MaterialBound}, and their work or the least of any layout. Limits are counts, so the same job gives the same answer everywhere.
 */
final class JobLayouts {
    /** Layouts kept of each wall. */
    static final int MOST_LAYOUTS = 4;
    /** Roll plans made at most. */
    static final int MOST_PLANS = 64;

    private static final int MOST_COMBINATIONS = 4096;
    private static final int MOST_AGAIN = 8;
    /** Work on each plan at first, and on one whose bound leaves open whether it is the cheapest. */
    private static final long GLANCE = 200_000;
    private static final long WORK_A_PLAN = 2_000_000;

    private final Job job;
    private final FilmWidths widths;
    private final MaterialBound material;
    private final List<List<PanelLayout>> best = new ArrayList<>();
    private final Map<PanelLayout, Double> other = new HashMap<>();
    private boolean complete = true;

    /** What was found. */
    record Found(List<PanelLayout> layouts, @Nullable RollPlan film, @Nullable LaminatePlan laminate, @Nullable LayoutChoice choice) {
        private static Found of(LayoutRolls rolls, @Nullable LayoutChoice choice) {
            return new Found(rolls.layouts(), rolls.film(), rolls.laminate(), choice);
        }
    }

    /** One layout for each wall, with what they would about cost by whole rolls and by the metre. */
    private record Combination(List<PanelLayout> layouts, double inWholeRolls, double byTheMetre) {
        Combination {
            byTheMetre = Math.rint(byTheMetre * 1e6);
        }
    }

    private JobLayouts(Job job) {
        this.job = job;
        this.widths = new FilmWidths(job.materials());
        this.material = new MaterialBound(job, widths);
        job.survey().walls().forEach(wall -> best.add(layouts(wall)));
        best.forEach(all -> all.forEach(layout -> other.put(layout, other(layout))));
    }

    /** The layouts of a wall that are compared: the best few in film of each width, or one that says why there is none. */
    private List<PanelLayout> layouts(Wall wall) {
        boolean several = job.layout().fit() == Fit.CHEAPEST || job.layout().direction() == Direction.CHEAPEST
                || job.layout().startsAtCheapest();
        List<PanelLayout> all = new ArrayList<>();
        for (Film film : widths.films()) {
            LayoutPlanner planner = JobRates.planner(job, wall, film);
            List<PanelLayout> inThisWidth = several ? planner.best(wall, film, MOST_LAYOUTS) : List.of();
            if (inThisWidth.isEmpty() || !inThisWidth.get(0).isPossible()) {
                inThisWidth = List.of(planner.plan(wall, film));
            }
            complete &= job.layout().fit() != Fit.CHEAPEST || inThisWidth.size() < MOST_LAYOUTS;
            all.addAll(inThisWidth);
        }
        return PanelLayout.ranked(all, all.size());
    }

    static Found of(Job job) {
        return new JobLayouts(job).find();
    }

    private Found find() {
        List<PanelLayout> first = best.stream().map(all -> all.get(0)).toList();
        if (!first.stream().allMatch(PanelLayout::isPossible)) {
            return new Found(first, null, null, null);
        }
        List<Combination> all = combinations();
        List<LayoutRolls> tried = new ArrayList<>();
        BigDecimal bound = complete ? null : unlisted();
        for (Combination one : all) {
            BigDecimal atLeast = atLeast(one.layouts());
            if (tried.size() == MOST_PLANS || isAboveTwo(tried, atLeast)) {
                bound = least(bound, atLeast);
            } else {
                tried.add(planned(one.layouts(), all.size() == 1 ? RollJob.WORK : GLANCE));
            }
        }
        lookCloser(tried);
        List<LayoutRolls> planned = tried.stream().filter(one -> one.cost() != null).sorted(LayoutRolls.CHEAPEST_FIRST).toList();
        if (planned.isEmpty()) {
            return Found.of(planned(first, RollJob.WORK), null);
        }
        LayoutRolls winner = planned.get(0);
        for (LayoutRolls one : tried) {
            if (one.isBelow(winner.cost()) && one.isBelow(bound)) {
                LayoutRolls closer = one.bounded(job);
                bound = closer.bound() == null ? bound : least(bound, closer.bound());
            }
        }
        Optional<LayoutChoice.RunnerUp> second = planned.size() == 1 ? Optional.empty() : Optional.of(runnerUp(winner, planned.get(1)));
        Money cost = rounded(winner.known());
        Money floor = bound == null || bound.compareTo(winner.known()) > 0 ? cost : rounded(bound);
        return Found.of(winner, new LayoutChoice(all.size(), tried.size(), cost, floor, second));
    }

    private LayoutRolls planned(List<PanelLayout> layouts, long work) {
        return LayoutRolls.of(job, layouts, atLeast(layouts), other(layouts), work);
    }

    /** Whether two plans are known that cost less: then it can be neither the cheapest nor the runner-up. */
    private static boolean isAboveTwo(List<LayoutRolls> tried, BigDecimal atLeast) {
        return tried.stream().filter(one -> one.cost() != null && one.known().compareTo(atLeast) < 0).count() >= 2;
    }

    /** Plans again, with more work, those that may still be the cheapest. */
    private void lookCloser(List<LayoutRolls> tried) {
        tried.sort(LayoutRolls.CHEAPEST_FIRST);
        int again = 0;
        for (int k = 0; k < tried.size() && again < MOST_AGAIN && tried.size() > 1; k++) {
            if (tried.get(k).isOpen() && tried.get(k).isBelow(tried.get(0).cost())) {
                LayoutRolls closer = planned(tried.get(k).layouts(), WORK_A_PLAN);
                tried.set(k, LayoutRolls.CHEAPEST_FIRST.compare(closer, tried.get(k)) > 0 ? tried.get(k) : closer);
                again++;
            }
        }
    }

    private List<Combination> combinations() {
        List<List<PanelLayout>> all = new ArrayList<>(List.of(List.of()));
        for (List<PanelLayout> wall : best) {
            List<List<PanelLayout>> more = new ArrayList<>();
            int kept = all.size() * wall.size() > MOST_COMBINATIONS ? 1 : wall.size();
            complete &= kept == wall.size();
            for (List<PanelLayout> before : all) {
                for (PanelLayout layout : wall.subList(0, kept)) {
                    List<PanelLayout> longer = new ArrayList<>(before);
                    longer.add(layout);
                    more.add(longer);
                }
            }
            all = more;
        }
        return all.stream()
                .map(layouts -> new Combination(layouts, inWholeRolls(layouts), layouts.stream().mapToDouble(PanelLayout::cost).sum()))
                .sorted(Comparator.comparingDouble(Combination::inWholeRolls).thenComparing(Combination::byTheMetre))
                .toList();
    }

    /** About what the layouts cost with whole rolls of each width, to a millionth, so that the order of sums does not matter. */
    private double inWholeRolls(List<PanelLayout> layouts) {
        double cost = layouts.stream().mapToDouble(layout -> other.getOrDefault(layout, 0.0)).sum();
        for (Film film : widths.films()) {
            cost += widths.inWholeRolls(film, layouts.stream().filter(layout -> layout.film().equals(film)).mapToDouble(PanelLayout::filmM).sum());
        }
        return Math.rint(cost * 1e6);
    }

    /**
     * What layouts cost at least of which one or more are not among the best: material for what is visible, and for everything else on each
     * wall the least that any layout of it takes when film, laminate and ink are free.
     */
    private BigDecimal unlisted() {
        double visibleM2 = best.stream().mapToDouble(all -> all.get(0).places().visibleM2()).sum();
        double work = best.stream().mapToDouble(all -> leastWork(all.get(0).wall())).sum();
        return exact(material.atLeast(visibleM2) + JobRates.inkFor(job.materials(), visibleM2) + work);
    }

    private double leastWork(Wall wall) {
        return widths.films().stream()
                .map(film -> {
                    LayoutPlanner planner = JobRates.planner(job, wall, film);
                    return planner.withRates(planner.rates().withFilmPerM(workPerM(planner.rates(), film))).best(wall, film, 1).get(0);
                })
                .filter(PanelLayout::isPossible)
                .mapToDouble(PanelLayout::cost)
                .min()
                .orElse(0);
    }

    /** What a metre of film costs beside film, laminate and ink. */
    private double workPerM(Rates rates, Film film) {
        return Math.max(0, rates.filmPerM() - JobRates.materialPerM(job.materials(), widths, film));
    }

    /** What layouts cost at least with any rolls: their panels cut from the cheapest film and laminate without waste, and everything else. */
    private BigDecimal atLeast(List<PanelLayout> layouts) {
        return exact(material.atLeast(layouts.stream().mapToDouble(layout -> layout.places().totalM2()).sum())).add(other(layouts));
    }

    /** What layouts cost beside film and laminate. */
    private BigDecimal other(List<PanelLayout> layouts) {
        return exact(layouts.stream().mapToDouble(layout -> other.getOrDefault(layout, 0.0)).sum());
    }

    /** To a millionth, so that layouts that cost the same do so in feet and metres, and in any order of sums. */
    private static BigDecimal exact(double amount) {
        return BigDecimal.valueOf(amount).setScale(6, RoundingMode.HALF_UP);
    }

    /** The rates of a layout without its material by the metre, and ink for what is printed. */
    private double other(PanelLayout layout) {
        return layout.cost() - (layout.rates().filmPerM() - workPerM(layout.rates(), layout.film())) * layout.filmM()
                + JobRates.inkFor(job.materials(), RollJob.printedM2(job, layout));
    }

    private Money rounded(BigDecimal amount) {
        return Money.of(job.rules().currency(), amount, RoundingMode.HALF_UP);
    }

    private static @Nullable BigDecimal least(@Nullable BigDecimal a, BigDecimal b) {
        return a == null ? b : a.min(b);
    }

    private LayoutChoice.RunnerUp runnerUp(LayoutRolls winner, LayoutRolls second) {
        List<String> differ = new ArrayList<>();
        for (int i = 0; i < best.size(); i++) {
            PanelLayout there = second.layouts().get(i);
            if (there != winner.layouts().get(i)) {
                differ.add(there.wall().name() + " in " + Print.count(there.panels().size(), "panel") + " as "
                        + word(there.direction()) + from(there) + (widths.films().size() == 1 ? "" : " of film " + wide(there)));
            }
        }
        return new LayoutChoice.RunnerUp(String.join(", ", differ), rounded(second.known()).minus(rounded(winner.known())));
    }

    private static String from(PanelLayout there) {
        return there.chosenStart().map(side -> " from the " + word(side)).orElse("");
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static String wide(PanelLayout layout) {
        return Print.cut(layout.film().rollWidthSteps(), UnitStyle.METRIC) + " wide";
    }
}
