package io.github.bedjoint.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.units.Read;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class RollOfferTest {
    private static final RollOffer OFFER = RollOffer.of("long", Read.length("50 yd"), Read.money("USD 512.00"));

    @Test
    void of_fiftyYards_isExactInSteps() {
        assertThat(OFFER.lengthSteps()).isEqualTo(3_657_600);
        assertThat(OFFER.length().getValue().doubleValue()).isEqualTo(45.72);
        assertThat(OFFER.available()).isEqualTo(RollOffer.UNLIMITED);
        assertThat(OFFER.lot()).isEmpty();
        assertThat(OFFER.price()).isEqualTo(Read.money("USD 512.00"));
        assertThat(OFFER).hasToString("long, 45.72 m, USD 512.00");
    }

    @Test
    void of_lengthBetweenSteps_isRoundedDown() {
        assertThat(RollOffer.of("a", Read.length("1000.02 mm"), Read.money("EUR 1.00")).lengthSteps()).isEqualTo(80_001);
    }

    @Test
    void with_stockAndLot_areKept() {
        RollOffer stock = OFFER.withAvailable(2).withLot("L7");
        assertThat(stock.available()).isEqualTo(2);
        assertThat(stock.lot()).isEqualTo("L7");
        assertThat(stock).isNotEqualTo(OFFER).isEqualTo(OFFER.withLot("L7").withAvailable(2)).hasSameHashCodeAs(OFFER.withLot("L7").withAvailable(2));
        assertThat(OFFER.withAvailable(0).available()).isZero();
    }

    @Test
    void of_badInput_isRefused() {
        assertThatThrownBy(() -> RollOffer.of("", Read.length("1 m"), Read.money("EUR 1.00"))).hasMessageContaining("roll id");
        assertThatThrownBy(() -> RollOffer.of("a", Read.length("0 m"), Read.money("EUR 1.00"))).hasMessageContaining("roll length");
        assertThatThrownBy(() -> RollOffer.of("a", Read.length("1 m"), Read.money("EUR 1.00").negated())).hasMessageContaining("Maybe a reduction");
        assertThatThrownBy(() -> OFFER.withAvailable(-1)).hasMessageContaining("rolls available");
        assertThatThrownBy(() -> OFFER.withLot(" ")).hasMessageContaining("lot");
    }

    @Test
    void laminate_asWideAsTheFilm_coversIt() {
        Film film = Film.of("Sample film", Read.length("54 in"));
        Laminate same = Laminate.of("Sample laminate", Read.length("1371.6 mm"));
        assertThat(same.covers(film)).isTrue();
        assertThat(same.rollWidthSteps()).isEqualTo(109_728);
        assertThat(same.rollWidth().getValue().doubleValue()).isEqualTo(1.3716);
        assertThat(Laminate.of("Narrow", Read.length("53 in")).covers(film)).isFalse();
        assertThat(same).isEqualTo(Laminate.of("Sample laminate", Read.length("54 in"))).hasToString("Sample laminate, 1.3716 m");
        assertThat(same).hasSameHashCodeAs(Laminate.of("Sample laminate", Read.length("54 in"))).isNotEqualTo(Laminate.of("Other", Read.length("54 in")));
        assertThatThrownBy(() -> Laminate.of("Sample", Read.length("0 in"))).hasMessageContaining("laminate roll width");
    }

    @Test
    void orderedBy_leastAndCarton_areKept() {
        RollOffer offer = OFFER.orderedBy(4, 2);
        assertThat(offer.id()).isEqualTo("long");
        assertThat(offer.leastOrder()).isEqualTo(4);
        assertThat(offer.inCarton()).isEqualTo(2);
        assertThat(OFFER.leastOrder()).isZero();
        assertThat(OFFER.inCarton()).isEqualTo(1);
        assertThat(Laminate.of("Clear", Read.length("54 in")).name()).isEqualTo("Clear");
    }

    /** A price of a thousand million is still read, a cent more is a slip. */
    @Test
    void of_dearestPrice_isTheLastOneRead() {
        assertThat(OFFER.withPrice(Read.money("USD 1000000000.00")).price()).isEqualTo(Read.money("USD 1000000000.00"));
        assertThatThrownBy(() -> OFFER.withPrice(Read.money("USD 1000000000.01"))).hasMessageContaining("Maybe a digit slipped");
    }

    @Test
    void withBestBefore_day_isKeptByEveryChange() {
        LocalDate day = LocalDate.of(2027, 5, 12);
        RollOffer dated = OFFER.withBestBefore(day);
        RollOffer changed = dated.withLot("L7").withAvailable(2).withPrice(Read.money("USD 1.00")).orderedBy(1, 2).withWidth(Read.length("60 in"));
        assertThat(changed.bestBefore()).contains(day);
        assertThat(OFFER.bestBefore()).isEmpty();
        assertThat(dated).isNotEqualTo(OFFER).isEqualTo(OFFER.withBestBefore(day)).hasSameHashCodeAs(OFFER.withBestBefore(day));
    }

    @Test
    void withWidth_ofItsOwn_isRoundedDownAndPrinted() {
        RollOffer wide = OFFER.withWidth(Read.length("60 in"));
        assertThat(OFFER.widthSteps()).isZero();
        assertThat(wide.widthSteps()).isEqualTo(60 * 2032);
        assertThat(wide.withAvailable(3).withLot("a").widthSteps()).isEqualTo(wide.widthSteps());
        assertThat(wide).isNotEqualTo(OFFER).hasToString(OFFER.toString().replaceFirst(", ", ", 1.524 m wide, "));
        assertThat(RollOffer.of("a", Read.length("1 m"), Read.money("EUR 1.00")).withWidth(Read.length("12.6 um")).widthSteps()).isEqualTo(1);
        assertThatThrownBy(() -> OFFER.withWidth(Read.length("0 in"))).hasMessageContaining("roll width");
        assertThatThrownBy(() -> OFFER.withWidth(Read.length("21 m"))).hasMessageContainingAll("roll width", "20 m");
        assertThat(Film.of("film", Read.length("54 in")).withRollWidth(Read.length("60 in"))).isEqualTo(Film.of("film", Read.length("60 in")));
    }
}
