package io.github.bedjoint.job;

import io.github.bedjoint.labour.LabourEstimate;
import io.github.bedjoint.labour.Trip.Purpose;
import io.github.bedjoint.labour.TripTime;
import io.github.bedjoint.schedule.Activity;
import io.github.bedjoint.schedule.Link;
import io.github.bedjoint.schedule.Network;
import io.github.bedjoint.schedule.Span;
import io.github.bedjoint.units.Door;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Time;

/**
 * The activities of a job and what waits for what: survey; test patch; prepare, print, outgas, laminate, finish; wash ahead; set up, wipe and
 * install; look over; cure; hand over.
 *
 * <p>A trip that comes to nothing here is one to remove the film: it lies years after the hand-over.
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
    private final int lostDays;
    private final Map<String, TripTime> trips = new LinkedHashMap<>();
    private Network network;

    /** The network when so many installing days are lost to weather. */
    JobNetwork(Job job, LabourEstimate labour, int lostDays) {
        this.job = job;
        this.dates = job.dates().orElseThrow();
        this.labour = labour;
        this.lostDays = lostDays;
        this.network = Network.on(dates.calendar(), dates.start());
    }

    Network network() {
        List<String> surveys = visits(Purpose.SURVEY, "Survey");
        List<String> patches = visits(Purpose.TEST_PATCH, "Test patch");
        List<String> shop = shop();
        List<String> washes = visits(Purpose.WASH, "Wash the wall");
        List<String> site = site();
        List<String> looks = visits(Purpose.INSPECTION, "Look over the work");
        String installed = site.get(site.size() - 1);
        network = network.with(Activity.of(CURE, "Cure", dates.waits().cure()));

        links(surveys, patches, survey -> Span.NONE);
        links(surveys, washes, survey -> Span.NONE);
        links(surveys, shop.subList(0, 1), this::after);
        links(patches, shop.subList(0, 1), this::after);
        links(List.of(shop.get(shop.size() - 1)), site.subList(0, 1), finish -> arrival());
        links(washes, site.subList(0, 1), wash -> longer(after(wash), dates.waits().washBefore()));
        looks.forEach(look -> links(List.of(installed), List.of(look), install -> after(look)));
        links(List.of(installed), List.of(CURE), install -> Span.NONE);
        return network;
    }

    /** The activities of the shop in their order, the last of which is always there. */
    private List<String> shop() {
        ShopPart part = ShopPart.of(labour);
        List<String> chain = new ArrayList<>();
        work(chain, PREPARE, "Prepare the print", part.prepareS());
        work(chain, PRINT, "Print", part.printS());
        work(chain, LAMINATE, "Laminate", part.laminateS());
        network = network.with(shift(FINISH, "Cut, number and pack", part.finishS()));
        chain.add(FINISH);
        chain(chain, next -> next.equals(LAMINATE) ? Span.elapsed(outgas()) : Span.NONE);
        return chain;
    }

    /** The activities of the installing days in their order, the last of which is always there. */
    private List<String> site() {
        SitePart part = SitePart.of(labour, job.labour().workDay(), dates.waits().wipeAtMost().seconds());
        List<String> chain = new ArrayList<>();
        work(chain, WIPE, "Set up and wipe", part.wipeS());
        network = network.with(shift(INSTALL, "Install", part.installS() + lostDays * job.labour().workDay().shiftS()));
        chain.add(INSTALL);
        if (part.wipeS() > 0) {
            network = network.with(Link.of(WIPE, INSTALL).atLeast(dates.waits().wipeAtLeast()).atMost(dates.waits().wipeAtMost()));
        }
        return chain;
    }

    private void work(List<String> chain, String id, String title, double seconds) {
        if (seconds > 0) {
            network = network.with(shift(id, title, seconds));
            chain.add(id);
        }
    }

    /** An activity for each trip with a purpose. */
    private List<String> visits(Purpose purpose, String title) {
        List<String> ids = new ArrayList<>();
        for (TripTime time : labour.trips()) {
            if (time.trip().purpose() == purpose) {
                String id = purpose.words().replace(' ', '-') + (ids.isEmpty() ? "" : "-" + (ids.size() + 1));
                network = network.with(shift(id, title, time.elapsedS()));
                trips.put(id, time);
                ids.add(id);
            }
        }
        return ids;
    }

    private void chain(List<String> chain, Function<String, Span> before) {
        for (int i = 1; i < chain.size(); i++) {
            network = network.with(Link.of(chain.get(i - 1), chain.get(i)).atLeast(before.apply(chain.get(i))));
        }
    }

    private void links(List<String> all, List<String> next, Function<String, Span> wait) {
        for (String from : all) {
            for (String to : next) {
                network = network.with(Link.of(from, to).atLeast(wait.apply(from)));
            }
        }
    }

    private Span after(String visit) {
        return Span.elapsed(Door.time(Objects.requireNonNull(trips.get(visit)).trip().waitS()));
    }

    /** How long the packed panels wait before the installing, where a trip for it says so. */
    private Span arrival() {
        return Span.elapsed(Door.time(labour.trips().stream()
                .filter(time -> time.trip().purpose() == Purpose.INSTALL)
                .mapToDouble(time -> time.trip().waitS())
                .max()
                .orElse(0)));
    }

    /** The wait of a trip gives way to that of all washing where that is longer, or counts in other hours. */
    private static Span longer(Span ofTrip, Span ofAll) {
        return ofTrip.seconds() > ofAll.seconds() ? ofTrip : ofAll;
    }

    private Quantity<Time> outgas() {
        return job.materials().ink()
                .map(ink -> Door.time(job.materials().film().outgasS(ink.family())))
                .orElse(Door.time(0));
    }

    private static Activity shift(String id, String title, double seconds) {
        return Activity.of(id, title, Span.shift(Door.time(seconds)));
    }
}
