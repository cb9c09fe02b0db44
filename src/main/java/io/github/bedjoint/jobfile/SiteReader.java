package io.github.bedjoint.jobfile;

import io.github.bedjoint.conditions.Answer;
import io.github.bedjoint.conditions.Question;
import io.github.bedjoint.conditions.SiteConditions;
import io.github.bedjoint.conditions.Substrate;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Read;

/** Reads what is known of the site: substrate, answers, temperatures. */
final class SiteReader {
    private SiteReader() {}

    static SiteConditions site(Fields f) {
        Substrate substrate = f.word("substrate", Substrate.class);
        SiteConditions site = f.flag("outdoor") ? SiteConditions.outdoor(substrate) : SiteConditions.indoor(substrate);
        if (f.has("answers")) {
            SiteConditions before = site;
            site = f.object("answers", a -> answers(a, before));
        }
        if (f.has("air") || f.has("relativeHumidity")) {
            f.get("air");
            double humidity = f.with(0.0, "relativeHumidity", n -> f.number("relativeHumidity"), (zero, share) ->
                    Door.number("relative humidity", share, Range.above(0, 1)));
            f.get("relativeHumidity");
            site = f.with(site, "air", n -> f.read(n, Read::temperature), (s, air) -> s.withAir(air, humidity));
        }
        return f.with(site, "surfaceTemperature", n -> f.read(n, Read::temperature), SiteConditions::withSurface);
    }

    private static SiteConditions answers(Fields f, SiteConditions before) {
        SiteConditions site = before;
        for (Question question : Question.values()) {
            // Outdoors and heat follow from the job itself; everything else only a person can answer.
            if (question != Question.OUTDOOR && question != Question.HEAT_USED) {
                site = f.with(site, Fields.word(question), n -> f.word(n, Answer.class), (s, answer) -> s.with(question, answer));
            }
        }
        return site;
    }
}
