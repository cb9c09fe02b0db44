package io.github.bedjoint.job;

import io.github.bedjoint.conditions.Answer;
import io.github.bedjoint.conditions.Question;
import io.github.bedjoint.labour.LabourEstimate;
import io.github.bedjoint.labour.Trip.Purpose;
import io.github.bedjoint.labour.TripTime;
import io.github.bedjoint.schedule.Activity;
import io.github.bedjoint.schedule.Capacity;
import io.github.bedjoint.schedule.Link;
import io.github.bedjoint.schedule.Network;
import io.github.bedjoint.schedule.Resource;
import io.github.bedjoint.schedule.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;

/**
 * The activities of a job and what waits for what: survey; test patch; prepare, print, outgas, laminate, finish; wash ahead; set up, wipe and
 * install; look over; cure; hand over.
 *
 * <p>There is one printer, one laminator, and the people of the crews or as many as the dates say; helpers who join for one task are not counted. Work on the
 * wall stops in rain unless the site is indoors. A trip to remove the film has no place here: it lies years after the hand-over.
 */
final class JobNetwork {
    static final String PREPARE = "prepare";
    static final String PRINT = "print";
    static final String LAMINATE = "laminate";
    static final String FINISH = "finish";
    static final String WIPE = "wipe";
    static final String INSTALL = "install";
    static final String CURE = "cure";

    private final Job job;
    private final JobDates dates;
    private final LabourEstimate labour;
    private final Map<String, TripTime> trips = new LinkedHashMap<>();
    private final boolean outdoors;
    private final List<Activity> activities = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();
    private int most;

    JobNetwork(Job job, LabourEstimate labour) {
        this.job = job;
        this.dates = job.dates().orElseThrow();
        this.labour = labour;
        this.outdoors = job.site().map(site -> site.answer(Question.OUTDOOR) != Answer.NO).orElse(true);
    }

    Network network() {
        List<String> surveys = visits(Purpose.SURVEY, "Survey");
        List<String> patches = visits(Purpose.TEST_PATCH, "Test patch");
        List<String> shop = shop();
        List<String> washes = visits(Purpose.WASH, "Wash the wall");
        List<String> site = site();
        List<String> looks = visits(Purpose.INSPECTION, "Look over the work");
        String installed = site.get(site.size() - 1);
        activities.add(Activity.of(CURE, "Cure", dates.waits().cure()));

        links(surveys, patches, survey -> Span.NONE);
        links(surveys, washes, survey -> Span.NONE);
        links(surveys, shop.subList(0, 1), this::after);
        links(patches, shop.subList(0, 1), this::after);
        links(List.of(shop.get(shop.size() - 1)), site.subList(0, 1), finish -> longer(arrival(), dates.waits().acclimatise()));
        links(washes, site.subList(0, 1), wash -> longer(after(wash), dates.waits().washBefore()));
        looks.forEach(look -> links(List.of(installed), List.of(look), install -> after(look)));
        links(List.of(installed), List.of(CURE), install -> Span.NONE);
        leadTimes(surveys, patches, shop.subList(0, 1), washes, site.subList(0, 1));
        int crews = job.labour().shopCrew().people() + job.labour().siteCrew().people();
        int people = dates.people() > 0 ? dates.people() : Math.min(50, Math.max(crews, most));
        return Network.on(dates.calendar(), dates.start())
                .withRain(dates.rain())
                .withCapacity(Capacity.shop(people))
                .with(activities, links);
    }

    /** The activities of the shop in their order, the last of which is always there. */
    private List<String> shop() {
        ShopPart part = ShopPart.of(labour);
        int crew = job.labour().shopCrew().people();
        List<String> chain = new ArrayList<>();
        work(chain, people(shift(PREPARE, "Prepare the print", part.prepareS()), crew));
        work(chain, people(shift(PRINT, "Print", part.printS()), part.atPrinter()).using(Resource.PRINTER, 1));
        work(chain, people(shift(LAMINATE, "Laminate", part.laminateS()), part.atLaminator()).using(Resource.LAMINATOR, 1));
        activities.add(people(shift(FINISH, "Cut, number and pack", part.finishS()), crew));
        chain.add(FINISH);
        for (int i = 1; i < chain.size(); i++) {
            Span rest = chain.get(i).equals(LAMINATE) ? Span.elapsedS(outgasS()) : Span.NONE;
            links.add(Link.of(chain.get(i - 1), chain.get(i)).atLeast(rest));
        }
        return chain;
    }

