package io.github.bedjoint.schedule;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The dates of a network, or why it has none. Immutable.
 *
 * <p>The {@linkplain #chain() chain} is the row of activities of which each waited for the one before, from the begin to the hand-over; where nights and
 * closed days leave no slack it is the critical path of the textbooks.
 */
public final class Timetable implements Explained {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEE yyyy-MM-dd HH:mm VV", Locale.ROOT);

    static final Formula LEAD_TIME = Formula.of(
            "schedule.lead-time",
            "Time from begin to hand-over",
            new Symbol("T", Measure.TIME, "elapsed time from begin to hand-over"),
            "sum(d_i)",
            Source.geometry("activities of the chain and the time between them, nights and closed days counted"),
            new Symbol("d_i", Measure.TIME, "elapsed time of each activity of the chain and of each gap before it"));

    private final Network network;
    private final Sequencer.@Nullable Node plan;
    /** Latest dates take a pass of their own, so they are worked out when first asked for. */
    private @Nullable List<Slot> slots;
    private final List<Link> order;
    private final ZonedDateTime handOver;
    private final ZonedDateTime bound;
    private final List<String> reasons;
    private final List<String> cycle;

    /** A network without dates. */
    private Timetable(Network network, String reason, List<String> cycle) {
        this.network = network;
        this.plan = null;
        this.slots = List.of();
        this.order = List.of();
        this.handOver = network.begin();
        this.bound = network.begin();
        this.reasons = List.of(reason);
        this.cycle = List.copyOf(cycle);
    }

    private Timetable(Network network, Sequencer.Node plan, long bound) {
        this.network = network;
        this.plan = plan;
        this.order = plan.order();
        this.handOver = network.calendar().at(plan.end());
        this.bound = network.calendar().at(bound);
        this.reasons = List.of();
        this.cycle = List.of();
    }

    static Timetable of(Network network) {
        Graph graph = new Graph(network.activities(), network.links());
        if (!graph.cycle.isEmpty()) {
            return new Timetable(network, "The links go in a circle: " + String.join(" -> ", graph.cycle) + ".", graph.cycle);
        }
        Optional<String> shortage = network.capacity().shortage(network.activities());
        if (shortage.isPresent()) {
            return new Timetable(network, shortage.get(), List.of());
        }
        Sequencer.Found found = new Sequencer(network, graph).search();
        if (found.plan() == null && found.proven()) {
            return unmet(network, graph, true);
        }
        Timetable dates = found.plan() == null ? unmet(network, graph, false) : new Timetable(network, found.plan(), found.bound());
        return found.proven() ? dates : bestOfSmallerCrews(network, dates, found.bound());
    }

    /** A search that was cut short could be beaten by one with fewer people; then that plan is taken, since it is a plan for more as well. */
    private static Timetable bestOfSmallerCrews(Network network, Timetable dates, long bound) {
        int people = network.capacity().of(Resource.PEOPLE);
        int least = network.activities().stream().mapToInt(activity -> activity.need(Resource.PEOPLE)).max().orElse(0);
        if (people == Integer.MAX_VALUE || people <= Math.max(1, least)) {
            return dates;
        }
        Network smaller = network.withCapacity(network.capacity().with(Resource.PEOPLE, people - 1));
        Sequencer.Found found = new Sequencer(smaller, new Graph(smaller.activities(), smaller.links())).search();
        boolean better = found.plan() != null && (!dates.isPossible() || found.plan().end() < dates.handOver.toEpochSecond());
        return bestOfSmallerCrews(smaller, better ? new Timetable(network, found.plan(), bound) : dates, bound);
    }

    private static List<Slot> slots(Network network, Sequencer.Node plan) {
        plan.dates().backward(plan.end());
        return network.activities().stream()
                .map(activity -> slot(network, plan.dates(), plan.graph().activities.indexOf(activity)))
                .toList();
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

    private static List<Wait> waits(Graph graph, Dates dates, List<Integer> row) {
        List<Wait> waits = new ArrayList<>();
        for (int i : row) {
            Activity activity = graph.activities.get(i);
            Link link = dates.by[i];
            if (link != null && link.atLeast().seconds() > 0) {
                waits.add(new Wait(link.from() + " -> " + link.to(), "wait before: " + activity.title(), link.atLeast()));
            }
            if (activity.duration().base() == TimeBase.ELAPSED && activity.duration().seconds() > 0) {
                waits.add(new Wait(activity.id(), activity.title(), activity.duration()));
            }
        }
        return List.copyOf(waits);
    }

    private static Timetable unmet(Network network, Graph graph, boolean searchedAll) {
        Dates dates = Dates.of(network, graph);
        if (dates.forward(OpenHours.NEVER)) {
            return new Timetable(
                    network,
                    "No order of the activities keeps all windows with the people and machines there are"
                            + (searchedAll ? "." : ", as far as the search went. Maybe more people help."),
                    List.of());
        }
        if (dates.unmet == null) {
            return new Timetable(
                    network,
                    "The calendar has not enough hours within three years. Maybe no weekday has hours, or a task that must not be interrupted is longer than a shift.",
                    List.of());
        }
        List<String> names = names(graph, dates.between(dates.unmet));
        return new Timetable(
                network,
                "The window of " + dates.unmet.link() + " cannot be kept: " + String.join(" -> ", names) + " takes longer, on every day that was tried.",
                names);
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
     * What was planned.
     *
     * @return activities, links and calendar
     */
    public Network network() {
        return network;
    }

    /**
     * The dates of all activities.
     *
     * @return one slot for each activity, in the network's order; none where there are no dates
     */
    public synchronized List<Slot> slots() {
        List<Slot> known = slots;
        if (known == null) {
            known = plan == null ? List.of() : slots(network, plan);
            slots = known;
        }
        return known;
    }

    /**
     * The dates of one activity.
     *
     * @param id the activity
     * @return its slot
     * @throws RefusedException if there is none
     */
    public Slot slot(String id) {
        return slots().stream()
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
        return plan == null ? List.of() : names(plan.graph(), plan.dates().chain());
    }

    /**
     * Waits in the chain: if one of them were shorter, the hand-over could be earlier.
     *
     * @return the waits from first to last
     */
    public List<Wait> criticalWaits() {
        return plan == null ? List.of() : waits(plan.graph(), plan.dates(), plan.dates().chain());
    }

    /**
     * Who goes before whom because people or machines are short.
     *
     * @return links that the plan added, none where nothing is short
     */
    public List<Link> order() {
        return order;
    }

    /**
     * A hand-over that no plan can beat.
     *
     * @return the bound; equal to {@link #handOver()} where the plan is proven to be the earliest
     */
    public ZonedDateTime bound() {
        return bound;
    }

    /**
     * Whether no plan hands over earlier.
     *
     * @return true if the search for an order ended by itself
     */
    public boolean isProven() {
        return isPossible() && bound.equals(handOver);
    }

    /**
     * By which rule people and machines were shared out.
     *
     * @return one sentence
     */
    public String rule() {
        String limits = Arrays.stream(Resource.values())
                .filter(resource -> network.capacity().of(resource) != Integer.MAX_VALUE)
                .map(resource -> network.capacity().of(resource) + " " + resource.words(network.capacity().of(resource)))
                .collect(Collectors.joining(", "));
        if (limits.isEmpty()) {
            return "Nothing is short, so each activity starts as soon as its links allow.";
        }
        return limits + ": where more is wanted at once, one goes after the other"
                + (isProven() ? ", in the order that hands over earliest; no order is earlier."
                        : isPossible() ? "; the search ended early, and no order hands over before " + bound + "." : ".");
    }

    /**
     * What moves if it rains on a day.
     *
     * @param day the day, in the calendar's zone
     * @return the dates then, and what moved
     */
    public RainEffect ifItRains(LocalDate day) {
        return RainEffect.of(network, this, day);
    }

    @Override
    public Working working() {
        if (!isPossible()) {
            return Working.group("Dates", List.of()).noting(String.join(" ", reasons));
        }
        List<Long> terms = new ArrayList<>();
        ZonedDateTime at = network.begin();
        for (String id : chain()) {
            Slot slot = slot(id);
            terms.add(Duration.between(at, slot.earlyStart()).toSeconds());
            terms.add(Duration.between(slot.earlyStart(), slot.earlyEnd()).toSeconds());
            at = slot.earlyEnd();
        }
        Working lead = Working.sum(LEAD_TIME, Duration.between(network.begin(), handOver).toSeconds(), terms)
                .noting("Chain: " + String.join(" -> ", chain()) + "; for each the time before it, then its own. Hand-over: " + handOver + ".");
        return Working.group("Dates", List.of(lead, Working.group("Floats", slots().stream().map(Slot::working).toList())));
    }

    /** The hand-over and what sets it, or why there are no dates. */
    @Override
    public String toString() {
        return isPossible() ? "hand-over " + DATE.format(handOver) + ", set by " + String.join(", ", chain()) : String.join(" ", reasons);
    }
}
