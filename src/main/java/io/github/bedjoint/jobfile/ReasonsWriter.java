package io.github.bedjoint.jobfile;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.bedjoint.cutting.LongerRolls;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.waste.WastePart;
import io.github.bedjoint.waste.WasteShares;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.function.LongFunction;

/** Writes what explains a roll plan: reasons in words, shares of waste, and what longer rolls would save. */
final class ReasonsWriter {
    private final JsonGenerator json;

    ReasonsWriter(JsonGenerator json) {
        this.json = json;
    }

    void lines(String field, List<String> lines) throws IOException {
        json.writeArrayFieldStart(field);
        for (String line : lines) {
            json.writeString(line);
        }
        json.writeEndArray();
    }

    /** What is not of use as a share of the film opened, the biggest part first. */
    void waste(WasteShares shares) throws IOException {
        json.writeObjectFieldStart("waste");
        json.writeNumberField("share", shares.share());
        json.writeObjectFieldStart("parts");
        for (Map.Entry<WastePart, Double> part : shares.partsM2().entrySet()) {
            json.writeNumberField(Fields.word(part.getKey()), shares.share(part.getKey()));
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    /** Amounts are numbers in the currency of the plan. */
    void longer(LongerRolls longer, List<String> lines, LongFunction<BigDecimal> amounts) throws IOException {
        json.writeObjectFieldStart("longerRolls");
        json.writeNumberField("moreM", Steps.toM(longer.moreSteps()));
        cost("cost", longer.after(), amounts);
        if (longer.costByPrices().isPresent()) {
            json.writeNumberField("costByPrices", amounts.apply(longer.costByPrices().getAsLong()));
        }
        if (longer.rate().isPresent()) {
            json.writeNumberField("rate", longer.rate().get().multiply(amounts.apply(1)).stripTrailingZeros());
        }
        if (longer.enough().isPresent()) {
            json.writeNumberField("savesFromM", Steps.toM(longer.enoughSteps().orElseThrow()));
            cost("savesFromCost", longer.enough().get(), amounts);
            json.writeBooleanField("least", longer.isLeast());
        }
        lines("lines", lines);
        json.writeEndObject();
    }

    private void cost(String field, RollPlan plan, LongFunction<BigDecimal> amounts) throws IOException {
        if (plan.isFeasible()) {
            json.writeNumberField(field, amounts.apply(plan.cost()));
        }
    }
}
