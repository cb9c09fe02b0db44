package io.github.bedjoint.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.github.bedjoint.risk.RiskResult;
import io.github.bedjoint.units.RefusedException;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JobRangesTest {
    private static JobDocument read(String ranges) throws IOException {
        String job = Files.readString(Path.of("docs", "jobs", "brick-front.json"));
        return JobFile.document(new StringReader(job.substring(0, job.lastIndexOf('}')) + ", \"ranges\": " + ranges + "}"));
    }

    private static JobDocument inputs(String inputs) throws IOException {
        return read("{\"seed\": 7, \"jobs\": 200, \"inputs\": [" + inputs + "]}");
    }

    @Test
    void document_withoutRanges_hasNone() throws IOException {
        assertThat(JobFile.document(new StringReader(Files.readString(Path.of("docs", "jobs", "brick-front.json")))).ranges()).isEmpty();
    }

    /** With one input that is certain, nothing varies: every percentile is the job's own total worked by hand. */
    @Test
    void run_certainInput_givesTheJobItself() throws IOException {
        RiskResult result = inputs("{\"input\": \"crew-pace\", \"list\": [1]}").ranges().orElseThrow().run();
        assertThat(result.price(0.5)).hasToString("EUR 3290.89").isEqualTo(result.price(0.95));
        assertThat(result.count()).isEqualTo(200);
    }

    /** By hand: film 10 % dearer adds 39.60 to cost, 41.58 with contingency, / 0.7 = 59.40, with tax 71.28. */
    @Test
    void run_dearerFilm_givesTheDearerTotal() throws IOException {
        RiskResult result = inputs("{\"input\": \"film-prices\", \"list\": [1.1]}").ranges().orElseThrow().run();
        assertThat(result.price(0.5)).hasToString("EUR 3362.17");
        String text = JobResult.of(inputs("{\"input\": \"crew-pace\", \"pert\": [0.9, 1, 1.3]}")).toString();
        assertThat(text).contains("\"ranges\" : {", "\"p50\" : {", "\"p95\" : {", "\"sharesOfPriceVariance\"", "\"jointly\"");
        assertThat(JobResult.of(inputs("{\"input\": \"crew-pace\", \"pert\": [0.9, 1, 1.3]}"))).hasToString(text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"input\": \"pace\", \"of\": \"heat-roll\", \"triangular\": [\"8 min/m2\", \"10 min/m2\", \"15 min/m2\"]}",
                "{\"input\": \"pace\", \"of\": \"seam\", \"pert\": [\"1 min/m\", \"1.5 min/m\", \"2 min/m\"]}",
                "{\"input\": \"pace\", \"of\": \"hang\", \"normal\": [\"12 min\", \"2 min\", \"5 min\"]}",
                "{\"input\": \"crew-pace\", \"triangular\": [0.9, 1, 1.3]}",
                "{\"input\": \"tandem-efficiency\", \"triangular\": [0.8, 0.9, 1]}",
                "{\"input\": \"travel\", \"list\": [\"20 min\", \"50 min\"]}",
                "{\"input\": \"access-factor\", \"of\": \"Street front\", \"triangular\": [1, 1, 1.2]}",
                "{\"input\": \"area-ratio\", \"of\": \"Street front\", \"normal\": [1.17, 0.02, 1]}",
                "{\"input\": \"size\", \"of\": \"Street front\", \"triangular\": [0.98, 1, 1.02]}",
                "{\"input\": \"sizes\", \"list\": [1, 1.01]}",
                "{\"input\": \"roll-price\", \"of\": \"A-10\", \"list\": [\"EUR 198.00\", \"EUR 220.00\"]}",
                "{\"input\": \"film-prices\", \"triangular\": [0.95, 1, 1.2]}",
                "{\"input\": \"laminate-prices\", \"triangular\": [0.95, 1, 1.2]}",
                "{\"input\": \"ink-price\", \"triangular\": [\"EUR 90\", \"EUR 110\", \"EUR 130\"]}",
                "{\"input\": \"consumable-price\", \"of\": \"Cleaner, edge sealer, blades\", \"list\": [\"EUR 1.00\", \"EUR 1.40\"]}",
                "{\"input\": \"production-rate\", \"list\": [\"EUR 34\", \"EUR 38\"]}",
                "{\"input\": \"site-rate\", \"list\": [\"EUR 42\", \"EUR 46\"]}",
                "{\"input\": \"extra-price\", \"of\": \"Pavement permit\", \"list\": [\"EUR 90\", \"EUR 120\"]}",
                "{\"input\": \"extra-quantity\", \"of\": \"Van, two days\", \"list\": [2, 3]}",
                "{\"input\": \"cure\", \"list\": [\"72 h\", \"96 h\"]}",
                "{\"input\": \"wash-wait\", \"list\": [\"168 h\", \"200 h\"]}",
                "{\"input\": \"outgas\", \"list\": [\"24 h\", \"48 h\"]}",
                "{\"input\": \"delay\", \"list\": [\"0 h\", \"48 h\"]}",
                "{\"input\": \"rain-chance\", \"list\": [0.1, 0.3]}"
            })
    void run_everyInput_isReadAndRuns(String input) throws IOException {
        RiskResult result = inputs(input).ranges().orElseThrow().run();
        assertThat(result.price(0.95).isLessThan(result.price(0.5))).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"input\": \"pase\", \"list\": [1]}                                     | ranges.inputs[0].input",
                "{\"input\": \"pace\", \"list\": [1]}                                     | ranges.inputs[0].of",
                "{\"input\": \"crew-pace\"}                                               | ranges.inputs[0].triangular",
                "{\"input\": \"crew-pace\", \"triangular\": [1, 2]}                       | ranges.inputs[0].triangular",
                "{\"input\": \"crew-pace\", \"triangular\": [2, 1, 3]}                    | ranges.inputs[0].triangular",
                "{\"input\": \"crew-pace\", \"list\": []}                                 | ranges.inputs[0].list",
                "{\"input\": \"crew-pace\", \"list\": [true]}                             | ranges.inputs[0].list[0]",
                "{\"input\": \"cure\", \"list\": [\"3 kg\"]}                              | ranges.inputs[0].list",
                "{\"input\": \"cure\", \"list\": [\"72 h\"], \"colour\": 1}               | ranges.inputs[0].colour",
                "{\"input\": \"crew-pace\", \"list\": [1], \"pert\": [1, 2, 3]}           | ranges.inputs[0].list"
            })
    void document_wrongRange_isRefusedAtItsPath(String input, String path) {
        RefusedException e = catchThrowableOfType(RefusedException.class, () -> inputs(input));
        assertThat(e).as(input).isNotNull();
        assertThat(e.parameter()).matches(java.util.regex.Pattern.quote(path) + "(: .*)?");
        assertThat(e.value()).contains("(line ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"input\": \"pace\", \"of\": \"no-task\", \"list\": [\"1 min\"]}",
                "{\"input\": \"roll-price\", \"of\": \"A-10\", \"list\": [\"USD 1\"]}",
                "{\"input\": \"crew-pace\", \"list\": [\"1 h\"]}",
                "{\"input\": \"crew-pace\", \"list\": [100]}"
            })
    void document_rangeThatTheJobCannotTake_isRefused(String input) {
        RefusedException e = catchThrowableOfType(RefusedException.class, () -> inputs(input));
        assertThat(e).as(input).isNotNull();
        assertThat(e.parameter()).startsWith("ranges.inputs[0]");
    }

    @Test
    void document_jobsOutOfRange_isRefused() {
        assertThat(catchThrowableOfType(RefusedException.class, () -> read("{\"jobs\": 0, \"inputs\": []}")).parameter()).isEqualTo("ranges.jobs");
        assertThat(catchThrowableOfType(RefusedException.class, () -> read("{\"jobs\": 2000000, \"inputs\": []}")).parameter()).isEqualTo("ranges.jobs");
    }
}
