package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Read;
import java.util.List;
import org.junit.jupiter.api.Test;
import tech.units.indriya.quantity.Quantities;

class JointSectionTest {
    private static JointSection section(JointProfile profile) {
        return MasonrySurface.of(Read.length("215 mm"), Read.length("65 mm"), Read.length("10 mm"), Read.length("10 mm"), profile).bedSection();
    }

    @Test
    void lengthM_everyProfile_isTheClosedForm() {
        // 10 mm joint. Raked 5: 5 + 10 + 5. V of 60 deg: 10 / sin 30 = 20. Struck 5: sqrt(10^2 + 5^2) + 5 = 16.180340. Half round: 5 pi.
        assertThat(section(JointProfile.flush()).lengthM()).isCloseTo(0.010, within(1e-12));
        assertThat(section(JointProfile.raked(Read.length("5 mm"))).lengthM()).isCloseTo(0.020, within(1e-12));
        assertThat(section(JointProfile.vee(Quantities.getQuantity(60, JointProfile.DEGREE))).lengthM()).isCloseTo(0.020, within(1e-12));
        assertThat(section(JointProfile.struck(Read.length("5 mm"))).lengthM()).isCloseTo(0.01618034, within(1e-8));
        assertThat(section(JointProfile.weathered(Read.length("5 mm"))).lengthM()).isCloseTo(0.01618034, within(1e-8));
        // Chords of an arc are short by angle^2 / 24: 64 of them over pi by 1.0e-4.
        assertThat(section(JointProfile.halfRound()).lengthM()).isCloseTo(0.005 * Math.PI, within(2e-6)).isLessThan(0.005 * Math.PI);
        // Sagitta 3 mm: radius (25 + 9) / 6 = 5.6667 mm, half angle asin(5 / 5.6667) = 1.0808390 rad, arc 12.249509 mm.
        assertThat(section(JointProfile.concave(Read.length("3 mm"))).lengthM()).isCloseTo(0.012249509, within(2e-6));
    }

    @Test
    void line_struckAndWeathered_areEachOthersMirror() {
        List<JointSection.Turn> struck = section(JointProfile.struck(Read.length("5 mm"))).line();
        List<JointSection.Turn> weathered = section(JointProfile.weathered(Read.length("5 mm"))).line();
        // Struck is set back at the unit below, which is where the line ends; weathered where it begins.
        assertThat(struck.get(1)).isEqualTo(new JointSection.Turn(0.010, 0.005));
        assertThat(weathered.get(1)).isEqualTo(new JointSection.Turn(0, 0.005));
    }

    @Test
    void depthM_isTheDeepestPlace() {
        assertThat(section(JointProfile.concave(Read.length("3 mm"))).depthM()).isCloseTo(0.003, within(1e-12));
        assertThat(section(JointProfile.flush()).depthM()).isZero();
    }

    @Test
    void headSection_ofOtherHeads_isTheirs() {
        MasonrySurface wall = MasonrySurface.of(Read.length("215 mm"), Read.length("65 mm"), Read.length("12 mm"), Read.length("10 mm"), JointProfile.raked(Read.length("5 mm")))
                .withHeads(JointProfile.flush());
        assertThat(wall.headSection().widthM()).isEqualTo(0.012);
        assertThat(wall.headSection().profile()).isEqualTo(JointProfile.flush());
        assertThat(wall.bedSection().profile()).isEqualTo(JointProfile.raked(Read.length("5 mm")));
    }
}
