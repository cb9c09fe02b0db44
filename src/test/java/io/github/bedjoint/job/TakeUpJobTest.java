package io.github.bedjoint.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.film.Coating;
import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.waste.WastePart;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.WorkingCheck;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;

/** Film fed in, coatings and the texture's uncertainty on a demo job. */
class TakeUpJobTest {
    private static Job brickFront() throws IOException {
        return JobFile.parse(Files.readString(Path.of("docs", "jobs", "brick-front.json")));
    }

    private static List<String> subjects(JobCost cost) {
        return cost.verdicts(UnitStyle.METRIC).stream().filter(v -> v.level() == Verdict.Level.WARNING).map(Verdict::subject).toList();
    }

    @Test
    void cost_withFilmFedIn_accountsForItAndWarnsOfRegistration() throws IOException {
        Job job = brickFront();
        JobCost none = JobCost.of(job);
        JobCost fed = JobCost.of(job.toBuilder().takeUp(new TakeUp(1, 0)).build());
        assertThat(none.waste().partsM2()).doesNotContainKey(WastePart.TAKE_UP);
        assertThat(subjects(none)).noneMatch(subject -> subject.endsWith("registration"));
        assertThat(subjects(fed)).anyMatch(subject -> subject.endsWith("registration"));
        double takeUp = fed.waste().partsM2().get(WastePart.TAKE_UP);
        double byPanel = fed.layouts().stream().mapToDouble(layout -> layout.places().takeUpM2()).sum();
        assertThat(takeUp).isPositive().isCloseTo(byPanel, within(1e-9));
        double sum = fed.waste().partsM2().values().stream().mapToDouble(part -> part).sum();
        assertThat(sum).isCloseTo(fed.waste().openedM2(), within(1e-9 * fed.waste().openedM2()));
        WorkingCheck.check(fed.working());
    }

    /** What is said of the job outranks the planner, in whatever order they are given. */
    @Test
    void build_takeUpBeforeOrAfterThePlanner_isTheSame() throws IOException {
        TakeUp takeUp = new TakeUp(0.5, 0.25);
        JobBuilder before = brickFront().toBuilder().takeUp(takeUp).layout(LayoutPlanner.withDefaults());
        JobBuilder after = brickFront().toBuilder().layout(LayoutPlanner.withDefaults()).takeUp(takeUp);
        assertThat(before.build().takeUp()).isEqualTo(takeUp).isEqualTo(after.build().takeUp());
        assertThat(brickFront().toBuilder().layout(LayoutPlanner.withDefaults().withTakeUp(takeUp)).build().takeUp()).isEqualTo(takeUp);
        assertThat(brickFront().takeUp()).isEqualTo(TakeUp.NONE);
    }

    @Test
    void cost_withPrimer_goesByDevelopedArea() throws IOException {
        Job job = brickFront();
        JobCost without = JobCost.of(job);
        Materials primed = job.materials().withCoating(
                Coating.of("Primer", Read.volumePerArea("80 mL/m2")).withCoats(2), Read.pricePerVolume(job.rules().currency() + " 10/L"));
        JobCost cost = JobCost.of(job.toBuilder().materials(primed).build());
        CostLine line = cost.price().lines().stream().filter(one -> one.title().equals("Primer")).findFirst().orElseThrow();
        // 2 coats of 80 mL on each square metre along the texture: 0.16 L for each.
        double developed = without.areas().developed().getValue().doubleValue();
        assertThat(developed).isGreaterThan(without.areas().visible().getValue().doubleValue());
        assertThat(line.quantity()).isCloseTo(0.16e-3 * developed, within(1e-12));
        assertThat(line.amount().getAmount().doubleValue()).isCloseTo(1.6 * developed, within(0.005001));
        // By hand in docs/jobs/brick-front.md: the developed area and 0.626 m2 turned at corner, ground and window.
        assertThat(cost.areas().contact().getValue().doubleValue()).isCloseTo(21.379481, within(1e-6));
        assertThat(cost.working("film.coating")).isPresent();
        WorkingCheck.check(cost.working());
    }

    @Test
    void figures_withAnotherAreaRatio_takeMorePrimer() throws IOException {
        Job bare = brickFront();
        String wall = bare.survey().walls().get(0).name();
        PriceRate<Volume> price = Read.pricePerVolume(bare.rules().currency() + " 10/L");
        Job job = bare.toBuilder()
                .materials(bare.materials().withCoating(Coating.of("Primer", Read.volumePerArea("100 mL/m2")), price))
                .build();
        // 0.1 L at 10 for each square metre: a whole more of the visible area, at one more in the ratio, costs as much as its number.
        double visible = JobCost.of(job).areas().walls().get(0).visible().getValue().doubleValue();
        double ratio = bare.survey().walls().get(0).surface().areaRatio();
        double primed = cost(job, wall, ratio + 1) - cost(job, wall, ratio);
        double unprimed = cost(bare, wall, ratio + 1) - cost(bare, wall, ratio);
        assertThat(primed - unprimed).isCloseTo(visible, within(0.02));
        assertThat(cost(job, wall, ratio)).isEqualTo(JobCost.of(job).price().direct().getAmount().doubleValue());
    }

    private static double cost(Job job, String wall, double ratio) {
        return JobWork.of(job, JobPlan.of(job).withAreaRatio(wall, ratio)).price().direct().getAmount().doubleValue();
    }

    @Test
    void working_ofASurfaceWithTolerances_showsTheUncertaintyOfTheDevelopedArea() throws IOException {
        String text = Files.readString(Path.of("docs", "jobs", "block-gable.json"));
        String known = text.replace("\"joint\": \"3/8 in\",", "\"joint\": \"3/8 in\", \"tolerances\": {\"depth\": \"0.5 mm\"},");
        assertThat(known).isNotEqualTo(text);
        JobCost cost = JobCost.of(JobFile.parse(known));
        double u = cost.working("texture.developed-uncertainty").orElseThrow().result().orElseThrow().doubleValue();
        double ratio = cost.job().survey().walls().get(0).surface().uncertainty().orElseThrow().standard();
        assertThat(u).isPositive().isCloseTo(ratio * cost.areas().visible().getValue().doubleValue(), within(1e-9));
        assertThat(JobCost.of(JobFile.parse(text)).working("texture.developed-uncertainty")).isEmpty();
        assertThat(cost.total()).isEqualTo(JobCost.of(JobFile.parse(text)).total());
        WorkingCheck.check(cost.working());
    }
}
