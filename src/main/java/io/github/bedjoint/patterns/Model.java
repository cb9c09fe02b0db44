package io.github.bedjoint.patterns;

import java.util.stream.IntStream;

/**
 * A job in the form the solvers work on: distinct panels and distinct roll types, lengths divided by their common
 * factor, gaps folded into lengths (n pieces of length l and n - 1 gaps g fit in u if n (l + g) is at most u + g).
 *
 * <p>A roll type is a kind of roll together with the least remnant it must leave; types of one kind share its supply.
 */
public final class Model {

    /** Panels, longest first. */
    final long[] size;

    final long[] width;
    final int[] demand;

    /** Roll types. */
    final long[] cap;

    public final long[] typeWidth;
    public final long[] cost;
    public final int[] kind;

    /** Rolls at hand of each kind; never more than there are pieces. */
    public final int[] supply;

    public Model(long[] size, long[] width, int[] demand, long[] cap, long[] typeWidth, long[] cost, int[] kind, int[] supply) {
        this.size = size;
        this.width = width;
        this.demand = demand;
        this.cap = cap;
        this.typeWidth = typeWidth;
        this.cost = cost;
        this.kind = kind;
        this.supply = supply;
    }

    /** The same panels on exactly these rolls, at no cost: only whether they suffice is asked. */
    Model exactly(int[] counts) {
        int[] own = IntStream.range(0, types()).toArray();
        return new Model(size, width, demand, cap, typeWidth, new long[types()], own, counts);
    }

    /** What is left to do. */
    Model rest(int[] open, int[] left) {
        return new Model(size, width, open, cap, typeWidth, cost, kind, left);
    }

    int items() {
        return size.length;
    }

    public int types() {
        return cap.length;
    }

    boolean fits(int item, int type) {
        return size[item] <= cap[type] && width[item] <= typeWidth[type];
    }

    int pieces() {
        int sum = 0;
        for (int d : demand) {
            sum += d;
        }
        return sum;
    }

    boolean isUnlimited(int type) {
        return supply[kind[type]] >= pieces();
    }

    long load(int[] pattern) {
        long sum = 0;
        for (int i = 0; i < pattern.length; i++) {
            sum += pattern[i] * size[i];
        }
        return sum;
    }
}
