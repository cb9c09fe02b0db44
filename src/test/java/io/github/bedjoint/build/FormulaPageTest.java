package io.github.bedjoint.build;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.FormulaConstants;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Holds docs/formulas.md to the formula constants: the page is generated from them, with a worked number from a demo job where one has
 * the figure. Run with {@code BEDJOINT_WRITE_PAGES=1} in the environment to write it anew.
 */
class FormulaPageTest {
    private static final Path PAGE = Project.root().resolve("docs/formulas.md");

    @Test
    void formulasPage_ofTheConstants_isUpToDate() throws IOException {
        String page = page();
        if (System.getenv("BEDJOINT_WRITE_PAGES") != null) {
            Files.writeString(PAGE, page);
        }
        assertThat(Files.readString(PAGE)).as("docs/formulas.md; BEDJOINT_WRITE_PAGES=1 writes it anew").isEqualTo(page);
    }

    private static String page() throws IOException {
        List<Working> demos = new ArrayList<>();
        for (String name : List.of("brick-front", "block-gable", "reading-room")) {
            demos.add(JobCost.of(JobFile.read(Project.root().resolve("docs/jobs/" + name + ".json"))).working());
        }
        List<Formula> formulas = new ArrayList<>(FormulaConstants.all());
        formulas.sort(Comparator.comparing(Formula::id));
        StringBuilder page = new StringBuilder("# Formulas\n\n");
        page.append("Every formula of the library, generated from its constants by a test, so that this page cannot drift from the code. `cost JOB.json --show-working ID`\n");
        page.append("shows one with the values of a job. Units are the inner ones; a step is 12.5 micrometres, `¤` stands for money. The worked lines are from the demo jobs.\n");
        String room = "";
        for (Formula formula : formulas) {
            String its = formula.id().substring(0, formula.id().indexOf('.'));
            if (!its.equals(room)) {
                room = its;
                page.append("\n## ").append(room).append('\n');
            }
            page.append("\n### ").append(formula.id()).append("\n\n").append(formula.title()).append(": `").append(formula).append("`\n\n");
            page.append("| letter | unit | meaning |\n|---|---|---|\n");
            row(page, formula.result());
            formula.symbols().forEach(symbol -> row(page, symbol));
            page.append("\nSource: ").append(formula.source()).append(".\n");
            Optional<Working> worked = demos.stream().flatMap(demo -> demo.find(formula.id()).stream()).findFirst();
            worked.ifPresent(working -> page.append("\n```text\n").append(lines(working)).append("```\n"));
        }
        return page.toString();
    }

    /** The three lines of a formula: letters, values, figure. */
    private static String lines(Working working) {
        StringBuilder lines = new StringBuilder();
        working.text(UnitStyle.METRIC).lines().skip(1).limit(3).forEach(line -> lines.append(line.substring(2)).append('\n'));
        return lines.toString();
    }

    private static void row(StringBuilder page, Symbol symbol) {
        page.append("| ").append(symbol.name()).append(" | ").append(symbol.measure().unit()).append(" | ").append(symbol.meaning()).append(" |\n");
    }
}
