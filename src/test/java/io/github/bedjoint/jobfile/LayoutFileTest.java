package io.github.bedjoint.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.drawing.JobPage;
import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.layout.Fit;
import io.github.bedjoint.layout.JointPhase;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.layout.SeamRules;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How walls are divided and where seams may run, in a job file. */
class LayoutFileTest {
    private static final String SEAMS = "{\"direction\": \"cheapest\", \"fit\": \"cheapest\", \"longestCut\": \"9 m\", \"jointsAcross\": true,"
            + " \"start\": [\"right\", \"top\"], \"weatherSide\": \"left\","
            + " \"seams\": {\"jambClearance\": \"50 mm\", \"cornerClearance\": \"0.1 m\", \"movementClearance\": \"30 mm\","
            + " \"headJoints\": {\"period\": \"112.5 mm\", \"offset\": \"3 mm\", \"clearance\": \"15 mm\", \"price\": \"EUR 0.50/m\"},"
            + " \"bedJoints\": {\"period\": \"75 mm\", \"offset\": \"-5 mm\", \"clearance\": \"10 mm\"}}}";

    private static String demo(String layout) throws IOException {
        String job = Files.readString(Path.of("docs", "jobs", "brick-front.json"));
        return job.replace("{\"direction\": \"drops\", \"fit\": \"full-width\", \"leastSliver\": \"150 mm\"}", layout);
    }

    @Test
    void read_everyField_isThatPlanner() throws IOException {
        LayoutPlanner planner = JobFile.parse(demo(SEAMS)).layout();
        assertThat(planner.fit()).isEqualTo(Fit.CHEAPEST);
        assertThat(planner.longestCutSteps()).isEqualTo(720_000);
        assertThat(planner.joinsAcross()).isTrue();
        assertThat(planner.seamRules()).isEqualTo(SeamRules.withDefaults()
                .withJambClearance(Read.length("50 mm"))
                .withCornerClearance(Read.length("100 mm"))
                .withMovementClearance(Read.length("3 cm"))
                .withHeadJoints(JointPhase.priced(Read.length("112.5 mm"), Read.length("3 mm"), Read.length("15 mm"), 0.5))
                .withBedJoints(JointPhase.forbidden(Read.length("75 mm"), Read.length("-5 mm"), Read.length("10 mm"))));
    }

    /** A wall 3 m high up to 0.98 m along and 1 m high from there to 2.4 m. */
    private static Job stepped(String start) {
        return JobFile.parse("{\"bedjoint\": 1, \"name\": \"Step\", \"currency\": \"EUR\", \"walls\": [{\"name\": \"w\", \"outline\": ["
                + "[\"0 m\", \"0 m\"], [\"2.4 m\", \"0 m\"], [\"2.4 m\", \"1 m\"], [\"0.98 m\", \"1 m\"], [\"0.98 m\", \"3 m\"], [\"0 m\", \"3 m\"]]}],"
                + "\"film\": {\"name\": \"f\", \"rollWidth\": \"1 m\", \"overlap\": {\"least\": \"20 mm\", \"most\": \"30 mm\"},"
                + " \"rolls\": [{\"id\": \"r\", \"length\": \"6 m\", \"price\": \"EUR 60\"}]},"
                + " \"layout\": {\"leastSliver\": \"150 mm\", \"start\": \"" + start + "\"}}");
    }

    @Test
    void read_cheapestStart_takesTheCheaperSideAndIsWritten() {
        // From the left panels begin at 0, 0.98 and 1.96 m: one of 3 m and two of 1 m, 5 m from one roll of 6 m.
        // From the right they end at 2.4, 1.42 and 0.44 m: one of 1 m and two of 3 m, 7 m from two rolls, EUR 60 more.
        Job cheapest = stepped("cheapest");
        JobCost cost = JobCost.of(cheapest);
        assertThat(cost.layouts().get(0).start()).isEqualTo(Side.LEFT);
        assertThat(cost.layouts().get(0).filmM()).isCloseTo(5, within(1e-9));
        assertThat(JobCost.of(stepped("right")).layouts().get(0).filmM()).isCloseTo(7, within(1e-9));
        assertThat(cost.choice().orElseThrow().toString()).contains("w in 3 panels as drops from the right, EUR 60.00 more");
        assertThat(JobFile.parse(JobFile.write(cheapest)).layout().startsAtCheapest()).isTrue();
        assertThat(cheapest.layout().withStart(Side.LEFT).startsAtCheapest()).isFalse();
    }

    /** A wall 0.98 m high up to 1.42 m along and 3 m high from there to 2.4 m. */
    private static Job rising(String layout) {
        return JobFile.parse("{\"bedjoint\": 1, \"name\": \"Step\", \"currency\": \"EUR\", \"walls\": [{\"name\": \"w\", \"outline\": ["
                + "[\"0 m\", \"0 m\"], [\"2.4 m\", \"0 m\"], [\"2.4 m\", \"3 m\"], [\"1.42 m\", \"3 m\"], [\"1.42 m\", \"0.98 m\"], [\"0 m\", \"0.98 m\"]]}],"
                + "\"film\": {\"name\": \"f\", \"rollWidth\": \"1 m\", \"overlap\": {\"least\": \"20 mm\", \"most\": \"30 mm\"},"
                + " \"rolls\": [{\"id\": \"r\", \"length\": \"6 m\", \"price\": \"EUR 60\"}]}, \"layout\": {\"leastSliver\": \"50 mm\", " + layout + "}}");
    }

