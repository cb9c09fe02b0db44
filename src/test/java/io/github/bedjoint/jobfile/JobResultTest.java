package io.github.bedjoint.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.labour.TaskTime;
import io.github.bedjoint.layout.Panel;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.schedule.Slot;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Verdict;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The JSON result, read by another reader, against the figures of the cost it was written from. */
class JobResultTest {
    private static Object job(String name) throws IOException {
        return JsonTree.parse(Files.readString(Path.of("docs", "jobs", name + ".json")));
    }

    private static JobCost cost(Object job) {
        return JobCost.of(JobFile.parse(JsonTree.write(job)));
    }

    private static double number(Object tree, String path) {
        return ((BigDecimal) JsonTree.at(tree, path)).doubleValue();
    }

    private static List<Object> list(Object tree, String path) {
        return JsonTree.array(JsonTree.at(tree, path));
    }

    @ParameterizedTest
    @ValueSource(strings = {"brick-front", "reading-room", "block-gable"})
    void write_shippedJob_holdsTheFiguresOfItsCost(String name) throws IOException {
        JobCost cost = cost(job(name));
        Object json = JsonTree.parse(JobResult.of(cost).toString());
        assertThat(JsonTree.at(json, "possible")).isEqualTo(true);
        assertThat(list(json, "reasons")).isEmpty();
        assertThat(JsonTree.at(json, "total")).isEqualTo(cost.total().toString()).isEqualTo(JsonTree.at(json, "price.total"));
        assertPriced(cost, json);
        assertAreasAndPanels(cost, json);
        assertVerdicts(cost, json);
    }

    private static void assertPriced(JobCost cost, Object json) {
        List<CostLine> lines = cost.price().lines();
        assertThat(list(json, "lines")).hasSameSizeAs(lines);
        for (int i = 0; i < lines.size(); i++) {
            assertThat(JsonTree.at(json, "lines[" + i + "].title")).isEqualTo(lines.get(i).title());
            assertThat(JsonTree.at(json, "lines[" + i + "].amount")).isEqualTo(lines.get(i).amount().toString());
        }
        for (String part : List.of("direct", "overhead", "contingency", "cost", "list", "net", "tax")) {
            assertThat(JsonTree.at(json, "price." + part)).asString().startsWith(cost.total().getCurrencyUnit() + " ");
        }
        assertThat(JsonTree.at(json, "price.net")).isEqualTo(cost.price().net().toString());
        assertThat(number(json, "price.marginKept")).isEqualTo(cost.price().marginKept());

        List<OpenedRoll> rolls = cost.filmPlan().rolls();
        assertThat(list(json, "rolls")).hasSameSizeAs(rolls);
        for (int i = 0; i < rolls.size(); i++) {
            assertThat(JsonTree.at(json, "rolls[" + i + "].roll")).isEqualTo(rolls.get(i).stockId());
            assertThat(JsonTree.at(json, "rolls[" + i + "].panels")).isEqualTo(rolls.get(i).pieces());
            assertThat(number(json, "rolls[" + i + "].usedM")).isEqualTo(Steps.toM(rolls.get(i).usedSteps()));
            assertThat(number(json, "rolls[" + i + "].remnantM")).isEqualTo(Steps.toM(rolls.get(i).remnantSteps()));
        }
        assertThat(number(json, "film.yield")).isEqualTo(cost.waste().filmYield().share());
        assertThat(number(json, "film.openedM2")).isEqualTo(cost.waste().openedM2());
        double account = JsonTree.object(JsonTree.at(json, "film.accountM2")).values().stream().mapToDouble(part -> ((BigDecimal) part).doubleValue()).sum();
        assertThat(account).isCloseTo(cost.waste().openedM2(), within(1e-9 * cost.waste().openedM2()));
        assertThat(JsonTree.object(json).containsKey("laminate")).isEqualTo(cost.laminate().isPresent());

        List<TaskTime> tasks = cost.labour().tasks();
        assertThat(list(json, "hours.tasks")).hasSameSizeAs(tasks);
        for (int i = 0; i < tasks.size(); i++) {
            assertThat(number(json, "hours.tasks[" + i + "].paidH")).isEqualTo(tasks.get(i).paidS() / 3600);
        }
        assertThat(number(json, "hours.totalH")).isEqualTo(cost.labour().totalPaidS() / 3600);
        assertThat(number(json, "hours.productionH") + number(json, "hours.siteH")).isCloseTo(number(json, "hours.totalH"), within(1e-9));
        assertThat(number(json, "hours.siteDays")).isEqualTo(cost.labour().siteDays().days());

        Timetable dates = cost.timetable().orElseThrow();
        assertThat(OffsetDateTime.parse(JsonTree.at(json, "dates.handOver").toString())).isEqualTo(dates.handOver().toOffsetDateTime());
        List<Slot> slots = List.copyOf(dates.slots());
        assertThat(list(json, "dates.activities")).hasSameSizeAs(slots);
        for (int i = 0; i < slots.size(); i++) {
            assertThat(OffsetDateTime.parse(JsonTree.at(json, "dates.activities[" + i + "].start").toString()))
                    .isEqualTo(slots.get(i).earlyStart().toOffsetDateTime());
        }
    }

