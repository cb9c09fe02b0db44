package io.github.bedjoint.calibration;

import io.github.bedjoint.units.CsvTable;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The data files beside the tests. */
final class Resources {
    private Resources() {}

    static String text(String name) {
        try (InputStream in = Objects.requireNonNull(Resources.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static CsvTable table(String name) {
        return CsvTable.parse(name, text(name));
    }
}
