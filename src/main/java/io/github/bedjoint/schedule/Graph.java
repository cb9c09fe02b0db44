package io.github.bedjoint.schedule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

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
        Map<String, Integer> places = new HashMap<>();
        for (Activity activity : given) {
            places.put(activity.id(), places.size());
        }
        int[] from = new int[links.size()];
        int[] to = new int[links.size()];
        int[] waiting = new int[given.size()];
        for (int k = 0; k < from.length; k++) {
            from[k] = places.get(links.get(k).from());
            to[k] = places.get(links.get(k).to());
            waiting[to[k]]++;
        }
        int[] ready = new int[given.size()];
        int known = 0;
        for (int i = 0; i < waiting.length; i++) {
            if (waiting[i] == 0) {
                ready[known++] = i;
            }
        }
        int[] numbers = new int[given.size()];
        for (int number = 0; number < known; number++) {
            int at = ready[number];
            numbers[at] = number;
            activities.add(given.get(at));
            into.add(new ArrayList<>());
            outOf.add(new ArrayList<>());
            for (int k = 0; k < from.length; k++) {
                if (from[k] == at && --waiting[to[k]] == 0) {
                    ready[known++] = to[k];
                }
            }
        }
        cycle = known == given.size() ? List.of() : cycle(activities.stream().map(Activity::id).collect(Collectors.toSet()), links);
        if (cycle.isEmpty()) {
            for (int k = 0; k < from.length; k++) {
                Arc arc = new Arc(numbers[from[k]], numbers[to[k]], links.get(k));
                arcs.add(arc);
                into.get(arc.to).add(arc);
                outOf.get(arc.from).add(arc);
            }
        }
    }

    /** Walks back from an activity that never got ready; whoever is met twice is on a cycle. */
    private static List<String> cycle(Set<String> ready, List<Link> links) {
        List<String> walk = new ArrayList<>();
        String at = links.stream()
                .map(Link::to)
                .filter(id -> !ready.contains(id))
                .findFirst()
                .orElseThrow();
        while (!walk.contains(at)) {
            walk.add(at);
            String here = at;
            at = links.stream()
                    .filter(link -> link.to().equals(here) && !ready.contains(link.from()))
                    .map(Link::from)
                    .findFirst()
                    .orElseThrow();
        }
        List<String> forward = new ArrayList<>(walk.subList(walk.indexOf(at), walk.size()));
        forward.add(at);
        Collections.reverse(forward);
        return forward;
    }
}
