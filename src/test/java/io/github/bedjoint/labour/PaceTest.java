package io.github.bedjoint.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PaceTest {
    @ParameterizedTest
    @CsvSource({
        "HEATED_AREA, 25 min/m2, 1500",
        "SEAM, 1.5 min/m, 90",
        "PANEL, 12 min, 720",
        "SEAM, 3 min/ft, 590.5511811023622",
        "VISIBLE_AREA, 1 min/ft2, 645.8346250025834"
    })
    void parse_forItsDriver_inSeconds(Driver driver, String text, double inner) {
        assertThat(Pace.parse(driver, text).inner()).isCloseTo(inner, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"HEATED_AREA, 25 min/m", "SEAM, 12 min", "PANEL, 3 min/m2", "PANEL, -3 min", "PANEL, 12", "PANEL, 1,5 min"})
    void parse_notPerTheDriversUnit_refused(Driver driver, String text) {
        assertThatThrownBy(() -> Pace.parse(driver, text)).isInstanceOf(RefusedException.class);
    }

    @ParameterizedTest
    @CsvSource({"HEATED_AREA, 25 min/m2", "SEAM, 0.1 min/ft", "PANEL, 1 s", "PANEL, 0 min", "SEAM, 1.23456789 min/m"})
    void toString_isReadBackEqual(Driver driver, String text) {
        Pace pace = Pace.parse(driver, text);
        assertThat(Pace.parse(driver, pace.toString())).isEqualTo(pace);
    }

    @ParameterizedTest
    @EnumSource(Driver.class)
    void paceMeasure_ofEachDriver_isTimePerItsMeasure(Driver driver) {
        assertThat(driver.paceMeasure().unit()).isEqualTo(Measure.TIME.unit().divide(driver.measure().unit()));
        assertThat(driver.meaning()).isNotBlank();
    }

    @Test
    void of_anotherMeasure_refused() {
        assertThatThrownBy(() -> new Pace(Measure.AREA, 1)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> new Pace(Measure.TIME, Double.NaN)).isInstanceOf(RefusedException.class);
    }

    @Test
    void amounts_ofTheWrongKind_refused() {
        assertThatThrownBy(() -> Amounts.none().withArea(Driver.SEAM, Read.area("1 m2"))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Amounts.none().withLength(Driver.SEAM, Read.length("-1 m")))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("seams between panels");
        assertThatThrownBy(() -> Amounts.none().withPanels(3, 4)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Amounts.none().withInner(Driver.EDGE, Double.POSITIVE_INFINITY)).isInstanceOf(RefusedException.class);
    }

    @Test
    void amounts_inFeetOrMetres_areTheSame() {
        assertThat(Amounts.none().withLength(Driver.SEAM, Read.length("10 ft")).withPanels(5, 2))
                .isEqualTo(Amounts.none().withPanels(5, 2).withLength(Driver.SEAM, Read.length("3.048 m")));
        assertThat(Amounts.none().withPanels(5, 2).inner(Driver.PANEL_FOR_ONE)).isEqualTo(3);
        assertThat(Amounts.none().inner(Driver.EDGE)).isZero();
    }
}
