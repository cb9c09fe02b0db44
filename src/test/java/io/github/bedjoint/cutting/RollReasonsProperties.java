package io.github.bedjoint.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.bounds.CheapestRolls;
import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PriceList;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.rolls.Stop;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What is told of a certificate agrees with the plan, the checker and trying everything. */
class RollReasonsProperties {
    private static final Pattern ALL = Pattern.compile("^Counting all panels gives (\\d+)\\.");
    private static final Pattern TAKES = Pattern.compile("ne (S\\d+)(?: \\(\\d+ at hand\\))? takes (?:at most )?(\\d+|all|nothing)");

    private static SmallJobs.Job job(long seed) {
        return switch (new Random(seed).nextInt(5)) {
            case 0 -> SmallJobs.any(seed);
            case 1 -> SmallJobs.withTerms(seed);
            case 2 -> SmallJobs.withRemnants(seed);
            case 3 -> FlatJobs.any(seed, CutKind.FREE);
            default -> SmallJobs.withLots(seed);
        };
    }

    @Property
    void lines_anyPlan_endWithItsBoundOrShortage(@ForAll long seed) {
        RollPlan plan = job(seed).plan();
        List<String> lines = RollReasons.of(plan).lines();
        assertThat(lines).isNotEmpty().allMatch(line -> line.endsWith(".") || line.endsWith(":"));
        if (plan.isProven() && plan.lowerBound() > 0) {
            assertThat(lines).hasSizeGreaterThan(1).last().asString().isEqualTo("No plan costs less than " + plan.cost() + ", and this one costs just that.");
        }
        if (plan.stop() == Stop.INFEASIBLE) {
            assertThat(lines.size()).isGreaterThanOrEqualTo(plan.shortages().size());
        }
    }

    /** The cheapest rolls that the lists leave cost what the plan costs where that is proven, and never less than the bound. */
    @Property
    void cheapestRolls_allLists_costWhatIsProven(@ForAll long seed) {
        RollPlan plan = job(seed).plan();
        Certificate certificate = plan.certificate();
        if (plan.cuts().isEmpty() || !certificate.lotBounds().isEmpty() || plan.stop() == Stop.INFEASIBLE) {
            return;
        }
        CheapestRolls cheapest = new CheapestRolls(plan.cuts(), plan.stock(), plan.terms());
        certificate.priceLists().forEach(cheapest::add);
        certificate.exhausted().forEach(cheapest::addExhausted);
        CheapestRolls.Answer answer = cheapest.next();
        assertThat(answer.known()).isTrue();
        long cost = answer.choice().stream().mapToLong(CheapestRolls.Choice::cost).findFirst().orElseThrow();
        assertThat(cost).isGreaterThanOrEqualTo(plan.lowerBound());
        assertThat(!plan.isProven() || cost == plan.cost()).isTrue();
        assertThat(answer.choice().get(0).rolls().stream().mapToLong(some -> some.cost() * some.count()).sum()).isEqualTo(cost);
    }

    /** Where panels are counted, no roll of the plan holds more of them than is told, and all are told. */
    @Property
    void lines_countingAll_agreeWithTheRolls(@ForAll long seed) {
        SmallJobs.Job job = new Random(seed).nextBoolean() ? SmallJobs.any(seed) : SmallJobs.withTerms(seed);
        RollPlan plan = job.plan();
        Map<String, Integer> most = plan.rolls().stream().collect(Collectors.toMap(OpenedRoll::stockId, roll -> roll.pieces().size(), Math::max));
        for (String line : RollReasons.of(plan).lines()) {
            Matcher all = ALL.matcher(line);
            if (all.find()) {
                int pieces = plan.cuts().stream().mapToInt(Cut::quantity).sum();
                assertThat(Integer.parseInt(all.group(1))).isEqualTo(pieces);
                Matcher takes = TAKES.matcher(line);
                while (takes.find()) {
                    int told = takes.group(2).equals("all") ? pieces : takes.group(2).equals("nothing") ? 0 : Integer.parseInt(takes.group(2));
                    assertThat(most.getOrDefault(takes.group(1), 0)).isLessThanOrEqualTo(told);
                }
            }
        }
    }

    /** The sum of the prices is what all panels of the plan's rolls are worth, and each roll is worth at most what it is said to take. */
    @Property
    void worth_ofTheRolls_isThatOfThePanels(@ForAll long seed) {
        RollPlan plan = job(seed).plan();
        for (PriceList list : plan.certificate().priceLists()) {
            if (!plan.isFeasible()) {
                continue;
            }
            BigInteger all = BigInteger.ZERO;
            for (OpenedRoll roll : plan.rolls()) {
                long worth = 0;
                for (String piece : roll.pieces()) {
                    worth += list.prices().get(plan.cuts().stream().map(Cut::id).toList().indexOf(piece));
                }
                int row = plan.stock().stream().map(Stock::id).toList().indexOf(roll.stockId());
                assertThat(worth).isLessThanOrEqualTo(list.held().get(row).get(0));
                all = all.add(BigInteger.valueOf(worth));
            }
            assertThat(all).isEqualTo(CheapestRolls.worth(plan.cuts(), list));
        }
    }
}
