package io.github.bedjoint.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.working.WorkingCheck;
import org.junit.jupiter.api.Test;

class CoatingTest {
    private static final Coating PRIMER = Coating.of("Sample primer", Read.volumePerArea("80 mL/m2"));

    @Test
    void volumeM3_developedArea_isWorkedByHand() {
        // 20 m2 of wall with a ratio of 1.15 is 23 m2 along the texture: 23 x 80 mL = 1.84 L, twice 3.68 L.
        assertThat(PRIMER.volumeM3(20 * 1.15)).isCloseTo(1.84e-3, within(1e-15));
        assertThat(PRIMER.withCoats(2).volumeM3(20 * 1.15)).isCloseTo(3.68e-3, within(1e-15));
        WorkingCheck.check(PRIMER.withCoats(2).working(23));
    }

    @Test
    void of_badInput_isRefused() {
        assertThatThrownBy(() -> Coating.of("", Read.volumePerArea("80 mL/m2"))).hasMessageContaining("coating name");
        assertThatThrownBy(() -> Coating.of("a", Read.volumePerArea("0 mL/m2"))).hasMessageContaining("consumption");
        assertThatThrownBy(() -> PRIMER.withCoats(0)).hasMessageContaining("coats");
    }

    @Test
    void equals_sameFigures_isEqual() {
        assertThat(PRIMER).isEqualTo(Coating.of("Sample primer", Read.volumePerArea("80 mL/m2"))).isNotEqualTo(PRIMER.withCoats(2));
        assertThat(PRIMER).hasSameHashCodeAs(PRIMER.withCoats(1)).hasToString("Sample primer, 80 mL/m², 1 coat");
    }

    /** 150 mL/m2 = 0.00015 m3/m2. */
    @Test
    void of_nameConsumptionAndCoats_arePrinted() {
        Coating one = Coating.of("Primer", Read.volumePerArea("150 mL/m2"));
        assertThat(one.name()).isEqualTo("Primer");
        assertThat(one.coats()).isEqualTo(1);
        assertThat(one.m3PerM2()).isEqualTo(0.00015);
        assertThat(one).hasToString("Primer, 150 mL/m², 1 coat");
        assertThat(one.withCoats(2)).hasToString("Primer, 150 mL/m², 2 coats");
        assertThat(one.withCoats(2).coats()).isEqualTo(2);
    }
}
