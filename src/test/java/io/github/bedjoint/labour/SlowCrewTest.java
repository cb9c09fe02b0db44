package io.github.bedjoint.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Crews whose tandem efficiency is so low that together they are slower than one person. */
class SlowCrewTest {
    private static final Labour LABOUR = Labour.withDefaults().withAllowance(Allowance.none());

    private static TaskTime task(Crew crew, String id, Amounts amounts) {
        List<TaskTime> times = LABOUR.withSiteCrew(crew).estimate(amounts).tasks();
        return times.stream().filter(time -> time.task().id().equals(id)).findFirst().orElseThrow();
    }

    private static TaskTime heat(Crew crew) {
        return task(crew, "heat-roll", Amounts.none().withArea(Driver.HEATED_AREA, Read.area("12 m2")));
    }

    /** By hand: 12 m2 x 10 min = 120 min for one. Two at 0.4 would need 120 / 0.8 = 150 min; one does it in 120, and both are paid: 240. */
    @Test
    void heat_twoAtFourTenths_oneWorksAndBothArePaid() {
        TaskTime slow = heat(new Crew(2, 0.4));
        assertThat(slow.elapsedS()).isEqualTo(120 * 60);
        assertThat(slow.paidS()).isEqualTo(240 * 60);
        assertThat(slow.people()).isEqualTo(2);
        assertThat(slow.working().toString()).contains("one works, the others wait and are paid");
        WorkingCheck.check(slow.working());
    }

    /** By hand: three at 0.4 do 1.2 times what one does: 120 / 1.2 = 100 min, and 120 / 0.4 = 300 min are paid; two at 0.5 need as long as one. */
    @Test
    void heat_fastEnoughTogether_isSharedAsBefore() {
        TaskTime three = heat(new Crew(3, 0.4));
        assertThat(three.elapsedS()).isCloseTo(100 * 60, within(1e-9));
        assertThat(three.paidS()).isCloseTo(300 * 60, within(1e-9));
        assertThat(three.working().toString()).doesNotContain("the others wait");
        assertThat(heat(new Crew(2, 0.5)).elapsedS()).isEqualTo(120 * 60);
        assertThat(heat(new Crew(2, 0.5)).working().toString()).doesNotContain("the others wait");
    }

    /** A married panel demands two, so one cannot do it alone: standard time / (2 x 0.4). */
    @Test
    void married_twoAtFourTenths_needBoth() {
        TaskTime married = LABOUR.withSiteCrew(new Crew(2, 0.4)).estimate(Amounts.none().withPanels(4, 2)).tasks().stream()
                .filter(time -> time.task().people() == 2)
                .findFirst()
                .orElseThrow();
        assertThat(married.elapsedS()).isCloseTo(married.standardS() / 0.8, within(1e-9));
        assertThat(married.working().toString()).doesNotContain("the others wait");
    }

    @Test
    void slowerThanOne_belowOne_isWarnedOf() {
        assertThat(new Crew(2, 0.4).slowerThanOne("site")).get().satisfies(found -> {
            assertThat(found.level()).isEqualTo(Verdict.Level.WARNING);
            assertThat(found.toString()).contains("crew: site", "2 people at a tandem efficiency of 0.4", "Maybe a crew of one");
        });
        assertThat(new Crew(2, 0.5).slowerThanOne("site")).isEmpty();
        assertThat(new Crew(3, 0.4).slowerThanOne("site")).isEmpty();
        assertThat(new Crew(1, 0.1).slowerThanOne("site")).isEmpty();
    }
}
