package io.github.bedjoint.job;

import io.github.bedjoint.conditions.Answer;
import io.github.bedjoint.conditions.Caution;
import io.github.bedjoint.conditions.Cautions;
import io.github.bedjoint.conditions.Feature;
import io.github.bedjoint.conditions.Question;
import io.github.bedjoint.conditions.Reach;
import io.github.bedjoint.conditions.SiteCheck;
import io.github.bedjoint.conditions.SiteConditions;
import io.github.bedjoint.conditions.Substrate;
import io.github.bedjoint.film.Film;
import io.github.bedjoint.job.SiteAccess.AccessHire;
import io.github.bedjoint.labour.Driver;
import io.github.bedjoint.price.LineKind;
import io.github.bedjoint.survey.Access;
import io.github.bedjoint.survey.Edge;
import io.github.bedjoint.survey.Follow;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Turns;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What must be said of a job: does the film follow, may it be applied, which cautions go with the work. */
final class JobVerdicts {
    private static final Source HIRE = Source.shop("hire given with the job");

    private final Job job;
    private final List<SiteConditions> sites = new ArrayList<>();

    JobVerdicts(Job job) {
        this.job = job;
        job.survey().walls().forEach(wall -> sites.add(conditions(wall)));
    }

    /** The conditions of the job with what the survey knows of one wall. */
    private SiteConditions conditions(Wall wall) {
        boolean heat = job.labour().tasks().tasks().stream().anyMatch(task -> task.driver() == Driver.HEATED_AREA);
        SiteConditions base = job.site().orElse(SiteConditions.outdoor(Substrate.BRICK).with(Question.OUTDOOR, Answer.UNKNOWN));
        return base.withReach(Reach.valueOf(highest(wall).name()))
                .withFeatures(features(wall))
                .with(Question.HEAT_USED, heat ? Answer.YES : Answer.NO);
    }

    private static Set<Feature> features(Wall wall) {
        Set<Feature> features = EnumSet.noneOf(Feature.class);
        for (Opening opening : wall.openings()) {
            switch (opening.kind()) {
                case WINDOW -> features.add(Feature.GLASS);
                case VENT -> features.add(Feature.VENT);
                case WEEP_HOLE -> features.add(Feature.WEEP_HOLE);
                case ALARM -> features.add(Feature.ALARM);
                case SIGN -> features.add(Feature.SIGN);
                default -> { }
            }
        }
        for (Side side : Side.values()) {
            Edge.Kind kind = wall.edge(side).kind();
            if (kind == Edge.Kind.MOVEMENT_JOINT) {
                features.add(Feature.MOVEMENT_JOINT);
            } else if (kind == Edge.Kind.SOFFIT) {
                features.add(Feature.EAVES);
            }
        }
        if (!wall.movementJoints().isEmpty()) {
            features.add(Feature.MOVEMENT_JOINT);
        }
        return features;
    }

    List<Verdict> verdicts(UnitStyle style) {
        List<Verdict> verdicts = new ArrayList<>();
        for (int i = 0; i < sites.size(); i++) {
            Wall wall = job.survey().walls().get(i);
            verdicts.add(follow(wall).verdict(wall.name() + ": does the film follow", style));
            measuring(wall).forEach(verdicts::add);
            Turns.verdict(wall, job.takeUp()).ifPresent(verdicts::add);
            registration(wall).ifPresent(verdicts::add);
            verdicts.addAll(access(wall));
            if (job.site().isPresent()) {
                for (Verdict found : SiteCheck.of(sites.get(i), job.materials().film()).verdicts()) {
                    verdicts.add(new Verdict(found.level(), wall.name() + ": " + found.subject(), found.reason(), found.source()));
                }
            }
        }
        verdicts.addAll(hires());
        job.labour().siteCrew().slowerThanOne("site").ifPresent(verdicts::add);
        job.labour().shopCrew().slowerThanOne("shop").ifPresent(verdicts::add);
        widths(style).ifPresent(verdicts::add);
        if (job.siteRate().isEmpty()) {
            verdicts.add(new Verdict(Verdict.Level.CAUTION, "price: labour", "hours are worked out but not charged, since the job gives no"
                    + " hourly rates", Source.shop("rates given with the job")));
        }
        if (job.site().isEmpty()) {
            verdicts.add(new Verdict(Verdict.Level.CAUTION, "site", "nothing is known of it, so nothing was checked: substrate, paint, damp,"
                    + " temperatures", Source.shop("site given with the job")));
        }
        return verdicts;
    }

