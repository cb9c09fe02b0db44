package io.github.bedjoint.jobfile;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.Spares;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.survey.DeductionRule;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.texture.TakeUp;
import java.io.IOException;

/** Writes the job as a whole; its parts are written by the other writers of this package, one for each reader. */
final class JobWriter {
    private final JsonOut out;
    private final Job job;

    JobWriter(JsonOut out, Job job) {
        this.out = out;
        this.job = job;
    }

    void write() throws IOException {
        out.count("bedjoint", JobFile.VERSION);
        out.field("name", job.name());
        if (!job.note().isEmpty()) {
            out.field("note", job.note());
        }
        out.field("currency", job.rules().currency().getCode());
        out.array("walls", () -> {
            for (Wall wall : job.survey().walls()) {
                out.item(() -> new WallWriter(out).write(wall, job));
            }
        });
        deduction(job.deduction());
        new MaterialsWriter(out).write(job.materials());
        if (job.disposal().isPresent()) {
            out.object("disposal", () -> new MaterialsWriter(out).disposal(job.disposal().get()));
        }
        out.object("layout", () -> new LayoutWriter(out, job.rules().currency()).write(job.layout()));
        if (!job.takeUp().equals(TakeUp.NONE)) {
            out.object("takeUp", () -> {
                out.number("along", job.takeUp().along());
                out.number("up", job.takeUp().up());
            });
        }
        if (!job.spares().equals(Spares.NONE)) {
            out.object("spares", () -> {
                if (job.spares().rate() > 0) {
                    out.number("reprintRate", job.spares().rate());
                } else {
                    out.count("each", job.spares().count());
                }
            });
        }
        out.object("cutting", () -> {
            cutting(job.cutting());
            out.flag("turn", job.turnsPanels());
        });
        new AccessWriter(out).write(job.access());
        out.object("labour", () -> new LabourWriter(out).write(job));
        if (job.dates().isPresent()) {
            out.object("calendar", () -> new CalendarWriter(out).write(job.dates().get()));
        }
        if (job.site().isPresent()) {
            out.object("site", () -> new SiteWriter(out).write(job.site().get()));
        }
        if (!job.extras().isEmpty()) {
            out.array("extras", () -> {
                for (CostLine line : job.extras()) {
                    out.item(() -> extra(line));
                }
            });
        }
        out.object("price", () -> new PriceWriter(out).write(job.rules()));
    }

    private void deduction(DeductionRule rule) throws IOException {
        if (rule.kind() == DeductionRule.Kind.AT_LEAST) {
            out.object("deduction", () -> out.sized("atLeast", rule.leastM2(), "m2"));
        } else {
            out.word("deduction", rule.kind());
        }
    }

    private void cutting(CuttingTerms terms) throws IOException {
        out.steps("lead", terms.leadSteps());
        out.steps("tail", terms.tailSteps());
        out.steps("gap", terms.gapSteps());
        out.steps("keepRemnantsFrom", terms.remnants().leastSteps());
        out.count("remnantValuePercent", terms.remnants().percent());
        out.steps("remnantUnit", terms.remnants().unitSteps());
        out.word("cuts", terms.cuts());
        out.flag("oneLotPerWall", terms.lots() == LotRule.ONE_LOT_PER_WALL);
    }

    private void extra(CostLine line) throws IOException {
        out.word("kind", line.kind());
        out.field("title", line.title());
        out.count("count", Math.round(line.quantity()));
        out.field("each", line.rate().currency().getCode() + " " + line.rate().amount().getAmount().toPlainString());
    }
}
