package io.github.bedjoint.drawing;

import io.github.bedjoint.layout.Panel;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.survey.Outline;
import io.github.bedjoint.survey.Side;

/**
 * Puts a wall and its film onto paper, the same scale both ways.
 *
 * @param fromX         the leftmost step shown
 * @param toY           the highest step shown
 * @param pixelsPerStep the scale
 * @param left          where the leftmost step comes to lie
 * @param top           where the highest step comes to lie
 * @param width         width on paper
 * @param height        height on paper
 */
record Sheet(long fromX, long toY, double pixelsPerStep, double left, double top, double width, double height) {

    /** A sheet on which the wall and all panels fit into a room. */
    static Sheet of(PanelLayout layout, double left, double top, double roomWidth, double roomHeight) {
        Outline rim = layout.wall().outline();
        long x1 = rim.reach(Side.LEFT);
        long x2 = rim.reach(Side.RIGHT);
        long y1 = rim.reach(Side.BOTTOM);
        long y2 = rim.reach(Side.TOP);
        for (Panel panel : layout.panels()) {
            x1 = Math.min(x1, panel.lowerLeft().xSteps());
            y1 = Math.min(y1, panel.lowerLeft().ySteps());
            x2 = Math.max(x2, panel.lowerLeft().xSteps() + panel.alongSteps());
            y2 = Math.max(y2, panel.lowerLeft().ySteps() + panel.upSteps());
        }
        double scale = Math.min(roomWidth / (x2 - x1), roomHeight / (y2 - y1));
        return new Sheet(x1, y2, scale, left, top, (x2 - x1) * scale, (y2 - y1) * scale);
    }

    double x(long steps) {
        return left + (steps - fromX) * pixelsPerStep;
    }

    double y(long steps) {
        return top + (toY - steps) * pixelsPerStep;
    }

    Box box(long x1, long y1, long x2, long y2) {
        return new Box(x(x1), y(y2), (x2 - x1) * pixelsPerStep, (y2 - y1) * pixelsPerStep);
    }

    Box box(Panel panel) {
        long x = panel.lowerLeft().xSteps();
        long y = panel.lowerLeft().ySteps();
        return box(x, y, x + panel.alongSteps(), y + panel.upSteps());
    }
}