    /** The activities of the installing days in their order, the last of which is always there. */
    private List<String> site() {
        SitePart part = SitePart.of(labour, job.labour().workDay(), dates.waits().wipeAtMost().seconds());
        int crew = job.labour().siteCrew().people();
        List<String> chain = new ArrayList<>();
        work(chain, people(atWall(shift(WIPE, "Set up and wipe", part.wipeS())), crew));
        activities.add(people(atWall(shift(INSTALL, "Install", part.installS())), crew));
        chain.add(INSTALL);
        if (part.wipeS() > 0) {
            links.add(Link.of(WIPE, INSTALL).atLeast(dates.waits().wipeAtLeast()).atMost(dates.waits().wipeAtMost()));
        }
        return chain;
    }

    private Activity atWall(Activity activity) {
        return outdoors ? activity.outdoors() : activity;
    }

    private Activity people(Activity activity, int count) {
        most = Math.max(most, count);
        return activity.using(Resource.PEOPLE, count);
    }

    private void work(List<String> chain, Activity activity) {
        if (activity.duration().seconds() > 0) {
            activities.add(activity);
            chain.add(activity.id());
        }
    }

    /** An activity for each trip with a purpose. */
    private List<String> visits(Purpose purpose, String title) {
        List<String> ids = new ArrayList<>();
        for (TripTime time : labour.trips()) {
            if (time.trip().purpose() == purpose) {
                String id = purpose.words().replace(' ', '-') + (ids.isEmpty() ? "" : "-" + (ids.size() + 1));
                Activity visit = people(shift(id, title, time.elapsedS()), time.trip().people());
                boolean dry = purpose == Purpose.WASH || purpose == Purpose.TEST_PATCH;
                activities.add(dry ? atWall(visit) : visit);
                trips.put(id, time);
                ids.add(id);
            }
        }
        return ids;
    }

    private void leadTimes(List<String> surveys, List<String> patches, List<String> shop, List<String> washes, List<String> site) {
        int number = 0;
        for (LeadTime lead : dates.leadTimes()) {
            number++;
            String id = "lead-" + number;
            activities.add(Activity.of(id, lead.title(), lead.takes()));
            if (lead.before() == LeadTime.Before.PRODUCTION) {
                links(surveys, List.of(id), survey -> Span.NONE);
                links(patches, List.of(id), patch -> Span.NONE);
            }
            List<String> waiting = switch (lead.before()) {
                case PRODUCTION -> shop;
                case WASHING -> washes.isEmpty() ? site : washes;
                case INSTALLING -> site;
            };
            links(List.of(id), waiting, first -> Span.NONE);
        }
    }

    private void links(List<String> all, List<String> next, Function<String, Span> wait) {
        for (String from : all) {
            for (String to : next) {
                links.add(Link.of(from, to).atLeast(wait.apply(from)));
            }
        }
    }

    private Span after(String visit) {
        return Span.elapsedS(Objects.requireNonNull(trips.get(visit)).trip().waitS());
    }

    /** How long the packed panels wait before the installing, where a trip for it says so. */
    private Span arrival() {
        double waitS = 0;
        for (TripTime time : labour.trips()) {
            waitS = time.trip().purpose() == Purpose.INSTALL ? Math.max(waitS, time.trip().waitS()) : waitS;
        }
        return Span.elapsedS(waitS);
    }

    /** The wait of a trip gives way to that of all washing where that is longer, or counts in other hours. */
    private static Span longer(Span ofTrip, Span ofAll) {
        return ofTrip.seconds() > ofAll.seconds() ? ofTrip : ofAll;
    }

    private double outgasS() {
        return job.materials().ink().map(ink -> job.materials().film().outgasS(ink.family())).orElse(0.0);
    }

    private static Activity shift(String id, String title, double seconds) {
        return Activity.of(id, title, Span.shiftS(seconds));
    }
}
