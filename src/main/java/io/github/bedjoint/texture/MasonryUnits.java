package io.github.bedjoint.texture;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Source;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * Formats of masonry units from a table: the library's own {@code units.csv}, or one of the user's in the same columns.
 *
 * <p>Columns, parted by commas: name, length, height, module_length, module_height (each with its unit), source_kind (a name of
 * {@link Source.Kind}) and source, which may hold commas. The first line names them. A line that begins with # is a remark.
 */
public final class MasonryUnits {
    private static final String HEADER = "name,length,height,module_length,module_height,source_kind,source";
    private static final int COLUMNS = 7;

    private MasonryUnits() {}

    /**
     * The formats that come with the library: US modular and other bricks, concrete block, EN metric and DIN formats.
     *
     * @return the formats in the order of the table
     */
    public static List<MasonryUnit> standard() {
        try (InputStream in = Objects.requireNonNull(MasonryUnits.class.getResourceAsStream("units.csv"));
                Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            return read(reader);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * A format that comes with the library.
     *
     * @param name its name in the table, such as {@code Modular} or {@code DIN NF}
     * @return the format
     * @throws RefusedException if there is none of that name
     */
    public static MasonryUnit named(String name) {
        List<MasonryUnit> all = standard();
        return all.stream()
                .filter(unit -> unit.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new RefusedException(
                        "unit name",
                        "'" + name + "'",
                        "must be one of " + all.stream().map(MasonryUnit::name).collect(Collectors.joining(", ")),
                        "Maybe give its sizes with MasonryUnit.of."));
    }

    /**
     * Formats of a table.
     *
     * @param table the table with its header line
     * @return the formats in its order
     * @throws RefusedException if a line cannot be read; the parameter names the line
     * @throws IOException      if the reader fails
     */
    public static List<MasonryUnit> read(Reader table) throws IOException {
        BufferedReader lines = new BufferedReader(table);
        List<MasonryUnit> units = new ArrayList<>();
        boolean header = false;
        int number = 0;
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            number++;
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            if (!header) {
                expectHeader(line, number);
                header = true;
                continue;
            }
            try {
                units.add(unit(line));
            } catch (RefusedException e) {
                throw e.within("line " + number + " ");
            }
        }
        return List.copyOf(units);
    }

    private static void expectHeader(String line, int number) {
        if (!line.strip().equals(HEADER)) {
            throw new RefusedException(
                    "line " + number, "'" + line.strip() + "'", "must be '" + HEADER + "'", "Maybe the header line is missing.");
        }
    }

    private static MasonryUnit unit(String line) {
        String[] cells = line.split(",", COLUMNS);
        if (cells.length < COLUMNS) {
            throw new RefusedException(
                    "row", "'" + line.strip() + "'", "must have " + COLUMNS + " columns", "Maybe the source is missing.");
        }
        return MasonryUnit.of(
                cells[0],
                Read.length(cells[1].strip()),
                Read.length(cells[2].strip()),
                Read.length(cells[3].strip()),
                Read.length(cells[4].strip()),
                new Source(kind(cells[5].strip()), cells[6]));
    }

    private static Source.Kind kind(String name) {
        try {
            return Source.Kind.valueOf(name);
        } catch (IllegalArgumentException e) {
            throw new RefusedException(
                    "source_kind", "'" + name + "'", "must be one of " + List.of(Source.Kind.values()), "Maybe SHOP.");
        }
    }
}
