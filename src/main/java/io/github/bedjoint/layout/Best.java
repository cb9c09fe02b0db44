package io.github.bedjoint.layout;

/**
 * The best ways to one place, cheapest first, at most so many; of those whose panels have the same lengths only the best is kept. Of
 * two that cost the same the one with fewer panels is better, then the one that was found first.
 */
final class Best {
    /** Sums of the same costs in another order differ in their last digits; that is no difference. */
    static final double SAME = 1e-9;

    private final double[] cost;
    private final int[] panels;
    private final long[] signature;
    private final int[] node;
    private final int[] rank;
    private int size;
    /** What none may cost more than; most that are offered do. */
    private double most = Double.POSITIVE_INFINITY;

    Best(int wanted) {
        cost = new double[wanted];
        panels = new int[wanted];
        signature = new long[wanted];
        node = new int[wanted];
        rank = new int[wanted];
    }

    void offer(double newCost, int newPanels, long newSignature, int newNode, int newRank) {
        if (!takes(newCost)) {
            return;
        }
        int at = 0;
        while (at < size && !isBetter(newCost, newPanels, at)) {
            if (signature[at] == newSignature) {
                return;
            }
            at++;
        }
        if (at == cost.length) {
            return;
        }
        int drop = at;
        while (drop < size && signature[drop] != newSignature) {
            drop++;
        }
        if (drop == size) {
            drop = Math.min(size, cost.length - 1);
            size = Math.min(size + 1, cost.length);
        }
        for (int i = drop; i > at; i--) {
            cost[i] = cost[i - 1];
            panels[i] = panels[i - 1];
            signature[i] = signature[i - 1];
            node[i] = node[i - 1];
            rank[i] = rank[i - 1];
        }
        cost[at] = newCost;
        panels[at] = newPanels;
        signature[at] = newSignature;
        node[at] = newNode;
        rank[at] = newRank;
        if (size == cost.length) {
            most = cost[size - 1] + SAME * Math.max(1, Math.abs(cost[size - 1]));
        }
    }

    /** Whether a way that costs so much can be among them. */
    boolean takes(double newCost) {
        return newCost <= most;
    }

    private boolean isBetter(double newCost, int newPanels, int at) {
        double same = SAME * Math.max(1, Math.abs(newCost));
        if (Math.abs(newCost - cost[at]) > same) {
            return newCost < cost[at];
        }
        return newPanels < panels[at];
    }

    /** Whether the best of these costs less than the best of those, or the same with no more panels. */
    boolean isNoWorse(Best other) {
        return cost[0] < other.cost[0] || cost[0] == other.cost[0] && panels[0] <= other.panels[0];
    }

    int size() {
        return size;
    }

    double cost(int at) {
        return cost[at];
    }

    int panels(int at) {
        return panels[at];
    }

    long signature(int at) {
        return signature[at];
    }

    int node(int at) {
        return node[at];
    }

    int rank(int at) {
        return rank[at];
    }
}
