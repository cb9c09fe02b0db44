package io.github.bedjoint.checker;

import io.github.bedjoint.rolls.AcrossScale;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.CuttingTerms;
import java.util.ArrayList;
import java.util.List;

/** The checker's own reading of what panels count across a roll. */
final class AcrossCheck {

    private static final long MAX_COUNT = 1L << 31;

    private final List<Cut> cuts;
    private final CuttingTerms terms;
    private final AcrossScale scale;

    AcrossCheck(List<Cut> cuts, CuttingTerms terms, AcrossScale scale) {
        this.cuts = cuts;
        this.terms = terms;
        this.scale = scale;
    }

    /** Whether two panels might lie side by side on such a roll, or one turned. */
    static boolean isSideBySide(List<Cut> cuts, CuttingTerms terms, BoundCheck.Type type) {
        long narrowest = Long.MAX_VALUE / 4;
        long second = narrowest;
        for (Cut cut : cuts) {
            if (cut.rotate() && cut.widthSteps() != cut.lengthSteps() && cut.lengthSteps() <= type.width()
                    && cut.widthSteps() <= type.usable()) {
                return true;
            }
            for (int k = 0; k < Math.min(2, cut.quantity()); k++) {
                second = Math.min(second, Math.max(narrowest, cut.widthSteps()));
                narrowest = Math.min(narrowest, cut.widthSteps());
            }
        }
        return terms.cuts() != CutKind.CROSS && narrowest + second + terms.gapSteps() <= type.width();
    }

    /** Whether the lists belong together: widths rise, nothing is negative, each stock row has a number. */
    boolean isWellFormed(int stockRows) {
        boolean fine = scale.from().size() == scale.counts().size() && scale.most().size() == stockRows;
        for (int k = 0; fine && k < scale.from().size(); k++) {
            fine = scale.counts().get(k) >= 0
                    && scale.counts().get(k) <= MAX_COUNT
                    && (k == 0 || scale.from().get(k - 1) < scale.from().get(k));
        }
        return fine && scale.most().stream().allMatch(m -> m >= 0 && m <= MAX_COUNT);
    }

    private long count(long across) {
        long count = 0;
        for (int k = 0; k < scale.from().size() && scale.from().get(k) <= across; k++) {
            count = scale.counts().get(k);
        }
        return count;
    }

    /** Whether panels side by side on such a roll never count more than the scale says. */
    boolean holds(BoundCheck.Type type) {
        long most = scale.most().get(type.row());
        List<HeldCheck.Panel> panels = new ArrayList<>();
        for (Cut cut : cuts) {
            for (long[] way : ways(cut, type)) {
                if (terms.cuts() == CutKind.CROSS && count(way[0]) > most) {
                    return false;
                }
                panels.add(new HeldCheck.Panel(way[0] + terms.gapSteps(), count(way[0]), cut.quantity()));
            }
        }
        return terms.cuts() == CutKind.CROSS || HeldCheck.neverAbove(panels, type.width() + terms.gapSteps(), most);
    }

    /** Whether no such roll holds panels priced above a number, shown for panels in a line. */
    boolean neverAbove(List<Long> prices, BoundCheck.Type type, long most) {
        List<HeldCheck.Panel> panels = new ArrayList<>();
        for (int c = 0; c < cuts.size(); c++) {
            long least = Long.MAX_VALUE;
            for (long[] way : ways(cuts.get(c), type)) {
                least = Math.min(least, Math.multiplyExact(count(way[0]), way[1] + terms.gapSteps()));
            }
            if (least < Long.MAX_VALUE) {
                panels.add(new HeldCheck.Panel(least, prices.get(c), cuts.get(c).quantity()));
            }
        }
        long room = Math.max(0, type.usable() + terms.gapSteps());
        return HeldCheck.neverAbove(panels, Math.multiplyExact(scale.most().get(type.row()), room), most);
    }

    /** How a cut may lie on such a roll: across and along. */
    private static List<long[]> ways(Cut cut, BoundCheck.Type type) {
        List<long[]> ways = new ArrayList<>();
        if (cut.widthSteps() <= type.width() && cut.lengthSteps() <= type.usable()) {
            ways.add(new long[] {cut.widthSteps(), cut.lengthSteps()});
        }
        if (cut.rotate() && cut.widthSteps() != cut.lengthSteps() && cut.lengthSteps() <= type.width() && cut.widthSteps() <= type.usable()) {
            ways.add(new long[] {cut.lengthSteps(), cut.widthSteps()});
        }
        return ways;
    }
}
