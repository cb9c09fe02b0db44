package io.github.bedjoint.job;

import io.github.bedjoint.film.Ink;
import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.labour.LabourEstimate;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.LineKind;
import io.github.bedjoint.price.Rounding;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.units.PriceRate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/** Makes the lines of a price from what a job uses up. */
final class JobLines {
    private final Job job;
    private final Rounding rounding;
    private final List<CostLine> lines = new ArrayList<>();

    JobLines(Job job) {
        this.job = job;
        this.rounding = job.rules().rounding();
    }

    List<CostLine> of(JobPlan plan, LabourEstimate labour, List<JobHire> hires) {
        Materials materials = job.materials();
        lines.addAll(rolls(LineKind.FILM, materials.film().name(), materials.filmRolls(), plan.film()));
        if (plan.laminate() != null) {
            lines.addAll(rolls(
                    LineKind.LAMINATE, materials.laminate().orElseThrow().name(), materials.laminateRolls(), plan.laminate().plan()));
        }
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
        lines.addAll(job.extras());
        return lines;
    }

    /** One line for each kind of roll, so that a count times a price each is seen. */
    static List<CostLine> rolls(LineKind kind, String name, List<RollOffer> offers, @Nullable RollPlan plan) {
        List<CostLine> lines = new ArrayList<>();
        for (RollOffer offer : offers) {
            int count = 0;
            for (OpenedRoll roll : plan == null ? List.<OpenedRoll>of() : plan.rolls()) {
                count += roll.stockId().equals(offer.id()) ? 1 : 0;
            }
            if (count > 0) {
                lines.add(CostLine.each(kind, name + ", roll " + offer.id(), count, offer.price()));
            }
        }
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
