package io.github.bedjoint.film;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.working.WorkingCheck;
import java.util.HashMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class InkProperties {
    private static final Ink INK = Ink.of(InkFamily.LATEX, Read.volumePerArea("12 mL/m2"), Read.pricePerVolume("EUR 95/L"));

    @Property
    void working_anyAreaAndCoverage_textEqualsCode(
            @ForAll @DoubleRange(min = 0, max = 1e4) double area, @ForAll @DoubleRange(min = 0, max = 1) double coverage) {
        assertThat(INK.withCoverage(coverage).volumeM3(area)).isBetween(0.0, INK.volumeM3(area));
        WorkingCheck.check(INK.withCoverage(coverage).working(area), new HashMap<>());
    }
}
