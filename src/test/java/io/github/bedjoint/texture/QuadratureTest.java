package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Integrals whose values are known by hand, with the ends that crossing joints have. */
class QuadratureTest {
    @Test
    void integrate_smooth_isExactToRounding() {
        assertThat(Quadrature.integrate(0, 2, x -> x * x * x)).isCloseTo(4, within(1e-14));
        assertThat(Quadrature.integrate(-1, 3, Math::exp)).isCloseTo(Math.exp(3) - Math.exp(-1), within(1e-13));
    }

    @Test
    void integrate_rootAtAnEnd_isExactToRounding() {
        assertThat(Quadrature.integrate(0, 1, Math::sqrt)).isCloseTo(2.0 / 3, within(1e-13));
        // A quarter of a circle.
        assertThat(Quadrature.integrate(0, 1, x -> Math.sqrt(Math.max(0, 1 - x * x)))).isCloseTo(Math.PI / 4, within(1e-13));
    }

    @Test
    void integrate_infiniteAtAnEnd_isNearlyExact() {
        // 1 / sqrt(x) over 0 to 1 is 2; the far tail that is left out holds a millionth of a millionth of its root.
        assertThat(Quadrature.integrate(0, 1, x -> 1 / Math.sqrt(x))).isCloseTo(2, within(1e-6));
    }

    @Test
    void integrate_emptyOrReversed_isNothing() {
        assertThat(Quadrature.integrate(1, 1, x -> 5)).isZero();
        assertThat(Quadrature.integrate(2, 1, x -> 5)).isZero();
    }
}
