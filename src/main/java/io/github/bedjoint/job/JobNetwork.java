package io.github.bedjoint.job;

import io.github.bedjoint.labour.Driver;
import io.github.bedjoint.labour.LabourEstimate;
import io.github.bedjoint.labour.Stage;
import io.github.bedjoint.labour.TaskTime;
import io.github.bedjoint.schedule.Activity;
import io.github.bedjoint.schedule.Link;
import io.github.bedjoint.schedule.Network;
import io.github.bedjoint.schedule.Span;
import io.github.bedjoint.units.Door;
import java.util.function.Predicate;
import javax.measure.Quantity;
import javax.measure.quantity.Time;

/**
 * The activities of a job and what waits for what: print, outgas, laminate, trim; wash a week ahead; install; cure; hand over.
 *
 * <p>Production up to the laminating is one activity, since the print must rest before it. Only the lag of the ink and the two waits of
 * the job are kept here; the crew, the printer and the laminator each do one thing at a time because their activities follow each other.
 */
final class JobNetwork {
    static final String PRINT = "print";
    static final String LAMINATE = "laminate";
    static final String FINISH = "finish";
    static final String WASH = "wash";
    static final String INSTALL = "install";
    static final String CURE = "cure";

    private final Job job;
    private final LabourEstimate labour;
    private final int lostDays;

    /** The network when so many installing days are lost to weather. */
    JobNetwork(Job job, LabourEstimate labour, int lostDays) {
        this.job = job;
        this.labour = labour;
        this.lostDays = lostDays;
    }

    Network network() {
        JobDates dates = job.dates().orElseThrow();
        Network network = Network.on(dates.calendar(), dates.start());
        Production production = Production.of(labour);
        double washS = elapsed(time -> time.task().id().equals(LabourJob.WASH));

        network = network.with(shift(PRINT, "Prepare and print", production.beforeS()));
        String last = PRINT;
        if (production.laminateS() > 0) {
            network = network.with(shift(LAMINATE, "Laminate", production.laminateS())).with(Link.of(last, LAMINATE).atLeast(Span.elapsed(outgas())));
            last = LAMINATE;
        }
        network = network.with(shift(FINISH, "Cut, number and pack", production.afterS())).with(Link.of(last, FINISH));
        network = network.with(shift(INSTALL, "Install", installS(washS))).with(Link.of(FINISH, INSTALL));
        if (washS > 0) {
            network = network.with(shift(WASH, "Wash the wall", washS)).with(Link.of(WASH, INSTALL).atLeast(dates.washBefore()));
        }
        return network.with(Activity.of(CURE, "Cure", dates.cure())).with(Link.of(INSTALL, CURE));
    }

    private Quantity<Time> outgas() {
        return job.materials().ink()
                .map(ink -> Door.time(job.materials().film().outgasS(ink.family())))
                .orElse(Door.time(0));
    }

    private static Activity shift(String id, String title, double seconds) {
        return Activity.of(id, title, Span.shift(Door.time(seconds)));
    }

    private double elapsed(Predicate<TaskTime> which) {
        return labour.tasks().stream().filter(which).mapToDouble(TaskTime::elapsedS).sum();
    }

    /** Work on site without the washing, the set-up and travel of each installing day, and the days on which nobody could work. */
    private double installS(double washS) {
        double shiftLess = job.labour().workDay().shiftS() - labour.siteDays().workPerDayS();
        return labour.siteElapsedS() - washS + labour.siteDays().days() * shiftLess + lostDays * job.labour().workDay().shiftS();
    }

    /** Elapsed time in the shop; tasks stand in order of work, so those above the laminating in the table come before it. */
    private record Production(double beforeS, double laminateS, double afterS) {
        static Production of(LabourEstimate labour) {
            double[] phases = new double[3];
            int phase = 0;
            for (TaskTime time : labour.tasks()) {
                if (time.task().stage() == Stage.PRODUCTION) {
                    boolean laminating = time.task().driver() == Driver.LAMINATED_LENGTH;
                    phase = laminating ? 1 : phase == 1 ? 2 : phase;
                    phases[phase] += time.elapsedS();
                }
            }
            return new Production(phases[0], phases[1], phases[2]);
        }
    }
}
