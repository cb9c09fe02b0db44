package io.github.bedjoint.jobfile;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.bedjoint.risk.Outcome;
import io.github.bedjoint.risk.Outlook;
import io.github.bedjoint.risk.RiskResult;
import io.github.bedjoint.units.ShopUnits;
import java.io.IOException;
import java.time.format.DateTimeFormatter;

/** Writes how the figures of a job are spread: P50, P80, P95, and the share of each input in the variance. */
final class RangesWriter {
    private static final double[] SHARES = {0.50, 0.80, 0.95};

    private final JsonGenerator json;

    RangesWriter(JsonGenerator json) {
        this.json = json;
    }

    void write(RiskResult result) throws IOException {
        json.writeStartObject();
        json.writeNumberField("jobs", result.count());
        json.writeNumberField("impossible", result.impossible());
        json.writeNumberField("plans", result.plans());
        if (result.impossible() < result.count()) {
            for (double share : SHARES) {
                json.writeObjectFieldStart("p" + Math.round(share * 100));
                json.writeNumberField("hoursH", result.paidTime(share).to(ShopUnits.HOUR).getValue().doubleValue());
                json.writeNumberField("filmM", result.film(share).to(ShopUnits.METRE).getValue().doubleValue());
                json.writeStringField("cost", result.cost(share).toString());
                json.writeStringField("price", result.price(share).toString());
                if (result.handOver(share).isPresent()) {
                    json.writeStringField("handOver", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(result.handOver(share).get()));
                }
                json.writeEndObject();
            }
            shares(result.of(Outcome.PRICE));
        }
        json.writeEndObject();
    }

    private void shares(Outlook price) throws IOException {
        json.writeArrayFieldStart("sharesOfPriceVariance");
        for (Outlook.InputShare share : price.shares()) {
            json.writeStartObject();
            json.writeStringField("input", share.input().toString());
            json.writeNumberField("share", share.share());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeNumberField("jointly", price.jointly());
    }
}
