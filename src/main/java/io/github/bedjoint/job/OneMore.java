package io.github.bedjoint.job;

import io.github.bedjoint.cutting.LongerRolls;
import io.github.bedjoint.cutting.RollPlanner;
import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.LineKind;
import io.github.bedjoint.price.PriceBuildUp;
import io.github.bedjoint.price.PriceEffect;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.apache.commons.lang3.StringUtils;

/** What one more hour, one more metre or one more roll does to the price of a job that is costed. Immutable. */
public final class OneMore {
    private static final long CENTIMETRE = Steps.PER_METRE / 100;

    private final JobCost cost;

    private OneMore(JobCost cost) {
        this.cost = cost;
    }

    /**
     * The effects on a job.
     *
     * @param cost a job with a price
     * @return its effects
     * @throws IllegalStateException if the job has no price
     */
    public static OneMore of(JobCost cost) {
        cost.price();
        return new OneMore(cost);
    }

    /**
     * One more person-hour on site; the number of days stays.
     *
     * @return the effect, or empty where hours on site are not charged
     */
    public Optional<PriceEffect> siteHour() {
        return cost.job().siteRate().map(rate -> hour(LineKind.SITE_LABOUR, "one more hour on site", rate));
    }

    /**
     * One more person-hour in the shop.
     *
     * @return the effect, or empty where hours in the shop are not charged
     */
    public Optional<PriceEffect> shopHour() {
        return cost.job().productionRate().map(rate -> hour(LineKind.PRODUCTION_LABOUR, "one more hour in the shop", rate));
    }

    private PriceEffect hour(LineKind kind, String title, PriceRate<Time> rate) {
        Quantity<Time> one = Door.of(1, ShopUnits.HOUR);
        return PriceEffect.of(cost.price(), CostLine.of(kind, title, one, rate, cost.job().rules().rounding()), one);
    }

    /**
     * One more roll of an offer that is opened and not needed; where the order leaves one on the shelf anyway it costs nothing.
     *
     * @param offer the id of a film roll on offer
     * @return the effect
     * @throws RefusedException if there is no such offer
     */
    public PriceEffect roll(String offer) {
        List<RollOffer> offers = cost.job().materials().filmRolls();
        if (offers.stream().noneMatch(one -> one.id().equals(offer))) {
            throw new RefusedException(
                    "film roll", "'" + offer + "'", "must be one of " + offers.stream().map(RollOffer::id).toList(), "Maybe it is misspelt.");
        }
        Map<String, Integer> counts = RollOrder.counts(cost.filmPlan());
        counts.merge(offer, 1, Integer::sum);
        return new PriceEffect("one more roll " + offer, cost.price(), price(counts));
    }

    /**
     * One more panel of full width, of the widest film that is hung, and some length, and nothing else: the rolls are planned anew with it, so that it is free where a remnant
     * holds it and costs a roll where none does.
     *
     * @param length how long, above 0, at most 10 km
     * @return the effect, or empty where no roll on offer holds it
     * @throws RefusedException if the length is out of range
     */
    public Optional<PriceEffect> film(Quantity<Length> length) {
        long steps = Steps.up(Door.lengthM("length", length, Range.POSITIVE));
        RollPlan before = cost.filmPlan();
        long width = cost.layouts().stream().mapToLong(layout -> layout.film().printableWidthSteps()).max().orElseThrow();
        String wall = before.cuts().isEmpty() ? "" : before.cuts().get(0).group();
        List<Cut> cuts = new ArrayList<>(before.cuts());
        cuts.add(new Cut("one more", width, steps, 1, wall));
        RollPlan after = RollPlanner.withDefaults().withTerms(before.terms()).plan(cuts, before.stock());
        return after.isFeasible()
                ? Optional.of(new PriceEffect("one more panel of " + Print.cut(steps, UnitStyle.METRIC), cost.price(), price(RollOrder.counts(after))))
                : Optional.empty();
    }

    /**
     * What film rolls longer by a centimetre would save, and how much longer they must be until a cheaper roll plan comes, for the panels as
     * they are.
     *
     * @return planned again when asked
     */
    public LongerRolls longerRolls() {
        return LongerRolls.of(cost.filmPlan(), CENTIMETRE);
    }

    /**
     * What an overlap smaller by a millimetre would change, and how much smaller it must be until the film rolls cost less.
     *
     * @return planned again when asked
     */
    public LessOverlap lessOverlap() {
        return LessOverlap.of(cost, Door.of(1, ShopUnits.MILLIMETRE));
    }

    /**
     * All of it in words: an hour, a metre of film, longer rolls, a smaller overlap. The job is planned again for it, up to some dozen times.
     *
     * @param style the reader's units
     * @return one thought each
     */
    public List<String> lines(UnitStyle style) {
        List<String> lines = new ArrayList<>();
        siteHour().ifPresent(effect -> lines.add(effect + "."));
        shopHour().ifPresent(effect -> lines.add(effect + "."));
        film(Door.of(1, ShopUnits.METRE)).ifPresent(effect -> lines.add(effect + "."));
        lines.addAll(longerRolls().lines(style, cost::amount));
        lines.addAll(lessOverlap().lines(style));
        return lines.stream().map(StringUtils::capitalize).toList();
    }

    private PriceBuildUp price(Map<String, Integer> film) {
        Materials materials = cost.job().materials();
        List<CostLine> lines = new ArrayList<>();
        RollOrder.of(LineKind.FILM, materials.film().name(), materials.filmRolls(), film).forEach(order -> lines.add(order.line()));
        cost.price().lines().stream().filter(line -> line.kind() != LineKind.FILM).forEach(lines::add);
        cost.job().extras().stream().filter(line -> line.kind() == LineKind.FILM).forEach(lines::add);
        return PriceBuildUp.of(lines, cost.labour().totalPaid(), cost.job().rules());
    }
}
