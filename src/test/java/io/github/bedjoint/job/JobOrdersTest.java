package io.github.bedjoint.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.jobfile.JobResult;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.LineKind;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.WorkingCheck;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cartons, minimum orders and disposal in a whole job. */
class JobOrdersTest {
    private static final String JOB = read();

    private static String read() {
        try {
            return Files.readString(Path.of("docs", "jobs", "brick-front.json"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JobCost rolls(String fields) {
        return JobCost.of(JobFile.parse(JOB.replace("\"price\": \"EUR 198.00\",", "\"price\": \"EUR 198.00\", " + fields + ",")));
    }

    private static JobCost disposal(String fields) {
        return JobCost.of(JobFile.parse(JOB.replace("\"deduction\":", "\"disposal\": {" + fields + "}, \"deduction\":")));
    }

    private static List<String> film(JobCost cost) {
        return cost.price().lines().stream().filter(line -> line.kind() == LineKind.FILM).map(CostLine::toString).toList();
    }

    /** By hand: two rolls are opened; cartons of four make it one carton, 4 x 198 = 792.00, and two go on the shelf. */
    @Test
    void inCarton_twoRollsOfFour_ordersFour() {
        JobCost cost = rolls("\"inCarton\": 4");
        assertThat(film(cost)).singleElement().asString().endsWith("EUR 792.00");
        assertThat(cost.orders().get(0)).hasToString("A-10: 4 ordered, 2 on the shelf");
        assertThat(cost.filmPlan().rolls()).hasSize(2);
        assertThat(JobResult.of(cost).toString()).contains("\"needed\" : 2", "\"ordered\" : 4", "\"left\" : 2");
        assertThat(cost.working("price.ordered")).isPresent();
        WorkingCheck.check(cost.working());
    }

    /** By hand: at least five in cartons of two are six: 6 x 198 = 1188.00. */
    @Test
    void leastOrder_inCartons_isRoundedUp() {
        assertThat(film(rolls("\"leastOrder\": 5, \"inCarton\": 2"))).singleElement().asString().endsWith("EUR 1188.00");
        assertThat(film(rolls("\"leastOrder\": 1"))).singleElement().asString().endsWith("EUR 396.00");
    }

    /** A third roll is on the shelf already; a fifth would be another carton: by hand 4 x 198 = 792 more, with contingency 831.60. */
    @Test
    void oneMoreRoll_ofAnOpenCarton_costsNothing() {
        JobCost cost = rolls("\"inCarton\": 4");
        assertThat(OneMore.of(cost).roll("A-10").cost()).hasToString("EUR 0.00");
        JobCost pair = rolls("\"inCarton\": 2");
        assertThat(OneMore.of(pair).roll("A-10").cost()).hasToString("EUR 415.80");
        assertThatThrownBy(() -> OneMore.of(cost).roll("A-11")).isInstanceOf(RefusedException.class).hasMessageContaining("A-10");
    }

    /**
     * By hand: 27.44 m2 are used up; 17.80 + 0.234 + 0.626 stay on the wall and 8.78 are thrown away: 27.44 x 0.090 + 8.78 x 0.250 = 4.6646 kg at
     * 1.50 = 7.00.
     */
    @Test
    void disposal_brickFront_weighsLinerAndScrap() {
        JobCost cost = disposal("\"liner\": \"90 g/m2\", \"film\": \"250 g/m2\", \"price\": \"EUR 1.50/kg\"");
        CostLine line = cost.price().lines().stream().filter(one -> one.kind() == LineKind.DISPOSAL).findFirst().orElseThrow();
        assertThat(line.quantity()).isCloseTo(4.6646, within(1e-9));
        assertThat(line.amount()).hasToString("EUR 7.00");
        assertThat(cost.working("job.scrap-film").orElseThrow().result().orElseThrow().doubleValue()).isCloseTo(8.78, within(1e-9));
        WorkingCheck.check(cost.working());
        Job again = JobFile.parse(JobFile.write(cost.job()));
        assertThat(again.disposal()).isEqualTo(cost.job().disposal());
    }

    @Test
    void parse_wrongOrderOrDisposal_isRefusedUnderItsPath() {
        assertThatThrownBy(() -> rolls("\"inCarton\": 0")).isInstanceOf(RefusedException.class).hasMessageContaining("film.rolls[1].inCarton");
        assertThatThrownBy(() -> rolls("\"leastOrder\": -1")).hasMessageContaining("film.rolls[1].leastOrder");
        assertThatThrownBy(() -> disposal("\"liner\": \"90 g/m2\", \"film\": \"250 g/m2\", \"price\": \"USD 1.50/kg\"")).hasMessageContaining("disposal.price");
        assertThatThrownBy(() -> disposal("\"liner\": \"90 kg/m2\", \"film\": \"250 g/m2\", \"price\": \"EUR 1.50/kg\"")).hasMessageContaining("disposal.liner");
        assertThatThrownBy(() -> disposal("\"liner\": \"90 g/m2\", \"price\": \"EUR 1.50/kg\"")).hasMessageContaining("disposal.film");
        assertThatThrownBy(() -> DisposalTerms.of(Read.massPerArea("90 kg/m2"), Read.massPerArea("1 g/m2"), Read.pricePerMass("EUR 1/kg")))
                .isInstanceOf(RefusedException.class);
    }
}
