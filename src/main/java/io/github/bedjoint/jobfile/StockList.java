package io.github.bedjoint.jobfile;

import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.lang3.StringUtils;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;

/**
 * A plain list of rolls, as a table with the columns {@code id,width,length,price,available} and optionally {@code lot}.
 *
 * <p>Lengths are written as in {@link CutList}. A price is a number with its currency before it, in the cell or in the heading
 * ({@code price EUR}), or a bare number where the currency does not matter. An empty {@code available} means as many as one likes.
 *
 * @param stock    the rolls in the table's order, prices in units of the last decimal
 * @param currency the currency's code, or empty where prices are bare numbers
 * @param decimals how many decimals the prices have
 */
public record StockList(List<Stock> stock, String currency, int decimals) {
    private static final Range SIZE = Range.above(0, 10_000);
    private static final int MOST_DECIMALS = 4;

    /**
     * Copies the list.
     *
     * @param stock    the rolls in the table's order
     * @param currency the currency's code, or empty
     * @param decimals how many decimals the prices have
     */
    public StockList {
        stock = List.copyOf(stock);
    }

    /**
     * Reads a stock list.
     *
     * @param csv the table as text (RFC 4180)
     * @return the rolls; widths of one step where none are given
     * @throws RefusedException if a row cannot be read; it names row, column and value
     */
    public static StockList parse(String csv) {
        HeadedTable table =
                HeadedTable.parse("stock list", csv, List.of("id", "length", "price"), List.of("width", "available", "lot"));
        table.allOrNone("width");
        table.unique("id");
        String currency = StringUtils.isAlpha(StringUtils.left(table.rows().get(0).price("price"), 3))
                ? StringUtils.left(table.rows().get(0).price("price"), 3)
                : "";
        int decimals = currency.isEmpty() ? 0 : decimals(table.rows().get(0), currency);
        List<BigDecimal> prices = new ArrayList<>();
        for (HeadedTable.Row row : table.rows()) {
            prices.add(price(row, currency));
            decimals = currency.isEmpty() ? Math.max(decimals, prices.get(prices.size() - 1).scale()) : decimals;
        }
        List<Stock> stock = new ArrayList<>();
        for (int i = 0; i < prices.size(); i++) {
            stock.add(stock(table.rows().get(i), prices.get(i), decimals));
        }
        return new StockList(stock, currency, decimals);
    }

    private static int decimals(HeadedTable.Row row, String code) {
        try {
            return CurrencyUnit.of(code).getDecimalPlaces();
        } catch (IllegalCurrencyException e) {
            throw row.refused("price", "must have a known currency code", "Maybe EUR, USD or GBP.");
        }
    }

    private static BigDecimal price(HeadedTable.Row row, String currency) {
        String text = row.price("price");
        if (!text.startsWith(currency)) {
            throw row.refused("price", "must be in " + currency + " like the row above", "Maybe convert it first.");
        }
        String number = text.substring(currency.length()).strip();
        if (!number.matches("\\d{1,12}(\\.\\d{1," + MOST_DECIMALS + "})?")) {
            throw row.refused("price", "must be a number with a point and at most " + MOST_DECIMALS + " decimals", "Maybe a comma was used.");
        }
        return new BigDecimal(number);
    }

    private static Stock stock(HeadedTable.Row row, BigDecimal price, int decimals) {
        long width = row.text("width").isEmpty() ? 1 : Steps.down(row.length("width", SIZE));
        long length = Steps.down(row.length("length", SIZE));
        int available = row.text("available").isEmpty() ? Stock.UNLIMITED : row.count("available", 0, 1_000_000);
        if (price.stripTrailingZeros().scale() > decimals) {
            throw row.refused("price", "must have at most " + decimals + " decimals", "Maybe a price per length was meant.");
        }
        long cost = price.movePointRight(decimals).longValueExact();
        return row.made("id", () -> new Stock(row.text("id"), width, length, cost, available, row.text("lot")));
    }

    /**
     * An amount of this list's prices in words.
     *
     * @param minor the amount in units of the last decimal
     * @return such as {@code EUR 396.00}
     */
    public String amount(long minor) {
        String number = BigDecimal.valueOf(minor, decimals).toPlainString();
        return currency.isEmpty() ? number : currency + " " + number;
    }
}
