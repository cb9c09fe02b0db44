package io.github.bedjoint.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * Puts activities that want more of a resource than there is one after another, so that the hand-over is as early as possible.
 *
 * <p>Branch and bound: of the first moment with too much demand a smallest set of activities that cannot run together is taken; in every
 * plan one of them ends before another of them starts, so each such pair is tried. Dates without the limits bound each branch from below. When the search ends by itself the
 * plan is exact; the limit on it is a count, so that the same network gives the same plan on any machine.
 */
final class Sequencer {
    static final int MOST_NODES = 2_000;

    private final Network network;
    private final Graph plain;
    /** The resources that all activities together want more of than there is. */
    private final List<Resource> contested;
    private int serial;
    private @Nullable Node best;

    /** A choice of orders: the links added, their dates, and the hand-over. */
    record Node(List<Link> order, Graph graph, Dates dates, long end, int serial) {}

    /** The plan that was found, or null; a bound that no plan beats; whether the two are proven to meet. */
    record Found(@Nullable Node plan, long bound, boolean proven) {}

    Sequencer(Network network, Graph plain) {
        this.network = network;
        this.plain = plain;
        this.contested = network.capacity().limited().stream().filter(this::isContested).toList();
    }

    private boolean isContested(Resource resource) {
        long all = 0;
        for (Activity activity : network.activities()) {
            all += activity.need(resource);
        }
        return all > network.capacity().of(resource);
    }

    Found search() {
        Node root = node(List.of());
        if (root == null) {
            return new Found(null, OpenHours.NEVER, true);
        }
        long full = fullHours(root);
        dive(root);
        if (best != null && best.end() <= full) {
            return new Found(best, best.end(), true);
        }
        PriorityQueue<Node> open = new PriorityQueue<>(Comparator.comparingLong(Node::end)
                .thenComparing(node -> -node.order().size())
                .thenComparing(Node::serial));
        open.add(root);
        for (int count = 0; !open.isEmpty(); count++) {
            Node node = open.remove();
            if (best != null && node.end() >= best.end()) {
                return new Found(best, best.end(), true);
            }
            if (count == MOST_NODES) {
                return new Found(best, Math.max(node.end(), full), false);
            }
            List<Integer> clash = clash(node);
            if (clash.isEmpty()) {
                return new Found(node, node.end(), true);
            }
            open.addAll(children(node, clash));
        }
        return new Found(best, best == null ? OpenHours.NEVER : best.end(), true);
    }

    /** The hand-over if every resource worked from the begin without a pause: no plan is earlier. */
    private long fullHours(Node root) {
        OpenHours hours = network.calendar().openFrom(network.begin().toEpochSecond());
        long bound = root.end();
        for (Resource resource : contested) {
            long work = network.activities().stream()
                    .filter(activity -> activity.duration().base() == TimeBase.SHIFT)
                    .mapToLong(activity -> activity.need(resource) * activity.duration().seconds())
                    .sum();
            if (work > 0) {
                long length = -Math.floorDiv(-work, (long) network.capacity().of(resource));
                bound = Math.max(bound, hours.add(network.begin().toEpochSecond(), length));
            }
        }
        return bound;
    }

    /** A first plan: always the child that hands over earliest. */
    private void dive(Node root) {
        Node node = root;
        while (node != null) {
            List<Integer> clash = clash(node);
            if (clash.isEmpty()) {
                best = node;
                return;
            }
            node = children(node, clash).stream()
                    .min(Comparator.comparingLong(Node::end).thenComparing(Node::serial))
                    .orElse(null);
        }
    }

    private List<Node> children(Node node, List<Integer> clash) {
        List<Node> children = new ArrayList<>();
        for (int first : clash) {
            for (int second : clash) {
                if (first != second) {
                    List<Link> order = new ArrayList<>(node.order());
                    order.add(Link.of(
                            node.graph().activities.get(first).id(), node.graph().activities.get(second).id()));
                    Node child = node(List.copyOf(order));
                    if (child != null && (best == null || child.end() < best.end())) {
                        children.add(child);
                    }
                }
            }
        }
        return children;
    }

    /** The dates under an order, or null where links go in a circle or a window cannot be kept. */
    private @Nullable Node node(List<Link> order) {
        Graph graph = order.isEmpty() ? plain : ordered(order);
        if (!graph.cycle.isEmpty()) {
            return null;
        }
        Dates dates = Dates.of(network, graph);
        return dates.forward(best == null ? OpenHours.NEVER : best.end()) ? new Node(order, graph, dates, dates.handOver(), serial++) : null;
    }

    private Graph ordered(List<Link> order) {
        List<Link> links = new ArrayList<>(network.links());
        links.addAll(order);
        return new Graph(network.activities(), links);
    }

    /** Activities of the first moment at which a resource is short, none of which can be left out; none where nothing is short. */
    private List<Integer> clash(Node node) {
        Dates dates = node.dates();
        int n = dates.early.length;
        long[] ends = new long[n];
        for (int i = 0; i < n; i++) {
            ends[i] = dates.earlyEnd(i);
        }
        long first = OpenHours.NEVER;
        List<Integer> clash = List.of();
        for (Resource resource : contested) {
            for (int i = 0; i < n; i++) {
                long moment = dates.early[i];
                if (moment < first && moment < ends[i]) {
                    List<Integer> together = new ArrayList<>();
                    for (int j = 0; j < n; j++) {
                        if (dates.early[j] <= moment && moment < ends[j] && need(node, j, resource) > 0) {
                            together.add(j);
                        }
                    }
                    if (total(node, together, resource) > network.capacity().of(resource)) {
                        first = moment;
                        clash = smallest(node, together, resource);
                    }
                }
            }
        }
        return clash;
    }

    private List<Integer> smallest(Node node, List<Integer> together, Resource resource) {
        List<Integer> left = new ArrayList<>(together);
        for (Integer member : together) {
            List<Integer> without = new ArrayList<>(left);
            without.remove(member);
            if (total(node, without, resource) > network.capacity().of(resource)) {
                left = without;
            }
        }
        return left;
    }

    private static long total(Node node, List<Integer> together, Resource resource) {
        long total = 0;
        for (int i : together) {
            total += need(node, i, resource);
        }
        return total;
    }

    private static int need(Node node, int i, Resource resource) {
        return node.graph().activities.get(i).need(resource);
    }
}
