package io.github.bedjoint.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.calibration.JobLog;
import io.github.bedjoint.film.Film;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.Survey;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.texture.Diagonal;
import io.github.bedjoint.texture.GridSurface;
import io.github.bedjoint.texture.HeightGrid;
import io.github.bedjoint.units.CsvTable;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.ShopUnits;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Holds docs/limits.md: each limit is accepted and one beyond is refused with a hint, in seconds. */
@Timeout(value = 1, unit = TimeUnit.MINUTES)
class LimitsTest {
    private static String page() throws IOException {
        return Files.readString(Path.of("docs", "limits.md"));
    }

    /** The row stands on the page, what keeps to it passes, and what does not is refused in one line. */
    private static void hold(String row, ThrowingCallable within, ThrowingCallable beyond) throws IOException {
        assertThat(page()).contains(row);
        assertThatCode(within).doesNotThrowAnyException();
        assertThatThrownBy(beyond).isInstanceOf(RefusedException.class).satisfies(e -> assertThat(e.getMessage()).contains("Maybe").hasLineCount(1).hasSizeLessThan(400));
    }

    private static String demo() throws IOException {
        return Files.readString(Path.of("docs", "jobs", "reading-room.json"));
    }

    private static Wall wall(int corners) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            points.add(Point.of(Door.length(5 + 5 * Math.cos(angle)), Door.length(5 + 5 * Math.sin(angle))));
        }
        return Wall.polygon("round", points);
    }

    private static List<Opening> openings(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> Opening.of(Opening.Kind.WINDOW, Door.length(0.2 * i), Door.length(1), Door.length(0.1), Door.length(0.1)))
                .toList();
    }

    @Test
    void json_textsAndNames_areLimited() throws IOException {
        hold("200 characters, no control characters", () -> JobFile.parse(demo().replace("Alder Hill library, reading room (invented)", "n".repeat(200))),
                () -> JobFile.parse(demo().replace("Alder Hill library, reading room (invented)", "n".repeat(201))));
        assertThatThrownBy(() -> JobFile.parse(demo().replace("North wall", "North\\u0007wall"))).isInstanceOf(RefusedException.class);
        hold("| size, time or price as text | 100 characters |", () -> Read.length("0".repeat(17) + "1 m"), () -> Read.length("1 " + " ".repeat(99) + "m"));
    }

    @Test
    void json_deepOrHuge_isRefusedSoon() throws IOException {
        assertThat(page()).contains("16 000 000 characters, 32 levels of nesting");
        for (String bomb : List.of("[".repeat(1_000_000), "{\"a\":".repeat(1_000_000), "{\"name\": \"" + "x".repeat(17_000_000) + "\"}", "1".repeat(1_000_000),
                "{\"bedjoint\": 1, \"walls\": [" + "{},".repeat(6_000_000) + "{}]}", " ".repeat(17_000_000) + "{}", "{\"bedjoint\": 1e999999999}")) {
            assertThatThrownBy(() -> JobFile.parse(bomb)).isInstanceOf(RefusedException.class).satisfies(e -> assertThat(e.getMessage()).hasSizeLessThan(500));
        }
    }

    @Test
    void survey_wallsOpeningsCornersAndSizes_areLimited() throws IOException {
        Wall long1 = Wall.rectangle("w", Door.length(1000), Door.length(3));
        hold("| walls of a job | 1 000 |", () -> new Survey(walls(1000)), () -> new Survey(walls(1001)));
        hold("| openings on a wall | 1 000 |", () -> long1.withOpenings(openings(1000)), () -> long1.withOpenings(openings(1001)));
        hold("| corners of an outline | 500 |", () -> wall(500), () -> wall(501));
        hold("| width and height of a wall | 1 000 m |", () -> long1.name(), () -> Wall.rectangle("w", Door.length(1000.1), Door.length(3)));
    }

    private static List<Wall> walls(int count) {
        return IntStream.range(0, count).mapToObj(i -> Wall.rectangle("w" + i, Door.length(1), Door.length(1))).toList();
    }

    @Test
    void csv_columnsRowsAndCells_areLimited() throws IOException {
        String row = "200 columns, 200 000 rows, 10 000 characters in a cell";
        hold(row, () -> table(200, 2, "x"), () -> table(201, 2, "x"));
        hold(row, () -> table(1, 200_000, "x"), () -> table(1, 200_001, "x"));
        hold(row, () -> table(1, 1, "x".repeat(10_000)), () -> table(1, 1, "x".repeat(10_001)));
        hold(row, () -> table(1, 1, "\"" + "\"\"".repeat(10_000) + "\""), () -> table(1, 1, "\"" + "\"\"".repeat(10_001) + "\""));
        // Each quote behind blanks once asked anew whether all before it is blank: a minute for a megabyte.
        assertThatCode(() -> table(1, 1, " ".repeat(9_000) + "\"\"\r".repeat(2_000_000))).doesNotThrowAnyException();
    }

    private static CsvTable table(int columns, int rows, String cell) {
        StringBuilder text = new StringBuilder();
        text.append(String.join(",", IntStream.range(0, columns).mapToObj(i -> "c" + i).toList())).append('\n');
        String line = String.join(",", Collections.nCopies(columns, cell)) + "\n";
        return CsvTable.parse("table", text.append(line.repeat(rows)).toString());
    }

    @Test
    void lists_cutsAndLog_areLimited() throws IOException {
        hold("| pieces of a plain cut list | 1 000 000 |", () -> CutList.parse("id,width,length,quantity\na,1 m,2 m,1000000\n"),
                () -> CutList.parse("id,width,length,quantity\na,1 m,2 m,1000001\n"));
        hold("| jobs in a job log | 2 000 |", () -> JobLog.parse("job,panel,hours\n" + "a,1,1\n".repeat(2000)), () -> JobLog.parse("job,panel,hours\n" + "a,1,1\n".repeat(2001)));
        String ranges = demo().stripTrailing().replaceFirst("}$", ", \"ranges\": {\"jobs\": 1000000, \"inputs\": []}}");
        hold("| simulated jobs | 1 000 000 |", () -> JobFile.parse(ranges), () -> JobFile.parse(ranges.replace("1000000", "1000001")));
    }

    @Test
    void grid_pitchAndCells_areLimited() throws IOException {
        String row = "any number of rows, 64 characters in a cell; a pitch of 0.1 um to 1 m";
        hold(row, () -> GridSurface.of(grid("1." + "0".repeat(62), 1), Diagonal.FALLING), () -> GridSurface.of(grid("1." + "0".repeat(63), 1), Diagonal.FALLING));
        hold(row, () -> grid("1", 1e-7), () -> grid("1", 0.9e-7));
        hold(row, () -> grid("1", 1), () -> grid("1", 1.1));
    }

    private static HeightGrid grid(String cell, double pitchM) {
        byte[] text = ("1,2\n" + cell + ",4\n").getBytes(StandardCharsets.UTF_8);
        return HeightGrid.csv(() -> new ByteArrayInputStream(text), Door.length(pitchM), Door.length(pitchM), ShopUnits.MILLIMETRE);
    }

    /** With an overlap of 10 mm a panel of 110 mm covers 100 mm more: 2000 of them and the last overlap 200.01 m. What cannot be done is a result. */
    @Test
    void layout_panelsSideBySide_areLimited() throws IOException {
        assertThat(page()).contains("| panels side by side on a wall | 2 000 |");
        Film narrow = Film.of("narrow", Door.length(0.11)).withOverlapRange(Door.length(0.01), Door.length(0.01));
        PanelLayout most = LayoutPlanner.withDefaults().plan(Wall.rectangle("w", Door.length(200.01), Door.length(3)), narrow);
        assertThat(most.panels()).hasSize(2000);
        PanelLayout more = LayoutPlanner.withDefaults().plan(Wall.rectangle("w", Door.length(200.02), Door.length(3)), narrow);
        assertThat(more.reasons()).singleElement().asString().contains("more than 2000 panels", "divide it");
    }
}
