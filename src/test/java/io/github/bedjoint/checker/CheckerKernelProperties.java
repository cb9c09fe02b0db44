package io.github.bedjoint.checker;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.rolls.Cut;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** What the checker's searches say against trying everything, on numbers so small that this can be done. */
class CheckerKernelProperties {

    /** Panels still to place, each on any roll with room. */
    private static boolean fits(List<Cut> panels, int from, long gap, List<BoundCheck.Type> rolls, long[] room) {
        if (from == panels.size()) {
            return true;
        }
        Cut panel = panels.get(from);
        for (int r = 0; r < room.length; r++) {
            if (panel.widthSteps() <= rolls.get(r).width() && panel.lengthSteps() + gap <= room[r]) {
                room[r] -= panel.lengthSteps() + gap;
                boolean found = fits(panels, from + 1, gap, rolls, room);
                room[r] += panel.lengthSteps() + gap;
                if (found) {
                    return true;
                }
            }
        }
        return false;
    }

    private static List<Cut> singles(List<Cut> cuts) {
        List<Cut> singles = new ArrayList<>();
        cuts.forEach(cut -> {
            for (int k = 0; k < cut.quantity(); k++) {
                singles.add(cut);
            }
        });
        return singles;
    }

    /** The most that panels are worth on one roll, taking or leaving each. */
    private static long most(List<Cut> panels, List<Long> price, int from, long gap, BoundCheck.Type roll, long room) {
        if (from == panels.size()) {
            return 0;
        }
        long best = most(panels, price, from + 1, gap, roll, room);
        Cut panel = panels.get(from);
        long length = panel.lengthSteps() + gap;
        return panel.widthSteps() <= roll.width() && length <= room
                ? Math.max(best, price.get(Integer.parseInt(panel.id())) + most(panels, price, from + 1, gap, roll, room - length))
                : best;
    }

    @Property
    void isImpossible_anyRollsAndPrices_agreesWithTryingEverything(@ForAll long seed) {
        Random random = new Random(seed);
        List<Cut> cuts = new ArrayList<>();
        for (int c = 0; c < 2 + random.nextInt(4); c++) {
            cuts.add(new Cut(Integer.toString(c), 1 + random.nextInt(3), 1 + random.nextInt(9), 1 + random.nextInt(2), ""));
        }
        long gap = random.nextInt(2);
        List<BoundCheck.Type> types = new ArrayList<>();
        List<BoundCheck.Type> rolls = new ArrayList<>();
        long[] count = new long[1 + random.nextInt(3)];
        for (int t = 0; t < count.length; t++) {
            types.add(new BoundCheck.Type(t, true, 3 + random.nextInt(14), 1 + random.nextInt(3), 1, t, 0));
            count[t] = random.nextInt(4);
            for (int k = 0; k < count[t]; k++) {
                rolls.add(types.get(t));
            }
        }
        List<Cut> panels = singles(cuts);
        boolean fits = fits(panels, 0, gap, rolls, rolls.stream().mapToLong(r -> r.usable() + gap).toArray());
        assertThat(PackingCheck.isImpossible(cuts, gap, types, count, List.of())).isEqualTo(!fits);
        // True prices only shorten the search.
        List<Long> price = cuts.stream().map(cut -> (long) random.nextInt(9)).toList();
        long[] held = types.stream().mapToLong(t -> most(panels, price, 0, gap, t, t.usable() + gap)).toArray();
        assertThat(PackingCheck.isImpossible(cuts, gap, types, count, List.of(new PackingCheck.Prices(price, held)))).isEqualTo(!fits);
    }

    @Property
    void neverAbove_anyPanels_agreesWithTryingEverything(@ForAll long seed) {
        Random random = new Random(seed);
        List<HeldCheck.Panel> panels = new ArrayList<>();
        for (int k = 0; k < 1 + random.nextInt(4); k++) {
            panels.add(new HeldCheck.Panel(random.nextInt(9), random.nextInt(12), random.nextInt(4)));
        }
        long room = random.nextInt(25);
        long most = worth(panels, 0, room);
        assertThat(HeldCheck.neverAbove(panels, room, most)).isTrue();
        if (most > 0) {
            assertThat(HeldCheck.neverAbove(panels, room, most - 1)).isFalse();
        }
    }

    private static long worth(List<HeldCheck.Panel> panels, int from, long room) {
        if (from == panels.size()) {
            return 0;
        }
        HeldCheck.Panel panel = panels.get(from);
        long best = 0;
        for (long k = 0; k <= panel.times() && k * panel.length() <= room; k++) {
            best = Math.max(best, k * panel.price() + worth(panels, from + 1, room - k * panel.length()));
        }
        return best;
    }

    @Property
    void isLess_anyNumbers_agreesWithBigIntegers(@ForAll long a, @ForAll long b, @ForAll long c, @ForAll long d) {
        long[] n = {a & Long.MAX_VALUE, b & Long.MAX_VALUE, c & Long.MAX_VALUE, d & Long.MAX_VALUE};
        boolean less = BigInteger.valueOf(n[0]).multiply(BigInteger.valueOf(n[1]))
                .compareTo(BigInteger.valueOf(n[2]).multiply(BigInteger.valueOf(n[3]))) < 0;
        assertThat(HeldCheck.isLess(n[0], n[1], n[2], n[3])).isEqualTo(less);
    }

    /** 2^32 x 2^31 = 2^63 has its top bit in the low half; one less is below it, and equal is not less. */
    @Test
    void isLess_productsAroundTheSign_areComparedWithoutIt() {
        assertThat(HeldCheck.isLess(1L << 32, 1L << 31, Long.MAX_VALUE, 1)).isFalse();
        assertThat(HeldCheck.isLess(Long.MAX_VALUE, 1, 1L << 32, 1L << 31)).isTrue();
        assertThat(HeldCheck.isLess(1L << 32, 1L << 31, 1L << 31, 1L << 32)).isFalse();
        // 2^64 and 2^65 differ in the high half only.
        assertThat(HeldCheck.isLess(1L << 32, 1L << 32, 1L << 33, 1L << 32)).isTrue();
        assertThat(HeldCheck.isLess(1L << 33, 1L << 32, 1L << 32, 1L << 32)).isFalse();
    }

    /** A price times a room beyond 64 bits is not worked out, so that nothing is shown. */
    @Test
    void neverAbove_numbersBeyond64Bits_showNothing() {
        List<HeldCheck.Panel> dear = List.of(new HeldCheck.Panel(3, 1L << 40, 1));
        assertThat(HeldCheck.neverAbove(dear, 5, 1L << 40)).isTrue();
        assertThat(HeldCheck.neverAbove(dear, 1L << 30, 1L << 40)).isFalse();
    }

    /** Panels without length are all there at once, whatever the room. */
    @Test
    void neverAbove_panelsWithoutLength_countTogether() {
        List<HeldCheck.Panel> flat = List.of(new HeldCheck.Panel(0, 4, 3), new HeldCheck.Panel(0, 0, 9));
        assertThat(HeldCheck.neverAbove(flat, 5, 12)).isTrue();
        assertThat(HeldCheck.neverAbove(flat, 5, 11)).isFalse();
    }
}
