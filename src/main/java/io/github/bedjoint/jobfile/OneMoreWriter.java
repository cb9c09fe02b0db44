package io.github.bedjoint.jobfile;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.bedjoint.cutting.LongerRolls;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.job.LessOverlap;
import io.github.bedjoint.job.OneMore;
import io.github.bedjoint.price.PriceEffect;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import java.io.IOException;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Writes what one more of something changes in a job, in words and in numbers. */
final class OneMoreWriter {
    private final JsonGenerator json;
    private final UnitStyle style;

    OneMoreWriter(JsonGenerator json, UnitStyle style) {
        this.json = json;
        this.style = style;
    }

    void write(OneMore effects, CurrencyUnit currency) throws IOException {
        json.writeObjectFieldStart("oneMore");
        effect("siteHour", effects.siteHour());
        effect("shopHour", effects.shopHour());
        LongerRolls longer = effects.longerRolls();
        new ReasonsWriter(json).longer(
                longer, longer.lines(style, minor -> Money.ofMinor(currency, minor).toString()), minor -> Money.ofMinor(currency, minor).getAmount());
        overlap(effects.lessOverlap());
        json.writeEndObject();
    }

    private void effect(String field, Optional<PriceEffect> effect) throws IOException {
        if (effect.isPresent()) {
            json.writeObjectFieldStart(field);
            json.writeStringField("cost", effect.get().cost().toString());
            json.writeStringField("total", effect.get().total().toString());
            json.writeEndObject();
        }
    }

    private void overlap(LessOverlap less) throws IOException {
        json.writeObjectFieldStart("lessOverlap");
        json.writeNumberField("overlapM", Steps.toM(less.overlapSteps()));
        json.writeBooleanField("belowFilm", less.isBelowFilm());
        json.writeStringField("rate", less.rate().toString());
        if (less.after().isPresent()) {
            json.writeStringField("filmCost", film(less.after().get()));
            effect("effect", less.effect());
        }
        if (less.enough().isPresent()) {
            json.writeNumberField("savesFromM", Steps.toM(less.lastOverlapSteps()));
            json.writeStringField("savesFromFilmCost", film(less.enough().get()));
        }
        new ReasonsWriter(json).lines("lines", less.lines(style));
        json.writeEndObject();
    }

    private static String film(JobCost cost) {
        return Money.ofMinor(cost.job().rules().currency(), cost.filmPlan().cost()).toString();
    }
}
