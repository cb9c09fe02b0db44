package io.github.bedjoint.schedule;

import io.github.bedjoint.units.RefusedException;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Activities, the links between them and the calendar they live on; {@link #plan()} gives the dates.
 *
 * <p>Resources are unlimited and the weather is dry unless stated. Where activities compete for a resource the order with the earliest hand-over is searched
 * by branch and bound, exact unless {@link Timetable#isProven()} says otherwise. Immutable; the {@code with} methods give changed copies.
 */
public final class Network {
    private final WorkCalendar calendar;
    private final ZonedDateTime begin;
    private final List<Activity> activities;
    private final List<Link> links;
    private final Capacity capacity;
    private final Rain rain;
    private final WorkCalendar outdoors;

    private Network(
            WorkCalendar calendar, ZonedDateTime begin, List<Activity> activities, List<Link> links, Capacity capacity, Rain rain) {
        this.calendar = calendar;
        this.begin = begin;
        this.activities = activities;
        this.links = links;
        this.capacity = capacity;
        this.rain = rain;
        this.outdoors = rain.on(calendar);
    }

    /**
     * A network without activities.
     *
     * @param calendar the working hours
     * @param begin    the moment before which nothing starts
     * @return the network
     */
    public static Network on(WorkCalendar calendar, ZonedDateTime begin) {
        return new Network(calendar, begin, List.of(), List.of(), Capacity.unlimited(), Rain.none());
    }

    /**
     * The same with an activity added, or in place of the one with its id.
     *
     * @param activity the activity
     * @return a new network
     */
    public Network with(Activity activity) {
        return with(List.of(activity), List.of());
    }

    /**
     * The same with a link added, or in place of the one between the same activities.
     *
     * @param link the link; both activities must be in the network already
     * @return a new network
     * @throws RefusedException if an activity is not in the network
     */
    public Network with(Link link) {
        return with(List.of(), List.of(link));
    }

    /**
     * The same with activities and links added, each in place of the one with its id or between the same activities.
     *
     * @param moreActivities the activities, which come first
     * @param moreLinks      the links between any activities of the network
     * @return a new network
     * @throws RefusedException if an activity of a link is not in the network
     */
    public Network with(List<Activity> moreActivities, List<Link> moreLinks) {
        List<Activity> all = new ArrayList<>(activities);
        for (Activity activity : moreActivities) {
            int at = at(all, activity.id());
            if (at < 0) {
                all.add(activity);
            } else {
                all.set(at, activity);
            }
        }
        List<Link> joined = new ArrayList<>(links);
        for (Link link : moreLinks) {
            if (at(all, link.from()) < 0 || at(all, link.to()) < 0) {
                List<String> known = all.stream().map(Activity::id).toList();
                throw new RefusedException("link", link.toString(), "must join two of " + known, "Maybe the activity was not added yet.");
            }
            joined.removeIf(other -> other.from().equals(link.from()) && other.to().equals(link.to()));
            joined.add(link);
        }
        return new Network(calendar, begin, Collections.unmodifiableList(all), Collections.unmodifiableList(joined), capacity, rain);
    }

    /**
     * The same on another calendar.
     *
     * @param other the working hours
     * @return a new network
     */
    public Network withCalendar(WorkCalendar other) {
        return new Network(other, begin, activities, links, capacity, rain);
    }

    /**
     * The same with other limits of crew and machines.
     *
     * @param limits how much there is of each resource
     * @return a new network
     */
    public Network withCapacity(Capacity limits) {
        return new Network(calendar, begin, activities, links, limits, rain);
    }

    /**
     * The same with other weather.
     *
     * @param weather the days of rain
     * @return a new network
     */
    public Network withRain(Rain weather) {
        return new Network(calendar, begin, activities, links, capacity, weather);
    }

    private static int at(List<Activity> activities, String id) {
        for (int i = 0; i < activities.size(); i++) {
            if (activities.get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
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
     * The limits of crew and machines.
     *
     * @return how much there is of each resource
     */
    public Capacity capacity() {
        return capacity;
    }

    /**
     * The weather.
     *
     * @return the days of rain
     */
    public Rain rain() {
        return rain;
    }

    /** The hours of work outdoors. */
    WorkCalendar outdoorCalendar() {
        return outdoors;
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
