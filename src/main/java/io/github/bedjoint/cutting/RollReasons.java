package io.github.bedjoint.cutting;

import io.github.bedjoint.bounds.CheapestRolls;
import io.github.bedjoint.rolls.Certificate;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.LotBound;
import io.github.bedjoint.rolls.LotRule;
import io.github.bedjoint.rolls.PriceList;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Shortage;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.rolls.Stop;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongFunction;

/**
 * Why a roll plan opens the rolls it opens, told from its {@link Certificate} in words: what is counted, what a roll holds of it at most,
 * and which rolls are the cheapest that this leaves. Of a plan that is not proven it says what may still be gained and what ended the
 * search, of a job without a plan what is short.
 *
 * <p>Every number is one of the certificate or follows from it; long certificates are told by their first lists, with how many more there
 * are. {@link io.github.bedjoint.checker.PlanChecker} goes through all of it. Immutable.
 */
public final class RollReasons {
    private static final int MOST_LISTS = 3;

    private final RollPlan plan;
    private final RollWords words;

    private RollReasons(RollPlan plan, RollWords words) {
        this.plan = plan;
        this.words = words;
    }

    /**
     * The reasons of a plan, with lengths in metric units and amounts in minor units of money.
     *
     * @param plan a plan as the planner gave it, also one that is not proven or a job that has none
     * @return its reasons
     */
    public static RollReasons of(RollPlan plan) {
        return of(plan, UnitStyle.METRIC, Long::toString);
    }

    /**
     * The reasons of a plan for one reader.
     *
     * @param plan    a plan as the planner gave it, also one that is not proven or a job that has none
     * @param style   the reader's units
     * @param amounts how an amount in minor units of money is written
     * @return its reasons
     */
    public static RollReasons of(RollPlan plan, UnitStyle style, LongFunction<String> amounts) {
        return new RollReasons(plan, new RollWords(style, amounts));
    }

    /**
     * The reasons, one thought each.
     *
     * @return one or more lines of whole sentences
     */
    public List<String> lines() {
        if (plan.cuts().isEmpty()) {
            return List.of("Nothing is to be cut, so no roll is opened.");
        }
        List<String> lines = new ArrayList<>();
        if (plan.stop() == Stop.INFEASIBLE) {
            plan.shortages().forEach(shortage -> lines.add(shortage(shortage)));
            if (plan.shortages().stream().anyMatch(shortage -> shortage.reason() == Shortage.Reason.NO_ARRANGEMENT)) {
                certificate(lines);
            }
            return lines;
        }
        if (plan.lowerBound() > 0) {
            certificate(lines);
        }
        lines.add(ending());
        return lines;
    }

    private String ending() {
        boolean beside = SideBySide.concerns(plan.cuts(), plan.stock(), plan.terms());
        String work = "the search ended after " + Print.count(plan.work(), "counted step") + (beside ? ", and none tries every way to lay panels side by side." : ".");
        String least = plan.lowerBound() == 0 ? "No cost is below nothing" : "No plan costs less than " + words.money(plan.lowerBound());
        if (plan.stop() == Stop.NO_PLAN_FOUND) {
            return "No plan was found and none was shown to be impossible; " + work + (plan.lowerBound() > 0 ? " " + least + "." : "");
        }
        if (plan.isProven()) {
            return least + ", and this one costs just that.";
        }
        return least + ", this one costs " + words.money(plan.cost()) + ": at most " + words.money(plan.gap()) + " may still be saved; " + work;
    }

    private String shortage(Shortage shortage) {
        String needed = words.length(shortage.neededSteps());
        String there = words.length(shortage.availableSteps());
        return switch (shortage.reason()) {
            case CUT_TOO_WIDE -> "Panel " + shortage.cutId() + " is " + needed + " wide, and the widest roll gives " + there + ".";
            case CUT_TOO_LONG -> "Panel " + shortage.cutId() + " is " + needed + " long, and the longest roll wide enough for it gives " + there + ".";
            case STOCK_TOO_SHORT -> "All panels with their gaps need " + needed + " of roll, and all rolls together give " + there + ".";
            case NO_ARRANGEMENT -> "No choice of the rolls at hand holds the panels.";
            case UNDECIDED -> "Whether the rolls at hand hold the panels was not decided.";
        };
    }

