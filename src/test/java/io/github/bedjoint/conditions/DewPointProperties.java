package io.github.bedjoint.conditions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.WorkingCheck;
import java.util.HashMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class DewPointProperties {
    @Property
    void celsius_anyAir_isNotAboveTheAirAndRisesWithHumidity(
            @ForAll @DoubleRange(min = -45, max = 60) double air, @ForAll @DoubleRange(min = 0.01, max = 0.99) double humidity) {
        DewPoint dewPoint = DewPoint.of(Door.of(air, ShopUnits.CELSIUS), humidity);
        assertThat(dewPoint.celsius()).isLessThan(air);
        assertThat(DewPoint.of(Door.of(air, ShopUnits.CELSIUS), humidity + 0.01).celsius()).isGreaterThan(dewPoint.celsius());
        WorkingCheck.check(SpreadRule.FIVE_FAHRENHEIT.working(dewPoint), new HashMap<>());
    }

    @Property
    void celsius_sameAirInThreeUnits_isTheSame(
            @ForAll @DoubleRange(min = -40, max = 60) double air, @ForAll @DoubleRange(min = 0.01, max = 1) double humidity) {
        double celsius = DewPoint.of(Door.of(air, ShopUnits.CELSIUS), humidity).celsius();
        assertThat(DewPoint.of(Door.of(air * 1.8 + 32, ShopUnits.FAHRENHEIT), humidity).celsius()).isCloseTo(celsius, within(1e-9));
        assertThat(DewPoint.of(Door.of(air + 273.15, ShopUnits.KELVIN), humidity).celsius()).isCloseTo(celsius, within(1e-9));
    }
}
