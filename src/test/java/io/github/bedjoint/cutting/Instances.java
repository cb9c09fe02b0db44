package io.github.bedjoint.cutting;

import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.RemnantRule;
import io.github.bedjoint.rolls.Stock;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Reads the published and the invented jobs; origin and licence are in {@code rolls/SOURCES.md}. */
final class Instances {

    /** One job with what is known: a value that has been reached, and one below which none lies. */
    record Instance(
            String family, String name, long best, long least, List<Cut> cuts, List<Stock> stock, CuttingTerms terms) {

        RollPlanner planner() {
            return RollPlanner.withDefaults().withTerms(terms);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    /** Length of a roll that is longer than all panels together. */
    static final long OPEN = 1_000_000;

    /** There is no known value. */
    static final long UNKNOWN = -1;

    private Instances() {}

    static List<Instance> of(String kind) {
        List<Instance> found = new ArrayList<>();
        for (String line : lines("index.csv")) {
            String[] part = line.split(",", -1);
            if (part[0].equals(kind)) {
                found.add(read(part[0], part[1], part[2], known(part[7]), known(part[6]), part[9]));
            }
        }
        return found;
    }

    private static long known(String cell) {
        return cell.isEmpty() ? UNKNOWN : Long.parseLong(cell);
    }

    private static Instance read(String kind, String family, String name, long best, long least, String file) {
        List<Cut> cuts = new ArrayList<>();
        List<Stock> stock = new ArrayList<>();
        for (String line : lines(file)) {
            String[] part = line.split(",", -1);
            if (part[0].equals("record")) {
                continue;
            }
            long width = part[1].isEmpty() ? 1 : Long.parseLong(part[1]);
            long length = part[2].equals("-1") ? OPEN : Long.parseLong(part[2]);
            int count = Integer.parseInt(part[4]);
            String group = part.length > 5 ? part[5] : "";
            if (part[0].equals("stock")) {
                stock.add(new Stock("S" + stock.size(), width, length, Long.parseLong(part[3]), count, group));
            } else {
                cuts.add(new Cut("P" + cuts.size(), width, length, count, group));
            }
        }
        LotRule lots = kind.equals("shoplot") ? LotRule.ONE_LOT_PER_WALL : LotRule.ANY;
        return new Instance(
                family, name, best, least, cuts, stock, new CuttingTerms(0, 0, 0, RemnantRule.none(), lots));
    }

    private static List<String> lines(String file) {
        try (InputStream in = Instances.class.getResourceAsStream("/rolls/" + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
