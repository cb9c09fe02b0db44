package io.github.bedjoint.schedule;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Activities and links by number, in an order in which every link points forward. */
final class Graph {
    final List<Activity> activities = new ArrayList<>();
    final List<Arc> arcs = new ArrayList<>();
    final List<List<Arc>> into = new ArrayList<>();
    final List<List<Arc>> outOf = new ArrayList<>();
    /** Names of a cycle of links, empty where there is none. */
    final List<String> cycle;

    /** A link by numbers. */
    record Arc(int from, int to, Link link) {}

    Graph(List<Activity> given, List<Link> links) {
        Map<String, List<Link>> out = new LinkedHashMap<>();
        Map<String, Integer> waiting = new LinkedHashMap<>();
        Map<String, Activity> byId = new LinkedHashMap<>();
        for (Activity activity : given) {
            byId.put(activity.id(), activity);
            waiting.put(activity.id(), 0);
            out.put(activity.id(), new ArrayList<>());
        }
        for (Link link : links) {
            out.get(link.from()).add(link);
            waiting.merge(link.to(), 1, Integer::sum);
        }
        Map<String, Integer> numbers = new LinkedHashMap<>();
        Deque<String> ready = new ArrayDeque<>();
        waiting.forEach((id, count) -> {
            if (count == 0) {
                ready.add(id);
            }
        });
        while (!ready.isEmpty()) {
            String id = ready.remove();
            numbers.put(id, activities.size());
            activities.add(byId.get(id));
            into.add(new ArrayList<>());
            outOf.add(new ArrayList<>());
            for (Link link : out.get(id)) {
                if (waiting.merge(link.to(), -1, Integer::sum) == 0) {
                    ready.add(link.to());
                }
            }
        }
        cycle = activities.size() == given.size() ? List.of() : cycle(numbers, links);
        if (cycle.isEmpty()) {
            for (Link link : links) {
                Arc arc = new Arc(numbers.get(link.from()), numbers.get(link.to()), link);
                arcs.add(arc);
                into.get(arc.to).add(arc);
                outOf.get(arc.from).add(arc);
            }
        }
    }

    /** Walks back from an activity that never got ready; whoever is met twice is on a cycle. */
    private static List<String> cycle(Map<String, Integer> numbers, List<Link> links) {
        List<String> walk = new ArrayList<>();
        String at = links.stream()
                .map(Link::to)
                .filter(id -> !numbers.containsKey(id))
                .findFirst()
                .orElseThrow();
        while (!walk.contains(at)) {
            walk.add(at);
            String here = at;
            at = links.stream()
                    .filter(link -> link.to().equals(here) && !numbers.containsKey(link.from()))
                    .map(Link::from)
                    .findFirst()
                    .orElseThrow();
        }
        List<String> forward = new ArrayList<>(walk.subList(walk.indexOf(at), walk.size()));
        forward.add(at);
        java.util.Collections.reverse(forward);
        return forward;
    }
}
