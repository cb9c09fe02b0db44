package io.github.bedjoint.survey;

import java.util.List;

/** The four sides of an opening, and how much of them lies on another line. */
record Rim(Opening opening) {

    /** One side, from corner to corner. */
    record Part(Point from, Point to) {}

    static Rim of(Opening opening) {
        return new Rim(opening);
    }

    long length() {
        return 2 * (opening.rightSteps() - opening.leftSteps() + opening.topSteps() - opening.bottomSteps());
    }

    List<Point> corners() {
        return List.of(
                new Point(opening.leftSteps(), opening.bottomSteps()),
                new Point(opening.rightSteps(), opening.bottomSteps()),
                new Point(opening.rightSteps(), opening.topSteps()),
                new Point(opening.leftSteps(), opening.topSteps()));
    }

    List<Part> parts() {
        List<Point> p = corners();
        return List.of(new Part(p.get(0), p.get(1)), new Part(p.get(1), p.get(2)), new Part(p.get(2), p.get(3)), new Part(p.get(3), p.get(0)));
    }

    /** How much of the rim lies on a line from a to b; nothing on a sloped one. */
    long shared(Point a, Point b) {
        if (a.ySteps() == b.ySteps() && (a.ySteps() == opening.bottomSteps() || a.ySteps() == opening.topSteps())) {
            return common(a.xSteps(), b.xSteps(), opening.leftSteps(), opening.rightSteps());
        }
        if (a.xSteps() == b.xSteps() && (a.xSteps() == opening.leftSteps() || a.xSteps() == opening.rightSteps())) {
            return common(a.ySteps(), b.ySteps(), opening.bottomSteps(), opening.topSteps());
        }
        return 0;
    }

    private static long common(long a, long b, long low, long high) {
        return Math.max(0, Math.min(Math.max(a, b), high) - Math.max(Math.min(a, b), low));
    }
}
