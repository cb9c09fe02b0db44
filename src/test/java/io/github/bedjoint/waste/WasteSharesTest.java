package io.github.bedjoint.waste;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.cutting.FlatJobs;
import io.github.bedjoint.cutting.RollPlanner;
import io.github.bedjoint.cutting.SmallJobs;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class WasteSharesTest {
    private static final long M = 80_000;

    /**
     * A roll of 1 m x 10 m, lead 0.5 m, tail 0.2 m, two panels of 0.9 m x 4 m with a gap of 0.1 m: of 10 m2, panels 7.2, trim 8 x 0.1 = 0.8, lead 0.5, tail 0.2,
     * gap 0.1, left 10 - 0.7 - 8.1 = 1.2.
     */
    @Test
    void of_oneRoll_biggestFirst() {
        RollPlan plan = RollPlanner.withDefaults().withLead(M / 2).withTail(M / 5).withGap(M / 10)
                .plan(List.of(new Cut("a", 9 * M / 10, 4 * M, 2, "")), List.of(new Stock("S", M, 10 * M, 100, -1, "")));
        WasteShares roll = WasteShares.ofEachRoll(plan).get(0);
        assertThat(roll).hasToString(
                "roll 1, S, 28.0 % not used: remnants kept 12.0 %, width trim 8.0 %, lead 5.0 %, tail 2.0 %, gaps between panels 1.0 %");
        assertThat(roll.share()).isCloseTo(0.28, within(1e-12));
        assertThat(roll.share(WastePart.TAIL)).isCloseTo(0.02, within(1e-12));
        assertThat(roll.share(WastePart.OVERLAP)).isZero();
        assertThat(WasteShares.of(plan).partsM2()).isEqualTo(roll.partsM2());
    }

    /** Remnants shorter than 2 m are scrap; a full roll has no waste. */
    @Test
    void of_shortRemnant_isScrap() {
        CuttingTerms terms = new CuttingTerms(0, 0, 0, new RemnantRule(2 * M, M, 0), LotRule.ANY);
        RollPlan plan = RollPlanner.withDefaults().withTerms(terms).plan(List.of(new Cut("a", M, 9 * M, 1, "")), List.of(new Stock("S", M, 10 * M, 100, -1, "")));
        assertThat(WasteShares.of(plan)).hasToString("all film, 10.0 % not used: remnants scrapped 10.0 %");
        RollPlan full = RollPlanner.withDefaults().plan(List.of(new Cut("a", M, 10 * M, 1, "")), plan.stock());
        assertThat(WasteShares.of(full)).hasToString("all film, no waste");
        RollPlan none = RollPlanner.withDefaults().plan(List.of(), List.of());
        assertThat(WasteShares.of(none).share()).isZero();
        assertThat(WasteShares.of(none).share(WastePart.LEAD)).isZero();
    }

    /** Parts and panels add up to the film opened, roll by roll and in all, and the order falls. */
    @Property
    void of_anyPlan_addsUp(@ForAll long seed) {
        SmallJobs.Job job = new Random(seed).nextBoolean() ? SmallJobs.withRemnants(seed) : FlatJobs.any(seed, CutKind.FREE);
        RollPlan plan = job.plan();
        List<WasteShares> rolls = WasteShares.ofEachRoll(plan);
        assertThat(rolls).hasSameSizeAs(plan.rolls());
        assertAddsUp(WasteShares.of(plan));
        rolls.forEach(WasteSharesTest::assertAddsUp);
    }

    private static void assertAddsUp(WasteShares shares) {
        double sum = shares.useM2() + shares.partsM2().values().stream().mapToDouble(m2 -> m2).sum();
        assertThat(sum).isCloseTo(shares.openedM2(), within(1e-9 * shares.openedM2()));
        List<Double> parts = List.copyOf(shares.partsM2().values());
        for (int i = 1; i < parts.size(); i++) {
            assertThat(parts.get(i)).isLessThanOrEqualTo(parts.get(i - 1));
        }
        for (Map.Entry<WastePart, Double> part : shares.partsM2().entrySet()) {
            assertThat(shares.share(part.getKey())).isBetween(0.0, 1.0);
        }
    }
}
