package io.github.bedjoint.survey;

import io.github.bedjoint.units.Steps;

/** The part of a wall that lies below a height: edges count up to it, upper ones plus and lower ones minus, and openings go out. */
final class BelowHeight {
    private final double heightM;
    private final double baseM;

    private BelowHeight(double heightM, double baseM) {
        this.heightM = heightM;
        this.baseM = baseM;
    }

    /** Square metres below a height over the lowest point of the wall. */
    static double visibleM2(Wall wall, double heightM) {
        Outline outline = wall.outline();
        BelowHeight below = new BelowHeight(heightM, Steps.toM(outline.reach(Side.BOTTOM)));
        double area = 0;
        for (int i = 0; i < outline.points().size(); i++) {
            area += below.under(outline.point(i), outline.point(i + 1));
        }
        for (Opening opening : wall.openings()) {
            if (opening.staysOpen()) {
                double width = Steps.toM(opening.rightSteps() - opening.leftSteps());
                area -= width * (below.capped(opening.topSteps()) - below.capped(opening.bottomSteps()));
            }
        }
        return Math.max(0, area);
    }

    private double y(long steps) {
        return Steps.toM(steps) - baseM;
    }

    private double capped(long steps) {
        return Math.min(y(steps), heightM);
    }

    /** Area between the lowest point and an edge, as far as it is below the height; the edge is cut where it crosses it. */
    private double under(Point a, Point b) {
        double dx = Steps.toM(a.xSteps() - b.xSteps());
        double low = Math.min(y(a.ySteps()), y(b.ySteps()));
        double high = Math.max(y(a.ySteps()), y(b.ySteps()));
        if (high <= heightM || low >= heightM) {
            return dx * (Math.min(low, heightM) + Math.min(high, heightM)) / 2;
        }
        double share = (heightM - low) / (high - low);
        return dx * (share * (low + heightM) / 2 + (1 - share) * heightM);
    }
}
