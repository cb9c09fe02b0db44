package io.github.bedjoint.cutting;

import io.github.bedjoint.patterns.Work;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.CuttingTerms;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.PlacedCut;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A stretch of roll between two cross cuts from edge to edge, with panels side by side in it. To plan the rolls it is one panel that
 * reaches across.
 *
 * @param placed   its panels, their places counted from its start
 * @param quantity how many like it are cut
 */
record Section(List<PlacedCut> placed, int quantity) {

    private long length() {
        return placed.stream().mapToLong(PlacedCut::alongEndSteps).max().orElseThrow();
    }

    private long width() {
        return placed.stream().mapToLong(PlacedCut::acrossEndSteps).max().orElseThrow();
    }

    /** Area of panels for each step of its length. */
    double filled() {
        return placed.stream().mapToDouble(piece -> (double) piece.lengthSteps() * piece.widthSteps()).sum() / length();
    }

    /** The sections of a strip of one panel or more: parted where a cross cut with a gap meets no panel. */
    static List<Section> of(List<PlacedCut> strip, long gap) {
        List<Section> sections = new ArrayList<>();
        List<PlacedCut> part = new ArrayList<>();
        long start = 0;
        long end = 0;
        for (PlacedCut piece : strip.stream().sorted(Comparator.comparingLong(PlacedCut::alongSteps)).toList()) {
            if (!part.isEmpty() && piece.alongSteps() >= end + gap) {
                sections.add(new Section(part, 1));
                part = new ArrayList<>();
            }
            start = part.isEmpty() ? piece.alongSteps() : start;
            part.add(moved(piece, -start));
            end = Math.max(end, piece.alongEndSteps());
        }
        sections.add(new Section(part, 1));
        return sections;
    }

    private static PlacedCut moved(PlacedCut piece, long along) {
        return new PlacedCut(
                piece.cutId(), piece.alongSteps() + along, piece.acrossSteps(), piece.lengthSteps(), piece.widthSteps(), piece.turned());
    }

    /** Cuts rolls into sections at least cost: rolls, or none if that failed. */
    static List<OpenedRoll> plan(List<Section> sections, List<Stock> stock, CuttingTerms terms, Work work) {
        List<Cut> cuts = new ArrayList<>();
        for (Section section : sections) {
            cuts.add(new Cut(Integer.toString(cuts.size()), section.width(), section.length(), section.quantity(), ""));
        }
        RollPlan plan = PlainPlanning.plan(cuts, stock, terms.withCuts(CutKind.CROSS), work);
        Map<String, Stock> rows = new HashMap<>();
        stock.forEach(row -> rows.put(row.id(), row));
        List<OpenedRoll> rolls = new ArrayList<>();
        for (OpenedRoll roll : plan.rolls()) {
            List<PlacedCut> placed = new ArrayList<>();
            for (PlacedCut at : roll.placed()) {
                Section section = sections.get(Integer.parseInt(at.cutId()));
                section.placed().forEach(piece -> placed.add(moved(piece, at.alongSteps())));
            }
            rolls.add(OpenedRoll.of(rows.get(roll.stockId()), placed, terms));
        }
        return rolls;
    }
}
