package io.github.bedjoint.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.layout.Rates;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The rates of a layout from the prices and paces of its job. */
class JobRatesTest {

    private static String demo() throws IOException {
        return Files.readString(Path.of("docs", "jobs", "brick-front.json"));
    }

    /** The demo with one window, 3 m wide and so low that its strip costs less film than one more panel costs work. */
    private static String lowWindow() throws IOException {
        return demo().replace("\"left\": \"4.40 m\", \"bottom\": \"0.90 m\", \"width\": \"1.40 m\", \"height\": \"1.20 m\", \"turnedIn\": \"50 mm\"",
                        "\"left\": \"3.40 m\", \"bottom\": \"1 m\", \"width\": \"3 m\", \"height\": \"0.5 m\"")
                .replace("\"site\": \"EUR 44/h\",", "\"site\": \"EUR 44/h\", \"paces\": {\"opening\": \"1 min\", \"protect\": \"1 min\"},");
    }

    private static int panels(String json) {
        PanelLayout layout = JobPlan.of(JobFile.parse(json)).layouts().get(0);
        assertThat(layout.isPossible()).as("%s", layout.reasons()).isTrue();
        return layout.panels().size();
    }

    @Test
    void of_brickFront_isWorkedByHand() throws IOException {
        Job job = JobFile.parse(demo());
        Rates rates = JobRates.of(job, job.survey().walls().get(0), job.materials().film());
        // Film 420/25 = 16.80 (198/10 is dearer), laminate 310/50 = 6.20, ink 1.36 m2 x 8 mL x 0.11 = 1.1968;
        // printing 5 min x 0.15 and laminating 1 min, at 0.60 a minute: 0.45 + 0.60.
        assertThat(rates.filmPerM()).isCloseTo(16.80 + 6.20 + 1.1968 + 0.45 + 0.60, within(1e-9));
        // Cut and pack 8 min x 1.15 at 0.60; hang 12 min x 1.15 / 0.9 at 44/60.
        assertThat(rates.perPanel()).isCloseTo(5.52 + 12 * 1.15 / 0.9 * 44 / 60, within(1e-9));
        // Press 1.5 min; heat and roll 10 min/m2 on 0.02 m2 along a texture of 1 + 2 (215 + 65) 5 / (225 x 75).
        double ratio = 1 + 2.0 * (215 + 65) * 5 / (225 * 75);
        assertThat(rates.seamPerM()).isCloseTo((1.5 + 10 * 0.02 * ratio) * 1.15 / 0.9 * 44 / 60, within(1e-9));
        // Mask 6 min and trim 15 min.
        assertThat(rates.perCutOut()).isCloseTo(21 * 1.15 / 0.9 * 44 / 60, within(1e-9));
    }

    @Test
    void plan_dearerFilm_isSavedOverAnOpening() throws IOException {
        // 0.5 m cost 12.62 in film and 1.87 to cut out, less than the 16.76 of one more panel; at twice the price of a roll they cost 21.02.
        String dearer = lowWindow().replace("EUR 420.00", "EUR 840.00").replace("EUR 198.00", "EUR 396.00");
        assertThat(panels(dearer)).isGreaterThan(panels(lowWindow()));
    }

    @Test
    void plan_cheaperCrew_hangsOneMorePanel() throws IOException {
        // At 20 an hour a panel costs 5.52 + 5.11 = 10.63, less than 12.62 in film and 0.85 to cut out.
        assertThat(panels(lowWindow().replace("EUR 44/h", "EUR 20/h"))).isGreaterThan(panels(lowWindow()));
    }

    @Test
    void plan_widerRoll_needsFewerPanels() throws IOException {
        String wider = lowWindow().replace("\"rollWidth\": \"1.372 m\"", "\"rollWidth\": \"1.524 m\"").replace("\"1.380 m\"", "\"1.530 m\"");
        assertThat(panels(wider)).isLessThan(panels(lowWindow()));
    }

    @Test
    void planner_ratesThatWereSet_stay() throws IOException {
        Job job = JobFile.parse(demo());
        LayoutPlanner own = job.layout().withRates(new Rates(7, 1, 0, 0));
        assertThat(JobRates.planner(job.toBuilder().layout(own).build(), job.survey().walls().get(0), job.materials().film()).rates()).isEqualTo(new Rates(7, 1, 0, 0));
    }
}
