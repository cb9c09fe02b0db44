package io.github.bedjoint.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.units.RefusedException;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class LargestRemainderTest {
    /** Hamilton's method on the census of 1790, 60 seats: public worked example, {@code price/hamilton_1790.csv}. */
    @Test
    void split_censusOf1790_givesHamiltonsSeats() throws IOException {
        List<BigDecimal> weights = new ArrayList<>();
        List<BigDecimal> seats = new ArrayList<>();
        try (InputStream in = Objects.requireNonNull(LargestRemainderTest.class.getResourceAsStream("/price/hamilton_1790.csv"))) {
            new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).map(line -> line.split(",")).forEach(row -> {
                weights.add(new BigDecimal(row[1]));
                seats.add(new BigDecimal(row[2]));
            });
        }
        assertThat(weights).hasSizeGreaterThan(10);
        List<Money> parts = LargestRemainder.split(Money.ofMajor(CurrencyUnit.JPY, 60), weights);
        assertThat(parts).extracting(Money::getAmount).containsExactlyElementsOf(seats);
    }

    /** 100.00 in three: 33.34, 33.33, 33.33; of equal remainders the first wins. */
    @Test
    void split_inThreeEqualParts_givesTheCentToTheFirst() {
        assertThat(LargestRemainder.split(Money.parse("EUR 100"), Collections.nCopies(3, BigDecimal.ONE)))
                .containsExactly(Money.parse("EUR 33.34"), Money.parse("EUR 33.33"), Money.parse("EUR 33.33"));
    }

    @Test
    void split_badWeightsOrTotal_isRefused() {
        Money total = Money.parse("EUR 1");
        assertThatThrownBy(() -> LargestRemainder.split(total, List.of())).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> LargestRemainder.split(total, List.of(BigDecimal.ZERO))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> LargestRemainder.split(total, List.of(BigDecimal.ONE, BigDecimal.ONE.negate())))
                .isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> LargestRemainder.split(total.negated(), List.of(BigDecimal.ONE))).isInstanceOf(RefusedException.class);
    }
}
