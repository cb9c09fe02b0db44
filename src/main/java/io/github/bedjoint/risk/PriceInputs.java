package io.github.bedjoint.risk;

import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.Materials;
import io.github.bedjoint.job.Materials.Consumable;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.risk.Input.Bound;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import javax.measure.Quantity;
import org.joda.money.BigMoney;

/** Inputs of the price that leave panels and rolls as they are. */
final class PriceInputs {
    private static final Range AMOUNT = Range.closed(0, 1e9);
    private static final Range FACTOR = Range.closed(0, 10);

    private PriceInputs() {}

    static Bound film() {
        return Bound.of(Measure.NUMBER, FACTOR, (draft, value) ->
                draft.materials(materials -> materials.withFilm(materials.film(), times(materials.filmRolls(), value))));
    }

    static Bound laminate() {
        return Bound.of(Measure.NUMBER, FACTOR, (draft, value) -> draft.materials(materials -> materials.laminate()
                .map(cover -> materials.withLaminate(cover, times(materials.laminateRolls(), value), materials.leadIn()))
                .orElse(materials)));
    }

    private static List<RollOffer> times(List<RollOffer> offers, double factor) {
        return offers.stream()
                .map(offer -> offer.withPrice(offer.price().multipliedBy(BigDecimal.valueOf(factor), RoundingMode.HALF_UP)))
                .toList();
    }

    static Bound ink(Job job) {
        if (job.materials().ink().isEmpty()) {
            throw absent("ink", job.name());
        }
        return Bound.of(Measure.MONEY, AMOUNT, (draft, value) -> draft.materials(materials ->
                materials.ink().map(ink -> materials.withInk(ink.withPrice(at(ink.price(), value)))).orElse(materials)));
    }

    static Bound consumable(Job job, String title) {
        if (job.materials().consumables().stream().noneMatch(used -> used.title().equals(title))) {
            throw absent("consumable", title);
        }
        return Bound.of(Measure.MONEY, AMOUNT, (draft, value) -> draft.materials(materials -> changed(materials, title, value)));
    }

    private static Materials changed(Materials materials, String title, double value) {
        return materials.withConsumables(materials.consumables().stream()
                .map(used -> used.title().equals(title) ? new Consumable(title, at(used.price(), value)) : used)
                .toList());
    }

    static Bound rate(Job job, boolean onSite) {
        if (job.siteRate().isEmpty()) {
            throw absent("labour rates", job.name());
        }
        return Bound.of(Measure.MONEY, AMOUNT, (draft, value) ->
                draft.rates(rate -> onSite ? rate : at(rate, value), rate -> onSite ? at(rate, value) : rate));
    }

    static Bound extra(Job job, String title) {
        line(job, title);
        return Bound.of(Measure.MONEY, AMOUNT, (draft, value) -> draft.extra(title, line ->
                CostLine.ofInner(line.kind(), title, line.quantity(), at(line.rate(), value), job.rules().rounding())));
    }

    static Bound quantity(Job job, String title) {
        Measure measure = line(job, title).rate().measure();
        return Bound.of(measure, AMOUNT, (draft, value) -> draft.extra(title, line ->
                CostLine.ofInner(line.kind(), title, value, line.rate(), job.rules().rounding())));
    }

    private static CostLine line(Job job, String title) {
        return job.extras().stream()
                .filter(line -> line.title().equals(title))
                .findFirst()
                .orElseThrow(() -> absent("extra", title));
    }

    private static <Q extends Quantity<Q>> PriceRate<Q> at(PriceRate<Q> rate, double value) {
        return PriceRate.of(BigMoney.of(rate.currency(), BigDecimal.valueOf(value)), rate.per());
    }

    private static RefusedException absent(String what, String name) {
        return new RefusedException(what, "'" + name + "'", "must be in the job", "Maybe it is spelled otherwise.");
    }
}
