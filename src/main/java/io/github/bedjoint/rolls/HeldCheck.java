package io.github.bedjoint.rolls;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Shows that no roll of a kind holds panels priced above a number.
 *
 * <p>Builds all fillings panel by panel and keeps, of those alike, only the shorter or dearer ones, and of those only the
 * ones that could still come above the number.
 */
final class HeldCheck {

    /** Highest price of one panel, so that price times length fits in 64 bits. */
    static final long MAX_PRICE = 1L << 31;

    private static final int MAX_FILLINGS = 2_000_000;

    /** One panel size worth placing: its length with its gap, its price, how often it may come. */
    private record Panel(long length, long price, long times) {}

    private HeldCheck() {}

    static boolean neverAbove(List<Cut> cuts, List<Long> prices, long gap, BoundCheck.Type type, long most) {
        long room = type.usable() + gap;
        List<Panel> panels = new ArrayList<>();
        for (int c = 0; c < cuts.size(); c++) {
            Cut cut = cuts.get(c);
            long length = cut.lengthSteps() + gap;
            if (prices.get(c) > 0 && cut.widthSteps() <= type.width() && length <= room) {
                panels.add(new Panel(length, prices.get(c), Math.min(cut.quantity(), room / length)));
            }
        }
        panels.sort(Comparator.comparing(p -> p, (a, b) -> Long.compare(b.price() * a.length(), a.price() * b.length())));
        Fillings fillings = new Fillings(new long[] {0}, new long[] {0}, 1);
        for (Panel panel : panels) {
            for (long k = 0; k < panel.times() && fillings.count > 0; k++) {
                fillings = fillings.with(panel, room, most);
                if (fillings.count > MAX_FILLINGS || fillings.dearest() > most) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Fillings by rising length and rising price. */
    private record Fillings(long[] length, long[] price, int count) {

        long dearest() {
            return count == 0 ? 0 : price[count - 1];
        }

        /** These and the same with one more panel, where panels still to come are worth no more per length. */
        Fillings with(Panel panel, long room, long most) {
            long[] newLength = new long[2 * count];
            long[] newPrice = new long[2 * count];
            int n = 0;
            int a = 0;
            int b = 0;
            long dearest = -1;
            while (a < count || b < count) {
                boolean old = b == count || a < count && length[a] <= length[b] + panel.length();
                long l = old ? length[a] : length[b] + panel.length();
                long p = old ? price[a++] : price[b++] + panel.price();
                if (l <= room && p > dearest && p + (room - l) * panel.price() / panel.length() > most) {
                    dearest = p;
                    newLength[n] = l;
                    newPrice[n++] = p;
                }
            }
            return new Fillings(newLength, newPrice, n);
        }
    }
}
