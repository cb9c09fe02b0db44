package io.github.bedjoint.job;

import io.github.bedjoint.film.Ink;
import io.github.bedjoint.labour.LabourEstimate;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.LineKind;
import io.github.bedjoint.price.Rounding;
import io.github.bedjoint.units.PriceRate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.quantity.Time;

/** Makes the lines of a price from what a job uses up. */
final class JobLines {
    private final Job job;
    private final Rounding rounding;
    private final List<CostLine> lines = new ArrayList<>();

    JobLines(Job job) {
        this.job = job;
        this.rounding = job.rules().rounding();
    }

    /** What is ordered for the rolls that a plan opens. */
    static List<RollOrder> orders(Materials materials, JobPlan plan) {
        List<RollOrder> orders = new ArrayList<>(
                RollOrder.of(LineKind.FILM, materials.film().name(), materials.filmRolls(), RollOrder.counts(plan.film())));
        if (plan.laminate() != null) {
            String name = materials.laminate().orElseThrow().name();
            orders.addAll(RollOrder.of(LineKind.LAMINATE, name, materials.laminateRolls(), RollOrder.counts(plan.laminate().plan())));
        }
        return List.copyOf(orders);
    }

    List<CostLine> of(JobPlan plan, LabourEstimate labour, List<JobHire> hires) {
        Materials materials = job.materials();
        orders(materials, plan).forEach(order -> lines.add(order.line()));
        materials.ink().ifPresent(ink -> ink(ink, plan.printedM2()));
        materials.consumables().forEach(used ->
                lines.add(CostLine.ofInner(LineKind.CONSUMABLES, used.title(), plan.areas().visibleM2(), used.price(), rounding)));
        materials.coatings().forEach(used -> lines.add(CostLine.ofInner(
                LineKind.CONSUMABLES, used.coating().name(), used.coating().volumeM3(plan.developedM2()), used.price(), rounding)));
        hours(LineKind.PRODUCTION_LABOUR, LineKind.PRODUCTION_LABOUR.title(), labour.productionPaidS(), job.productionRate());
        hours(LineKind.SITE_LABOUR, LineKind.SITE_LABOUR.title(), labour.sitePaidS(), job.siteRate());
        String premium = labour.premium().name() + ", premium ";
        if (labour.shopPremiumS() > 0) {
            hours(LineKind.PRODUCTION_LABOUR, premium + "in the shop", labour.shopPremiumS(), job.productionRate());
        }
        if (labour.sitePremiumS() > 0) {
            hours(LineKind.SITE_LABOUR, premium + "on site", labour.sitePremiumS(), job.siteRate());
        }
        hires.forEach(hire -> lines.addAll(hire.lines()));
        plan.disposal(job).ifPresent(waste -> lines.add(waste.line(rounding)));
        lines.addAll(job.extras());
        return lines;
    }

    private void ink(Ink ink, double printedM2) {
        lines.add(CostLine.ofInner(LineKind.INK, "Ink, " + ink.family().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                ink.volumeM3(printedM2), ink.price(), rounding));
    }

    private void hours(LineKind kind, String title, double paidS, Optional<PriceRate<Time>> rate) {
        rate.ifPresent(price -> lines.add(CostLine.ofInner(kind, title, paidS, price, rounding)));
    }
}
