package io.github.bedjoint.job;

import io.github.bedjoint.cutting.LaminatePlan;
import io.github.bedjoint.labour.Amounts;
import io.github.bedjoint.labour.Driver;
import io.github.bedjoint.labour.LabourEstimate;
import io.github.bedjoint.labour.Learning;
import io.github.bedjoint.labour.WorkPlace;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.survey.Edge;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.survey.WallAreas;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.waste.WasteAccount;
import io.github.bedjoint.working.Source;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns walls, panels and rolls into the amounts that drive the hours. */
final class LabourJob {
    private static final Source FACTOR = Source.shop("access factor given with the wall");
    private static final String WHOLE = "Whole job";

    private LabourJob() {}

    /** The walls with what there is to do and what height does to it, and the job as a whole, which comes last. */
    static List<WorkPlace> places(
            Job job, List<PanelLayout> layouts, JobAreas areas, RollPlan film, WasteAccount waste, Optional<LaminatePlan> laminate) {
        JobReach reach = new JobReach(job);
        List<WorkPlace> places = new ArrayList<>();
        for (int i = 0; i < layouts.size(); i++) {
            PanelLayout layout = layouts.get(i);
            WorkPlace place = WorkPlace.of(layout.wall().name(), wall(job, layout, areas.walls().get(i), areas.heatedM2(i)));
            places.add(reach.byHeight(layout.wall()).map(place::withReach).orElse(place));
        }
        places.add(WorkPlace.of(WHOLE, whole(job, film, waste, laminate)));
        return List.copyOf(places);
    }

    static LabourEstimate estimate(Job job, List<WorkPlace> places) {
        JobTrips trips = JobTrips.of(job.labour());
        List<WorkPlace> walls = new ArrayList<>();
        for (WorkPlace place : places.subList(0, places.size() - 1)) {
            walls.add(reached(job, place));
        }
        List<WorkPlace> all = new ArrayList<>(job.learning().map(law -> alike(walls, law)).orElse(walls));
        all.add(WorkPlace.of(WHOLE, places.get(places.size() - 1).amounts().withCount(Driver.TRIP, trips.working())));
        return job.labour().withTrips(trips.all()).estimate(all);
    }

    /** The place slowed by the factor that was given for its wall. */
    static WorkPlace reached(Job job, WorkPlace place) {
        return job.statedFactor(place.name()).map(factor -> place.withFactor(factor, FACTOR)).orElse(place);
    }

    /** Walls with as much of everything and the same factor are one place, repeated. */
    private static List<WorkPlace> alike(List<WorkPlace> walls, Learning law) {
        Map<List<Object>, List<WorkPlace>> groups = new LinkedHashMap<>();
        for (WorkPlace wall : walls) {
            groups.computeIfAbsent(List.of(wall.amounts(), wall.reach().factor()), key -> new ArrayList<>()).add(wall);
        }
        List<WorkPlace> places = new ArrayList<>();
        for (List<WorkPlace> group : groups.values()) {
            WorkPlace first = group.get(0);
            String name = first.name() + " and " + (group.size() - 1) + " like it";
            places.add(group.size() == 1 ? first : new WorkPlace(name, first.amounts(), first.reach(), group.size(), law));
        }
        return places;
    }

    private static Amounts wall(Job job, PanelLayout layout, WallAreas areas, double heatedM2) {
        Wall wall = layout.wall();
        long turned = Arrays.stream(Side.values())
                .map(wall::edge)
                .filter(edge -> edge.kind() == Edge.Kind.OUTSIDE_CORNER && edge.extraSteps() > 0)
                .count();
        int forTwo = (int) layout.panels().stream().filter(panel -> panel.cutLengthSteps() >= job.twoPeopleFromSteps()).count();
        return Amounts.none()
                .withArea(Driver.VISIBLE_AREA, areas.visible())
                .withArea(Driver.MEASURED_AREA, areas.measured())
                .withArea(Driver.DEVELOPED_AREA, areas.developed())
                .withArea(Driver.HEATED_AREA, Door.area(heatedM2))
                .withLength(Driver.SEAM, layout.seamLength())
                .withLength(Driver.EDGE, Door.length(areas.edges().sealedM()))
                .withLength(Driver.GROUND_LENGTH, areas.groundLength())
                .withPanels(layout.panels().size(), forTwo)
                .withCount(Driver.CORNER, turned)
                .withCount(Driver.OPENING, wall.openings().stream().filter(Opening::staysOpen).count())
                .withCount(Driver.WALL, 1);
    }

    private static Amounts whole(Job job, RollPlan film, WasteAccount waste, Optional<LaminatePlan> laminate) {
        double printedM = film.rolls().stream().mapToDouble(roll -> Steps.toM(roll.usedSteps())).sum();
        Amounts amounts = Amounts.none().withArea(Driver.FILM_AREA, waste.opened()).withCount(Driver.JOB, 1);
        amounts = job.materials().ink().isPresent() ? amounts.withLength(Driver.PRINTED_LENGTH, Door.length(printedM)) : amounts;
        return laminate.isPresent() ? amounts.withLength(Driver.LAMINATED_LENGTH, laminate.get().length()) : amounts;
    }
}
