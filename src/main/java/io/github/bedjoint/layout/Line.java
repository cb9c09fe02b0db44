package io.github.bedjoint.layout;

/** A straight edge from u1 to u2 in steps, u1 below u2; v along it is asked exactly at whole steps. */
record Line(long u1, long v1, long u2, long v2) {

    static Line of(long ua, long va, long ub, long vb) {
        return ua < ub ? new Line(ua, va, ub, vb) : new Line(ub, vb, ua, va);
    }

    long floorAt(long u) {
        return v1 == v2 ? v1 : v1 + Math.floorDiv((v2 - v1) * (u - u1), u2 - u1);
    }

    long ceilAt(long u) {
        return v1 == v2 ? v1 : v1 - Math.floorDiv((v1 - v2) * (u - u1), u2 - u1);
    }

    double at(double u) {
        return v1 == v2 ? v1 : v1 + (v2 - v1) * ((u - u1) / (u2 - u1));
    }
}
