package io.github.bedjoint.texture;

import java.io.Closeable;
import java.io.IOException;

/** The rows of a height grid, one after the other, so that a grid of any size is read in the memory of a few rows. */
interface HeightRows extends Closeable {
    /** How many heights a row has. */
    int columns();

    /** Puts the next row into an array of {@link #columns()} heights in metres, NaN where missing; false after the last row. */
    boolean next(double[] row) throws IOException;

    @Override
    default void close() throws IOException {
        // Rows in memory have nothing to close.
    }
}
