package io.github.bedjoint.layout;

import io.github.bedjoint.units.Steps;

/** A rectangle in a {@link Frame}, in steps. */
record Rect(long u1, long u2, long v1, long v2) {

    boolean isEmpty() {
        return u1 >= u2 || v1 >= v2;
    }

    Rect and(Rect other) {
        return new Rect(Math.max(u1, other.u1), Math.min(u2, other.u2), Math.max(v1, other.v1), Math.min(v2, other.v2));
    }

    double areaM2() {
        return isEmpty() ? 0 : Steps.toM(u2 - u1) * Steps.toM(v2 - v1);
    }
}
