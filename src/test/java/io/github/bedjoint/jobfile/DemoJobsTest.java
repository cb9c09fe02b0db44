package io.github.bedjoint.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.working.WorkingCheck;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo jobs against the figures worked by hand in the document beside each. */
class DemoJobsTest {
    private static final Path JOBS = Path.of("docs", "jobs");

    @ParameterizedTest
    @ValueSource(strings = {"brick-front", "reading-room", "block-gable"})
    void cost_ofDemoJob_givesTheFiguresWorkedByHand(String name) throws IOException {
        JobCost cost = JobCost.of(JobFile.read(JOBS.resolve(name + ".json")));
        assertThat(cost.isPossible()).as(cost.toString()).isTrue();
        JsonNode result = JsonNode.read(new StringReader(JobResult.of(cost).toString()));
        List<String> rows = Files.readAllLines(JOBS.resolve(name + ".md")).stream()
                .filter(line -> line.startsWith("| ") && !line.startsWith("| figure"))
                .toList();
        assertThat(rows).hasSizeGreaterThan(20);
        for (String row : rows) {
            String[] cells = row.split("\\|");
            compare(name + " " + cells[1].strip(), at(result, cells[1].strip()), cells[2].strip());
        }
        WorkingCheck.check(cost.working());
    }

    /** Numbers agree to half a unit in the last digit written by hand; dates to the three seconds that rounding up may add. */
    private static void compare(String what, Object found, String byHand) {
        if (found instanceof BigDecimal number) {
            BigDecimal expected = new BigDecimal(byHand);
            double unit = Math.pow(10, -expected.scale());
            assertThat(number.doubleValue()).as(what).isCloseTo(expected.doubleValue(), within(unit * 0.51));
        } else if (byHand.matches("\\d{4}-\\d\\d-\\d\\dT.*")) {
            Duration apart = Duration.between(OffsetDateTime.parse(byHand), OffsetDateTime.parse(found.toString()));
            assertThat(apart.abs()).as(what + " is " + found).isLessThanOrEqualTo(Duration.ofSeconds(3));
        } else {
            assertThat(found).as(what).isEqualTo(byHand);
        }
    }

    private static Object at(JsonNode node, String path) {
        JsonNode found = node;
        for (String step : path.split("[.\\[]")) {
            found = step.endsWith("]")
                    ? Objects.requireNonNull(found.items(), path).get(Integer.parseInt(step.substring(0, step.length() - 1)))
                    : Objects.requireNonNull(Objects.requireNonNull(found.fields(), path).get(step), path);
        }
        return Objects.requireNonNull(found.scalar(), path);
    }
}
