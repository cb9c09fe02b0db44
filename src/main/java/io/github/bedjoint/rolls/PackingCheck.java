package io.github.bedjoint.rolls;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Shows by trying everything that given rolls cannot hold the panels: the longest panel left goes into each roll that
 * differs from the others, and a state of rolls seen before is not tried again.
 */
final class PackingCheck {

    private static final int MAX_STATES = 400_000;

    private final long[] length;
    private final long[] width;
    private final long[] tail;
    private final Set<String> seen = new HashSet<>();
    private boolean gaveUp;

    private PackingCheck(long[] length, long[] width) {
        this.length = length;
        this.width = width;
        tail = new long[length.length + 1];
        for (int i = length.length - 1; i >= 0; i--) {
            tail[i] = tail[i + 1] + length[i];
        }
    }

    static boolean isImpossible(List<Cut> cuts, long gap, List<BoundCheck.Type> types, long[] count) {
        List<Cut> panels = new ArrayList<>(cuts);
        panels.sort(Comparator.comparingLong(Cut::lengthSteps).thenComparing(Cut::widthSteps).reversed());
        List<Long> length = new ArrayList<>();
        List<Long> width = new ArrayList<>();
        for (Cut cut : panels) {
            for (int k = 0; k < cut.quantity(); k++) {
                length.add(cut.lengthSteps() + gap);
                width.add(cut.widthSteps());
            }
        }
        List<long[]> rolls = new ArrayList<>();
        for (int t = 0; t < types.size(); t++) {
            for (long k = 0; k < count[t]; k++) {
                rolls.add(new long[] {types.get(t).usable() + gap, types.get(t).width()});
            }
        }
        PackingCheck check = new PackingCheck(
                length.stream().mapToLong(Long::longValue).toArray(),
                width.stream().mapToLong(Long::longValue).toArray());
        return !check.fits(0, rolls) && !check.gaveUp;
    }

    private boolean fits(int panel, List<long[]> rolls) {
        if (panel == length.length) {
            return true;
        }
        long shortest = length[length.length - 1];
        long room = 0;
        List<long[]> open = new ArrayList<>();
        for (long[] roll : rolls) {
            if (roll[0] >= shortest) {
                open.add(roll);
                room += roll[0];
            }
        }
        open.sort(Comparator.<long[]>comparingLong(r -> r[0]).thenComparingLong(r -> r[1]));
        if (gaveUp || room < tail[panel] || !seen.add(panel + Arrays.deepToString(open.toArray()))) {
            return false;
        }
        if (seen.size() > MAX_STATES) {
            gaveUp = true;
            return false;
        }
        for (int r = 0; r < open.size(); r++) {
            long[] roll = open.get(r);
            if (roll[0] < length[panel] || width[panel] > roll[1] || r > 0 && Arrays.equals(roll, open.get(r - 1))) {
                continue;
            }
            List<long[]> next = new ArrayList<>(open);
            next.set(r, new long[] {roll[0] - length[panel], roll[1]});
            if (fits(panel + 1, next)) {
                return true;
            }
        }
        return false;
    }
}
