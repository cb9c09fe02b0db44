package io.github.bedjoint.skyline;

import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.Stock;
import java.util.ArrayList;
import java.util.List;

/**
 * A way that a cut may lie on a roll.
 *
 * @param across how far it reaches across, in steps of 12.5 micrometres
 * @param along how far it reaches along, in steps
 * @param turned whether that is by 90 degrees
 */
public record Lying(long across, long along, boolean turned) {

    /** The ways in which a cut fits some roll that is there. */
    public static List<Lying> of(Cut cut, List<Stock> stock, CuttingTerms terms) {
        List<Lying> ways = new ArrayList<>();
        Lying upright = new Lying(cut.widthSteps(), cut.lengthSteps(), false);
        Lying turned = new Lying(cut.lengthSteps(), cut.widthSteps(), true);
        if (stock.stream().anyMatch(row -> upright.fits(row, terms))) {
            ways.add(upright);
        }
        if (cut.rotate() && upright.across != upright.along && stock.stream().anyMatch(row -> turned.fits(row, terms))) {
            ways.add(turned);
        }
        return ways;
    }

    private boolean fits(Stock row, CuttingTerms terms) {
        return row.available() != 0 && across <= row.widthSteps() && along <= terms.usableSteps(row);
    }
}
