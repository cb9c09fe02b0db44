package io.github.bedjoint.jobfile;

import io.github.bedjoint.layout.Direction;
import io.github.bedjoint.layout.Fit;
import io.github.bedjoint.layout.JointPhase;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.layout.SeamRules;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Read;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.joda.money.CurrencyUnit;

/** Reads how walls are divided into panels and where seams may run. */
final class LayoutReader {
    private LayoutReader() {}

    static LayoutPlanner layout(Fields f, CurrencyUnit currency) {
        LayoutPlanner planner = LayoutPlanner.withDefaults();
        planner = f.with(planner, "direction", n -> f.word(n, Direction.class), LayoutPlanner::withDirection);
        planner = f.with(planner, "fit", n -> f.word(n, Fit.class), LayoutPlanner::withFit);
        planner = f.with(planner, "overlap", n -> f.read(n, Read::length), LayoutPlanner::withOverlap);
        planner = f.with(planner, "leastSliver", n -> f.read(n, Read::length), LayoutPlanner::withLeastSliver);
        planner = f.with(planner, "longestCut", n -> f.read(n, Read::length), LayoutPlanner::withLongestCut);
        planner = f.with(planner, "jointsAcross", f::flag, LayoutPlanner::withJointsAcross);
        planner = f.has("start") && "cheapest".equals(f.get("start").scalar())
                ? planner.withCheapestStart()
                : f.with(planner, "start", n -> f.words(n, Side.class), LayoutReader::start);
        planner = f.with(planner, "seams", n -> f.object(n, s -> seams(s, currency)), LayoutPlanner::withSeamRules);
        return f.with(planner, "weatherSide", n -> f.word(n, Side.class), LayoutPlanner::withWeatherSide);
    }

    /** A side for drops and a side for bands may both be given; the planner keeps them apart. */
    private static LayoutPlanner start(LayoutPlanner planner, List<Side> sides) {
        LayoutPlanner started = planner;
        for (Side side : sides) {
            started = started.withStart(side);
        }
        return started;
    }

    private static SeamRules seams(Fields f, CurrencyUnit currency) {
        SeamRules rules = SeamRules.withDefaults();
        rules = f.with(rules, "jambClearance", n -> f.read(n, Read::length), SeamRules::withJambClearance);
        rules = f.with(rules, "cornerClearance", n -> f.read(n, Read::length), SeamRules::withCornerClearance);
        rules = f.with(rules, "movementClearance", n -> f.read(n, Read::length), SeamRules::withMovementClearance);
        rules = f.with(rules, "headJoints", n -> f.object(n, j -> joints(j, currency)), SeamRules::withHeadJoints);
        return f.with(rules, "bedJoints", n -> f.object(n, j -> joints(j, currency)), SeamRules::withBedJoints);
    }

    /** Joints with a price cost more, joints without one are forbidden. */
    private static JointPhase joints(Fields f, CurrencyUnit currency) {
        Quantity<Length> period = f.read("period", Read::length);
        Quantity<Length> offset = f.read("offset", Read::length);
        Quantity<Length> clearance = f.read("clearance", Read::length);
        if (!f.has("price")) {
            return JointPhase.forbidden(period, offset, clearance);
        }
        PriceRate<Length> price = f.priced("price", currency, Read::pricePerLength);
        return JointPhase.priced(period, offset, clearance, price.perInner().doubleValue());
    }
}
