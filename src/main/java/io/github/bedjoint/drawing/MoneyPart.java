package io.github.bedjoint.drawing;

import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.PriceBuildUp;
import io.github.bedjoint.units.Print;
import java.util.Arrays;
import java.util.List;
import org.joda.money.Money;

/** The price: for the shop line by line and as bars, for the customer from the price on. */
final class MoneyPart {
    private final PageWriter page;
    private final PriceBuildUp price;

    MoneyPart(PageWriter page) {
        this.page = page;
        this.price = page.cost.price();
    }

    void write() {
        page.section("price", "Price");
        if (page.copy.hasCosts()) {
            costs();
        } else {
            Table table = page.table("Price", "Step", ">Amount");
            steps(table, 0);
            page.working("price.total").ifPresent(page::fold);
        }
        page.end();
    }

    private void costs() {
        Table table = page.table("Lines and price", "Line", ">Amount", ">Quantity", ">Rate");
        for (CostLine line : price.lines()) {
            table.row(List.of(line.working()), line.title(), line.amount().toString(), line.rate().measure().print(line.quantity(), page.style),
                    line.rate().toString());
        }
        table.total("Direct cost", price.direct().toString(), "", "");
        table.row("Overhead", price.overhead().toString(), "", "");
        table.row("Contingency", price.contingency().toString(), "", "");
        table.total("Cost", price.cost().toString(), "", "");
        steps(table, 2);
        page.out.open("div", "class", "side").open("div", "class", "keep");
        page.narrow(Drawing.cost(price));
        page.out.close().open("div", "class", "grow");
        page.out.element("p", "Margin kept: " + Print.fixed(100 * price.marginKept(), 1) + " % of the price before tax.");
        page.fold(price.working());
        page.out.close().close();
    }

    /** The steps from the price to the total, with empty cells after the amount. */
    private void steps(Table table, int after) {
        row(table, after, price.isMinimum() ? "Price, the minimum" : "Price", price.list());
        if (!price.net().equals(price.list())) {
            row(table, after, "Price after discount", price.net());
        }
        row(table, after, "Tax", price.tax());
        table.total(cells(after, "Total", price.total()));
        table.end();
    }

    private static void row(Table table, int after, String words, Money amount) {
        table.row(cells(after, words, amount));
    }

    private static String[] cells(int after, String words, Money amount) {
        String[] cells = new String[after + 2];
        Arrays.fill(cells, "");
        cells[0] = words;
        cells[1] = amount.toString();
        return cells;
    }
}
