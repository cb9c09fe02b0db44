package io.github.bedjoint.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.survey.LengthTolerance;
import io.github.bedjoint.survey.MovementJoint;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Movement joints and tolerances of a wall in a job file. */
class WallFileTest {
    private static final String WALL = "\"name\": \"Street front\",";

    private static String brickFront(String more) throws IOException {
        String text = Files.readString(Path.of("docs", "jobs", "brick-front.json"));
        assertThat(text).contains(WALL);
        return text.replace(WALL, WALL + " " + more);
    }

    @Test
    void parse_movementJoints_cutThePanelsThereAndAreWritten() throws IOException {
        Job job = JobFile.parse(brickFront("\"movementJoints\": [{\"x\": \"3.6 m\"}, {\"y\": \"2.5 m\"}],"));
        Wall wall = job.survey().wall("Street front");
        assertThat(wall.movementJoints())
                .containsExactly(MovementJoint.upright(Read.length("3.6 m")), MovementJoint.level(Read.length("2.5 m")));
        assertThat(JobFile.parse(JobFile.write(job)).survey()).isEqualTo(job.survey());
        assertThat(JobCost.of(job).layouts().get(0).panels()).allSatisfy(panel -> {
            long left = panel.lowerLeft().xSteps();
            assertThat(left >= 288_000 || left + panel.alongSteps() <= 288_000).isTrue();
        });
    }

    @Test
    void parse_movementJointWithTwoPlacesOrBesideTheWall_isRefused() {
        assertThatThrownBy(() -> JobFile.parse(brickFront("\"movementJoints\": [{\"x\": \"1 m\", \"y\": \"1 m\"}],")))
                .isInstanceOf(RefusedException.class).hasMessageContaining("not x and y");
        assertThatThrownBy(() -> JobFile.parse(brickFront("\"movementJoints\": [{\"x\": \"90 m\"}],")))
                .isInstanceOf(RefusedException.class).hasMessageContaining("movementJoints").hasMessageContaining("must cross the wall");
    }

    /** 5 mm on each length: the result says it in every form. */
    @Test
    void result_ofLengthsWithTolerances_saysHowSureTheAreasAre() throws IOException {
        Job job = JobFile.parse(brickFront("\"tolerances\": {\"wall\": \"5 mm\", \"opening\": \"3 mm\"},"));
        assertThat(job.survey().wall("Street front").tolerance())
                .isEqualTo(LengthTolerance.none().withWall(Read.length("5 mm")).withOpening(Read.length("3 mm")));
        JobCost cost = JobCost.of(job);
        String json = JobResult.of(cost).line();
        assertThat(json).contains("\"visibleUncertaintyM2\":", "\"developedUncertaintyM2\":", "\"leastContactM2\":");
        assertThat(cost.working().text(UnitStyle.METRIC)).contains("[survey.visible-uncertainty]", "[job.developed-uncertainty]");
        assertThat(JobResult.of(JobCost.of(JobFile.parse(brickFront("")))).line()).doesNotContain("Uncertainty");
    }
}
