package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.ShopUnits;
import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** A grid in a text is read in the memory of a few rows, however many rows it has. */
class GridMemoryTest {
    private static final int COLUMNS = 1000;

    /** The same row again and again, made as it is read, so that the text itself takes no memory. */
    private static final class Repeated extends InputStream {
        private final byte[] row;
        private long left;

        Repeated(byte[] row, int rows) {
            this.row = row;
            this.left = (long) rows * row.length;
        }

        @Override
        public int read() {
            return left == 0 ? -1 : row[(int) (row.length - 1 - --left % row.length)];
        }
    }

    private static long allocated(int rows) throws IOException {
        StringBuilder row = new StringBuilder();
        for (int j = 0; j < COLUMNS; j++) {
            row.append(j == 0 ? "" : ",").append(j % 7).append(".25");
        }
        byte[] bytes = row.append('\n').toString().getBytes(StandardCharsets.US_ASCII);
        HeightGrid grid = HeightGrid.csv(() -> new Repeated(bytes, rows), Read.length("1 mm"), Read.length("1 mm"), ShopUnits.MILLIMETRE);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();
        GridSurface surface = GridSurface.of(grid, Diagonal.FALLING).withHeightUncertainty(Read.length("0.01 mm"));
        long after = threads.getCurrentThreadAllocatedBytes();
        assertThat(surface.cells()).isEqualTo((rows - 1L) * (COLUMNS - 1));
        return after - before;
    }

    /** A window of 10 mm holds 11 rows; with the rows and sums in hand 30 rows of 8 bytes each and two buffers of 64 kB are plenty. */
    @Test
    void of_gridsOfMoreAndMoreRows_allocatesTheSame() throws IOException {
        allocated(40);
        long few = allocated(40);
        long many = allocated(1000);
        assertThat(many - few).isLessThan(8L * COLUMNS);
        assertThat(many).isLessThan(30L * 8 * COLUMNS + 2 * (1 << 16));
        assertThat(many).isLessThan(8L * COLUMNS * 1000 / 10);
    }
}
