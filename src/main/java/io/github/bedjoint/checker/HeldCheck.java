package io.github.bedjoint.checker;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Shows that panels in a room are never priced above a number.
 *
 * <p>Builds all fillings panel by panel and keeps, of those alike, only the shorter or dearer ones, and of those only the
 * ones that could still come above the number.
 */
final class HeldCheck {

    private static final int MAX_FILLINGS = 2_000_000;

    /** One panel size worth placing: the room it takes, its price, how often it may come. */
    record Panel(long length, long price, long times) {}

    private HeldCheck() {}

    static boolean neverAbove(List<Panel> all, long room, long most) {
        long base = 0;
        List<Panel> panels = new ArrayList<>();
        boolean dear = false;
        long dearest = 1;
        for (Panel panel : all) {
            if (panel.price > 0 && panel.length == 0) {
                base = Math.addExact(base, Math.multiplyExact(panel.price, panel.times));
            } else if (panel.price > 0 && panel.length <= room) {
                panels.add(new Panel(panel.length, panel.price, Math.min(panel.times, room / panel.length)));
                dearest = Math.max(dearest, panel.price);
                dear |= isLess(most, panel.length, panel.price, room);
            }
        }
        // Where no panel is dearer for its length than the whole room, panels in it are not dearer than it.
        if (base == 0 && !dear) {
            return true;
        }
        return base <= most && room <= Long.MAX_VALUE / dearest && search(panels, room, most - base);
    }

    private static boolean search(List<Panel> panels, long room, long most) {
        panels.sort(Comparator.comparing(p -> p, (a, b) -> isLess(a.price, b.length, b.price, a.length) ? 1 : isLess(b.price, a.length, a.price, b.length) ? -1 : 0));
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

    /** Whether a x b is less than c x d, for numbers that are not negative; exact in 128 bits. */
    static boolean isLess(long a, long b, long c, long d) {
        long high = Math.multiplyHigh(a, b);
        long other = Math.multiplyHigh(c, d);
        return high != other ? high < other : Long.compareUnsigned(a * b, c * d) < 0;
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
            // The panel lengthens what it is added to, so that b never passes a.
            while (b < count) {
                boolean old = a < count && length[a] <= length[b] + panel.length();
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