    private void certificate(List<String> lines) {
        Certificate certificate = plan.certificate();
        if (plan.terms().lots() == LotRule.ONE_LOT_PER_WALL && certificate.lotBounds().isEmpty()) {
            lines.add("All panels of a wall come from one lot; but already if any roll might serve any wall, this holds:");
        }
        if (!certificate.lotBounds().isEmpty()) {
            lots(certificate.lotBounds(), lines);
        } else {
            lists(plan.cuts(), plan.stock(), certificate, plan.stop() == Stop.INFEASIBLE ? LotBound.IMPOSSIBLE : plan.lowerBound(), lines);
        }
    }

    private void lots(List<LotBound> bounds, List<String> lines) {
        lines.add("All panels of a wall come from one lot. However the walls are given to the lots, bounds like these add up to the least cost:");
        for (LotBound part : bounds.subList(0, Math.min(MOST_LISTS, bounds.size()))) {
            String walls = (part.walls().size() == 1 ? "Wall " : "Walls ") + RollWords.some(part.walls().stream().map(RollReasons::name).toList())
                    + " from lot " + name(part.lot());
            List<String> why = new ArrayList<>();
            List<Cut> cuts = plan.cuts().stream().filter(cut -> part.walls().contains(cut.group())).toList();
            List<Stock> stock = plan.stock().stream().filter(row -> row.lot().equals(part.lot())).toList();
            if (stock.isEmpty()) {
                why.add("It has no rolls.");
            } else {
                lists(cuts, stock, part.certificate(), part.bound(), why);
            }
            String least = part.bound() == LotBound.IMPOSSIBLE ? " cannot be cut." : " at least " + words.money(part.bound()) + ".";
            lines.add(walls + ":" + least + " " + String.join(" ", why));
        }
        if (bounds.size() > MOST_LISTS) {
            lines.add(Print.count(bounds.size() - MOST_LISTS, "more bound") + " of this kind.");
        }
    }

    private static String name(String name) {
        return name.isEmpty() ? "without a name" : name;
    }

    private void lists(List<Cut> cuts, List<Stock> stock, Certificate certificate, long bound, List<String> lines) {
        CheapestRolls cheapest = new CheapestRolls(cuts, stock, plan.terms().withLots(LotRule.ANY));
        List<PriceList> all = certificate.priceLists().stream().filter(list -> CheapestRolls.worth(cuts, list).signum() > 0).toList();
        for (int k = 0; k < all.size(); k++) {
            cheapest.add(all.get(k));
            if (k < MOST_LISTS) {
                String reading = new PriceReading(cuts, stock, plan.terms(), all.get(k), words).sentences();
                lines.add(reading + found(cheapest.next(), bound, k == 0 ? "The" : "With that too, the", "room for all of it"));
            }
        }
        int more = all.size() - MOST_LISTS;
        if (more > 0) {
            lines.add(Print.count(more, "more price list") + " like these; " + found(cheapest.next(), bound, "by all of them the", "room enough").strip());
        }
        exhausted(stock, certificate, cheapest, bound, lines);
    }

    private void exhausted(List<Stock> stock, Certificate certificate, CheapestRolls cheapest, long bound, List<String> lines) {
        List<List<List<Integer>>> tried = certificate.exhausted();
        if (tried.isEmpty()) {
            return;
        }
        List<String> choices = new ArrayList<>();
        for (List<List<Integer>> counts : tried) {
            cheapest.addExhausted(counts);
            choices.add(words.rolls(CheapestRolls.taken(stock, plan.terms(), counts)));
        }
        int shown = Math.min(MOST_LISTS, choices.size());
        lines.add("Every arrangement was tried on " + String.join("; on ", choices.subList(0, shown))
                + (choices.size() > shown ? "; and on " + (choices.size() - shown) + " more choices" : "") + ": the panels do not go on these, nor on fewer."
                + found(cheapest.next(), bound, "Of the others, the", "room enough"));
    }

    private String found(CheapestRolls.Answer answer, long bound, String start, String with) {
        if (!answer.known()) {
            return "";
        }
        if (answer.choice().isEmpty()) {
            return " The rolls at hand do not give that, even all of them.";
        }
        CheapestRolls.Choice choice = answer.choice().get(0);
        if (choice.cost() > bound) {
            return " " + start + " cheapest rolls with " + with + " cost more than " + words.money(bound - 1) + ".";
        }
        return " " + start + " cheapest rolls with " + with + " are " + words.rolls(choice.rolls()) + " for " + words.money(choice.cost()) + ".";
    }

    /** The reasons, a line each. */
    @Override
    public String toString() {
        return String.join("\n", lines());
    }
}
