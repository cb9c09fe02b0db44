package io.github.bedjoint.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.texture.Diagonal;
import io.github.bedjoint.texture.GridSurface;
import io.github.bedjoint.texture.JointProfile;
import io.github.bedjoint.texture.MasonrySurface;
import io.github.bedjoint.texture.MasonryTolerance;
import io.github.bedjoint.texture.MasonryUnits;
import io.github.bedjoint.texture.SpotSurface;
import io.github.bedjoint.texture.Surface;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Surfaces of a job file, read and written. */
class SurfaceFileTest {
    private static final String UNIT = "\"unit\": \"EN 215x65\"";

    private static Surface read(String json) {
        try {
            JsonNode root = JsonNode.read(new StringReader("{\"surface\": " + json + "}"));
            return Fields.whole(root, f -> f.object("surface", SurfaceReader::surface));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static String write(Surface surface) {
        return JsonOut.text(out -> () -> new SurfaceWriter(out).write(surface));
    }

    @Test
    void read_unitByName_takesSizesAndJointsFromTheTable() {
        assertThat(read("{\"kind\": \"masonry\", " + UNIT + ", \"profile\": {\"kind\": \"raked\", \"depth\": \"5 mm\"}}"))
                .isEqualTo(MasonrySurface.of(MasonryUnits.named("EN 215x65"), JointProfile.raked(Read.length("5 mm"))));
    }

    @Test
    void read_profile_isThePolyline() {
        // A course of 75 mm with a joint raked 5 mm: 75 + 2 * 5 = 85 mm of line, ratio 85 / 75.
        Surface surface = read("{\"kind\": \"profile\", \"up\": [[\"0 mm\", \"0 mm\"], [\"65 mm\", \"0 mm\"], [\"65 mm\", \"-5 mm\"],"
                + " [\"75 mm\", \"-5 mm\"], [\"75 mm\", \"0 mm\"]]}");
        assertThat(surface.areaRatio()).isCloseTo(85 / 75.0, within(1e-12));
        assertThat(surface.meanStretchAlong()).isEqualTo(0);
    }

    @Test
    void read_grid_isTheHeightsInTheirUnit() {
        // One cell of 3 x 4 mm tilted by 4 mm over the 3: area ratio 5 / 3 on both triangles.
        Surface surface = read("{\"kind\": \"grid\", \"pitchX\": \"3 mm\", \"pitchY\": \"4 mm\", \"heightUnit\": \"1 mm\", \"rows\": [[0, 4], [0, 4]]}");
        assertThat(surface.areaRatio()).isCloseTo(5 / 3.0, within(1e-12));
        Surface gap = read("{\"kind\": \"grid\", \"pitch\": \"1 mm\", \"heightUnit\": \"1 mm\", \"diagonal\": \"rising\","
                + " \"rows\": [[0, 0, null], [0, 0, 7]]}");
        assertThat(gap.areaRatio()).isEqualTo(1);
        assertThat(((GridSurface) gap).missingCells()).isEqualTo(1);
        assertThat(((GridSurface) gap).diagonal()).isEqualTo(Diagonal.RISING);
    }

    @ParameterizedTest
    @CsvSource({"true, 1.10666667", "false, 1.13274074"})
    void read_spots_areTheMeanOverTheirDepths(boolean flush, double ratio) {
        // Depths 3 and 5 mm, mean 4, C = 225 * 75 = 16875: raked 1 + 2 (215 + 65) 4 / C = 1 + 2240 / 16875;
        // with heads flush 1 + (2 * 215 * 4 + 2 * 10 * 4) / C = 1 + 1800 / 16875.
        Surface surface = read("{\"kind\": \"spots\", " + UNIT + ", \"readAs\": \"raked\", \"headsFlush\": " + flush
                + ", \"depths\": [\"3 mm\", \"5 mm\"]}");
        assertThat(surface.areaRatio()).isCloseTo(ratio, within(1e-8));
        assertThat(surface.uncertainty()).isPresent();
    }

    @Test
    void uncertainty_ofSpots_isTheSpreadOfTheirMean() {
        SpotSurface spots = (SpotSurface) read(
                "{\"kind\": \"spots\", " + UNIT + ", \"readAs\": \"raked\", \"depths\": [\"3 mm\", \"5 mm\", \"7 mm\"]}");
        assertThat(spots.uncertainty().orElseThrow().standard()).isCloseTo(spots.standardUncertainty(), within(1e-12));
        assertThat(read("{\"kind\": \"spots\", " + UNIT + ", \"readAs\": \"raked\", \"depths\": [\"3 mm\"]}").uncertainty()).isEmpty();
    }

    @Test
    void read_tolerances_areTheSurfaces() {
        Surface surface = read("{\"kind\": \"masonry\", " + UNIT + ", \"profile\": {\"kind\": \"raked\", \"depth\": \"5 mm\"},"
                + " \"tolerances\": {\"depth\": \"0.5 mm\"}}");
        // dr/dd = 2 (215 + 65) / 16875 for each mm.
        assertThat(surface.uncertainty().orElseThrow().standard()).isCloseTo(0.5 * 2 * 280 / 16875.0, within(1e-9));
        assertThat(((MasonrySurface) surface).parts().tolerance())
                .isEqualTo(MasonryTolerance.none().withDepth(Read.length("0.5 mm")))
                .isNotEqualTo(MasonryTolerance.none());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"kind\": \"flat\"}",
                "{\"kind\": \"masonry\", \"unit\": \"Modular\", \"profile\": {\"kind\": \"v\", \"degrees\": 77.7}, \"headProfile\": {\"kind\": \"flush\"},"
                        + " \"bond\": \"flemish\", \"faceRatio\": 1.1, \"tolerances\": {\"unitLength\": \"1/16 in\", \"unitHeight\": \"1 mm\","
                        + " \"headJoint\": \"1 mm\", \"bedJoint\": \"0.7 mm\", \"degrees\": 3.3, \"faceRatio\": 0.01}}",
                "{\"kind\": \"profile\", \"along\": [[\"0 in\", \"0 in\"], [\"1/3 in\", \"0.1 in\"], [\"2 in\", \"0 in\"]]}",
                "{\"kind\": \"profile\", \"up\": [[\"0 in\", \"0 in\"], [\"1 in\", \"0.1 in\"]], \"along\": [[\"0 mm\", \"0 mm\"], [\"7 mm\", \"1.1 mm\"]]}",
                "{\"kind\": \"spots\", \"unit\": {\"length\": \"215 mm\", \"height\": \"65 mm\"}, \"joint\": \"10 mm\", \"readAs\": \"v\","
                        + " \"headsFlush\": true, \"bond\": \"stack\", \"depths\": [\"0 mm\", \"3.3 mm\", \"1/8 in\"]}",
                "{\"kind\": \"grid\", \"pitch\": \"0.1 in\", \"heightUnit\": \"0.001 in\", \"window\": \"11 mm\","
                        + " \"rows\": [[1, 2.5, 3], [4, null, 6], [7, 8, 9.125], [1, 1, 1]]}"
            })
    void write_anySurface_readsBackAsTheSame(String json) {
        Surface surface = read(json);
        String text = write(surface);
        assertThat(read(text)).isEqualTo(surface);
        assertThat(write(read(text))).isEqualTo(text);
        assertThat(read(text).working().toString()).isEqualTo(surface.working().toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "surface.kind | {'kind': 'stone'}",
                "surface.unit | {'kind': 'masonry', 'unit': 'No such brick', 'profile': {'kind': 'flush'}}",
                "surface.joint | {'kind': 'masonry', 'unit': 'Modular', 'joint': '10 mm', 'profile': {'kind': 'flush'}}",
                "surface.tolerances | {'kind': 'masonry', 'unit': 'Modular', 'profile': {'kind': 'raked', 'depth': '1 mm'}, 'tolerances': {'depth': '2 mm'}}",
                "surface.tolerances.height | {'kind': 'masonry', 'unit': 'Modular', 'profile': {'kind': 'flush'}, 'tolerances': {'height': '2 mm'}}",
                "surface | {'kind': 'profile'}",
                "surface.up | {'kind': 'profile', 'up': [['0 mm', '0 mm'], ['5 mm', '1 mm'], ['4 mm', '1 mm']]}",
                "surface.up[1] | {'kind': 'profile', 'up': [['0 mm', '0 mm'], ['5 mm']]}",
                "surface.up[1][1] | {'kind': 'profile', 'up': [['0 mm', '0 mm'], ['5 mm', 1]]}",
                "surface.headProfile | {'kind': 'spots', 'unit': 'Modular', 'readAs': 'raked', 'depths': ['1 mm'], 'headProfile': {'kind': 'flush'}}",
                "surface.readAs | {'kind': 'spots', 'unit': 'Modular', 'readAs': 'deep', 'depths': ['1 mm']}",
                "surface.depths[1] | {'kind': 'spots', 'unit': 'Modular', 'readAs': 'raked', 'depths': ['1 mm', 2]}",
                "surface.depths | {'kind': 'spots', 'unit': 'Modular', 'readAs': 'raked', 'depths': []}",
                "surface.rows | {'kind': 'grid', 'pitch': '1 mm', 'heightUnit': '1 mm', 'rows': [[1, 2], [3]]}",
                "surface | {'kind': 'grid', 'pitch': '1 mm', 'heightUnit': '1 mm', 'rows': []}",
                "surface.rows[0][1] | {'kind': 'grid', 'pitch': '1 mm', 'heightUnit': '1 mm', 'rows': [[1, '2 mm']]}",
                "surface.pitch | {'kind': 'grid', 'heightUnit': '1 mm', 'rows': [[1, 2], [3, 4]]}",
                "surface.heightUnit | {'kind': 'grid', 'pitch': '1 mm', 'rows': [[1, 2], [3, 4]]}"
            },
            quoteCharacter = '`')
    void read_faultySurface_isRefusedAtItsPath(String path, String json) {
        RefusedException e = catchThrowableOfType(RefusedException.class, () -> read(json.replace('\'', '"')));
        assertThat(e).as(json).isNotNull();
        assertThat(e.parameter()).as(e.getMessage()).startsWith(path);
        assertThat(e.value()).as(e.getMessage()).matches("(?s).*\\(line \\d+\\)");
        assertThat(e.hint()).startsWith("Maybe ");
    }

    @Test
    void read_depthOfASpotTooDeep_namesTheSpot() {
        RefusedException e = catchThrowableOfType(RefusedException.class, () -> read(
                "{\"kind\": \"spots\", " + UNIT + ", \"readAs\": \"concave\", \"depths\": [\"1 mm\", \"9 mm\"]}"));
        assertThat(e.parameter()).startsWith("surface");
        assertThat(List.of(e.hint())).allMatch(hint -> hint.startsWith("Maybe"));
    }
}
