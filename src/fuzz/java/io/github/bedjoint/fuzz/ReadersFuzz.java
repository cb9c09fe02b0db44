package io.github.bedjoint.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
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
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;

/**
 * Any bytes given to what reads strangers' text: the only exception is the documented one, and the memory asked for stays within a base and a
 * multiple of the input. Jazzer ends a run that hangs.
 */
class ReadersFuzz {
    /** Jazzer's own hooks ask for some megabytes on the same thread; what readers ask for without them is held by ReadersMemoryTest. */
    private static final long BASE = 32_000_000;
    private static final long PER_BYTE = 500;
    private static final com.sun.management.ThreadMXBean THREADS = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
    private static final List<Consumer<String>> QUANTITIES = List.of(Read::length, Read::area, Read::time, Read::mass, Read::volume, Read::temperature, Read::speed,
            Read::timePerArea, Read::timePerLength, Read::volumePerArea, Read::massPerArea, Read::money, Read::pricePerArea, Read::pricePerLength, Read::pricePerTime,
            Read::pricePerVolume, Read::pricePerMass, Read::priceEach);

    @FuzzTest(maxDuration = "2m")
    void units(byte[] input) {
        for (Consumer<String> reader : QUANTITIES) {
            read(input, reader);
        }
    }

    @FuzzTest(maxDuration = "2m")
    void jobFile(byte[] input) {
        read(input, JobFile::parse);
    }

    /** The whole way from a line to its answer, which refuses in the answer itself. */
    @FuzzTest(maxDuration = "2m")
    void jobLine(byte[] input) {
        String line = new String(input, StandardCharsets.UTF_8);
        String answer = JobLine.answer(1, line, UnitStyle.IMPERIAL);
        if (answer.indexOf('\n') >= 0 || !answer.startsWith("{\"line\":1,")) {
            throw new AssertionError(answer);
        }
    }

    @FuzzTest(maxDuration = "2m")
    void cutList(byte[] input) {
        read(input, CutList::parse);
        read(input, StockList::parse);
        read(input, JobLog::parse);
    }

    @FuzzTest(maxDuration = "2m")
    void heightGrid(byte[] input) {
        read(input, text -> {
            try {
                HeightGrid grid = HeightGrid.csv(() -> new ByteArrayInputStream(input), Read.length("1 mm"), Read.length("2 mm"), Read.length("1 mm").getUnit());
                double ratio = GridSurface.of(grid, Diagonal.RISING).areaRatio();
                if (!(ratio >= 1)) {
                    throw new AssertionError("a surface of less than its plane: " + ratio);
                }
            } catch (IOException e) {
                throw new AssertionError(e);
            }
        });
    }

    private static void read(byte[] input, Consumer<String> reader) {
        String text = new String(input, StandardCharsets.UTF_8);
        long allowed = BASE + PER_BYTE * input.length;
        long asked = asked(text, reader);
        // The first use of a class loads it, and Jazzer rewrites it, on this thread: only what is asked for again is the reader's own.
        for (int again = 0; asked > allowed && again < 3; again++) {
            asked = asked(text, reader);
        }
        if (asked > allowed) {
            throw new AssertionError(asked + " bytes asked for, of an input of " + input.length);
        }
    }

    private static long asked(String text, Consumer<String> reader) {
        long before = THREADS.getCurrentThreadAllocatedBytes();
        try {
            reader.accept(text);
        } catch (RefusedException documented) {
            if (documented.getMessage().isBlank()) {
                throw new AssertionError("a refusal that says nothing");
            }
        }
        return THREADS.getCurrentThreadAllocatedBytes() - before;
    }
}
