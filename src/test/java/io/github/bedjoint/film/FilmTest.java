package io.github.bedjoint.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class FilmTest {
    private static final Film FILM = Film.of("Sample film", Read.length("54 in"));

    @Test
    void of_widthAlone_hasTheDefaultsOfPractice() {
        assertThat(FILM.rollWidthSteps()).isEqualTo(109_728); // 54 in x 2032 steps
        assertThat(FILM.printableWidthSteps()).isEqualTo(109_728);
        assertThat(FILM.leastOverlapSteps()).isEqualTo(1016); // 1/2 in
        assertThat(FILM.mostOverlapSteps()).isEqualTo(2032); // 1 in
        assertThat(FILM.usableStretch()).isEqualTo(0.3);
        assertThat(FILM.thicknessM()).isEqualTo(50.8e-6); // 2 mil
        assertThat(FILM.leastSurfaceTemperature()).isEmpty();
        assertThat(FILM.mostSurfaceTemperature()).isEmpty();
        assertThat(FILM.outgasS(InkFamily.LATEX)).isEqualTo(24 * 3600);
        assertThat(FILM.outgasSource(InkFamily.LATEX).kind()).isEqualTo(Source.Kind.PRACTICE);
    }

    @ParameterizedTest
    @EnumSource(FilmFigure.class)
    void source_everyFigure_isCited(FilmFigure figure) {
        assertThat(FILM.source(figure).citation()).isNotBlank();
        boolean known = FILM.figure(figure).isPresent();
        boolean assumed = FILM.source(figure).kind() == Source.Kind.ASSUMED;
        assertThat(known || assumed).isTrue();
        Source sheet = Source.shop("data sheet, page 2");
        assertThat(FILM.withSource(figure, sheet).source(figure)).isEqualTo(sheet);
        assertThat(FILM.withSource(figure, sheet).figure(figure)).isEqualTo(FILM.figure(figure));
    }

    @Test
    void withEdgeMargin_eachSide_narrowsThePrint() {
        Film film = FILM.withEdgeMargin(Read.length("10 mm"));
        assertThat(film.edgeMarginSteps()).isEqualTo(800);
        assertThat(film.printableWidthSteps()).isEqualTo(109_728 - 1600);
        assertThat(film.source(FilmFigure.EDGE_MARGIN).kind()).isEqualTo(Source.Kind.SHOP);
        assertThat(film.printableWidth().getValue().doubleValue()).isEqualTo(1.3516);
    }

    @Test
    void of_lengthsBetweenSteps_areRoundedToTheSafeSide() {
        Film film = Film.of("Fine", Read.length("1000.01 mm"))
                .withEdgeMargin(Read.length("5.01 mm"))
                .withOverlapRange(Read.length("12.01 mm"), Read.length("25.01 mm"));
        assertThat(film.rollWidthSteps()).isEqualTo(80_000);
        assertThat(film.edgeMarginSteps()).isEqualTo(401);
        assertThat(film.leastOverlapSteps()).isEqualTo(961);
        assertThat(film.mostOverlapSteps()).isEqualTo(2000);
    }

    @Test
    void withOutgas_ofTheFilm_goesBeforeTheInks() {
        Film film = FILM.withOutgas(Read.time("36 h"));
        for (InkFamily ink : InkFamily.values()) {
            assertThat(film.outgasS(ink)).isEqualTo(36 * 3600);
            assertThat(film.outgasSource(ink).kind()).isEqualTo(Source.Kind.SHOP);
        }
    }

    @Test
    void withSurfaceTemperatures_fahrenheit_areKeptInKelvin() {
        Film film = FILM.withSurfaceTemperatures(Read.temperature("41 degF"), Read.temperature("95 degF"));
        assertThat(film.leastSurfaceTemperature().orElseThrow().getValue().doubleValue()).isEqualTo(278.15, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(film.mostSurfaceTemperature().orElseThrow().getValue().doubleValue()).isEqualTo(308.15, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void with_figuresThatContradict_areRefused() {
        assertThatThrownBy(() -> FILM.withEdgeMargin(Read.length("27 in"))).isInstanceOf(RefusedException.class)
                .hasMessageContaining("printable width");
        assertThatThrownBy(() -> FILM.withOverlapRange(Read.length("1 in"), Read.length("1/2 in")))
                .hasMessageContaining("the wrong way round");
        assertThatThrownBy(() -> FILM.withSurfaceTemperatures(Read.temperature("40 degC"), Read.temperature("40 degC")))
                .hasMessageContaining("most surface temperature");
        assertThatThrownBy(() -> Film.of("Strip", Read.length("1 in"))).hasMessageContaining("must be more than the most overlap");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 5.01, Double.NaN, Double.POSITIVE_INFINITY})
    void withUsableStretch_outOfRange_isRefused(double share) {
        assertThatThrownBy(() -> FILM.withUsableStretch(share)).hasMessageContaining("usable stretch");
    }

    @ParameterizedTest
    @CsvSource({"0 m", "-1 m", "21 m"})
    void of_widthOutOfRange_isRefused(String width) {
        assertThatThrownBy(() -> Film.of("Wide", Read.length(width))).hasMessageContaining("roll width");
    }

    @Test
    void of_blankName_isRefused() {
        assertThatThrownBy(() -> Film.of(" ", Read.length("54 in"))).hasMessageContaining("film name");
    }

    @Test
    void equals_sameFigures_isEqual() {
        assertThat(FILM).isEqualTo(Film.of("Sample film", Read.length("54 in"))).isNotEqualTo(FILM.withUsableStretch(0.4));
        assertThat(FILM.withThickness(Read.length("3 mil"))).hasSameHashCodeAs(FILM.withThickness(Read.length("3 mil")));
        assertThat(FILM).hasToString("Sample film, 1.3716 m");
    }

    /** What the shop states is told from what the library presets, whatever the number. */
    @Test
    void isGiven_presetOrStated_isTold() {
        assertThat(FILM.name()).isEqualTo("Sample film");
        assertThat(FILM.isGiven(FilmFigure.ROLL_WIDTH)).isTrue();
        assertThat(FILM.isGiven(FilmFigure.EDGE_MARGIN)).isFalse();
        assertThat(FILM.withEdgeMargin(Read.length("0 mm")).isGiven(FilmFigure.EDGE_MARGIN)).isTrue();
        assertThat(FILM.withEdgeMargin(Read.length("0 mm")).isGiven(FilmFigure.THICKNESS)).isFalse();
    }

    /** An overlap of one width only: least and most may be the same, 3/4 in = 1524 steps. */
    @Test
    void withOverlapRange_leastAndMostTheSame_isThatOverlap() {
        Film film = FILM.withOverlapRange(Read.length("3/4 in"), Read.length("3/4 in"));
        assertThat(film.leastOverlapSteps()).isEqualTo(1524);
        assertThat(film.mostOverlapSteps()).isEqualTo(1524);
    }
}
