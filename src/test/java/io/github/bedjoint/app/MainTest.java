package io.github.bedjoint.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.jobfile.JobResult;
import io.github.bedjoint.jobfile.JsonTree;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The app from its command line: exit code, standard output and standard error. */
class MainTest {
    private static final Path BRICK = Path.of("docs", "jobs", "brick-front.json");

    @TempDir
    private Path folder;

    private static Run run(String... args) {
        return Run.of(args);
    }

    private static Run run(InputStream in, String... args) {
        return Run.of(in, args);
    }

    private String changed(Path file, String path, Object value) throws IOException {
        Object tree = JsonTree.parse(Files.readString(file));
        JsonTree.put(tree, path, value);
        Path changed = folder.resolve("job.json");
        Files.writeString(changed, JsonTree.write(tree));
        return changed.toString();
    }

    private static void assertRefused(Run run) {
        assertThat(run.code()).as(run.err()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).isNotBlank();
    }

    @ParameterizedTest
    @ValueSource(strings = {"brick-front", "reading-room", "block-gable"})
    void cost_shippedJob_printsASheetAndNothingOnStandardError(String name) throws IOException {
        Path file = Path.of("docs", "jobs", name + ".json");
        Run run = run("cost", file.toString());
        JobCost cost = JobCost.of(JobFile.read(file));
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out()).startsWith(cost.job().name() + "\n").contains("SUMMARY", "WALLS AND AREAS", "PANELS", "HOURS", "DATES", "PRICE", "VERDICTS", "CAUTIONS");
        assertThat(run.out()).contains(cost.total().toString());
        cost.price().lines().forEach(line -> assertThat(run.out()).contains(line.title()));
        assertThat(run.out().lines().noneMatch(line -> line.endsWith(" "))).as("no blanks at line ends").isTrue();
    }

    @Test
    void cost_standardInput_givesTheSameAsTheFile() throws IOException {
        Run file = run("cost", BRICK.toString());
        assertThat(run(Files.newInputStream(BRICK), "cost", "-")).isEqualTo(file);
    }

    @Test
    void cost_json_isTheResultAndNothingElse() throws IOException {
        Run run = run("cost", BRICK.toString(), "--format", "json", "--units", "imperial");
        JobResult result = JobResult.of(JobCost.of(JobFile.read(BRICK))).withUnits(io.github.bedjoint.units.UnitStyle.IMPERIAL);
        assertThat(run).isEqualTo(new Run(0, result.toString(), ""));
        assertThat(JsonTree.object(JsonTree.parse(run.out()))).containsKeys("total", "lines", "areas", "panels", "rolls", "hours", "dates", "verdicts");
    }

    @Test
    void cost_imperial_printsFeetAndTheSameMoney() {
        Run metric = run("cost", BRICK.toString());
        Run imperial = run("cost", BRICK.toString(), "--units=imperial");
        assertThat(metric.out()).contains("m²").doesNotContain("ft²");
        assertThat(imperial.out()).contains("ft²");
        String total = metric.out().lines().filter(line -> line.strip().startsWith("TOTAL")).findFirst().orElseThrow();
        assertThat(imperial.out()).contains(total.strip().replaceAll("TOTAL +", ""));
    }

    @ParameterizedTest
    @CsvSource({"--format=JSON,--units=METRIC", "--format=json,--units=Imperial"})
    void cost_optionsInCapitals_areUnderstood(String format, String units) {
        assertThat(run("cost", BRICK.toString(), format, units).code()).isZero();
    }

    @Test
    void cost_showWorkingOfOneFigure_printsItAlone() {
        Run run = run("cost", BRICK.toString(), "--show-working", "rolls.yield");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("[rolls.yield]").doesNotContain("SUMMARY");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void cost_showWorkingOfAll_followsTheSheet() {
        Run run = run("cost", BRICK.toString(), "--show-working");
        assertThat(run.code()).isZero();
        assertThat(run.out()).startsWith(run("cost", BRICK.toString()).out()).contains("\nWORKING\n", "[rolls.yield]", "[labour.", "[price.");
        assertThat(run("cost", "--show-working", "--units", "metric", BRICK.toString()).out()).isEqualTo(run.out());
    }

    @Test
    void cost_showWorkingInJson_isAField() {
        Run run = run("cost", BRICK.toString(), "--format", "json", "--show-working", "rolls.yield");
        assertThat(JsonTree.at(JsonTree.parse(run.out()), "working.id")).isEqualTo("rolls.yield");
    }

    /** The sheet always says why; what is planned again for it comes only where it is asked for, and changes nothing above it. */
    @Test
    void cost_oneMore_printsBelowTheSheet() {
        Run plain = run("cost", BRICK.toString());
        assertThat(plain.out()).contains("\nWHY THESE ROLLS\n  Counting all panels gives 6.", "Biggest first: all film, 35.1 % not used: cut out over openings 13.2 %")
                .doesNotContain("ONE MORE");
        Run more = run("cost", BRICK.toString(), "--one-more");
        assertThat(more.code()).isZero();
        assertThat(more.out()).startsWith(plain.out()).contains("\nONE MORE\n  One more hour on site: cost EUR 62.37", "  Every roll 10.0 mm longer", "  Overlap of 19.0 mm in place of 20.0 mm");
        assertRefused(run("cost", BRICK.toString(), "--one-more", "--lines"));
    }

    @Test
    void cost_unknownFigure_isRefusedWithTheNames() {
        Run run = run("cost", BRICK.toString(), "--show-working", "rolls.yeild");
        assertRefused(run);
        assertThat(run.err()).contains("rolls.yeild", "rolls.yield", "price.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--colour", "--format=xml", "--units=cubits", "--format", "extra.json"})
    void cost_wrongOption_isRefusedWithTheUsage(String option) {
        assertRefused(run("cost", BRICK.toString(), option));
    }

    @Test
    void run_withoutOrWithUnknownCommand_isRefused() {
        assertRefused(run());
        assertRefused(run("quote"));
        assertRefused(run("cost"));
        assertRefused(run(""));
    }

    @Test
    void run_helpAndVersion_goToStandardOutput() {
        for (String[] args : new String[][] {{"--help"}, {"--version"}, {"cost", "--help"}}) {
            Run run = run(args);
            assertThat(run.code()).isZero();
            assertThat(run.out()).isNotBlank();
            assertThat(run.err()).isEmpty();
        }
        assertThat(run("cost", "--help").out()).contains("--format", "--units", "--show-working");
        assertThat(run("--help").out()).contains("Exit codes: 0 fine", "2 bad input", "cannot be done as given");
    }

    @Test
    void cost_missingFile_isRefusedWithItsName() {
        Run run = run("cost", folder.resolve("nowhere.json").toString());
        assertRefused(run);
        assertThat(run.err()).contains("nowhere.json").contains("Maybe");
        assertRefused(run("cost", "\0.json"));
    }

    @Test
    void cost_folder_isRefused() {
        Run run = run("cost", folder.toString());
        assertRefused(run);
        assertThat(run.err()).contains("a folder");
    }

    @Test
    void cost_fileThatIsNotUtf8_isRefused() throws IOException {
        byte[] latin = Files.readString(BRICK).replace("Weir", "Wéir").getBytes(StandardCharsets.ISO_8859_1);
        Path file = folder.resolve("latin.json");
        Files.write(file, latin);
        Run run = run("cost", file.toString());
        assertRefused(run);
        assertThat(run.err()).contains("UTF-8");
        assertThat(run(new ByteArrayInputStream(latin), "cost", "-")).isEqualTo(run);
    }

    /** Some editors begin a UTF-8 file with a byte order mark; it is no part of the text. */
    @Test
    void cost_fileWithByteOrderMark_isRead() throws IOException {
        Path file = folder.resolve("mark.json");
        Files.writeString(file, "\ufeff" + Files.readString(BRICK));
        assertThat(run("cost", file.toString())).isEqualTo(run("cost", BRICK.toString()));
        assertThat(run(Files.newInputStream(file), "cost", "-")).isEqualTo(run("cost", BRICK.toString()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "[]", "null", "{}", "not json at all"})
    void cost_textThatIsNoJob_isRefused(String text) {
        Run run = run(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "cost", "-");
        assertRefused(run);
        assertThat(run.err()).contains("Maybe");
    }

    @Test
    void cost_wrongValue_isRefusedOnOneLineWithPathValueLimitAndHint() throws IOException {
        Run run = run("cost", changed(BRICK, "walls[0].width", "-7.20 m"));
        assertRefused(run);
        assertThat(run.err()).isEqualTo("walls[0].width is '-7.20 m' (line 8), but must be more than 0 m and at most 1000 m."
                + " Maybe a sign or a difference is the wrong way round." + System.lineSeparator());
    }

    @Test
    void cost_jobThatCannotBeDone_printsTheSheetAndSaysWhy() throws IOException {
        String file = changed(BRICK, "film.rolls", JsonTree.parse("[{\"id\": \"A-2\", \"length\": \"2 m\", \"price\": \"EUR 42.00\"}]"));
        Run run = run("cost", file);
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.out()).contains("The job cannot be done as given", "VERDICTS", "CAUTIONS").doesNotContain("TOTAL");
        assertThat(run.err()).startsWith("The job cannot be done as given: ").contains("long", "a roll that yields 3050.0 mm: 6 panels for EUR 756.85");
        Run json = run("cost", file, "--format", "json");
        assertThat(json.code()).isEqualTo(3);
        Map<String, Object> result = JsonTree.object(JsonTree.parse(json.out()));
        assertThat(result).containsEntry("possible", false).doesNotContainKeys("total", "rolls");
    }

    @Test
    void cost_refusingVerdict_isExitCodeThreeWithAPrice() throws IOException {
        Run run = run("cost", changed(BRICK, "site", JsonTree.parse("{\"outdoor\": true, \"substrate\": \"render\", \"answers\": {\"foam-backed\": \"yes\"}}")));
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.out()).contains("REFUSED", "TOTAL");
    }

    /** Whoever embeds the library gets values, never lines on the console. */
    @Test
    void library_costingAJob_printsNothing() throws IOException {
        PrintStream out = System.out;
        PrintStream err = System.err;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        try (PrintStream catching = new PrintStream(printed, true, StandardCharsets.UTF_8)) {
            System.setOut(catching);
            System.setErr(catching);
            JobCost cost = JobCost.of(JobFile.read(BRICK));
            assertThat(cost.working().text(io.github.bedjoint.units.UnitStyle.METRIC)).isNotBlank();
            assertThat(JobResult.of(cost).toString()).isNotBlank();
        } finally {
            System.setOut(out);
            System.setErr(err);
        }
        assertThat(printed.toString(StandardCharsets.UTF_8)).isEmpty();
    }
}
