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

    List<Part> parts() {
        Point a = new Point(opening.leftSteps(), opening.bottomSteps());
        Point b = new Point(opening.rightSteps(), opening.bottomSteps());
        Point c = new Point(opening.rightSteps(), opening.topSteps());
        Point d = new Point(opening.leftSteps(), opening.topSteps());
        return List.of(new Part(a, b), new Part(b, c), new Part(c, d), new Part(d, a));
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
