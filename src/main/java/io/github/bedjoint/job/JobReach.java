package io.github.bedjoint.job;

import io.github.bedjoint.labour.HeightBands;
import io.github.bedjoint.labour.Reach;
import io.github.bedjoint.survey.Access;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.survey.WallAreas;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** How the walls of a job are reached. */
final class JobReach {
    private final Job job;

    JobReach(Job job) {
        this.job = job;
    }

    /** What height and access do to the time on a wall, where the job has height bands. */
    Optional<Reach> byHeight(Wall wall) {
        return job.access().heights().map(bands -> {
            HeightBands used = wall.access() == Access.GROUND ? bands : bands.all(wall.access());
            WallAreas areas = WallAreas.of(wall, job.deduction());
            return used.over(job.access().bottom(wall.name()), areas::visibleBelowM2);
        });
    }

    /** In which ways a wall is reached, from the ground up. */
    Set<Access> of(Wall wall) {
        return new TreeSet<>(byHeight(wall).map(Reach::accesses).orElse(Set.of(wall.access())));
    }

    /** In which ways any wall is reached. */
    Set<Access> all() {
        Set<Access> all = new TreeSet<>();
        job.survey().walls().forEach(wall -> all.addAll(of(wall)));
        return all;
    }
}
