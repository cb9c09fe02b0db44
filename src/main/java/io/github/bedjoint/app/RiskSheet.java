package io.github.bedjoint.app;

import io.github.bedjoint.risk.Outcome;
import io.github.bedjoint.risk.Outlook.InputShare;
import io.github.bedjoint.risk.RiskResult;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.Locale;

/** How sure a job's figures are, as plain text in the reader's units. */
final class RiskSheet {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEE yyyy-MM-dd HH:mm", Locale.ROOT);

    private final RiskResult risk;
    private final UnitStyle style;

    RiskSheet(RiskResult risk, UnitStyle style) {
        this.risk = risk;
        this.style = style;
    }

    String text() {
        StringBuilder out = new StringBuilder("\nHOW SURE\n  ").append(Print.count(risk.count(), "simulated job"));
        out.append(", ").append(risk.impossible()).append(" of them cannot be done; 80 of 100 do not pass P80\n");
        risk.reasons().forEach(reason -> out.append("  Cannot be done: ").append(reason).append('\n'));
        if (risk.impossible() == risk.count()) {
            return out.toString();
        }
        Columns rows = new Columns("  ", "lrrr").row("", "P50", "P80", "P95");
        for (Outcome outcome : Outcome.values()) {
            if (risk.of(outcome).count() > 0) {
                rows.row(outcome.title(), value(outcome, 0.5), value(outcome, 0.8), value(outcome, 0.95));
            }
        }
        rows.print(out);
        out.append("  Where the spread of the price comes from\n");
        Columns shares = new Columns("  ", "lr");
        risk.of(Outcome.PRICE).shares().stream()
                .sorted(Comparator.comparingDouble((InputShare share) -> -share.share()))
                .forEach(share -> shares.row(share.input().toString(), percent(share.share())));
        shares.row("several inputs jointly", percent(risk.of(Outcome.PRICE).jointly())).print(out);
        return out.toString();
    }

    private String value(Outcome outcome, double share) {
        return switch (outcome) {
            case PAID_TIME -> Print.fixed(risk.of(outcome).percentile(share) / 3600, 2) + " h";
            case FILM -> Measure.LENGTH.print(risk.of(outcome).percentile(share), style);
            case COST -> risk.cost(share).toString();
            case PRICE -> risk.price(share).toString();
            case HAND_OVER -> risk.handOver(share).map(DATE::format).orElse("");
        };
    }

    private static String percent(double share) {
        return Print.fixed(100 * share, 1) + " %";
    }
}
