package io.github.bedjoint.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/** All jobs at full work, with what is expected of each family; run by the profile {@code corpus} only. */
class RollCorpusTest {

    private static final StringBuilder REPORT = new StringBuilder();

    @AfterAll
    static void write() throws IOException {
        Files.writeString(Path.of("target", "roll-corpus.txt"), REPORT);
    }

    private static List<CorpusRun.Row> measured(List<Instances.Instance> jobs) {
        List<CorpusRun.Row> rows = CorpusRun.measure(jobs);
        REPORT.append(CorpusRun.report(rows, true));
        assertThat(rows).extracting(CorpusRun.Row::fault).containsOnly("");
        return rows;
    }

    private static long proven(List<CorpusRun.Row> rows) {
        return rows.stream().filter(r -> r.plan().isProven()).count();
    }

    @Test
    void shopJobs_allProven() {
        List<CorpusRun.Row> rows = measured(Instances.of("shop1d"));
        rows.addAll(measured(Instances.of("shoplot")));
        assertThat(proven(rows)).isEqualTo(rows.size());
    }

    @Test
    void stepJobs_allProven() {
        List<CorpusRun.Row> rows = new ArrayList<>();
        for (int most : new int[] {12, 60, 250}) {
            rows.addAll(measured(IntStream.range(0, 60).mapToObj(seed -> step(seed, most)).toList()));
        }
        assertThat(proven(rows)).isEqualTo(rows.size());
    }

    /** A job without a known value: its own cost stands for it once the checker has accepted the proof. */
    private static Instances.Instance step(int seed, int most) {
        SmallJobs.Job job = StepJobs.of(seed, most);
        return new Instances.Instance(
                "steps up to " + most, "seed " + seed, job.plan().cost(), Instances.UNKNOWN, job.cuts(), job.stock(), job.terms());
    }

    @Test
    void publishedJobs_enclosedAndMostProven() {
        List<CorpusRun.Row> rows = measured(Instances.of("bpp1d"));
        assertThat(proven(rows)).isGreaterThanOrEqualTo(rows.size() * 85L / 100);
        assertThat(rows).allMatch(r -> r.plan().gap() <= 1);
    }
}
