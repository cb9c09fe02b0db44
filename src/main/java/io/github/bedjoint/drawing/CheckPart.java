package io.github.bedjoint.drawing;

import io.github.bedjoint.conditions.Caution;
import io.github.bedjoint.conditions.Cautions;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Verdicts, the gravest first, and the usual cautions with what they defer to. */
final class CheckPart {
    private final PageWriter page;

    CheckPart(PageWriter page) {
        this.page = page;
    }

    void write() {
        page.section("verdicts", "Verdicts");
        List<Verdict> verdicts = new ArrayList<>(page.cost.verdicts(page.style));
        verdicts.sort(Comparator.comparing(Verdict::level).reversed());
        page.out.open("ul", "class", "verdicts");
        for (Verdict verdict : verdicts) {
            page.out.open("li").element("span", verdict.level().toString(), "class", "level");
            page.out.text(" " + verdict.subject() + ": " + verdict.reason() + " (" + verdict.source() + ")").close();
        }
        page.out.close();
        page.group("Checks").ifPresent(page::fold);
        page.end();
        page.section("cautions", "Cautions");
        page.out.element("p", Cautions.PREFACE).open("dl", "class", "notes");
        for (Caution caution : page.cost.cautions()) {
            page.out.element("dt", caution.title()).element("dd", caution.text());
            String defers = String.join("; ", caution.defersTo().stream().map(Source::toString).toList());
            page.out.element("dd", "Defers to: " + defers, "class", "defers");
        }
        page.out.close();
        page.end();
    }
}
