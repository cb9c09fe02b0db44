package io.github.bedjoint.layout;

import static io.github.bedjoint.layout.LayoutPlannerTest.EXACT;
import static io.github.bedjoint.layout.LayoutPlannerTest.METRE;
import static io.github.bedjoint.layout.LayoutPlannerTest.m;
import static io.github.bedjoint.layout.LayoutPlannerTest.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.survey.Edge;
import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PrintListTest {
    private static final Wall WALL = Wall.rectangle("north", m(2.5), m(2)).withEdge(Side.BOTTOM, Edge.of(Edge.Kind.GROUND, m(0.03)));

    @Test
    void files_ofDrops_tellTheirPlaceInThePicture() {
        // Picture from -30 to 2000 mm high; drops begin at 0, 980, 1960 mm and fill its height.
        PrintList list = PrintList.withSpares(LayoutPlanner.withDefaults().plan(WALL, METRE), Picture.over(WALL), 0);
        assertThat(list.files()).extracting(PrintFile::name).containsExactly("north-01-of-03", "north-02-of-03", "north-03-of-03");
        assertThat(list.files()).extracting(PrintFile::fromLeftSteps).containsExactly(0L, mm(980), mm(1960));
        assertThat(list.files()).allMatch(f -> f.fromTopSteps() == 0 && f.whole() && f.copies() == 1 && !f.quarterTurn());
    }

    @Test
    void files_ofBands_countFromTheTopAndAreTurned() {
        // Bands go up from -30: 0.97, then from 0.95 to 1.95, then from 1.93 to 2.00: too narrow, so it begins at 1.90 and the second ends at 1.92.
        PanelLayout bands = LayoutPlanner.withDefaults().withDirection(Direction.BANDS).plan(WALL, METRE);
        PrintList list = PrintList.withSpares(bands, Picture.over(WALL), 0);
        assertThat(list.files()).extracting(PrintFile::fromTopSteps).containsExactly(mm(1030), mm(80), 0L);
        assertThat(list.files()).allMatch(f -> f.quarterTurn() && f.fromLeftSteps() == 0);
    }

    @Test
    void files_ofAPictureSmallerThanTheWall_sayWhatStaysBlank() {
        Picture picture = Picture.at(m(0.5), m(0), m(1.5), m(1));
        PrintList list = PrintList.withSpares(LayoutPlanner.withDefaults().plan(WALL, METRE), picture, 0);
        assertThat(list.files()).noneMatch(PrintFile::whole);
        assertThat(list.files().get(0).fromLeftSteps()).isEqualTo(mm(-500));
        assertThat(list.files().get(0).fromTopSteps()).isEqualTo(mm(-1000));
    }

    @Test
    void spares_byCount_areTheLongestPanels() {
        Wall gable = Wall.polygon("g", List.of(Point.of(m(0), m(0)), Point.of(m(2.9), m(0)), Point.of(m(2.9), m(1)), Point.of(m(0), m(3))));
        PrintList list = PrintList.withSpares(LayoutPlanner.withDefaults().plan(gable, METRE), Picture.over(gable), 4);
        assertThat(list.sparePanels()).extracting(Panel::number).containsExactly(1, 2, 3, 1);
        assertThat(list.files()).extracting(PrintFile::copies).containsExactly(3, 2, 2);
        // 3 m; at 0.98 m 3 - 2 / 2.9 * 0.98 = 2.324137931 m, up to a step 2.32415; at 1.96 1.648275862, so 1.648275 + ... a step.
        assertThat(list.spareM()).isEqualTo(3 + 2.32415 + 1.6482875 + 3, EXACT);
        WorkingCheck.check(list.working());
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.01, 1", "0.34, 2", "1, 3"})
    void spares_byRate_areRoundedUp(double rate, int spares) {
        PrintList list = PrintList.withReprintRate(LayoutPlanner.withDefaults().plan(WALL, METRE), Picture.over(WALL), rate);
        assertThat(list.sparePanels()).hasSize(spares);
        WorkingCheck.check(list.working());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 1.1, Double.NaN})
    void spares_badRate_isRefused(double rate) {
        PanelLayout layout = LayoutPlanner.withDefaults().plan(WALL, METRE);
        assertThatThrownBy(() -> PrintList.withReprintRate(layout, Picture.over(WALL), rate)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> PrintList.withSpares(layout, Picture.over(WALL), -1)).isInstanceOf(RefusedException.class);
    }

    @Test
    void blank_pictureThatLeavesPanelsPartlyBlank_isCautioned() {
        PanelLayout layout = LayoutPlanner.withDefaults().plan(WALL, METRE);
        assertThat(PrintList.withSpares(layout, Picture.over(WALL), 0).blank()).isEmpty();
        // From 0.98 m on: the second and the third panel are covered, the first is not.
        Picture most = new Picture(mm(980), mm(-30), mm(2500), mm(2000));
        assertThat(PrintList.withSpares(layout, most, 0).blank().orElseThrow()).satisfies(verdict -> {
            assertThat(verdict.subject()).isEqualTo("north: picture");
            assertThat(verdict.reason()).startsWith("it does not cover the whole of panel 1 of 3;");
        });
        Picture upper = new Picture(0, 0, mm(2500), mm(2000));
        assertThat(PrintList.withSpares(layout, upper, 0).blank().orElseThrow().reason()).contains("of panels 1, 2, 3 of 3;");
    }

    @Test
    void toString_list_countsFilesAndSpares() {
        PanelLayout layout = LayoutPlanner.withDefaults().plan(WALL, METRE);
        assertThat(PrintList.withSpares(layout, Picture.over(WALL), 2)).hasToString("3 files for north, 2 spare panels with 4.06 m of film");
        assertThat(PrintList.withReprintRate(layout, Picture.over(WALL), 0.01)).hasToString("3 files for north, 1 spare panel with 2.03 m of film");
    }

    @Test
    void working_ofARate_tellsHowManySparesAndOfACountDoesNot() {
        PanelLayout layout = LayoutPlanner.withDefaults().plan(WALL, METRE);
        assertThat(PrintList.withReprintRate(layout, Picture.over(WALL), 0).working().find("layout.spares")).isPresent();
        assertThat(PrintList.withSpares(layout, Picture.over(WALL), 1).working().find("layout.spares")).isEmpty();
    }
}
