package io.github.bedjoint.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.drawing.JobPage;
import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.units.RefusedException;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rolls of several widths in a job file. */
class WidthsFileTest {
    private static final String JOB = """
            {"bedjoint": 1, "name": "Two widths", "currency": "EUR",
             "walls": [{"name": "long", "width": "3.94 m", "height": "2.5 m"}, {"name": "tall", "width": "1.52 m", "height": "10 m"}],
             "film": {"name": "film", "rollWidth": "1 m", "overlap": {"least": "20 mm", "most": "20 mm"}, "rolls": [
               {"id": "narrow", "length": "10 m", "price": "EUR 100.00"},
               {"id": "wide", "width": "1.52 m", "length": "10 m", "price": "EUR 130.00"}]},
             "laminate": {"name": "gloss", "rollWidth": "1.52 m", "leadIn": "0 m", "rolls": [{"id": "L", "length": "50 m", "price": "EUR 40.00"}]}}
            """;

    @Test
    void read_widthOfARoll_isThatOffer() {
        Job job = JobFile.parse(JOB);
        assertThat(job.materials().filmRolls()).extracting(roll -> roll.widthSteps()).containsExactly(0L, 121_600L);
        assertThat(job.materials().films()).hasSize(2);
        assertThat(JobFile.parse(JobFile.write(job)).materials().filmRolls()).isEqualTo(job.materials().filmRolls());
        assertThat(JobFile.write(job)).containsPattern("\"id\" : \"wide\",\\s+\"width\" : \"1.52 m\",").containsPattern("\"id\" : \"narrow\",\\s+\"length\"");
    }

    /** Worked by hand in FilmWidthsTest: the long wall in narrow film, the tall one in wide film. */
    @Test
    void result_saysWhichWidth() {
        JobCost cost = JobCost.of(JobFile.parse(JOB));
        String json = JobResult.of(cost).toString();
        assertThat(json).contains("\"filmWidthM\" : 1.0,", "\"filmWidthM\" : 1.52,");
        assertThat(json).containsPattern("\"roll\" : \"wide\",\\s+\"widthM\" : 1.52,");
        assertThat(json).contains("long in 3 panels as drops of film 1520.0 mm wide");
        String page = JobPage.of(cost).html();
        assertThat(page).contains("1000.0 mm or 1520.0 mm wide", "tall, film 1520.0 mm wide, in the order of application");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1.52 m\", \"length | 20 mm\", \"length | film.rolls[1].width | must be more than the most overlap",
        "1.52 m\", \"length | 30 m\", \"length | film.rolls[1].width | at most 20 m",
        "1.52 m\", \"length | wide\", \"length | film.rolls[1].width | ",
        "rollWidth\": \"1.52 m | rollWidth\": \"0.5 m | laminate.rollWidth | at least the film's 1 m"})
    void read_wrongWidth_isRefusedByItsPathAndLimit(String old, String other, String path, String limit) {
        String wrong = JOB.replace(old, other);
        assertThat(wrong).isNotEqualTo(JOB);
        assertThatThrownBy(() -> JobFile.parse(wrong)).isInstanceOfSatisfying(RefusedException.class, e -> {
            assertThat(e.parameter()).startsWith(path);
            assertThat(e.limit()).contains(limit == null ? "" : limit);
        });
    }

    /** A width that says what the film says already changes nothing: not a figure, not a word. */
    @Property(tries = 100)
    void cost_everyRollWithTheFilmsWidth_isTheSame(@ForAll long seed) {
        Map<String, Object> tree = RandomJobs.tree(seed);
        String plain = JsonTree.write(tree);
        Map<String, Object> film = JsonTree.object(tree.get("film"));
        List<Object> rolls = JsonTree.array(film.get("rolls"));
        if (rolls.stream().anyMatch(roll -> JsonTree.object(roll).containsKey("width"))) {
            return;
        }
        rolls.forEach(roll -> JsonTree.object(roll).put("width", film.get("rollWidth")));
        String stated = JsonTree.write(tree);
        assertThat(JobResult.of(JobCost.of(JobFile.parse(stated))).toString()).isEqualTo(JobResult.of(JobCost.of(JobFile.parse(plain))).toString());
    }
}
