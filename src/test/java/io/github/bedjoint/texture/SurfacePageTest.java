package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.drawing.Drawing;
import io.github.bedjoint.film.Film;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.UnitStyle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The drawings of docs/surface.md are what the library draws today; the fresh ones are left in target/surface to be copied. */
class SurfacePageTest {
    @ParameterizedTest
    @CsvSource({"raked, 5", "concave, 3"})
    void drawings_ofThePage_areTheLibrarys(String kind, String size) throws IOException {
        Film film = Film.of("Sample film", Read.length("54 in")).withUsableStretch(0.3);
        MasonrySurface wall = MasonrySurface.of(MasonryUnits.named("EN 215x65"), MasonrySurfaceTest.profile(kind, size));
        String fresh = Drawing.joint(wall, film, UnitStyle.METRIC).svg();
        Path root = Path.of(System.getProperty("basedir", ""));
        Path copy = root.resolve("target/surface/" + kind + ".svg");
        Files.createDirectories(copy.getParent());
        Files.writeString(copy, fresh);
        assertThat(Files.readString(root.resolve("docs/surface/" + kind + ".svg"))).isEqualTo(fresh);
    }
}
