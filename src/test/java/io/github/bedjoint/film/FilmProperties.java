package io.github.bedjoint.film;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.units.Steps;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class FilmProperties {
    @Property
    void printableWidth_anySizes_isRoundedToTheSafeSide(
            @ForAll @DoubleRange(min = 300, max = 2000) double widthMm,
            @ForAll @DoubleRange(min = 0, max = 50) double marginMm,
            @ForAll @DoubleRange(min = 1, max = 20) double leastMm,
            @ForAll @DoubleRange(min = 21, max = 60) double mostMm) {
        Film film = Film.of("Sample film", Door.of(widthMm, ShopUnits.MILLIMETRE))
                .withEdgeMargin(Door.of(marginMm, ShopUnits.MILLIMETRE))
                .withOverlapRange(Door.of(leastMm, ShopUnits.MILLIMETRE), Door.of(mostMm, ShopUnits.MILLIMETRE));
        double hair = 1e-9;
        assertThat(Steps.toM(film.rollWidthSteps()) * 1000).isLessThanOrEqualTo(widthMm + hair * 1000);
        assertThat(Steps.toM(film.edgeMarginSteps()) * 1000).isGreaterThanOrEqualTo(marginMm - hair * 1000);
        assertThat(Steps.toM(film.leastOverlapSteps()) * 1000).isGreaterThanOrEqualTo(leastMm - hair * 1000);
        assertThat(Steps.toM(film.mostOverlapSteps()) * 1000).isLessThanOrEqualTo(mostMm + hair * 1000);
        assertThat(film.printableWidthSteps()).isEqualTo(film.rollWidthSteps() - 2 * film.edgeMarginSteps());
        // No size loses more than a step.
        assertThat(widthMm / 1000 - Steps.toM(film.rollWidthSteps())).isLessThan(1.0 / Steps.PER_METRE + hair);
    }

    @Property
    void of_sixteenthsInInchesAndMillimetres_isTheSameFilm(@ForAll @IntRange(min = 200, max = 2000) int sixteenths) {
        Film inches = Film.of("Sample film", Door.of(sixteenths / 16.0, ShopUnits.INCH));
        Film metric = Film.of("Sample film", Door.of(sixteenths * 25.4 / 16, ShopUnits.MILLIMETRE));
        assertThat(inches.rollWidthSteps()).isEqualTo(metric.rollWidthSteps()).isEqualTo(sixteenths * 127L);
    }
}
