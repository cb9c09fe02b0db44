package io.github.bedjoint.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalibrateCommandTest {
    @TempDir
    Path folder;

    private Path log;
    private String out = "";
    private String err = "";

    /** An invented log; the expected paces are those of R 4.2.2 {@code lm} without intercept, times 60. */
    @BeforeEach
    void write() throws IOException {
        log = Files.writeString(folder.resolve("log.csv"), """
                job,visible_area,seam,panel,hours
                1,12.5,9.6,5,9.4
                2,30.0,24.0,11,20.9
                3,8.0,4.8,3,6.0
                4,45.0,33.6,16,30.8
                5,22.0,21.6,9,17.4
                6,60.0,43.2,22,41.9
                7,15.0,14.4,8,12.6
                8,38.0,24.0,12,24.6
                9,5.5,2.4,2,4.3
                10,27.0,28.8,13,22.8
                11,50.0,38.4,15,33.1
                12,18.0,9.6,6,12.1
                """);
    }

    private int run(String... options) {
        String[] args = new String[2 + options.length];
        args[0] = "calibrate";
        args[1] = log.toString();
        System.arraycopy(options, 0, args, 2, options.length);
        Run run = Run.of(args);
        out = run.out();
        err = run.err();
        return run.code();
    }

    /** R: 0.322437396 h/m2 (0.030999522), 0.149687277 h/m (0.050889583), 0.734575637 h (0.113378712). */
    @Test
    void calibrate_log_givesThePacesOfR() {
        assertThat(run()).isZero();
        assertThat(out.lines().map(line -> line.replaceAll("  +", "|")).toList())
                .anyMatch(line -> line.startsWith("visible area|19.3462 min/m²|1.86 min/m²|"))
                .anyMatch(line -> line.startsWith("seam|8.9812 min/m|3.0534 min/m|"))
                .anyMatch(line -> line.startsWith("panel|44.0745 min|6.8027 min|"));
        assertThat(err).isEmpty();
    }

    @Test
    void calibrate_withPresentPaces_saysWhetherTheNewOnesAreBetter() {
        assertThat(run("--present", "visible_area=25 min/m2", "--not-negative", "--show-working")).isZero();
        assertThat(out).contains("The new paces miss jobs they have not seen by less").contains("[calibration.residual-deviation]");
    }

    @Test
    void calibrate_driversThatAlwaysGoTogether_areRefusedWithTheReason() throws IOException {
        StringBuilder alike = new StringBuilder("job,visible_area,seam,hours\n");
        for (int i = 1; i <= 8; i++) {
            alike.append(i).append(',').append(i).append(',').append(2 * i).append(',').append(3 * i).append('\n');
        }
        Files.writeString(log, alike);
        assertThat(run()).isEqualTo(3);
        assertThat(err).contains("VISIBLE_AREA").contains("SEAM");
        assertThat(out).isEmpty();
    }

    @Test
    void calibrate_badInput_isRefusedInOneLine() throws IOException {
        assertThat(run("--present", "visible_area=25 min/m")).isEqualTo(2);
        assertThat(err.lines()).hasSize(1);
        Files.writeString(log, "job,visible_area,hours\n1,x,2\n");
        assertThat(run()).isEqualTo(2);
        assertThat(err).contains("row 2").contains("visible_area").contains("'x'");
        Files.delete(log);
        assertThat(run()).isEqualTo(2);
        assertThat(err).startsWith("There is no file");
    }
}
