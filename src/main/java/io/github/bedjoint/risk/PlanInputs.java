package io.github.bedjoint.risk;

import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.job.Job;
import io.github.bedjoint.risk.Input.Bound;
import io.github.bedjoint.survey.MovementJoint;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Survey;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.texture.AdjustedSurface;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.joda.money.Money;

/** Inputs that change panels or rolls. */
final class PlanInputs {
    /** A half millimetre in a metre: finer than a tape, and it keeps the number of different walls small. */
    private static final double SIZE_GRAIN = 1 / 2048.0;

    private static final Range FACTOR = Range.closed(0.5, 2);

    private PlanInputs() {}

    static Bound size(Job job, String name) {
        job.survey().wall(name);
        return Bound.planned(Measure.NUMBER, FACTOR, SIZE_GRAIN, (from, value) -> scaled(from, value, wall -> wall.name().equals(name)));
    }

    static Bound sizes() {
        return Bound.planned(Measure.NUMBER, FACTOR, SIZE_GRAIN, (from, value) -> scaled(from, value, wall -> true));
    }

    private static Job scaled(Job job, double factor, Predicate<Wall> which) {
        List<Wall> walls = new ArrayList<>();
        for (Wall wall : job.survey().walls()) {
            walls.add(which.test(wall) ? scaled(wall, factor) : wall);
        }
        return job.toBuilder().survey(new Survey(walls)).build();
    }

    private static Wall scaled(Wall wall, double factor) {
        List<Point> corners = wall.outline().points().stream()
                .map(point -> new Point(steps(point.xSteps(), factor), steps(point.ySteps(), factor)))
                .toList();
        Wall scaled = Wall.polygon(wall.name(), corners).withSurface(wall.surface()).withAccess(wall.access()).withTolerance(wall.tolerance());
        for (Side side : Side.values()) {
            scaled = scaled.withEdge(side, wall.edge(side));
        }
        List<MovementJoint> joints = wall.movementJoints().stream()
                .map(joint -> new MovementJoint(joint.upright(), steps(joint.atSteps(), factor)))
                .toList();
        return scaled.withOpenings(wall.openings().stream().map(opening -> scaled(opening, factor)).toList()).withMovementJoints(joints);
    }

    /** Rims are rounded, not sizes, so that what touched still touches. */
    private static Opening scaled(Opening opening, double factor) {
        return new Opening(
                opening.kind(), steps(opening.leftSteps(), factor), steps(opening.bottomSteps(), factor),
                steps(opening.rightSteps(), factor), steps(opening.topSteps(), factor), opening.treatment(), opening.turnSteps());
    }

    private static long steps(long steps, double factor) {
        return Math.round(steps * factor);
    }

    /** The ratio of a wall where film is fed in along the texture. */
    static Bound ratio(String name) {
        return Bound.planned(Measure.NUMBER, Range.closed(1, 20), SIZE_GRAIN, (from, value) -> {
            List<Wall> walls = new ArrayList<>(from.survey().walls());
            walls.replaceAll(wall -> wall.name().equals(name) ? wall.withSurface(AdjustedSurface.of(wall.surface(), value)) : wall);
            return from.toBuilder().survey(new Survey(walls)).build();
        });
    }

    static Bound rollPrice(Job job, String id) {
        List<String> ids = job.materials().filmRolls().stream().map(RollOffer::id).toList();
        if (!ids.contains(id)) {
            throw new RefusedException("film roll", "'" + id + "'", "must be one of " + ids, "Maybe it is spelled otherwise.");
        }
        int decimals = job.rules().currency().getDecimalPlaces();
        double grain = 1 / Math.pow(10, decimals);
        return Bound.planned(Measure.MONEY, Range.closed(0, 1e9), grain, (from, value) -> {
            Money price = Money.of(from.rules().currency(), BigDecimal.valueOf(value), RoundingMode.HALF_UP);
            List<RollOffer> offers = from.materials().filmRolls().stream()
                    .map(offer -> offer.id().equals(id) ? offer.withPrice(price) : offer)
                    .toList();
            return from.toBuilder().materials(from.materials().withFilm(from.materials().film(), offers)).build();
        });
    }
}
