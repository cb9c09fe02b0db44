package io.github.bedjoint.job;

import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.jobfile.JobLine;
import io.github.bedjoint.units.UnitStyle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;

/** Jobs a second from a line of JSON to its answer, on one and on two threads, beside a spreadsheet held in memory that knows the sums but no plan and no dates. */
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class LineBenchmark {

    /** A shipped job on one line. */
    @State(Scope.Benchmark)
    public static class Line {
        private String json;

        /** Reads the file once. */
        @Setup
        public void read() throws IOException {
            json = Files.readString(Path.of("docs", "jobs", "brick-front.json")).lines().map(String::strip).reduce("", String::concat);
        }
    }

    /**
     * The sums of {@link BrickFrontSums} as a sheet: inputs in A1 to A3, panels and rolls given as numbers, the price in the last row.
     */
    @State(Scope.Thread)
    public static class Spreadsheet {
        private static final String[] SUMS = {
            "A1*A2-1*2.1-1.4*1.2-0.2*0.1", // visible, A4
            "5*A2-2.1-1.2", // seams, A5
            "A3*(A4+A5*0.02)", // heated, A6
            "(5*1.36+0.56)*(A2+0.05)", // printed, A7
            "A1-1", // ground, A8
            "45*1.15+6*(A2+0.05+0.00667)*5*0.15+19.34+36*1.15+12*1.15", // shop, A9
            "2*A4", "20", "3*6", "A4", "12*6", "10*A6", "1.5*A5", "15", "15*3", "4*A8", "3*A8", "10", // tasks, A10 to A21
            "SUM(A10:A21)*1.15/0.9+40*1.15/0.9+60+60", // paid, A22
            "396", "310", "A7*0.008*110", "A4*1.2", "A9/60*36", "A22/60*44", "70", "90", // lines, A23 to A30
            "SUM(A23:A30)", // direct, A31
            "0.35*(A27+A28)", // overhead, A32
            "0.05*(A31+A32)", // contingency, A33
            "(A31+A32+A33)/0.7*1.2" // price, A34
        };

        private Cell width;
        private Cell price;
        private FormulaEvaluator evaluator;
        private int turn;

        /** Writes the sheet and makes sure that it comes to the library's price. */
        @Setup
        public void write() throws IOException {
            Workbook workbook = new HSSFWorkbook();
            Sheet sheet = workbook.createSheet();
            width = cell(sheet, 0);
            cell(sheet, 1).setCellValue(3);
            cell(sheet, 2).setCellValue(1 + 2800.0 / 16875);
            for (int i = 0; i < SUMS.length; i++) {
                price = cell(sheet, 3 + i);
                price.setCellFormula(SUMS[i]);
            }
            evaluator = workbook.getCreationHelper().createFormulaEvaluator();
            double total = JobCost.of(JobFile.read(Path.of("docs", "jobs", "brick-front.json"))).total().getAmount().doubleValue();
            if (Math.abs(priceOf(7.2) - total) > 0.05) {
                throw new IllegalStateException(priceOf(7.2) + " is not " + total);
            }
        }

        private static Cell cell(Sheet sheet, int row) {
            Row made = sheet.createRow(row);
            return made.createCell(0);
        }

        private double priceOf(double metres) {
            width.setCellValue(metres);
            evaluator.notifyUpdateCell(width);
            return evaluator.evaluate(price).getNumberValue();
        }
    }

    /** From JSON to JSON. */
    @Benchmark
    @Threads(1)
    public String oneThread(Line line) {
        return JobLine.answer(1, line.json, UnitStyle.METRIC);
    }

    /** From JSON to JSON, all threads together. */
    @Benchmark
    @Threads(2)
    public String twoThreads(Line line) {
        return JobLine.answer(1, line.json, UnitStyle.METRIC);
    }

    /** A sheet whose width changes, computed anew where it depends on it. */
    @Benchmark
    @Threads(1)
    public double spreadsheet(Spreadsheet sheet) {
        return sheet.priceOf(7.2 + (sheet.turn++ & 7) * 0.001);
    }
}
