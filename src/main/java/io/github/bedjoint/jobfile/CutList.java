package io.github.bedjoint.jobfile;

import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import java.util.ArrayList;
import java.util.List;

/**
 * A plain list of panels to cut, as a table with the columns {@code id,width,length,quantity} and optionally {@code group} and
 * {@code rotate}.
 *
 * <p>A length is written with its unit in the cell, or the unit stands behind the column's name, as in {@code length mm}. Widths are
 * all given or all left empty; without widths only lengths matter. A cut whose {@code rotate} says yes may lie turned by 90 degrees; others may not.
 */
public final class CutList {
    private static final Range SIZE = Range.above(0, 10_000);

    private CutList() {}

    /**
     * Reads a cut list.
     *
     * @param csv the table as text (RFC 4180)
     * @return the panels in the table's order; widths of one step where none are given
     * @throws RefusedException if a row cannot be read; it names row, column and value
     */
    public static List<Cut> parse(String csv) {
        HeadedTable table = HeadedTable.parse("cut list", csv, List.of("id", "length"), List.of("width", "quantity", "group", "rotate"));
        List<Cut> cuts = new ArrayList<>();
        for (HeadedTable.Row row : table.rows()) {
            long width = row.text("width").isEmpty() ? 1 : Steps.up(row.length("width", SIZE));
            long length = Steps.up(row.length("length", SIZE));
            int quantity = row.text("quantity").isEmpty() ? 1 : row.count("quantity", 1, 1_000_000);
            boolean rotate = row.isYes("rotate");
            cuts.add(row.made("id", () -> new Cut(row.text("id"), width, length, quantity, row.text("group"), rotate)));
        }
        table.allOrNone("width");
        table.unique("id");
        return cuts;
    }
}
