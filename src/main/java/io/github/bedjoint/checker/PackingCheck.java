package io.github.bedjoint.checker;

import io.github.bedjoint.rolls.Cut;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Shows by trying everything that given rolls cannot hold the panels.
 *
 * <p>Fills one roll after another, the shortest kind first. It is enough to try fillings to which no panel left can be
 * added, and in which no panel can give way to a longer one left: any other arrangement can be turned into such a one,
 * roll by roll. Within the last kind, where all panels left must go, the next roll may be the one with the longest panel
 * left. A state is given up if the panels left are longer than the rolls left, or priced above what these hold.
 */
final class PackingCheck {

    /** Prices of one list and what each type holds at them. */
    record Prices(List<Long> ofCut, long[] held) {}

    private static final long MAX_STEPS = 60_000_000;

    /** Every panel is a call within a call. */
    private static final long MAX_ROLLS = 600;

    private final long[] length;
    private final long[] width;
    private final int[] left;
    private final long[] room;
    private final long[] roomWidth;
    private final int[] type;
    private final long[] roomFrom;
    private final List<long[]> price = new ArrayList<>();
    private final List<long[]> heldFrom = new ArrayList<>();
    private final Set<String> hopeless = new HashSet<>();
    private long steps;

    private PackingCheck(List<Cut> cuts, long gap, List<BoundCheck.Type> types, long[] count, List<Prices> lists) {
        record Panel(long length, long width) {}
        List<Panel> panels = cuts.stream()
                .map(c -> new Panel(c.lengthSteps() + gap, c.widthSteps()))
                .distinct()
                .sorted(Comparator.comparingLong(Panel::length).thenComparing(Panel::width).reversed())
                .toList();
        length = panels.stream().mapToLong(Panel::length).toArray();
        width = panels.stream().mapToLong(Panel::width).toArray();
        left = new int[length.length];
        int[] panelOf = new int[cuts.size()];
        for (int c = 0; c < panelOf.length; c++) {
            panelOf[c] = panels.indexOf(new Panel(cuts.get(c).lengthSteps() + gap, cuts.get(c).widthSteps()));
            left[panelOf[c]] += cuts.get(c).quantity();
        }
        List<Integer> rolls = new ArrayList<>();
        for (int t = 0; t < types.size(); t++) {
            for (long k = 0; k < count[t]; k++) {
                rolls.add(t);
            }
        }
        rolls.sort(Comparator.comparingLong((Integer t) -> types.get(t).usable()).thenComparing(t -> t));
        type = rolls.stream().mapToInt(Integer::intValue).toArray();
        room = rolls.stream().mapToLong(t -> Math.max(0, types.get(t).usable() + gap)).toArray();
        roomWidth = rolls.stream().mapToLong(t -> types.get(t).width()).toArray();
        roomFrom = sumsFrom(room);
        for (Prices list : lists) {
            long[] own = new long[length.length];
            Arrays.fill(own, Long.MAX_VALUE);
            for (int c = 0; c < panelOf.length; c++) {
                own[panelOf[c]] = Math.min(own[panelOf[c]], list.ofCut().get(c));
            }
            price.add(own);
            heldFrom.add(sumsFrom(rolls.stream().mapToLong(t -> list.held()[t]).toArray()));
        }
    }

    private static long[] sumsFrom(long[] of) {
        long[] sum = new long[of.length + 1];
        for (int k = of.length - 1; k >= 0; k--) {
            sum[k] = sum[k + 1] + of[k];
        }
        return sum;
    }

    static boolean isImpossible(
            List<Cut> cuts, long gap, List<BoundCheck.Type> types, long[] count, List<Prices> lists) {
        if (Arrays.stream(count).sum() > MAX_ROLLS) {
            return false;
        }
        PackingCheck check = new PackingCheck(cuts, gap, types, count, lists);
        return !check.isPossible(0) && check.steps < MAX_STEPS;
    }

    private boolean isPossible(int roll) {
        long need = worth(length);
        if (need == 0) {
            return true;
        }
        if (need > roomFrom[roll] || steps >= MAX_STEPS) {
            return false;
        }
        steps += (long) left.length * (price.size() + 1);
        for (int q = 0; q < price.size(); q++) {
            if (worth(price.get(q)) > heldFrom.get(q)[roll]) {
                return false;
            }
        }
        String state = roll + Arrays.toString(left);
        if (hopeless.contains(state)) {
            return false;
        }
        int[] taken = new int[left.length];
        long spare = roomFrom[roll] - need;
        boolean possible;
        if (type[roll] != type[type.length - 1]) {
            possible = fill(roll, 0, room[roll], spare, taken);
        } else {
            int longest = 0;
            while (left[longest] == 0) {
                longest++;
            }
            possible = goes(longest, roll, room[roll]);
            if (possible) {
                left[longest]--;
                taken[longest]++;
                possible = fill(roll, longest, room[roll] - length[longest], spare, taken);
                left[longest]++;
            }
        }
        if (!possible) {
            hopeless.add(state);
        }
        return possible;
    }

    private long worth(long[] each) {
        long sum = 0;
        for (int i = 0; i < left.length; i++) {
            sum += each[i] * left[i];
        }
        return sum;
    }

    private boolean goes(int panel, int roll, long space) {
        return length[panel] <= space && width[panel] <= roomWidth[roll];
    }

    /** Takes or leaves each panel from {@code from} on. */
    private boolean fill(int roll, int from, long space, long spare, int[] taken) {
        int panel = from;
        while (panel < left.length && (left[panel] == 0 || !goes(panel, roll, space))) {
            panel++;
            steps++;
        }
        if (panel == left.length) {
            return space <= spare && isFull(roll, space, taken) && isPossible(roll + 1);
        }
        if (++steps >= MAX_STEPS) {
            return false;
        }
        left[panel]--;
        taken[panel]++;
        boolean possible = fill(roll, panel, space - length[panel], spare, taken);
        left[panel]++;
        taken[panel]--;
        if (possible) {
            return true;
        }
        // Leave all of them.
        return fill(roll, panel + 1, space, spare, taken);
    }

    private boolean isFull(int roll, long space, int[] taken) {
        for (int i = 0; i < left.length; i++) {
            if (left[i] > 0 && goes(i, roll, room[roll])) {
                if (length[i] <= space) {
                    return false;
                }
                for (int k = i + 1; k < left.length && length[i] - length[k] <= space; k++) {
                    if (taken[k] > 0 && length[k] < length[i] && width[k] <= width[i]) {
                        return false;
                    }
                }
            }
        }
        steps += left.length;
        return true;
    }
}
