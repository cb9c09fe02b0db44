package io.github.bedjoint.jobfile;

import io.github.bedjoint.conditions.Answer;
import io.github.bedjoint.conditions.Question;
import io.github.bedjoint.conditions.SiteConditions;
import java.io.IOException;

/** Writes what is known of the site: substrate, answers, temperatures. */
final class SiteWriter {
    private final JsonOut out;

    SiteWriter(JsonOut out) {
        this.out = out;
    }

    void write(SiteConditions site) throws IOException {
        out.flag("outdoor", site.answer(Question.OUTDOOR) == Answer.YES);
        out.word("substrate", site.substrate());
        out.object("answers", () -> {
            for (Question question : Question.values()) {
                if (question != Question.OUTDOOR && question != Question.HEAT_USED) {
                    out.word(Fields.word(question), site.answer(question));
                }
            }
        });
        if (site.air().isPresent()) {
            out.sized("air", site.air().get().getValue().doubleValue(), "K");
            out.number("relativeHumidity", site.relativeHumidity().orElseThrow());
        }
        if (site.surface().isPresent()) {
            out.sized("surfaceTemperature", site.surface().get().getValue().doubleValue(), "K");
        }
    }
}
