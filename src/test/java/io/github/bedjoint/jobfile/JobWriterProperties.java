package io.github.bedjoint.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.labour.Crew;
import io.github.bedjoint.layout.Rates;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** A job file that is written reads back as the same job. */
class JobWriterProperties {
    private static String result(Job job) {
        return JobResult.of(JobCost.of(job)).toString();
    }

    @Property
    void write_anyJob_readsBackAsTheSameAndIsWrittenTheSame(@ForAll long seed, @ForAll UnitStyle style) {
        Job job = JobFile.parse(JsonTree.write(RandomJobs.tree(seed, style)));
        String text = JobFile.write(job);
        Job again = JobFile.parse(text);
        assertThat(result(again)).isEqualTo(result(job));
        assertThat(again.survey()).isEqualTo(job.survey());
        assertThat(again.materials().film()).isEqualTo(job.materials().film());
        assertThat(again.rules()).isEqualTo(job.rules());
        assertThat(again.site()).isEqualTo(job.site());
        assertThat(again.dates()).isEqualTo(job.dates());
        assertThat(again.labour().tasks()).isEqualTo(job.labour().tasks());
        assertThat(JobFile.write(again)).isEqualTo(text);
    }

    @Example
    void write_shippedJobs_readBackAsTheSame() throws IOException {
        for (String name : new String[] {"brick-front", "reading-room", "block-gable"}) {
            Job job = JobFile.read(Path.of("docs", "jobs", name + ".json"));
            assertThat(result(JobFile.parse(JobFile.write(job)))).isEqualTo(result(job));
        }
    }

    /** What a file has no field for is never dropped in silence. */
    @Example
    void write_jobWithMoreThanAFileCanSay_isRefused() throws IOException {
        Job job = JobFile.parse(Files.readString(Path.of("docs", "jobs", "brick-front.json")));
        Job two = job.toBuilder().labour(job.labour().withShopCrew(Crew.of(2).withTandemEfficiency(0.5))).build();
        assertThatThrownBy(() -> JobFile.write(two)).isInstanceOf(RefusedException.class).hasMessageContaining("Maybe");
        Job rated = job.toBuilder().layout(job.layout().withRates(new Rates(7, 1, 0, 0))).build();
        assertThatThrownBy(() -> JobFile.write(rated)).isInstanceOf(RefusedException.class).hasMessageContaining("layout rates");
    }
}
