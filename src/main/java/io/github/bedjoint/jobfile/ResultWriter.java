package io.github.bedjoint.jobfile;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.bedjoint.conditions.Caution;
import io.github.bedjoint.conditions.Cautions;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.job.RollOrder;
import io.github.bedjoint.labour.Machine;
import io.github.bedjoint.labour.TaskTime;
import io.github.bedjoint.labour.TripTime;
import io.github.bedjoint.layout.Panel;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.PriceBuildUp;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.survey.AreaUncertainty;
import io.github.bedjoint.survey.WallAreas;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.waste.WastePart;
import io.github.bedjoint.waste.WasteShares;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Verdict;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import org.joda.money.Money;

/** Writes the fields of a result. What a job that cannot be done does not have is left away; {@code possible} and {@code reasons} say why. */
final class ResultWriter {
    private final JsonGenerator json;
    private final JobCost cost;
    private final UnitStyle style;

    ResultWriter(JsonGenerator json, JobCost cost, UnitStyle style) {
        this.json = json;
        this.cost = cost;
        this.style = style;
    }

    void write() throws IOException {
        json.writeNumberField("bedjoint", JobFile.VERSION);
        json.writeStringField("name", cost.job().name());
        json.writeBooleanField("possible", cost.isPossible());
        json.writeArrayFieldStart("reasons");
        for (String reason : cost.reasons()) {
            json.writeString(reason);
        }
        json.writeEndArray();
        if (cost.isPriced()) {
            price(cost.price());
        }
        areas();
        panels();
        new PrintsWriter(json).write(cost.prints());
        if (cost.isPriced()) {
            new ChoiceWriter(json).write(cost.choice());
            json.writeFieldName("rolls");
            rolls(cost.filmPlan(), cost.job().materials().film().edgeMarginSteps());
            film();
            orders();
            laminate();
            hours();
            dates();
        }
        verdicts();
    }