    private static void assertAreasAndPanels(JobCost cost, Object json) {
        assertThat(number(json, "areas.visibleM2")).isEqualTo(cost.areas().visible().getValue().doubleValue());
        assertThat(number(json, "areas.measuredM2")).isEqualTo(cost.areas().measured().getValue().doubleValue());
        assertThat(number(json, "areas.developedM2")).isEqualTo(cost.areas().developed().getValue().doubleValue());
        assertThat(list(json, "areas.walls")).hasSameSizeAs(cost.areas().walls());
        List<Panel> panels = cost.layouts().stream().flatMap(layout -> layout.panels().stream()).toList();
        assertThat(list(json, "panels")).hasSameSizeAs(panels);
        for (int i = 0; i < panels.size(); i++) {
            assertThat(JsonTree.at(json, "panels[" + i + "].wall")).isEqualTo(panels.get(i).wall());
            assertThat(number(json, "panels[" + i + "].cutWidthM")).isEqualTo(Steps.toM(panels.get(i).cutWidthSteps()));
            assertThat(number(json, "panels[" + i + "].cutLengthM")).isEqualTo(Steps.toM(panels.get(i).cutLengthSteps()));
        }
    }

    private static void assertVerdicts(JobCost cost, Object json) {
        List<Verdict> verdicts = cost.verdicts(UnitStyle.METRIC);
        assertThat(list(json, "verdicts")).hasSameSizeAs(verdicts);
        for (int i = 0; i < verdicts.size(); i++) {
            assertThat(JsonTree.at(json, "verdicts[" + i + "].level")).isEqualTo(Fields.word(verdicts.get(i).level()));
            assertThat(JsonTree.at(json, "verdicts[" + i + "].reason")).isEqualTo(verdicts.get(i).reason());
            assertThat(JsonTree.at(json, "verdicts[" + i + "].source").toString()).isNotBlank();
        }
        assertThat(list(json, "cautions.list")).hasSameSizeAs(cost.cautions()).isNotEmpty();
    }

