package io.github.bedjoint.schedule;

import io.github.bedjoint.units.RefusedException;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * Activities, the links between them and the calendar they live on; {@link #plan()} gives the dates.
 *
 * <p>Whatever may start does start: resources are unlimited here. Immutable; the {@code with} methods give changed copies.
 */
public final class Network {
    private final WorkCalendar calendar;
    private final ZonedDateTime begin;
    private final List<Activity> activities;
    private final List<Link> links;

    private Network(WorkCalendar calendar, ZonedDateTime begin, List<Activity> activities, List<Link> links) {
        this.calendar = calendar;
        this.begin = begin;
        this.activities = activities;
        this.links = links;
    }

    /**
     * A network without activities.
     *
     * @param calendar the working hours
     * @param begin    the moment before which nothing starts
     * @return the network
     */
    public static Network on(WorkCalendar calendar, ZonedDateTime begin) {
        return new Network(calendar, begin, List.of(), List.of());
    }

    /**
     * The same with an activity added, or in place of the one with its id.
     *
     * @param activity the activity
     * @return a new network
     */
    public Network with(Activity activity) {
        List<Activity> more = new ArrayList<>(activities);
        int at = ids().indexOf(activity.id());
        if (at < 0) {
            more.add(activity);
        } else {
            more.set(at, activity);
        }
        return new Network(calendar, begin, List.copyOf(more), links);
    }

    /**
     * The same with a link added, or in place of the one between the same activities.
     *
     * @param link the link; both activities must be in the network already
     * @return a new network
     * @throws RefusedException if an activity is not in the network
     */
    public Network with(Link link) {
        for (String end : List.of(link.from(), link.to())) {
            if (!ids().contains(end)) {
                throw new RefusedException("link", link.toString(), "must join two of " + ids(), "Maybe the activity was not added yet.");
            }
        }
        List<Link> more = new ArrayList<>(links);
        more.removeIf(other -> other.from().equals(link.from()) && other.to().equals(link.to()));
        more.add(link);
        return new Network(calendar, begin, activities, List.copyOf(more));
    }

    /**
     * The same on another calendar.
     *
     * @param other the working hours
     * @return a new network
     */
    public Network withCalendar(WorkCalendar other) {
        return new Network(other, begin, activities, links);
    }

    private List<String> ids() {
        return activities.stream().map(Activity::id).toList();
    }

    /**
     * The working hours.
     *
     * @return the calendar
     */
    public WorkCalendar calendar() {
        return calendar;
    }

    /**
     * The moment before which nothing starts.
     *
     * @return the begin
     */
    public ZonedDateTime begin() {
        return begin;
    }

    /**
     * The activities.
     *
     * @return the activities in the order in which they were added
     */
    public List<Activity> activities() {
        return activities;
    }

    /**
     * The links.
     *
     * @return the links in the order in which they were added
     */
    public List<Link> links() {
        return links;
    }

    /**
     * Works out the dates.
     *
     * @return earliest and latest dates, or the reasons why there are none
     */
    public Timetable plan() {
        return Timetable.of(this);
    }
}