    /**
     * Drops from the left lie from 0, 0.98 and 1.96 m on: 0.98 + 3 + 3 = 6.98 m, two rolls; from the right 3 + 0.98 + 0.98 = 4.96 m, one roll.
     * Bands of 1 m from the bottom: one of 2.4 m and from 0.98 m on three of 0.98 m, 5.34 m, one roll too, but four panels in place of three.
     */
    @Test
    void cost_cheapestDirection_triesBothSidesWhereNoneIsGivenAndSaysWhich() {
        Job job = rising("\"direction\": \"cheapest\"");
        JobCost cost = JobCost.of(job);
        assertThat(cost.layouts().get(0)).hasToString("w: 3 panels in 3 drops from the right, 4.96 m of film");
        assertThat(cost.layouts().get(0).chosenStart()).contains(Side.RIGHT);
        assertThat(JobResult.of(cost).toString()).containsPattern("\"direction\" : \"drops\",\\s+\"start\" : \"right\"");
        assertThat(JobPage.of(cost).html()).contains("3 panels in 3 drops from the right, seams");
        assertThat(JobFile.write(job)).doesNotContain("\"start\"");
        assertThat(JobFile.parse(JobFile.write(job)).layout().starts()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "'direction': 'drops'                                         | w: 3 panels in 3 drops, 6.98 m of film",
        "'direction': 'cheapest', 'start': 'left'                     | w: 4 panels in 4 bands from the bottom, 5.34 m of film",
        "'direction': 'cheapest', 'start': ['left', 'bottom']         | w: 4 panels in 4 bands, 5.34 m of film",
        "'direction': 'cheapest', 'start': ['right', 'top']           | w: 3 panels in 3 drops, 4.96 m of film",
        "'direction': 'cheapest', 'weatherSide': 'right'              | w: 3 panels in 3 drops from the right, 4.96 m of film",
        "'direction': 'drops', 'fit': 'cheapest', 'start': 'left'     | w: 3 panels in 3 drops, 4.96 m of film"})
    void cost_startGiven_holds(String layout, String text) {
        Job job = rising(layout.replace('\'', '"'));
        assertThat(JobCost.of(job).layouts().get(0)).hasToString(text);
        assertThat(JobCost.of(JobFile.parse(JobFile.write(job))).layouts().get(0)).hasToString(text);
    }

    /** Drops that start at the right still lap away from weather at the right: the edge on top faces left. */
    @Test
    void cost_weatherSide_leavesTheStartFreeAndSaysHowDropsLap() {
        assertThat(JobCost.of(rising("\"direction\": \"cheapest\", \"weatherSide\": \"right\"")).layouts().get(0).seams())
                .hasSize(2).allMatch(seam -> seam.shows() == Side.LEFT);
        assertThat(JobCost.of(rising("\"direction\": \"cheapest\", \"weatherSide\": \"left\"")).layouts().get(0).seams())
                .hasSize(2).allMatch(seam -> seam.shows() == Side.RIGHT);
    }

    @Test
    void write_everyField_readsBackAsTheSame() throws IOException {
        String written = JobFile.write(JobFile.parse(demo(SEAMS)));
        LayoutPlanner again = JobFile.parse(written).layout();
        assertThat(again.seamRules()).isEqualTo(JobFile.parse(demo(SEAMS)).layout().seamRules());
        assertThat(again.longestCutSteps()).isEqualTo(720_000);
        assertThat(again.joinsAcross()).isTrue();
        assertThat(JobFile.write(JobFile.parse(written))).isEqualTo(written);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "\"EUR 0.50/m\"    | \"USD 0.50/m\"   | layout.seams.headJoints.price",
        "\"EUR 0.50/m\"    | \"EUR 0/m\"      | layout.seams.headJoints",
        "\"jambClearance\" | \"jambs\"        | layout.seams.jambs",
        "\"10 mm\"         | \"40 mm\"        | layout.seams.bedJoints.clearance",
        "\"longestCut\": \"9 m\" | \"longestCut\": \"0 m\" | layout.longestCut"})
    void read_wrongField_isRefusedByItsPath(String old, String other, String path) throws IOException {
        String wrong = demo(SEAMS.replace(old, other));
        assertThatThrownBy(() -> JobFile.parse(wrong)).isInstanceOfSatisfying(RefusedException.class, e ->
                assertThat(e.parameter()).startsWith(path));
    }

    @Test
    void read_dropLongerThanAnyRoll_offersOtherWaysEachPriced() throws IOException {
        String tall = Files.readString(Path.of("docs", "jobs", "reading-room.json")).replace("\"2.60 m\"", "\"26 m\"");
        assertThat(JobCost.of(JobFile.parse(tall)).reasons().get(0))
                .startsWith("North wall: a panel of 26040.0 mm is longer than the longest cut, 24500.0 mm, which is what the longest roll gives. Maybe take ")
                .containsPattern("bands: \\d+ panels for EUR \\d+\\.\\d\\d of film and work")
                .containsPattern("a joint across: 8 panels for EUR \\d+\\.\\d\\d")
                .containsPattern("a roll that yields 26040.0 mm: 4 panels for EUR \\d+\\.\\d\\d");
        String joined = tall.replace("\"fit\": \"equalised\"", "\"fit\": \"equalised\", \"jointsAcross\": true");
        assertThat(JobCost.of(JobFile.parse(joined)).layouts().get(0).panels()).hasSize(8);
    }
}
