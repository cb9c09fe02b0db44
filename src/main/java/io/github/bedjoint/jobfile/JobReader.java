package io.github.bedjoint.jobfile;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobBuilder;
import io.github.bedjoint.job.JobDates;
import io.github.bedjoint.job.Spares;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.LineKind;
import io.github.bedjoint.price.PriceRules;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.survey.DeductionRule;
import io.github.bedjoint.survey.Survey;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.units.Steps;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;

/** Reads the job as a whole; its parts are read by the other readers of this package. */
final class JobReader {
    private static final long METRE = Steps.PER_METRE;

    private JobReader() {}

    static Job job(Fields f) {
        if (f.count("bedjoint") != JobFile.VERSION) {
            throw f.get("bedjoint").refused("must be " + JobFile.VERSION, "Maybe the file is for another version of Bedjoint.");
        }
        List<JsonNode> wallNodes = new ArrayList<>();
        Survey survey = new Survey(f.list("walls", node -> {
            wallNodes.add(node);
            return Fields.whole(node, WallReader::wall);
        }));
        PriceRules rules = f.has("price")
                ? f.object("price", p -> PriceReader.rules(p, currency(f)))
                : PriceRules.in(currency(f));
        JobBuilder job = Job.builder(f.text("name"), survey, MaterialsReader.materials(f, rules.currency()), rules);
        job = f.with(job, "note", f::text, JobBuilder::note);
        job = f.with(job, "disposal", n -> f.object(n, d -> MaterialsReader.disposal(d, rules.currency())), JobBuilder::disposal);
        if (f.has("deduction")) {
            job.deduction(deduction(f));
        }
        if (f.has("layout")) {
            job.layout(f.object("layout", l -> LayoutReader.layout(l, rules.currency())));
        }
        if (f.has("takeUp")) {
            job.takeUp(f.object("takeUp", t -> new TakeUp(share(t, "up"), share(t, "along"))));
        }
        if (f.has("spares")) {
            job.spares(f.object("spares", s -> s.oneOf("each", "reprintRate").equals("each")
                    ? s.with(Spares.NONE, "each", s::count, (none, count) -> Spares.each(count))
                    : s.with(Spares.NONE, "reprintRate", s::number, (none, rate) -> Spares.byRate(rate))));
        }
        if (f.has("cutting")) {
            cutting(f, job);
        }
        if (f.has("labour")) {
            LabourReader.read(f, job, rules.currency());
        }
        for (JsonNode node : wallNodes) {
            WallReader.ofJob(node, job);
        }
        AccessReader.read(f, job, wallNodes, rules.currency());
        if (f.has("calendar")) {
            JobDates dates = f.object("calendar", CalendarReader::dates);
            job.dates(dates);
        }
        if (f.has("site")) {
            job.site(f.object("site", SiteReader::site));
        }
        if (f.has("extras")) {
            for (CostLine line : f.list("extras", node -> Fields.whole(node, e -> extra(e, rules.currency())))) {
                job.extra(line);
            }
        }
        return job.build();
    }

    private static double share(Fields f, String name) {
        return f.with(0.0, name, f::number, (zero, share) -> Door.number(name, share, Range.SHARE));
    }

    private static CurrencyUnit currency(Fields f) {
        try {
            return CurrencyUnit.of(f.text("currency"));
        } catch (IllegalCurrencyException e) {
            throw f.get("currency").refused("must be a currency code of three capital letters (ISO 4217)", "Maybe EUR, USD or GBP.");
        }
    }

    private static DeductionRule deduction(Fields f) {
        if (f.get("deduction").fields() != null) {
            return f.object("deduction", d -> d.read("atLeast", text -> DeductionRule.atLeast(Read.area(text))));
        }
        return switch (f.text("deduction")) {
            case "all" -> DeductionRule.allOpenings();
            case "none" -> DeductionRule.none();
            default -> throw f.get("deduction").refused("must be all, none, or {\"atLeast\": an area}", "Maybe the spelling differs.");
        };
    }

    private static void cutting(Fields f, JobBuilder job) {
        f.object("cutting", c -> c.with(job.cutting(terms(c)), "turn", c::flag, JobBuilder::turnPanels));
    }

    private static CuttingTerms terms(Fields f) {
        Range lost = Range.closed(0, 100);
        long lead = f.with(0L, "lead", n -> f.read(n, Read::length), (zero, l) -> Steps.up(Door.lengthM("lead", l, lost)));
        long tail = f.with(0L, "tail", n -> f.read(n, Read::length), (zero, l) -> Steps.up(Door.lengthM("tail", l, lost)));
        long gap = f.with(0L, "gap", n -> f.read(n, Read::length), (zero, l) -> Steps.up(Door.lengthM("gap", l, lost)));
        // A remnant of a metre is worth the shelf; with no value set it changes the yield shown, never the plan.
        long least = f.with(METRE, "keepRemnantsFrom", n -> f.read(n, Read::length), (one, l) ->
                Steps.up(Door.lengthM("remnant", l, Range.above(0, 1000))));
        int percent = f.with(0, "remnantValuePercent", f::count, (zero, p) -> Door.count("remnant value", p, 0, 100));
        long unit = f.with(METRE, "remnantUnit", n -> f.read(n, Read::length), (one, l) ->
                Steps.up(Door.lengthM("remnant unit", l, Range.above(0, 1000))));
        boolean oneLot = f.has("oneLotPerWall") && f.flag("oneLotPerWall");
        CuttingTerms terms = new CuttingTerms(
                lead, tail, gap, new RemnantRule(least, unit, percent), oneLot ? LotRule.ONE_LOT_PER_WALL : LotRule.ANY);
        return f.with(terms, "cuts", n -> f.word(n, CutKind.class), CuttingTerms::withCuts);
    }

    private static CostLine extra(Fields f, CurrencyUnit currency) {
        int count = f.with(1, "count", f::count, (one, n) -> Door.count("count", n, 0, 1_000_000));
        // The rate of a line is made here once, so that a price too high is refused under its own path.
        Fields.under(f.get("each"), () -> PriceRate.of(f.priced("each", currency, Read::money), ShopUnits.ONE));
        return CostLine.each(f.word("kind", LineKind.class), f.text("title"), count, f.priced("each", currency, Read::money));
    }
}
