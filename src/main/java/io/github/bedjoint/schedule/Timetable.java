package io.github.bedjoint.schedule;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * The dates of a network, or why it has none. Immutable.
 *
 * <p>The {@linkplain #chain() chain} is the row of activities of which each waited for the one before, from the begin to the hand-over; where nights and
 * closed days leave no slack it is the critical path of the textbooks.
 */
public final class Timetable implements Explained {
    static final Formula LEAD_TIME = Formula.of(
            "schedule.lead-time",
            "Time from begin to hand-over",
            new Symbol("T", Measure.TIME, "elapsed time from begin to hand-over"),
            "sum(d_i)",
            Source.geometry("activities of the chain and the time between them, nights and closed days counted"),
            new Symbol("d_i", Measure.TIME, "elapsed time of each activity of the chain and of each gap before it"));

    private final Network network;
    private final List<Slot> slots;
    private final List<String> chain;
    private final ZonedDateTime handOver;
    private final List<String> reasons;
    private final List<String> cycle;

    private Timetable(
            Network network, List<Slot> slots, List<String> chain, ZonedDateTime handOver, List<String> reasons, List<String> cycle) {
        this.network = network;
        this.slots = slots;
        this.chain = chain;
        this.handOver = handOver;
        this.reasons = reasons;
        this.cycle = cycle;
    }

    static Timetable of(Network network) {
        Graph graph = new Graph(network.activities(), network.links());
        if (!graph.cycle.isEmpty()) {
            return none(network, "The links go in a circle: " + String.join(" -> ", graph.cycle) + ".", graph.cycle);
        }
        long begin = network.begin().toEpochSecond();
        Dates dates = new Dates(graph, network.calendar().openFrom(begin), begin);
        if (!dates.forward()) {
            return unmet(network, graph, dates);
        }
        dates.backward(dates.handOver());
        List<Slot> slots = new ArrayList<>();
        for (Activity activity : network.activities()) {
            slots.add(slot(network, dates, graph.activities.indexOf(activity)));
        }
        List<String> chain = graph.activities.isEmpty() ? List.of() : names(graph, dates.chain());
        return new Timetable(network, List.copyOf(slots), chain, network.calendar().at(dates.handOver()), List.of(), List.of());
    }

    private static Slot slot(Network network, Dates dates, int i) {
        WorkCalendar calendar = network.calendar();
        Step step = dates.step(i);
        long zero = step.clock(network.begin().toEpochSecond());
        return new Slot(
                step.activity,
                calendar.at(dates.early[i]),
                calendar.at(dates.earlyEnd(i)),
                calendar.at(dates.late[i]),
                calendar.at(dates.lateEnd(i)),
                Duration.ofSeconds(step.clock(dates.early[i]) - zero),
                Duration.ofSeconds(step.clock(dates.late[i]) - zero));
    }

    private static Timetable unmet(Network network, Graph graph, Dates dates) {
        if (dates.unmet == null) {
            return none(network, "The calendar has not enough hours within three years. Maybe no weekday has hours, or a task that must not be interrupted is longer than a shift.", List.of());
        }
        List<String> names = names(graph, dates.between(dates.unmet));
        return none(
                network,
                "The window of " + dates.unmet.link() + " cannot be kept: " + String.join(" -> ", names) + " takes longer, on every day that was tried.",
                names);
    }

    private static Timetable none(Network network, String reason, List<String> cycle) {
        return new Timetable(network, List.of(), List.of(), network.begin(), List.of(reason), List.copyOf(cycle));
    }

    private static List<String> names(Graph graph, List<Integer> numbers) {
        return numbers.stream().map(i -> graph.activities.get(i).id()).toList();
    }

    /**
     * Whether there are dates that keep all links and windows.
     *
     * @return false where links go in a circle or a window cannot be kept
     */
    public boolean isPossible() {
        return reasons.isEmpty();
    }

    /**
     * Why there are no dates.
     *
     * @return reasons, none where there are dates
     */
    public List<String> reasons() {
        return reasons;
    }

    /**
     * The activities that contradict each other.
     *
     * @return their ids in the order of their links, none where there are dates or where hours are missing
     */
    public List<String> cycle() {
        return cycle;
    }

    /**
     * The dates of all activities.
     *
     * @return one slot for each activity, in the network's order; none where there are no dates
     */
    public List<Slot> slots() {
        return slots;
    }

    /**
     * The dates of one activity.
     *
     * @param id the activity
     * @return its slot
     * @throws RefusedException if there is none
     */
    public Slot slot(String id) {
        return slots.stream()
                .filter(slot -> slot.activity().id().equals(id))
                .findFirst()
                .orElseThrow(() -> new RefusedException("activity", "'" + id + "'", "must be planned", "Maybe look at reasons() first."));
    }

    /**
     * The end of the last activity.
     *
     * @return the earliest hand-over; the begin where there are no dates
     */
    public ZonedDateTime handOver() {
        return handOver;
    }

    /**
     * The activities that set the hand-over, each having waited for the one before.
     *
     * @return their ids from first to last
     */
    public List<String> chain() {
        return chain;
    }

    @Override
    public Working working() {
        if (!isPossible()) {
            return Working.group("Dates", List.of()).noting(String.join(" ", reasons));
        }
        List<Long> terms = new ArrayList<>();
        ZonedDateTime at = network.begin();
        for (String id : chain) {
            Slot slot = slot(id);
            terms.add(Duration.between(at, slot.earlyStart()).toSeconds());
            terms.add(Duration.between(slot.earlyStart(), slot.earlyEnd()).toSeconds());
            at = slot.earlyEnd();
        }
        Working lead = Working.sum(LEAD_TIME, Duration.between(network.begin(), handOver).toSeconds(), terms)
                .noting("Chain: " + String.join(" -> ", chain) + "; for each the time before it, then its own. Hand-over: " + handOver + ".");
        return Working.group("Dates", List.of(lead, Working.group("Floats", slots.stream().map(Slot::working).toList())));
    }
}
