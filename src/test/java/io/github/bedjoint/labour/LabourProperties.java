package io.github.bedjoint.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.WorkingCheck;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class LabourProperties {
    @Provide
    Arbitrary<Amounts> amounts() {
        return Arbitraries.doubles().between(0, 500).list().ofSize(Driver.values().length).map(values -> {
            Amounts amounts = Amounts.none();
            for (Driver driver : Driver.values()) {
                if (driver != Driver.DAY) {
                    amounts = amounts.withInner(driver, values.get(driver.ordinal()));
                }
            }
            return amounts;
        });
    }

    @Provide
    Arbitrary<Labour> labours() {
        Arbitrary<Allowance> allowances = Arbitraries.doubles().between(0, 0.5).flatMap(a ->
                Arbitraries.of(Allowance.onJobTime(a), Allowance.onWorkingDay(a)));
        return Combinators.combine(allowances, Arbitraries.integers().between(1, 6), Arbitraries.doubles().between(0.05, 1), Arbitraries.doubles().between(0, 3))
                .as((allowance, people, q, travel) -> Labour.withDefaults()
                        .withAllowance(allowance)
                        .withSiteCrew(new Crew(people, q))
                        .withWorkDay(WorkDay.of(Door.of(10, ShopUnits.HOUR)).withTravelInShift(Door.of(travel, ShopUnits.HOUR))));
    }

    @Property
    void working_ofAnyEstimate_textEqualsCode(@ForAll("labours") Labour labour, @ForAll("amounts") Amounts amounts) {
        WorkingCheck.check(labour.estimate(amounts).working());
    }

    @Property
    void estimate_tasksAndPlacesPermuted_sameTotalsToTheBit(
            @ForAll("labours") Labour labour, @ForAll("amounts") Amounts one, @ForAll("amounts") Amounts two, @ForAll long seed) {
        List<Task> tasks = new ArrayList<>(labour.tasks().tasks());
        Collections.shuffle(tasks, new Random(seed));
        WorkPlace first = WorkPlace.of("front", one).withFactor(1.3, Source.shop("test"));
        WorkPlace second = WorkPlace.of("side", two);
        LabourEstimate straight = labour.estimate(List.of(first, second));
        LabourEstimate turned = labour.withTasks(TaskTable.of(tasks)).estimate(List.of(second, first));
        assertThat(turned.totalPaidS()).isEqualTo(straight.totalPaidS());
        assertThat(turned.siteElapsedS()).isEqualTo(straight.siteElapsedS());
        assertThat(turned.siteDays().days()).isEqualTo(straight.siteDays().days());
    }

    @Property
    void estimate_parts_addUpToTheWhole(@ForAll("labours") Labour labour, @ForAll("amounts") Amounts amounts) {
        LabourEstimate hours = labour.estimate(amounts);
        double parts = hours.tasks().stream().mapToDouble(TaskTime::paidS).sum()
                + hours.siteDays().setUpPaidS()
                + hours.siteDays().travelPaidS();
        assertThat(parts).isCloseTo(hours.totalPaidS(), within(1e-9 * parts + 1e-12));
        assertThat(hours.productionPaidS() + hours.sitePaidS()).isEqualTo(hours.totalPaidS());
    }

    @Property
    void estimate_moreToDo_neverTakesLess(@ForAll("labours") Labour labour, @ForAll("amounts") Amounts amounts, @ForAll("amounts") Amounts extra) {
        Amounts more = amounts;
        for (Driver driver : Driver.values()) {
            more = more.withInner(driver, amounts.inner(driver) + extra.inner(driver));
        }
        LabourEstimate small = labour.estimate(amounts);
        LabourEstimate large = labour.estimate(more);
        assertThat(large.totalPaidS()).isGreaterThanOrEqualTo(small.totalPaidS());
        assertThat(large.siteElapsedS()).isGreaterThanOrEqualTo(small.siteElapsedS());
    }

    @Property
    void estimate_onePersonMoreAtEqualEfficiency_neverSlower(@ForAll("amounts") Amounts amounts, @ForAll("labours") Labour labour) {
        Crew crew = labour.siteCrew();
        Crew larger = new Crew(crew.people() + 1, crew.efficiency());
        assertThat(labour.withSiteCrew(larger).estimate(amounts).siteElapsedS())
                .isLessThanOrEqualTo(labour.estimate(amounts).siteElapsedS());
    }

    @Property
    void estimate_tripsPremiumsAndRepeats_textEqualsCodeAndPartsAddUp(
            @ForAll("labours") Labour labour, @ForAll("amounts") Amounts amounts, @ForAll("rates") double rate, @ForAll("counts") int n) {
        Trip trip = Trip.of(Trip.Purpose.WASH, Door.of(rate, ShopUnits.HOUR), Door.of(n / 10.0, ShopUnits.HOUR)).doing("wash").times(n);
        Labour full = labour.withTrips(List.of(trip)).withPremium(new Premium("night", rate, rate / 2));
        LabourEstimate hours = full.estimate(List.of(WorkPlace.of("bays", amounts).repeated(n, Learning.wright(rate))));
        WorkingCheck.check(hours.working());
        double parts = hours.tasks().stream().mapToDouble(TaskTime::paidS).sum()
                + hours.siteDays().setUpPaidS()
                + hours.siteDays().travelPaidS()
                + hours.trips().get(0).paidS();
        assertThat(parts).isCloseTo(hours.totalPaidS(), within(1e-9 * parts + 1e-12));
    }

    @Property
    void learnedTime_total_isTheSumOfUnits(@ForAll("rates") double rate, @ForAll("counts") int n) {
        for (Learning law : List.of(Learning.crawford(rate), Learning.wright(rate))) {
            double sum = 0;
            for (int i = 1; i <= n; i++) {
                sum += law.over(Door.of(3, ShopUnits.HOUR), i).unitS();
            }
            LearnedTime time = law.over(Door.of(3, ShopUnits.HOUR), n);
            assertThat(time.totalS()).isCloseTo(sum, within(1e-9 * sum));
            WorkingCheck.check(time.working());
        }
    }

    @Provide
    Arbitrary<Double> rates() {
        return Arbitraries.doubles().between(0.51, 1);
    }

    @Provide
    Arbitrary<Integer> counts() {
        return Arbitraries.integers().between(1, 40);
    }
}
