package io.github.bedjoint.schedule;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The earliest hand-over by trying every order: each activity in turn starts at the first moment at which what it waits for is over and its resources are
 * free. A check that shares nothing with the search but the calendar; for networks without windows, and few activities.
 */
final class AllOrders {
    private final Network network;
    private final Map<String, ZonedDateTime[]> placed = new HashMap<>();
    private ZonedDateTime best;

    private AllOrders(Network network) {
        this.network = network;
    }

    static ZonedDateTime earliest(Network network) {
        AllOrders all = new AllOrders(network);
        all.place(new ArrayList<>(network.activities()));
        return all.best;
    }

    private void place(List<Activity> left) {
        if (left.isEmpty()) {
            ZonedDateTime end = placed.values().stream().map(p -> p[1]).max(ZonedDateTime::compareTo).orElse(network.begin());
            best = best == null || end.isBefore(best) ? end : best;
            return;
        }
        for (Activity activity : left) {
            boolean ready = network.links().stream().filter(link -> link.to().equals(activity.id())).allMatch(link -> placed.containsKey(link.from()));
            if (ready) {
                placed.put(activity.id(), first(activity));
                List<Activity> rest = new ArrayList<>(left);
                rest.remove(activity);
                place(rest);
                placed.remove(activity.id());
            }
        }
    }

    private ZonedDateTime[] first(Activity activity) {
        List<ZonedDateTime> candidates = new ArrayList<>();
        ZonedDateTime from = network.begin();
        for (Link link : network.links()) {
            if (link.to().equals(activity.id())) {
                ZonedDateTime over = network.calendar().after(placed.get(link.from())[1], link.atLeast());
                from = over.isAfter(from) ? over : from;
            }
        }
        candidates.add(from);
        for (ZonedDateTime[] other : placed.values()) {
            if (other[1].isAfter(from)) {
                candidates.add(other[1]);
            }
        }
        candidates.sort(ZonedDateTime::compareTo);
        for (ZonedDateTime start : candidates) {
            ZonedDateTime aligned = aligned(activity, start);
            ZonedDateTime end = network.calendar().after(aligned, activity.duration());
            if (isFree(activity, aligned, end)) {
                return new ZonedDateTime[] {aligned, end};
            }
        }
        throw new IllegalStateException("after the last end everything is free");
    }

    /** Shift work starts within a shift: one second of it is over one second later. */
    private ZonedDateTime aligned(Activity activity, ZonedDateTime start) {
        return activity.duration().base() == TimeBase.ELAPSED || activity.duration().seconds() == 0
                ? start
                : network.calendar().after(start, new Span(1, TimeBase.SHIFT)).minusSeconds(1);
    }

    private boolean isFree(Activity activity, ZonedDateTime start, ZonedDateTime end) {
        List<ZonedDateTime> moments = new ArrayList<>(List.of(start));
        placed.values().forEach(p -> moments.add(p[0]));
        for (Resource resource : Resource.values()) {
            for (ZonedDateTime moment : moments) {
                if (!moment.isBefore(start) && moment.isBefore(end)) {
                    int used = activity.need(resource);
                    for (Activity other : network.activities()) {
                        ZonedDateTime[] p = placed.get(other.id());
                        if (p != null && !p[0].isAfter(moment) && p[1].isAfter(moment)) {
                            used += other.need(resource);
                        }
                    }
                    if (used > network.capacity().of(resource)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }
}
