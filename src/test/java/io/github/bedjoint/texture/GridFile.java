package io.github.bedjoint.texture;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.ShopUnits;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The height maps among the test resources and what was calculated for them elsewhere; origins in SOURCES.md beside them. */
final class GridFile {
    private GridFile() {}

    static InputStream open(String resource) {
        return Objects.requireNonNull(GridFile.class.getResourceAsStream("/texture/" + resource), resource);
    }

    /** One map for each row of heightmaps_reference.csv: column name to text. */
    static List<Map<String, String>> references() {
        try (BufferedReader reader =
                new BufferedReader(new InputStreamReader(open("heightmaps_reference.csv"), StandardCharsets.UTF_8))) {
            List<String> lines = reader.lines().toList();
            String[] names = lines.get(0).split(",");
            return lines.stream()
                    .skip(1)
                    .map(line -> {
                        String[] cells = line.split(",");
                        Map<String, String> row = new HashMap<>();
                        for (int i = 0; i < names.length; i++) {
                            row.put(names[i], cells[i]);
                        }
                        return row;
                    })
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static HeightGrid grid(Map<String, String> reference) {
        return HeightGrid.csv(
                () -> open("heightmaps/" + reference.get("file")),
                Door.of(Double.parseDouble(reference.get("dx_mm")), ShopUnits.MILLIMETRE),
                Door.of(Double.parseDouble(reference.get("dy_mm")), ShopUnits.MILLIMETRE),
                ShopUnits.MILLIMETRE);
    }

    static HeightGrid mm(double[][] heights, double dx, double dy) {
        return HeightGrid.of(
                heights, Door.of(dx, ShopUnits.MILLIMETRE), Door.of(dy, ShopUnits.MILLIMETRE), ShopUnits.MILLIMETRE);
    }
}
