package io.github.bedjoint.jobfile;

import io.github.bedjoint.layout.JointPhase;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.layout.SeamRules;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.units.RefusedException;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.Optional;
import org.joda.money.CurrencyUnit;

/** Writes how walls are divided into panels and where seams may run. */
final class LayoutWriter {
    private final JsonOut out;
    private final CurrencyUnit currency;

    LayoutWriter(JsonOut out, CurrencyUnit currency) {
        this.out = out;
        this.currency = currency;
    }

    void write(LayoutPlanner planner) throws IOException {
        if (planner.hasRates()) {
            throw new RefusedException("layout rates", planner.rates().toString(), "cannot be said in a job file",
                    "Maybe leave them to the job's own prices and paces.");
        }
        out.word("direction", planner.direction());
        out.word("fit", planner.fit());
        if (planner.overlapSteps() > 0) {
            out.steps("overlap", planner.overlapSteps());
        }
        out.steps("leastSliver", planner.leastSliverSteps());
        if (planner.hasLongestCut()) {
            out.steps("longestCut", planner.longestCutSteps());
        }
        if (planner.joinsAcross()) {
            out.flag("jointsAcross", true);
        }
        if (planner.startsAtCheapest()) {
            out.field("start", "cheapest");
        } else if (!planner.starts().isEmpty()) {
            out.array("start", () -> {
                for (Side side : planner.starts()) {
                    out.text(Fields.word(side));
                }
            });
        }
        if (planner.weatherSide().isPresent()) {
            out.word("weatherSide", planner.weatherSide().get());
        }
        SeamRules rules = planner.seamRules();
        if (!rules.equals(SeamRules.withDefaults())) {
            out.object("seams", () -> seams(rules));
        }
    }

    private void seams(SeamRules rules) throws IOException {
        out.steps("jambClearance", rules.jambSteps());
        out.steps("cornerClearance", rules.cornerSteps());
        out.steps("movementClearance", rules.movementSteps());
        joints("headJoints", rules.headJoints());
        joints("bedJoints", rules.bedJoints());
    }

    private void joints(String name, Optional<JointPhase> phase) throws IOException {
        if (phase.isPresent()) {
            JointPhase joints = phase.get();
            out.object(name, () -> {
                out.steps("period", joints.periodSteps());
                out.steps("offset", joints.offsetSteps());
                out.steps("clearance", joints.clearanceSteps());
                if (!joints.isForbidden()) {
                    out.field("price", currency.getCode() + " " + new BigDecimal(Double.toString(joints.perM())).toPlainString() + "/m");
                }
            });
        }
    }
}
