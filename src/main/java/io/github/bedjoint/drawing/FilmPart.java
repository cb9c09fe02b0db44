package io.github.bedjoint.drawing;

import io.github.bedjoint.cutting.LaminatePlan;
import io.github.bedjoint.film.Film;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.job.RollOrder;
import io.github.bedjoint.layout.Panel;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.layout.PrintFile;
import io.github.bedjoint.layout.PrintList;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.waste.WasteShares;
import io.github.bedjoint.working.Working;
import java.util.HashMap;
import java.util.Map;
import org.apache.commons.lang3.StringUtils;
import org.joda.money.Money;

/** What is cut from which roll: the cut list, the rolls to open, where the film ends, and the laminate. */
final class FilmPart {
    private final PageWriter page;
    private final JobCost cost;

    FilmPart(PageWriter page) {
        this.page = page;
        this.cost = page.cost;
    }

    void write() {
        page.section("cuts", "Cut list");
        Map<String, Integer> rolls = rollOfPiece(cost.filmPlan());
        cost.layouts().forEach(layout -> cuts(layout, rolls));
        page.end();
        Film film = cost.job().materials().film();
        page.section("rolls", "Rolls to open");
        rolls("Film: " + film.name(), cost.filmPlan(), film.edgeMarginSteps());
        if (page.copy.hasCosts()) {
            cost.choice().filter(choice -> choice.layouts() > 1).ifPresent(choice ->
                    page.out.element("p", "Layouts with their rolls: " + choice + " (" + choice.layouts() + " combinations)."));
            page.out.element("h3", "Why these rolls");
            page.list(cost.rollReasons(page.style).lines());
        }
        page.out.open("div", "class", "side").open("div", "class", "keep");
        page.narrow(Drawing.waste(cost.waste(), page.style));
        page.out.close().open("div", "class", "grow");
        page.out.element("p", "Yield " + Print.fixed(100 * cost.waste().filmYield().share(), 1) + " %, without kept remnants " + Print.fixed(100 * cost.waste().filmYield().netShare(), 1)
                + " %; roll utilisation " + Print.fixed(100 * cost.waste().utilisation(), 1) + " %.");
        page.out.element("p", "Biggest first: " + WasteShares.of(cost.waste()) + ".");
        page.fold(cost.waste().working());
        page.out.close().close();
        cost.laminate().ifPresent(this::laminate);
        orders();
        page.end();
    }

    /** Says what is ordered where that is more than is opened. */
    private void orders() {
        for (RollOrder order : cost.orders()) {
            if (order.quantity().left() > 0) {
                page.out.element("p", "Order of " + order.name() + ", " + order + ".");
            }
        }
    }

    private static Map<String, Integer> rollOfPiece(RollPlan plan) {
        Map<String, Integer> rolls = new HashMap<>();
        for (int i = 0; i < plan.rolls().size(); i++) {
            int number = i + 1;
            plan.rolls().get(i).pieces().forEach(piece -> rolls.put(piece, number));
        }
        return rolls;
    }

    private void cuts(PanelLayout layout, Map<String, Integer> rolls) {
        String unit = page.style == UnitStyle.METRIC ? ", mm" : "";
        Table table = page.table(layout.wall().name() + wide(layout) + ", in the order of application", "Panel", ">Cut width" + unit, ">Cut length" + unit, ">From left" + unit, ">From below" + unit, ">Roll");
        for (Panel panel : layout.panels()) {
            Integer roll = rolls.get(panel.wall() + " " + panel.number());
            table.row(Integer.toString(panel.number()), plain(panel.cutWidthSteps()), plain(panel.cutLengthSteps()),
                    plain(panel.lowerLeft().xSteps()), plain(panel.lowerLeft().ySteps()), roll == null ? "" : roll.toString());
        }
        table.end();
        prints(layout);
        page.fold(Working.group("How the cut sizes came about", layout.panels().stream().map(Panel::working).toList()));
    }

    /** How wide the film of a wall is, where there is a choice. */
    private String wide(PanelLayout layout) {
        return cost.job().materials().films().size() == 1 ? "" : ", film " + page.cut(layout.film().rollWidthSteps()) + " wide";
    }

    private void prints(PanelLayout layout) {
        String unit = page.style == UnitStyle.METRIC ? ", mm" : "";
        Table table = page.table(layout.wall().name() + ", print files with their places in the picture", "File", ">From left" + unit,
                ">From top" + unit, ">Width" + unit, ">Height" + unit, "Turned", ">Copies");
        for (PrintList list : cost.prints()) {
            for (PrintFile file : list.files()) {
                if (file.panel().wall().equals(layout.wall().name())) {
                    table.row(file.name(), plain(file.fromLeftSteps()), plain(file.fromTopSteps()), plain(file.panel().alongSteps()),
                            plain(file.panel().upSteps()), file.quarterTurn() ? "yes" : "no", Integer.toString(file.copies()));
                }
            }
        }
        table.end();
    }

    /** A length without the unit, which stands in the head of its column. */
    private String plain(long steps) {
        return page.style == UnitStyle.METRIC ? StringUtils.substringBefore(page.cut(steps), " ") : page.cut(steps);
    }

    private void rolls(String title, RollPlan plan, long marginSteps) {
        page.wide(Drawing.rolls(title, plan, marginSteps, page.style));
        Table table = page.table(title, "Roll", "Opened from", "Pieces in cutting order", ">Left");
        for (int i = 0; i < plan.rolls().size(); i++) {
            OpenedRoll roll = plan.rolls().get(i);
            table.row(Integer.toString(i + 1), roll.stockId(), String.join(", ", roll.pieces()), page.cut(roll.remnantSteps()));
        }
        table.end();
        for (int i = 0; i < plan.rolls().size(); i++) {
            places("Roll " + (i + 1), plan.rolls().get(i));
        }
        if (page.copy.hasCosts()) {
            Money price = Money.ofMinor(cost.job().rules().currency(), plan.cost());
            Money bound = Money.ofMinor(cost.job().rules().currency(), plan.lowerBound());
            page.out.element("p", price + (plan.isProven() ? ", proven the cheapest." : "; no plan costs less than " + bound + "."));
        }
    }

    /** Where pieces lie that lie side by side or turned. */
    private void places(String title, OpenedRoll roll) {
        if (roll.cuts() == CutKind.CROSS && roll.placed().stream().noneMatch(PlacedCut::turned)) {
            return;
        }
        String unit = page.style == UnitStyle.METRIC ? ", mm" : "";
        String cuts = roll.cuts() == CutKind.FREE ? "some cuts stop inside the film" : "all cuts run from edge to edge";
        Table table = page.table(title + ", pieces side by side: " + cuts, "Panel", ">Behind the lead" + unit, ">From the left edge" + unit, ">Along the roll" + unit,
                ">Across" + unit, "Turned");
        for (PlacedCut piece : roll.placed()) {
            table.row(piece.cutId(), plain(piece.alongSteps()), plain(piece.acrossSteps()), plain(piece.lengthSteps()), plain(piece.widthSteps()),
                    piece.turned() ? "by 90 degrees" : "");
        }
        table.end();
    }

    private void laminate(LaminatePlan laminate) {
        page.out.element("h3", "Laminate");
        page.out.element("p", Measure.LENGTH.print(laminate.length().getValue(), page.style) + " in " + laminate.runs()
                + (laminate.runs() == 1 ? " run." : " runs.") + " A run is laminated before the panels are cut apart.");
        page.fold(laminate.working());
        String name = cost.job().materials().laminate().map(cover -> cover.name()).orElse("");
        rolls("Laminate: " + name, laminate.plan(), 0);
    }

}
