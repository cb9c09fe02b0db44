package io.github.bedjoint.jobfile;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.bedjoint.cutting.LongerRolls;
import io.github.bedjoint.cutting.RollReasons;
import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.LotBound;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.PriceList;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Shortage;
import io.github.bedjoint.units.CsvTable;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.waste.WasteShares;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * Writes a roll plan of a plain cut list as JSON or as a table. Lengths are in metres, costs as numbers in the currency of the stock
 * list.
 *
 * @param plan   the plan
 * @param stock  the stock list it was made from, for its currency
 * @param longer what longer rolls would save, or empty
 */
public record PlanResult(RollPlan plan, StockList stock, Optional<LongerRolls> longer) {

    /**
     * A plan without what longer rolls would save.
     *
     * @param plan  the plan
     * @param stock the stock list it was made from, for its currency
     */
    public PlanResult(RollPlan plan, StockList stock) {
        this(plan, stock, Optional.empty());
    }

    /**
     * The plan as JSON: {@code feasible, cost, lowerBound, proven, reasons[], waste {share, parts {}}, certificate, rolls[] {stock, cuts,
     * pieces[], places[], used, remnant, waste}, shortages[], longerRolls {moreM, cost, costByPrices, rate, savesFromM, savesFromCost, least,
     * lines[]}}. The
     * places are those of the pieces, one for one: where each starts behind the lead and from the left edge, how far it reaches, and whether it
     * is turned. Reasons are sentences in metric units; waste is what is not panels, as shares of the film opened.
     *
     * @return the text, ended by a line feed
     */
    public String json() {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = Json.pretty(text)) {
            write(json);
            json.writeRaw('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private void write(JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeBooleanField("feasible", plan.isFeasible());
        if (plan.isFeasible()) {
            json.writeNumberField("cost", amount(plan.cost()));
            json.writeNumberField("lowerBound", amount(plan.lowerBound()));
            json.writeBooleanField("proven", plan.isProven());
            json.writeStringField("currency", stock.currency());
        }
        json.writeStringField("stop", Fields.word(plan.stop()));
        json.writeStringField("unit", "m");
        ReasonsWriter reasons = new ReasonsWriter(json);
        reasons.lines("reasons", RollReasons.of(plan, UnitStyle.METRIC, stock::amount).lines());
        if (plan.isFeasible()) {
            reasons.waste(WasteShares.of(plan));
        }
        List<WasteShares> waste = WasteShares.ofEachRoll(plan);
        json.writeArrayFieldStart("rolls");
        for (int i = 0; i < waste.size(); i++) {
            OpenedRoll roll = plan.rolls().get(i);
            json.writeStartObject();
            json.writeStringField("stock", roll.stockId());
            json.writeStringField("cuts", Fields.word(roll.cuts()));
            json.writeArrayFieldStart("pieces");
            for (String piece : roll.pieces()) {
                json.writeString(piece);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("places");
            for (PlacedCut piece : roll.placed()) {
                json.writeStartObject();
                json.writeNumberField("along", Steps.toM(piece.alongSteps()));
                json.writeNumberField("across", Steps.toM(piece.acrossSteps()));
                json.writeNumberField("length", Steps.toM(piece.lengthSteps()));
                json.writeNumberField("width", Steps.toM(piece.widthSteps()));
                json.writeBooleanField("turned", piece.turned());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeNumberField("used", Steps.toM(roll.usedSteps()));
            json.writeNumberField("remnant", Steps.toM(roll.remnantSteps()));
            reasons.waste(waste.get(i));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("shortages");
        for (Shortage shortage : plan.shortages()) {
            json.writeStartObject();
            json.writeStringField("reason", Fields.word(shortage.reason()));
            json.writeStringField("cut", shortage.cutId());
            json.writeNumberField("needed", Steps.toM(shortage.neededSteps()));
            json.writeNumberField("available", Steps.toM(shortage.availableSteps()));
            json.writeEndObject();
        }
        json.writeEndArray();
        if (longer.isPresent()) {
            reasons.longer(longer.get(), longer.get().lines(UnitStyle.METRIC, stock::amount), this::amount);
        }
        json.writeFieldName("certificate");
        certificate(json, plan.certificate());
        json.writeEndObject();
    }

    /** Prices and holdings are whole numbers in the order of the cut list and the stock list, as the checker takes them. */
    private static void certificate(JsonGenerator json, Certificate certificate) throws IOException {
        json.writeStartObject();
        json.writeArrayFieldStart("priceLists");
        for (PriceList list : certificate.priceLists()) {
            json.writeStartObject();
            json.writeFieldName("prices");
            numbers(json, list.prices());
            json.writeFieldName("held");
            table(json, list.held());
            json.writeObjectFieldStart("across");
            json.writeFieldName("from");
            numbers(json, list.across().from());
            json.writeFieldName("counts");
            numbers(json, list.across().counts());
            json.writeFieldName("most");
            numbers(json, list.across().most());
            json.writeEndObject();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("exhausted");
        for (List<List<Integer>> counts : certificate.exhausted()) {
            table(json, counts);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("lotBounds");
        for (LotBound lot : certificate.lotBounds()) {
            json.writeStartObject();
            json.writeStringField("lot", lot.lot());
            json.writeArrayFieldStart("groups");
            for (String wall : lot.walls()) {
                json.writeString(wall);
            }
            json.writeEndArray();
            json.writeBooleanField("possible", lot.bound() != LotBound.IMPOSSIBLE);
            json.writeNumberField("bound", lot.bound() == LotBound.IMPOSSIBLE ? 0 : lot.bound());
            json.writeFieldName("certificate");
            certificate(json, lot.certificate());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void table(JsonGenerator json, List<? extends List<? extends Number>> rows) throws IOException {
        json.writeStartArray();
        for (List<? extends Number> row : rows) {
            numbers(json, row);
        }
        json.writeEndArray();
    }

    private static void numbers(JsonGenerator json, List<? extends Number> row) throws IOException {
        json.writeStartArray();
        for (Number number : row) {
            json.writeNumber(number.longValue());
        }
        json.writeEndArray();
    }

    /**
     * The plan as a table, one row a piece: {@code roll,stock,place,piece,along m,across m,turned}; rolls numbered from 1, pieces of a
     * roll numbered from 1 in cutting order, each with its start behind the lead and from the left edge.
     *
     * @return the table (RFC 4180), lines ended by a line feed; cells that a spreadsheet might run as a formula are defused by an apostrophe
     */
    public String csv() {
        StringBuilder table = new StringBuilder("roll,stock,place,piece,along m,across m,turned\n");
        int number = 0;
        for (OpenedRoll roll : plan.rolls()) {
            number++;
            int place = 0;
            for (PlacedCut piece : roll.placed()) {
                place++;
                table.append(number).append(',').append(CsvTable.defused(roll.stockId())).append(',').append(place).append(',')
                        .append(CsvTable.defused(piece.cutId())).append(',').append(metres(piece.alongSteps())).append(',')
                        .append(metres(piece.acrossSteps())).append(',').append(piece.turned() ? "yes" : "no").append('\n');
            }
        }
        return table.toString();
    }

    /** Exact: a step is 0.0000125 m. */
    private static String metres(long steps) {
        return BigDecimal.valueOf(steps).multiply(new BigDecimal("0.0000125")).stripTrailingZeros().toPlainString();
    }

    private BigDecimal amount(long minor) {
        return BigDecimal.valueOf(minor, stock.decimals());
    }
}
