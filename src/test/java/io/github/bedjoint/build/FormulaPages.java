package io.github.bedjoint.build;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.risk.Input;
import io.github.bedjoint.risk.Outcome;
import io.github.bedjoint.risk.Simulation;
import io.github.bedjoint.risk.Spread;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.FormulaConstants;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** Writes docs/formulas: an index and one page for each formula constant, with a worked number from a demo job or a plain example. */
final class FormulaPages {
    private static final List<String> DEMOS = List.of("brick-front", "block-gable", "reading-room");

    private final Map<String, List<Working>> examples = new LinkedHashMap<>();
    private final Map<String, Formula> formulas = new TreeMap<>();

    FormulaPages() throws IOException {
        JobCost first = null;
        for (String name : DEMOS) {
            JobCost cost = JobCost.of(JobFile.read(Project.root().resolve("docs/jobs/" + name + ".json")));
            examples.put("The demo job [" + name + "](../jobs/" + name + ".md)", List.of(cost.working()));
            first = first == null ? cost : first;
        }
        List<Working> plain = new ArrayList<>(SurfaceExamples.workings().toList());
        plain.addAll(WorkExamples.workings().toList());
        plain.add(Simulation.of(first.job()).with(Input.crewPace(), Spread.triangular(0.8, 1, 1.5)).run(1, 50).of(Outcome.COST).working(0.8));
        examples.put("A plain example", plain);
        FormulaConstants.all().stream().sorted(Comparator.comparing(Formula::id)).forEach(formula -> formulas.put(formula.id(), formula));
    }

    /** The ids of formulas without a worked number. */
    List<String> withoutNumber() {
        return formulas.keySet().stream().filter(id -> worked(id).isEmpty()).toList();
    }

    /** Every page by its file name. */
    Map<String, String> all() {
        Map<String, String> pages = new TreeMap<>();
        pages.put("index.md", index());
        formulas.values().forEach(formula -> pages.put(formula.id() + ".md", page(formula)));
        return pages;
    }

    private String index() {
        StringBuilder page = new StringBuilder("# Formulas\n\n");
        page.append("Every figure of the library has a page: its formula, letters, units, source and a worked number. The pages are generated from the constants in the\n");
        page.append("code by a test, so they cannot drift from it. `cost JOB.json --show-working ID` shows a figure with the values of a job. Units are the inner ones; a step\n");
        page.append("is 12.5 micrometres, `¤` stands for money.\n");
        String room = "";
        for (Formula formula : formulas.values()) {
            String its = formula.id().substring(0, formula.id().indexOf('.'));
            if (!its.equals(room)) {
                room = its;
                page.append("\n## ").append(room).append("\n\n| figure | formula | what it gives |\n|---|---|---|\n");
            }
            page.append("| ").append(link(formula.id())).append(" | `").append(formula).append("` | ").append(formula.title()).append(" |\n");
        }
        return page.toString();
    }

    private String page(Formula formula) {
        StringBuilder page = new StringBuilder("# ").append(formula.title()).append("\n\n");
        page.append("`").append(formula.id()).append("`, one of [all figures](index.md)\n\n```text\n").append(formula).append("\n```\n\n");
        page.append("| letter | unit | meaning |\n|---|---|---|\n");
        row(page, formula.result());
        formula.symbols().forEach(symbol -> row(page, symbol));
        page.append("\nSource: ").append(formula.source()).append(".\n");
        worked(formula.id()).ifPresent(example -> {
            page.append("\n## Worked\n\n").append(example.where()).append(":\n\n```text\n").append(lines(example.working())).append("```\n");
            TreeSet<String> parts = new TreeSet<>();
            example.working().parts().forEach(part -> part.formula().map(Formula::id).ifPresent(parts::add));
            parts.remove(formula.id());
            if (!parts.isEmpty()) {
                page.append("\nThe working shows below it ").append(String.join(", ", parts.stream().map(FormulaPages::link).toList())).append(".\n");
            }
        });
        return page.toString();
    }

    private record Example(String where, Working working) {}

    private Optional<Example> worked(String id) {
        for (Map.Entry<String, List<Working>> some : examples.entrySet()) {
            for (Working tree : some.getValue()) {
                Optional<Working> found = tree.find(id);
                if (found.isPresent()) {
                    return Optional.of(new Example(some.getKey(), found.get()));
                }
            }
        }
        return Optional.empty();
    }

    /** The three lines of a formula, letters, values, figure, and below them what each letter is. */
    private static String lines(Working working) {
        StringBuilder lines = new StringBuilder();
        int count = 3 + working.formula().orElseThrow().symbols().size();
        working.text(UnitStyle.METRIC).lines().skip(1).limit(count).forEach(line -> lines.append(line.substring(2)).append('\n'));
        return lines.toString();
    }

    private static String link(String id) {
        return "[" + id + "](" + id + ".md)";
    }

    private static void row(StringBuilder page, Symbol symbol) {
        page.append("| ").append(symbol.name()).append(" | ").append(symbol.measure().unit()).append(" | ").append(symbol.meaning()).append(" |\n");
    }
}
