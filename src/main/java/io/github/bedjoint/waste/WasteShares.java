package io.github.bedjoint.waste;

import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Steps;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the waste of some film is, the biggest part first, as shares of the film opened: of a whole job, of the rolls of a plain cut list,
 * or of one roll.
 *
 * <p>A plain cut list knows no wall and no edge margin: what counts there are the panels, and their stock has its printable width. The parts
 * and what is of use add up to the film opened. Lengths without widths, where stock and cuts are one step wide, give the same shares.
 *
 * @param of what the film is of: {@code all film} or the number and name of a roll
 * @param openedM2 film opened, in square metres
 * @param useM2 what is of use: visible on the wall, or panels of a cut list
 * @param partsM2 what is not, in square metres by part, the biggest first; parts that do not occur are left out
 */
public record WasteShares(String of, double openedM2, double useM2, Map<WastePart, Double> partsM2) {
    private static final double LEAST = 1e-12;

    /**
     * Orders the parts and leaves out those that do not occur.
     *
     * @param of as above
     * @param openedM2 as above
     * @param useM2 as above
     * @param partsM2 as above, in any order
     */
    public WasteShares {
        Map<WastePart, Double> ordered = new LinkedHashMap<>();
        partsM2.entrySet().stream()
                .filter(part -> part.getValue() > LEAST * openedM2)
                .sorted(Map.Entry.<WastePart, Double>comparingByValue().reversed().thenComparing(Map.Entry.comparingByKey()))
                .forEach(part -> ordered.put(part.getKey(), part.getValue()));
        partsM2 = Collections.unmodifiableMap(ordered);
    }

    /**
     * The waste of a job.
     *
     * @param account its account
     * @return everything but what is visible on the wall
     */
    public static WasteShares of(WasteAccount account) {
        Map<WastePart, Double> parts = new EnumMap<>(WastePart.class);
        parts.putAll(account.partsM2());
        Double visible = parts.remove(WastePart.VISIBLE);
        return new WasteShares("all film", account.openedM2(), visible == null ? 0 : visible, parts);
    }

    /**
     * The waste of all rolls of a plan.
     *
     * @param plan a plan; one without rolls has no waste
     * @return everything but the panels
     */
    public static WasteShares of(RollPlan plan) {
        double opened = 0;
        double panels = 0;
        Map<WastePart, Double> parts = new EnumMap<>(WastePart.class);
        for (WasteShares roll : ofEachRoll(plan)) {
            opened += roll.openedM2();
            panels += roll.useM2();
            roll.partsM2().forEach((part, m2) -> parts.merge(part, m2, Double::sum));
        }
        return new WasteShares("all film", opened, panels, parts);
    }

    /**
     * The waste of each roll of a plan.
     *
     * @param plan a plan
     * @return in the order of its rolls
     */
    public static List<WasteShares> ofEachRoll(RollPlan plan) {
        List<WasteShares> all = new ArrayList<>();
        for (OpenedRoll roll : plan.rolls()) {
            Stock row = plan.stock().stream().filter(stock -> stock.id().equals(roll.stockId())).findFirst().orElseThrow();
            double widthM = Steps.toM(row.widthSteps());
            double panels = 0;
            for (PlacedCut piece : roll.placed()) {
                panels += Steps.toM(piece.lengthSteps()) * Steps.toM(piece.widthSteps());
            }
            Map<WastePart, Double> parts = new EnumMap<>(WastePart.class);
            parts.put(WastePart.LEAD, Steps.toM(plan.terms().leadSteps()) * widthM);
            parts.put(WastePart.TAIL, Steps.toM(plan.terms().tailSteps()) * widthM);
            parts.put(WastePart.GAP, Steps.toM(roll.usedSteps() - roll.coveredSteps()) * widthM);
            parts.put(WastePart.WIDTH_TRIM, Steps.toM(roll.coveredSteps()) * widthM - panels);
            boolean kept = roll.remnantSteps() >= plan.terms().remnants().leastSteps();
            parts.put(kept ? WastePart.KEPT_REMNANT : WastePart.SCRAP, Steps.toM(roll.remnantSteps()) * widthM);
            all.add(new WasteShares("roll " + (all.size() + 1) + ", " + row.id(), Steps.toM(row.lengthSteps()) * widthM, panels, parts));
        }
        return all;
    }

    /**
     * What is not of use, kept remnants included.
     *
     * @return a share of the film opened from 0 to 1; 0 where nothing was opened
     */
    public double share() {
        return openedM2 == 0 ? 0 : 1 - useM2 / openedM2;
    }

    /**
     * One part of it.
     *
     * @param part which
     * @return a share of the film opened from 0 to 1
     */
    public double share(WastePart part) {
        return openedM2 == 0 ? 0 : partsM2.getOrDefault(part, 0.0) / openedM2;
    }

    /** The shares in one line, the biggest part first: {@code all film, 32.9 % not used: remnants kept 20.1 %, lead 8.2 %, gaps between panels 4.6 %}. */
    @Override
    public String toString() {
        List<String> parts = new ArrayList<>();
        partsM2.forEach((part, m2) -> parts.add(part.title() + " " + percent(share(part))));
        return of + ", " + (parts.isEmpty() ? "no waste" : percent(share()) + " not used: " + String.join(", ", parts));
    }

    private static String percent(double share) {
        return Print.fixed(100 * share, 1) + " %";
    }
}
