package io.github.bedjoint.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.units.RefusedException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every field of the shipped job files goes wrong in every way: refused with its path, value, line, limit and a hint, or accepted on purpose. */
class BadInputTest {
    private static final Path JOBS = Path.of("docs", "jobs");

    /** Fields that may be left away (or be null, which is the same) because they have a default. */
    private static final Set<String> OPTIONAL = Set.of(
            "note", "deduction", "layout.direction", "layout.fit", "layout.leastSliver", "cutting.gap", "cutting.keepRemnantsFrom",
            "cutting.lead", "cutting.tail", "calendar.cure", "calendar.washBefore", "extras[].count", "film.edgeMargin",
            "film.rolls[].available", "film.usableStretch", "ink.coverage", "labour.shift", "labour.siteCrew", "labour.tandemEfficiency",
            "labour.travel.withinShift", "price.contingency", "price.discount", "price.minimum", "price.rounding", "price.tax",
            "site.surfaceTemperature", "site.answers.damp", "site.answers.historic", "site.answers.low-surface-energy",
            "site.answers.new-substrate", "site.answers.paint-before-1978", "site.answers.paint-lifts", "site.answers.painted",
            "walls[].access", "walls[].accessFactor", "walls[].edges.bottom.extra", "walls[].edges.left.extra", "walls[].edges.right.extra",
            "walls[].edges.top.extra", "walls[].openings[].turnedIn");

    /** Items of a list of which one more or one less is another job, not a wrong one. */
    private static final Set<String> ITEMS = Set.of("calendar.closed[]", "calendar.days[]", "labour.without[]");

    /** Fields of which zero is a value: nothing lost, nothing added, nothing in stock, no price. */
    private static final Set<String> MAY_BE_ZERO = Set.of(
            "calendar.cure", "calendar.washBefore", "cutting.gap", "cutting.lead", "cutting.tail", "deduction.atLeast", "extras[].count",
            "extras[].each", "film.edgeMargin", "film.rolls[].available", "film.rolls[].price", "film.surfaceTemperature.least",
            "film.usableStretch", "ink.coverage", "ink.price", "labour.allowance.onJobTime", "labour.allowance.onWorkingDay",
            "disposal.film", "disposal.liner", "disposal.price", "hire[].dayRate", "hire[].delivery", "labour.production", "labour.site", "labour.tasks[].pace", "labour.travel.perDay", "laminate.leadIn", "laminate.rolls[].price",
            "layout.leastSliver", "price.contingency", "price.discount", "price.minimum", "price.overhead.onDirectCost",
            "price.overhead.onLabourCost", "price.overhead.perHour", "price.profit.margin", "price.profit.markup", "price.tax", "site.air",
            "site.surfaceTemperature", "consumables[].price", "walls[].edges.bottom.extra", "walls[].edges.left.extra",
            "walls[].edges.right.extra", "walls[].edges.top.extra", "walls[].openings[].bottom", "walls[].openings[].left",
            "walls[].openings[].turnedIn", "walls[].outline[][]");

    /** Degrees below zero, and a coordinate that may lie left of or below the corner it is measured from. */
    private static final Set<String> MAY_BE_NEGATIVE = Set.of(
            "film.surfaceTemperature.least", "site.air", "site.surfaceTemperature", "walls[].openings[].bottom", "walls[].outline[][]");

    /** Where one of several fields must be given, or a pair is broken, what holds them is refused. */
    private static final Set<String> REFUSED_TOGETHER = Set.of(
            "labour.allowance.onJobTime", "labour.allowance.onWorkingDay", "price.overhead.onDirectCost", "price.overhead.onLabourCost",
            "price.overhead.perHour", "price.profit.margin", "price.profit.markup", "walls[].outline[][]", "walls[].openings[].left",
            "walls[].openings[].bottom");

    static List<Path> jobs() throws IOException {
        try (Stream<Path> files = Files.list(JOBS)) {
            return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
        }
    }

    private static boolean isAccepted(String field, Mutation mutation) {
        return switch (mutation) {
            case ABSENT -> OPTIONAL.contains(field) || ITEMS.contains(field);
            case NULL -> OPTIONAL.contains(field);
            case ZERO -> MAY_BE_ZERO.contains(field);
            case NEGATIVE -> MAY_BE_NEGATIVE.contains(field);
            default -> false;
        };
    }

