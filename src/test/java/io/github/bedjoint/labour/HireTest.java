package io.github.bedjoint.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.WorkingCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HireTest {
    private static final Hire LIFT = new Hire("lift", Read.money("EUR 120.00"), Read.money("EUR 85.50"), 3);

    /** By hand: 120 + items x max(days, 3) x 85.50. */
    @ParameterizedTest
    @CsvSource({"1, 1, EUR 376.50, 3", "3, 1, EUR 376.50, 3", "5, 1, EUR 547.50, 5", "4, 2, EUR 804.00, 4", "0, 1, EUR 376.50, 3"})
    void over_daysAndItems_byHand(int days, int items, String cost, int charged) {
        HireCost hire = LIFT.over(days, items);
        assertThat(hire.cost()).isEqualTo(Read.money(cost));
        assertThat(hire.chargedDays()).isEqualTo(charged);
        WorkingCheck.check(hire.working());
    }

    @Test
    void of_wrong_refused() {
        assertThatThrownBy(() -> new Hire("lift", Read.money("EUR 1.00"), Read.money("USD 1.00"), 0))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("USD");
        assertThatThrownBy(() -> new Hire("lift", Read.money("EUR 1.00").negated(), Read.money("EUR 1.00"), 0)).hasMessageContaining("negative");
        assertThatThrownBy(() -> new Hire(" ", Read.money("EUR 1.00"), Read.money("EUR 1.00"), 0)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> LIFT.over(-1, 1)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> LIFT.over(1, 0)).isInstanceOf(RefusedException.class);
    }
}
