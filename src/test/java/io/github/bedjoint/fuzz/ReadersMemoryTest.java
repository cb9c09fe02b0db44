package io.github.bedjoint.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import io.github.bedjoint.calibration.JobLog;
import io.github.bedjoint.jobfile.CutList;
import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.jobfile.JobLine;
import io.github.bedjoint.jobfile.StockList;
import io.github.bedjoint.texture.Diagonal;
import io.github.bedjoint.texture.GridSurface;
import io.github.bedjoint.texture.HeightGrid;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The inputs that fuzzing starts from, without the fuzzer: what a reader asks for, warm, stays within a base and a multiple of the input. */
class ReadersMemoryTest {
    private static final Path INPUTS = Path.of("src", "fuzz", "resources", "io", "github", "bedjoint", "fuzz", "ReadersFuzzInputs");
    private static final long BASE = 200_000;
    private static final long PER_BYTE = 500;

    @ParameterizedTest
    @CsvSource({"units", "jobFile", "jobLine", "cutList", "heightGrid"})
    void readers_ofStrangersText_askForLittle(String kind) throws IOException {
        try (Stream<Path> files = Files.list(INPUTS.resolve(kind))) {
            List<Path> inputs = files.toList();
            assertThat(inputs).isNotEmpty();
            for (Path file : inputs) {
                byte[] input = Files.readAllBytes(file);
                asked(input, reader(kind));
                asked(input, reader(kind));
                assertThat(asked(input, reader(kind))).as(file.getFileName().toString()).isLessThan(BASE + PER_BYTE * input.length);
            }
        }
    }

    private static long asked(byte[] input, Consumer<byte[]> reader) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();
        try {
            reader.accept(input);
        } catch (RefusedException documented) {
            assertThat(documented.getMessage()).isNotBlank();
        }
        return threads.getCurrentThreadAllocatedBytes() - before;
    }

    private static Consumer<byte[]> reader(String kind) {
        return switch (kind) {
            case "units" -> input -> Read.length(text(input));
            case "jobFile" -> input -> JobFile.parse(text(input));
            case "jobLine" -> input -> JobLine.answer(1, text(input), UnitStyle.IMPERIAL);
            case "cutList" -> input -> List.<Consumer<String>>of(CutList::parse, StockList::parse, JobLog::parse).forEach(read -> refusedOrRead(read, text(input)));
            default -> ReadersMemoryTest::grid;
        };
    }

    private static void refusedOrRead(Consumer<String> reader, String text) {
        try {
            reader.accept(text);
        } catch (RefusedException documented) {
            assertThat(documented.getMessage()).isNotBlank();
        }
    }

    private static void grid(byte[] input) {
        try {
            HeightGrid grid = HeightGrid.csv(() -> new ByteArrayInputStream(input), Read.length("1 mm"), Read.length("2 mm"), Read.length("1 mm").getUnit());
            assertThat(GridSurface.of(grid, Diagonal.RISING).areaRatio()).isGreaterThanOrEqualTo(1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(byte[] input) {
        return new String(input, StandardCharsets.UTF_8);
    }
}
