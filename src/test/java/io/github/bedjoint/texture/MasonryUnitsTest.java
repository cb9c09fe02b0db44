package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Source;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MasonryUnitsTest {
    private static final String HEADER = "name,length,height,module_length,module_height,source_kind,source\n";
    /** Names in masonry_counts.csv whose names in units.csv differ. */
    private static final Map<String, String> NAMES = Map.of(
            "US standard 2.25x8 1/4in joint", "US standard 1/4 in joint",
            "US standard 2.25x8 3/8in joint", "US standard 3/8 in joint",
            "US standard 2.25x8 1/2in joint", "US standard 1/2 in joint",
            "EN metric 215x65 10/10", "EN 215x65",
            "DIN NF 240x71 (250 x 83.333)", "DIN NF",
            "DIN DF 240x52 (250 x 62.5)", "DIN DF",
            "DIN 2DF 240x113 (250 x 125)", "DIN 2DF",
            "block 440x215 10/10", "Block 440x215",
            "block 390x190 10/10", "Block 390x190");

    private static MasonrySurface flush(String name) {
        return MasonrySurface.of(MasonryUnits.named(name), JointProfile.flush());
    }

    @Test
    void counts_everyFormatOfTheTable_areTheDerivedOnes() throws IOException {
        // masonry_counts.csv: derived by exact fractions from published sizes, see SOURCES.md beside it.
        List<String> lines;
        try (InputStream in = Objects.requireNonNull(getClass().getResourceAsStream("/texture/masonry_counts.csv"))) {
            lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).toList();
        }
        assertThat(lines).hasSize(MasonryUnits.standard().size());
        for (String line : lines) {
            String[] cells = line.split(",");
            MasonrySurface wall = flush(NAMES.getOrDefault(cells[0], cells[0]));
            assertThat(MasonryCounts.of(wall, Read.area("1 m2")).units()).as(line).isCloseTo(Double.parseDouble(cells[3]), within(1e-6));
            assertThat(MasonryCounts.of(wall, Read.area("100 ft2")).units()).as(line).isCloseTo(Double.parseDouble(cells[4]), within(1e-6));
            assertThat(MasonryCounts.of(wall, Read.area("1 m2")).bedJointM()).as(line).isCloseTo(Double.parseDouble(cells[5]), within(1e-6));
            assertThat(MasonryCounts.of(wall, Read.area("1 m2")).headJointM()).as(line).isCloseTo(Double.parseDouble(cells[6]), within(1e-6));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "Modular, 100 ft2, 675", // BIA Technical Notes 10B (June 1993) Table 1 for the size; 685.7 would be the trap of a literal 3/8 in bed
        "CMU 8x16, 100 ft2, 112.5", // US Navy NAVEDTRA 14045 Table 4-3
        "CMU 8x16, 1000 ft2, 1125", // the same: a wall of 10 x 100 ft
        "US standard 1/2 in joint, 112 ft2, 690", // the same manual: a wall of 8 x 14 ft, 6.16 each square foot
        "DIN NF, 1 m2, 48" // DIN 4172 octametric, public teaching sheet
    })
    void unitsIn_publishedWalls_isThePublishedCount(String name, String area, double count) {
        assertThat(MasonryCounts.of(flush(name), Read.area(area)).units()).isCloseTo(count, within(0.5));
    }

    @ParameterizedTest
    @CsvSource({"Modular, 36, 8 ft", "Modular, 48, 128 in", "Engineer Modular, 20, 64 in"}) // BIA Technical Notes 10B Table 3
    void moduleHeight_verticalCoursing_isTheTables(String name, int courses, String height) {
        MasonryUnit unit = MasonryUnits.named(name);
        double metres = Read.length(height).getValue().doubleValue() * (height.endsWith("ft") ? 0.3048 : 0.0254);
        assertThat(courses * (unit.heightM() + unit.bedJointM())).isCloseTo(metres, within(1e-12));
    }

    @Test
    void standard_everyFormat_hasASourceAndAJoint() {
        assertThat(MasonryUnits.standard()).hasSizeGreaterThan(15).allSatisfy(unit -> {
            assertThat(unit.source().citation()).isNotBlank();
            assertThat(unit.headJointM()).isBetween(0.006, 0.0135);
            assertThat(unit.bedJointM()).isBetween(0.006, 0.0135);
        });
        assertThat(MasonryUnits.standard()).extracting(MasonryUnit::name).doesNotHaveDuplicates();
        assertThat(MasonryUnits.named("DIN NF").source().kind()).isEqualTo(Source.Kind.STANDARD);
    }

    @Test
    void read_ownTable_givesItsFormats() throws IOException {
        List<MasonryUnit> units = MasonryUnits.read(new StringReader(
                "# invented format\n" + HEADER + "\nSample,300 mm,100 mm,312 mm,112 mm,SHOP,measured on the wall, twice\n"));
        assertThat(units).singleElement().satisfies(unit -> {
            assertThat(unit.name()).isEqualTo("Sample");
            assertThat(unit.headJointM()).isCloseTo(0.012, within(1e-15));
            assertThat(unit.source().citation()).isEqualTo("measured on the wall, twice");
            assertThat(unit).hasToString("Sample, 0.3 m x 0.1 m");
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Sample,300 mm,100 mm,312 mm,112 mm,SHOP | line 2 row",
                "Sample,300 mm,100 mm,300 mm,112 mm,SHOP,x | line 2 module length",
                "Sample,300,100 mm,312 mm,112 mm,SHOP,x | line 2 length",
                "Sample,300 mm,100 mm,312 mm,112 mm,GUESS,x | line 2 source_kind",
                "Sample,300 mm,100 mm,312 mm,112 mm,SHOP, | line 2 source",
                ",300 mm,100 mm,312 mm,112 mm,SHOP,x | line 2 unit name"
            })
    void read_badRow_isRefusedWithItsLine(String row, String parameter) {
        assertThatThrownBy(() -> MasonryUnits.read(new StringReader(HEADER + row + "\n")))
                .isInstanceOfSatisfying(RefusedException.class, e -> assertThat(e.parameter()).isEqualTo(parameter));
    }

    @Test
    void read_noHeader_isRefused() {
        assertThatThrownBy(() -> MasonryUnits.read(new StringReader("Sample,300 mm\n"))).hasMessageContaining("header line");
    }

    @Test
    void named_unknown_namesTheKnown() {
        assertThatThrownBy(() -> MasonryUnits.named("Modul")).hasMessageContaining("must be one of Modular, Engineer Modular");
    }

    @Test
    void equals_sameSizes_isEqual() {
        assertThat(MasonryUnits.named("DIN NF")).isEqualTo(MasonryUnits.named("DIN NF")).isNotEqualTo(MasonryUnits.named("DIN DF"))
                .hasSameHashCodeAs(MasonryUnits.named("DIN NF"));
    }
}
