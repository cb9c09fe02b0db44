package io.github.bedjoint.jobfile;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.layout.Panel;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.layout.PrintFile;
import io.github.bedjoint.layout.PrintList;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.units.CsvTable;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;

/**
 * The cut list and the price lines of a job as tables (RFC 4180), lines ended by a line feed. A text that a spreadsheet might run as a
 * formula is defused by an apostrophe.
 */
public final class JobTables {
    private JobTables() {}

    /**
     * The cut list: {@code wall,panel,cut width,cut length,from left,from below}, in order of application.
     *
     * @param cost  the job costed
     * @param style millimetres with one decimal, or feet and inches to 1/16 in
     * @return the table, with a heading only where nothing could be laid out
     */
    public static String cuts(JobCost cost, UnitStyle style) {
        StringBuilder table = new StringBuilder("wall,panel,cut width,cut length,from left,from below\n");
        for (PanelLayout layout : cost.layouts()) {
            for (Panel panel : layout.panels()) {
                row(table, CsvTable.defused(panel.wall()), Integer.toString(panel.number()), cut(panel.cutWidthSteps(), style),
                        cut(panel.cutLengthSteps(), style), cut(panel.lowerLeft().xSteps(), style), cut(panel.lowerLeft().ySteps(), style));
            }
        }
        return table.toString();
    }

    /**
     * The print list: {@code file,wall,panel,from left,from top,width,height,quarter turn,whole,copies}, offsets in the picture of
     * each wall; where it does not cover the whole panel, the rest stays blank.
     *
     * @param cost  the job costed
     * @param style millimetres with one decimal, or feet and inches to 1/16 in
     * @return the table, with a heading only where nothing could be laid out
     */
    public static String prints(JobCost cost, UnitStyle style) {
        StringBuilder table = new StringBuilder("file,wall,panel,from left,from top,width,height,quarter turn,whole,copies\n");
        for (PrintList list : cost.prints()) {
            for (PrintFile file : list.files()) {
                row(table, CsvTable.defused(file.name()), CsvTable.defused(file.panel().wall()), Integer.toString(file.panel().number()),
                        cut(file.fromLeftSteps(), style), cut(file.fromTopSteps(), style), cut(file.panel().alongSteps(), style),
                        cut(file.panel().upSteps(), style), file.quarterTurn() ? "yes" : "no", file.whole() ? "yes" : "no", Integer.toString(file.copies()));
            }
        }
        return table.toString();
    }

    /**
     * The price lines: {@code kind,title,quantity,rate,amount,currency}, then the build-up to the total.
     *
     * @param cost  the job costed, with a price
     * @param style the reader's units, for quantities
     * @return the table
     * @throws IllegalStateException if the job has no price
     */
    public static String prices(JobCost cost, UnitStyle style) {
        StringBuilder table = new StringBuilder("kind,title,quantity,rate,amount,currency\n");
        String currency = cost.price().rules().currency().getCode();
        for (CostLine line : cost.price().lines()) {
            row(table, Fields.word(line.kind()), CsvTable.defused(line.title()), line.rate().measure().print(line.quantity(), style), line.rate().toString(),
                    line.amount().getAmount().toPlainString(), currency);
        }
        row(table, "sum", "Direct cost", "", "", cost.price().direct().getAmount().toPlainString(), currency);
        row(table, "sum", "Overhead", "", "", cost.price().overhead().getAmount().toPlainString(), currency);
        row(table, "sum", "Contingency", "", "", cost.price().contingency().getAmount().toPlainString(), currency);
        row(table, "sum", "Net price", "", "", cost.price().net().getAmount().toPlainString(), currency);
        row(table, "sum", "Tax", "", "", cost.price().tax().getAmount().toPlainString(), currency);
        row(table, "sum", "Total", "", "", cost.price().total().getAmount().toPlainString(), currency);
        return table.toString();
    }

    /** A length may begin with a minus and hold a quotation mark; it is no text of the user's and needs no defusing. */
    private static String cut(long steps, UnitStyle style) {
        return CsvTable.field(Print.cut(steps, style));
    }

    private static void row(StringBuilder table, String... cells) {
        table.append(String.join(",", cells)).append('\n');
    }
}
