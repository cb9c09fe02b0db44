package io.github.bedjoint.drawing;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Symbol;
import java.util.Set;
import java.util.stream.Stream;

/** For whom a page is. */
public enum Copy {
    /** For the shop: everything. */
    SHOP("Shop copy"),
    /** For the crew: what to cut, hang and mind, and when; no price and no cost. */
    CREW("Crew copy"),
    /** For the customer: walls, dates, price, and what to mind; no costs, no hours and no rolls. */
    CUSTOMER("Customer copy");

    private static final Set<String> PRICE = Set.of("price.total", "job.price-per-area");

    private final String title;

    Copy(String title) {
        this.title = title;
    }

    /**
     * The copy in words.
     *
     * @return a heading
     */
    public String title() {
        return title;
    }

    /** Whether the price is on it. */
    boolean hasPrice() {
        return this != CREW;
    }

    /** Whether costs are on it. */
    boolean hasCosts() {
        return this == SHOP;
    }

    /** Whether rolls, cuts and hours are on it. */
    boolean hasWork() {
        return this != CUSTOMER;
    }

    /** Whether a formula shows money that is not for this reader. */
    boolean hides(Formula formula) {
        boolean money = Stream.concat(Stream.of(formula.result()), formula.symbols().stream()).map(Symbol::measure).anyMatch(Copy::isMoney);
        return switch (this) {
            case SHOP -> false;
            case CREW -> money;
            case CUSTOMER -> money && !PRICE.contains(formula.id());
        };
    }

    private static boolean isMoney(Measure measure) {
        return switch (measure) {
            case MONEY, MONEY_PER_AREA, MONEY_PER_LENGTH, MONEY_PER_TIME, MONEY_PER_VOLUME, MONEY_PER_MASS -> true;
            default -> false;
        };
    }
}