    /** The access of the wall as a whole, or that of its highest band. */
    private Access highest(Wall wall) {
        Access highest = Access.GROUND;
        for (Access access : new JobReach(job).of(wall)) {
            highest = access;
        }
        return highest;
    }

    private List<Verdict> access(Wall wall) {
        List<Verdict> verdicts = new ArrayList<>();
        for (Access access : new JobReach(job).of(wall)) {
            if (!access.leavesBothHandsFree()) {
                verdicts.add(new Verdict(Verdict.Level.WARNING, wall.name() + ": access", "a ladder leaves no two hands free for heat and roller;"
                        + " plan a platform, scaffold or lift", Source.practice("a ladder is no access for two-handed heat work")));
            }
        }
        return verdicts;
    }

    /** A scaffold or lift that nobody pays for, and a hire that nothing needs. */
    private List<Verdict> hires() {
        Set<Access> reached = new JobReach(job).all();
        List<Verdict> verdicts = new ArrayList<>();
        boolean otherwise = job.extras().stream().anyMatch(line -> line.kind() == LineKind.HIRE);
        for (Access access : List.of(Access.SCAFFOLD, Access.LIFT)) {
            boolean hired = job.access().hires().stream().anyMatch(hire -> hire.access() == access);
            if (reached.contains(access) && !hired && !otherwise) {
                verdicts.add(new Verdict(Verdict.Level.CAUTION, "hire", "a " + access.name().toLowerCase(Locale.ROOT)
                        + " is needed and no hire is charged; that is right where the shop has its own", HIRE));
            }
        }
        for (AccessHire hire : job.access().hires()) {
            if (!reached.contains(hire.access())) {
                verdicts.add(new Verdict(Verdict.Level.CAUTION, "hire", hire.hire().name() + " is not charged, since no wall is reached by "
                        + hire.access().name().toLowerCase(Locale.ROOT), HIRE));
            }
        }
        return verdicts;
    }

    /** Film that is offered in widths that no laminate covers. */
    private Optional<Verdict> widths(UnitStyle style) {
        List<Film> uncovered = job.materials().uncovered();
        if (uncovered.isEmpty()) {
            return Optional.empty();
        }
        String wide = uncovered.stream().map(film -> Print.cut(film.rollWidthSteps(), style)).collect(Collectors.joining(" and "));
        return Optional.of(new Verdict(Verdict.Level.CAUTION, "film: width", "rolls of " + wide + " are left out, since no laminate on offer is as wide",
                Source.practice("laminate covers the whole width of a film, so that the edges of the print are sealed too")));
    }

    /** What was measured point by point hides steps and holds noise. */
    private static List<Verdict> measuring(Wall wall) {
        return wall.surface().measuring().stream()
                .map(found -> new Verdict(found.level(), wall.name() + ": " + found.subject(), found.reason(), found.source()))
                .toList();
    }

    private Follow follow(Wall wall) {
        return Follow.of(wall.surface(), job.materials().film(), job.takeUp());
    }

    /** Film fed in moves what is printed on it. */
    private Optional<Verdict> registration(Wall wall) {
        Verdict found = job.takeUp().registration(wall.surface());
        return job.materials().ink().isEmpty() || found.level() == Verdict.Level.FINE
                ? Optional.empty()
                : Optional.of(new Verdict(found.level(), wall.name() + ": " + found.subject(), found.reason(), found.source()));
    }

    List<Caution> cautions() {
        return Cautions.of(sites);
    }

    Working working() {
        List<Working> parts = new ArrayList<>();
        for (int i = 0; i < sites.size(); i++) {
            Wall wall = job.survey().walls().get(i);
            parts.add(follow(wall).working());
            parts.add(SiteCheck.of(sites.get(i), job.materials().film()).working());
        }
        return Working.group("Checks", parts);
    }
}