    /** What cannot be done for want of film, laminate or stock has reasons, areas and panels, and no price. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "film.rolls     | [{\"id\": \"A-2\", \"length\": \"2 m\", \"price\": \"EUR 42.00\"}]                      | Street front: a panel of 3050.0 mm is longer | Maybe take ",
                "film.rolls     | [{\"id\": \"A-9\", \"length\": \"9 m\", \"price\": \"EUR 42.00\", \"available\": 1}]     | Film: all panels need         | Maybe buy more rolls",
                "film.rolls     | [{\"id\": \"A-9\", \"length\": \"9 m\", \"price\": \"EUR 42.00\", \"available\": 0}]     | Film: | Maybe",
                "laminate.rolls | [{\"id\": \"B-2\", \"length\": \"2 m\", \"price\": \"EUR 42.00\"}]                      | Laminate: | Maybe",
                "layout.overlap | \"30 mm\"                                                                              | Street front: | overlap",
                "layout.leastSliver | \"1.3 m\"                                                                          | Street front: | panel"
            })
    void write_jobThatCannotBeDone_hasReasonsAndNoPrice(String path, String value, String reason, String more) throws IOException {
        Object job = job("brick-front");
        JsonTree.put(job, path, JsonTree.parse(value));
        JobCost cost = cost(job);
        Object json = JsonTree.parse(JobResult.of(cost).toString());
        assertThat(cost.isPossible()).isFalse();
        assertThat(JsonTree.at(json, "possible")).isEqualTo(false);
        assertThat(list(json, "reasons")).isNotEmpty().isEqualTo(cost.reasons());
        assertThat(list(json, "reasons").get(0).toString()).contains(reason).contains(more);
        assertThat(JsonTree.object(json)).doesNotContainKeys("total", "lines", "price", "rolls", "hours", "dates");
        assertThat(JsonTree.object(json)).containsKeys("areas", "panels", "verdicts", "cautions");
        assertThat(number(json, "areas.visibleM2")).isPositive();
        assertVerdicts(cost, json);
    }

    /** A refusing verdict makes the job impossible, but one sees what it would cost once the reason is removed. */
    @Test
    void write_refusedJob_hasReasonsAndAPrice() throws IOException {
        Object job = job("brick-front");
        JsonTree.put(job, "site.substrate", "render");
        JsonTree.put(job, "site.answers", JsonTree.parse("{\"foam-backed\": \"yes\"}"));
        JobCost cost = cost(job);
        Object json = JsonTree.parse(JobResult.of(cost).toString());
        assertThat(JsonTree.at(json, "possible")).isEqualTo(false);
        assertThat(list(json, "verdicts")).anyMatch(verdict -> "refused".equals(JsonTree.object(verdict).get("level")));
        assertThat(list(json, "reasons")).isNotEmpty();
        assertThat(JsonTree.at(json, "total")).isEqualTo(cost.total().toString());
        assertPriced(cost, json);
    }

    /** Numbers do not follow the reader's units; only texts do. */
    @Test
    void withUnits_imperial_changesTextsOnly() throws IOException {
        JobCost cost = cost(job("brick-front"));
        Object metric = JsonTree.parse(JobResult.of(cost).toString());
        Object imperial = JsonTree.parse(JobResult.of(cost).withUnits(UnitStyle.IMPERIAL).toString());
        for (String path : JsonTree.leaves(metric)) {
            if (JsonTree.at(metric, path) instanceof BigDecimal number) {
                assertThat(JsonTree.at(imperial, path)).as(path).isEqualTo(number);
            }
        }
        assertThat(JsonTree.at(imperial, "panels[0].cut").toString()).contains("\"").isNotEqualTo(JsonTree.at(metric, "panels[0].cut"));
    }

    @Test
    void withWorking_all_holdsEveryFormulaWithItsValues() throws IOException {
        JobCost cost = cost(job("block-gable"));
        String text = JobResult.of(cost).withWorking(cost.working()).toString();
        Object working = JsonTree.at(JsonTree.parse(text), "working");
        assertThat(text).doesNotContain("¤");
        assertThat(count(working)).isGreaterThan(50);
    }

    private static int count(Object node) {
        Map<String, Object> working = JsonTree.object(node);
        int count = 0;
        if (working.containsKey("id")) {
            count++;
            assertThat(working).containsKeys("title", "formula", "result", "values", "source");
            assertThat(JsonTree.object(working.get("result"))).containsKeys("letter", "value", "unit", "text");
        }
        for (Object part : working.containsKey("parts") ? JsonTree.array(working.get("parts")) : List.of()) {
            count += count(part);
        }
        return count;
    }

    /** Each figure that a working names is found by its name, as the app finds it. */
    @Test
    void working_byName_isTheOneOfTheTree() throws IOException {
        JobCost cost = cost(job("brick-front"));
        for (String id : List.of("rolls.yield", "job.visible", "job.time-per-area", "job.price-per-area")) {
            assertThat(cost.working(id)).isPresent().get().satisfies(found -> assertThat(found.formula().map(Formula::id)).contains(id));
        }
        assertThat(cost.working("no.such")).isEmpty();
    }
}
