package io.github.bedjoint.jobfile;

import io.github.bedjoint.price.Overhead;
import io.github.bedjoint.price.PriceRules;
import java.io.IOException;
import java.util.Objects;

/** Writes how cost becomes price. */
final class PriceWriter {
    private final JsonOut out;

    PriceWriter(JsonOut out) {
        this.out = out;
    }

    void write(PriceRules rules) throws IOException {
        out.object("overhead", () -> overhead(rules.overhead()));
        out.number("contingency", rules.contingency().doubleValue());
        out.object("profit", () -> out.number(rules.profit().isMargin() ? "margin" : "markup", rules.profit().share().doubleValue()));
        out.field("minimum", rules.minimum().toString());
        out.number("discount", rules.discount().doubleValue());
        out.number("tax", rules.tax().doubleValue());
        out.word("rounding", rules.rounding());
    }

    private void overhead(Overhead overhead) throws IOException {
        switch (overhead.basis()) {
            case DIRECT_COST -> out.number("onDirectCost", overhead.share().doubleValue());
            case LABOUR_COST -> out.number("onLabourCost", overhead.share().doubleValue());
            case HOURS -> out.field("perHour", Objects.requireNonNull(overhead.rate()).toString());
        }
    }
}