    private void price(PriceBuildUp price) throws IOException {
        money("total", price.total());
        json.writeArrayFieldStart("lines");
        for (CostLine line : price.lines()) {
            json.writeStartObject();
            json.writeStringField("kind", Fields.word(line.kind()));
            json.writeStringField("title", line.title());
            json.writeStringField("quantity", line.rate().measure().print(line.quantity(), style));
            json.writeStringField("rate", line.rate().toString());
            money("amount", line.amount());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeObjectFieldStart("price");
        money("direct", price.direct());
        money("overhead", price.overhead());
        money("contingency", price.contingency());
        money("cost", price.cost());
        money("list", price.list());
        money("net", price.net());
        money("tax", price.tax());
        money("total", price.total());
        json.writeNumberField("marginKept", price.marginKept());
        json.writeEndObject();
    }

    private void areas() throws IOException {
        json.writeObjectFieldStart("areas");
        number("visibleM2", cost.areas().visible().getValue());
        number("measuredM2", cost.areas().measured().getValue());
        number("developedM2", cost.areas().developed().getValue());
        number("heatedM2", cost.areas().heated().getValue());
        number("contactM2", cost.areas().contact().getValue());
        maybe("leastContactM2", cost.areas().leastContact().map(Quantity::getValue));
        maybe("developedUncertaintyM2", cost.areas().developedUncertainty().map(Quantity::getValue));
        json.writeArrayFieldStart("walls");
        for (WallAreas wall : cost.areas().walls()) {
            json.writeStartObject();
            json.writeStringField("name", wall.wall().name());
            json.writeStringField("surface", wall.wall().surface().describe(style));
            json.writeNumberField("areaRatio", wall.wall().surface().areaRatio());
            json.writeNumberField("visibleM2", wall.visibleM2());
            json.writeNumberField("measuredM2", wall.measuredM2());
            json.writeNumberField("developedM2", wall.developedM2());
            uncertainty(wall);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    /** Standard uncertainties, and the ratio without what noise adds where it was read point by point. */
    private void uncertainty(WallAreas wall) throws IOException {
        Optional<AreaUncertainty> found = wall.uncertainty();
        maybe("areaRatioUncertainty", found.map(u -> u.ratio().standard()));
        maybe("areaRatioLessNoise", found.filter(u -> u.ratio().bias() > 0).map(u -> u.ratio().lessNoise()));
        maybe("visibleUncertaintyM2", found.map(AreaUncertainty::visibleM2));
        maybe("developedUncertaintyM2", found.map(AreaUncertainty::developedM2));
    }

    private void panels() throws IOException {
        json.writeArrayFieldStart("panels");
        for (PanelLayout layout : cost.layouts()) {
            for (Panel panel : layout.panels()) {
                json.writeStartObject();
                json.writeStringField("wall", panel.wall());
                json.writeNumberField("number", panel.number());
                json.writeStringField("direction", Fields.word(panel.direction()));
                length("left", panel.lowerLeft().xSteps());
                length("bottom", panel.lowerLeft().ySteps());
                length("filmWidth", layout.film().rollWidthSteps());
                length("cutWidth", panel.cutWidthSteps());
                length("cutLength", panel.cutLengthSteps());
                json.writeStringField("cut", Print.cut(panel.cutWidthSteps(), style) + " x " + Print.cut(panel.cutLengthSteps(), style));
                json.writeEndObject();
            }
        }
        json.writeEndArray();
    }

    private void rolls(RollPlan plan, long marginSteps) throws IOException {
        json.writeStartArray();
        for (OpenedRoll roll : plan.rolls()) {
            json.writeStartObject();
            json.writeStringField("roll", roll.stockId());
            length("width", plan.row(roll).widthSteps() + 2 * marginSteps);
            json.writeArrayFieldStart("panels");
            for (String piece : roll.pieces()) {
                json.writeString(piece);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("places");
            for (PlacedCut piece : roll.placed()) {
                json.writeStartObject();
                length("along", piece.alongSteps());
                length("across", piece.acrossSteps());
                json.writeBooleanField("turned", piece.turned());
                json.writeEndObject();
            }
            json.writeEndArray();
            length("used", roll.usedSteps());
            length("remnant", roll.remnantSteps());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void film() throws IOException {
        json.writeObjectFieldStart("film");
        json.writeNumberField("openedM2", cost.waste().openedM2());
        json.writeNumberField("yield", cost.waste().filmYield().share());
        json.writeNumberField("netYield", cost.waste().filmYield().netShare());
        json.writeNumberField("utilisation", cost.waste().utilisation());
        json.writeBooleanField("proven", cost.filmPlan().isProven());
        money("cost", minor(cost.filmPlan().cost()));
        money("lowerBound", minor(cost.filmPlan().lowerBound()));
        ReasonsWriter reasons = new ReasonsWriter(json);
        reasons.lines("reasons", cost.rollReasons(style).lines());
        reasons.waste(WasteShares.of(cost.waste()));
        json.writeObjectFieldStart("accountM2");
        for (Map.Entry<WastePart, Double> part : cost.waste().partsM2().entrySet()) {
            json.writeNumberField(Fields.word(part.getKey()), part.getValue());
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private void orders() throws IOException {
        json.writeArrayFieldStart("orders");
        for (RollOrder order : cost.orders()) {
            json.writeStartObject();
            json.writeStringField("kind", Fields.word(order.kind()));
            json.writeStringField("roll", order.offer().id());
            json.writeNumberField("needed", order.quantity().needed());
            json.writeNumberField("ordered", order.quantity().ordered());
            json.writeNumberField("left", order.quantity().left());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void laminate() throws IOException {
        if (cost.laminate().isPresent()) {
            json.writeObjectFieldStart("laminate");
            number("lengthM", cost.laminate().get().length().getValue());
            json.writeNumberField("runs", cost.laminate().get().runs());
            json.writeFieldName("rolls");
            rolls(cost.laminate().get().plan(), 0);
            json.writeEndObject();
        }
    }

    private void hours() throws IOException {
        json.writeObjectFieldStart("hours");
        hours("production", cost.labour().productionPaidS());
        hours("site", cost.labour().sitePaidS());
        hours("total", cost.labour().totalPaidS());
        hours("siteElapsed", cost.labour().siteElapsedS());
        json.writeNumberField("siteDays", cost.labour().siteDays().days());
        json.writeArrayFieldStart("trips");
        for (TripTime time : cost.labour().trips()) {
            json.writeStartObject();
            json.writeStringField("purpose", Fields.word(time.trip().purpose()));
            json.writeNumberField("people", time.trip().people());
            json.writeNumberField("days", time.days());
            hours("paid", time.paidS());
            hours("elapsed", time.elapsedS());
            json.writeEndObject();
        }
        json.writeEndArray();
        number("minutesPerM2", cost.timePerArea().getValue());
        json.writeArrayFieldStart("tasks");
        for (TaskTime time : cost.labour().tasks()) {
            json.writeStartObject();
            json.writeStringField("task", time.task().id());
            json.writeStringField("title", time.task().title());
            hours("paid", time.paidS());
            hours("elapsed", time.elapsedS());
            if (time.task().machine() != Machine.NONE) {
                json.writeStringField("machine", Fields.word(time.task().machine()));
                json.writeNumberField("attended", time.task().attended());
            }
            json.writeStringField("source", time.task().source().toString());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void dates() throws IOException {
        Optional<Timetable> possible = cost.timetable().filter(Timetable::isPossible);
        if (possible.isPresent()) {
            new DatesResult(json).write(cost, possible.get());
        }
    }

    private void verdicts() throws IOException {
        json.writeArrayFieldStart("verdicts");
        for (Verdict verdict : cost.verdicts(style)) {
            json.writeStartObject();
            json.writeStringField("level", Fields.word(verdict.level()));
            json.writeStringField("subject", verdict.subject());
            json.writeStringField("reason", verdict.reason());
            json.writeStringField("source", verdict.source().toString());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeObjectFieldStart("cautions");
        json.writeStringField("preface", Cautions.PREFACE);
        json.writeArrayFieldStart("list");
        for (Caution caution : cost.cautions()) {
            json.writeStartObject();
            json.writeStringField("title", caution.title());
            json.writeStringField("text", caution.text());
            json.writeStringField("defersTo", String.join("; ", caution.defersTo().stream().map(Source::toString).toList()));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private Money minor(long cents) {
        return Money.ofMinor(cost.job().rules().currency(), cents);
    }

    private void money(String field, Money money) throws IOException {
        json.writeStringField(field, money.toString());
    }

    private void length(String field, long steps) throws IOException {
        json.writeNumberField(field + "M", Steps.toM(steps));
    }

    private void hours(String field, double seconds) throws IOException {
        json.writeNumberField(field + "H", seconds / 3600);
    }

    private void maybe(String field, Optional<? extends Number> value) throws IOException {
        if (value.isPresent()) {
            number(field, value.get());
        }
    }

    private void number(String field, Number value) throws IOException {
        json.writeNumberField(field, value.doubleValue());
    }
}