    @Test
    void parse_everyFieldWrongInEveryWay_isRefusedWithPathValueLimitAndHint() throws IOException {
        Map<String, String> wrong = new TreeMap<>();
        Set<String> accepted = new TreeSet<>();
        int tried = 0;
        for (Path file : jobs()) {
            String json = Files.readString(file);
            for (String path : JsonTree.leaves(JsonTree.parse(json))) {
                for (Mutation mutation : Mutation.values()) {
                    Object tree = JsonTree.parse(json);
                    if (mutation.apply(tree, path)) {
                        tried++;
                        String field = path.replaceAll("\\[\\d+]", "[]");
                        String found = outcome(JsonTree.write(tree), path, field, mutation);
                        if (found.isEmpty() && isAccepted(field, mutation)) {
                            accepted.add(field + " " + mutation);
                        }
                        if (!found.isEmpty() && !found.equals("refused")) {
                            wrong.put(file.getFileName() + " " + path + " " + mutation, found);
                        } else if (found.isEmpty() && !isAccepted(field, mutation)) {
                            wrong.put(file.getFileName() + " " + path + " " + mutation, "accepted");
                        }
                    }
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(tried).isGreaterThan(1500);
        assertThat(accepted).as("what the lists above say is accepted, and is").hasSizeGreaterThan(80);
    }

    /** Empty if the job was costed, "refused" if it was refused as it should be, or what is wrong. */
    private static String outcome(String json, String path, String field, Mutation mutation) {
        try {
            JobCost.of(JobFile.parse(json));
            return "";
        } catch (RefusedException e) {
            String expected = mutation == Mutation.NEIGHBOUR ? path.substring(0, path.lastIndexOf('.') + 1) + "neighbour" : path;
            String parameter = e.parameter();
            boolean placed = parameter.equals(expected)
                    || REFUSED_TOGETHER.contains(field) && path.startsWith(parameter.replaceAll(":.*", ""))
                    || mutation == Mutation.OBJECT && parameter.startsWith(expected + ".");
            boolean whole = e.value().matches(".*\\(line \\d+\\)") && e.limit().startsWith("must ") || e.limit().startsWith("is not a field");
            return placed && whole && e.hint().startsWith("Maybe ") ? "refused" : e.getMessage();
        } catch (RuntimeException | StackOverflowError e) {
            return e.toString();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN", "Infinity", "-Infinity", "1e400000", "1e99999999999", "0x10", "01", ".5", "+1", "undefined"})
    void parse_numberThatJsonDoesNotHave_isRefused(String number) throws IOException {
        String json = Files.readString(JOBS.resolve("brick-front.json"));
        RefusedException e = catchThrowableOfType(RefusedException.class, () -> JobFile.parse(json.replace("0.05", number)));
        assertThat(e).as(number).isNotNull();
        assertThat(e.parameter()).isEqualTo("job file");
        assertThat(e.hint()).startsWith("Maybe ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "walls                | []",
                "film.rolls           | []",
                "laminate.rolls       | []",
                "walls[0].edges.left  | []",
                "walls[0].openings    | {}",
                "labour.allowance     | {\"onJobTime\": 0.1, \"onWorkingDay\": 0.1}",
                "price.profit         | {\"margin\": 0.1, \"markup\": 0.1}",
                "price.overhead       | {\"onDirectCost\": 0.1, \"onLabourCost\": 0.1}",
                "price.rounding       | \"ceiling\"",
                "layout.start         | [\"left\", \"middle\"]",
                "layout.weatherSide   | \"top\"",
                "calendar.days        | [\"mon\"]",
                "calendar.to          | \"07:00\"",
                "calendar.start       | \"2027-02-30\"",
                "calendar.zone        | \"Europe/Nowhere\"",
                "labour.without       | [\"no-such-task\"]",
                "labour.paces         | {\"print\": \"5 min/m2\"}",
                "film.overlap         | {\"least\": \"25 mm\", \"most\": \"20 mm\"}",
                "film.edgeMargin      | \"0.68 m\"",
                "laminate.rollWidth   | \"1.3 m\"",
                "walls[0].surface.joint | \"3 m\"",
                "extras[0].kind       | \"gift\""
            })
    void parse_valueThatFitsNothing_isRefusedAtItsPlace(String path, String value) throws IOException {
        Object tree = JsonTree.parse(Files.readString(JOBS.resolve("brick-front.json")));
        JsonTree.put(tree, path, JsonTree.parse(value));
        RefusedException e = catchThrowableOfType(RefusedException.class, () -> JobFile.parse(JsonTree.write(tree)));
        assertThat(e).as(path).isNotNull();
        String top = path.replaceAll("[.\\[].*", "");
        assertThat(e.parameter()).as(e.getMessage()).startsWith(top);
        assertThat(e.value()).matches("(?s).*\\(line \\d+\\)");
        assertThat(e.hint()).startsWith("Maybe ");
    }

    @Test
    void parse_twoRollsOfOneId_isRefused() throws IOException {
        Object tree = JsonTree.parse(Files.readString(JOBS.resolve("brick-front.json")));
        JsonTree.put(tree, "film.rolls[1].id", "A-25");
        RefusedException e = catchThrowableOfType(RefusedException.class, () -> JobFile.parse(JsonTree.write(tree)));
        assertThat(e).isNotNull();
        assertThat(e.parameter()).startsWith("film.rolls");
    }

    /** A path that JSON reads as a name, and a very long value, do not upset the refusal itself. */
    @Test
    void parse_longNamesAndValues_areShownShort() {
        List<String> texts = new ArrayList<>();
        texts.add("{\"" + "x".repeat(190) + "\": 1}");
        texts.add("{\"bedjoint\": \"" + "y".repeat(1900) + "\"}");
        texts.add("{\"bedjoint\": 1, \"name\": \"\\u0000\\u202e\"}");
        for (String text : texts) {
            RefusedException e = catchThrowableOfType(RefusedException.class, () -> JobFile.parse(text));
            assertThat(e).as(text).isNotNull();
            assertThat(e.getMessage().length()).isLessThan(800);
        }
    }
}
