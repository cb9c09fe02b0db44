package io.github.bedjoint.job;

import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.Disposal;
import io.github.bedjoint.price.Rounding;
import io.github.bedjoint.survey.WallAreas;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.waste.WasteAccount;
import io.github.bedjoint.waste.WastePart;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;

/** What a job throws away: the liner of all film that was used up, and the film that does not stay on the wall. Immutable. */
final class JobDisposal implements Explained {
    private static final Source SOURCE = Source.geometry("what is opened is on the wall, on the shelf or thrown away");
    private static final Symbol USED = new Symbol("A_l", Measure.AREA, "film used up");

    static final Formula USED_UP = Formula.of(
            "job.film-used-up", "Film used up", USED, "A_o - A_k", SOURCE, new Symbol("A_o", Measure.AREA, "film opened"),
            new Symbol("A_k", Measure.AREA, "remnants kept"));
    static final Formula SCRAP = Formula.of(
            "job.scrap-film", "Film thrown away", new Symbol("A_s", Measure.AREA, "scrap film"), "max(0, A_l - A_v - A_u - A_t - A_f)", SOURCE,
            USED, new Symbol("A_v", Measure.AREA, "visible on the wall"), new Symbol("A_u", Measure.AREA, "overlap"),
            new Symbol("A_t", Measure.AREA, "turned beyond the wall"), new Symbol("A_f", Measure.AREA, "film fed in"));

    private final DisposalTerms terms;
    private final double openedM2;
    private final double keptM2;
    private final double visibleM2;
    private final double overlapM2;
    private final double turnedM2;
    private final double fedInM2;
    private final double usedM2;
    private final double scrapM2;
    private final Disposal disposal;

    JobDisposal(DisposalTerms terms, WasteAccount waste, JobAreas areas) {
        this.terms = terms;
        this.openedM2 = waste.openedM2();
        this.keptM2 = part(waste, WastePart.KEPT_REMNANT);
        this.visibleM2 = part(waste, WastePart.VISIBLE);
        this.overlapM2 = part(waste, WastePart.OVERLAP);
        this.turnedM2 = areas.walls().stream().map(WallAreas::edges).mapToDouble(edges -> edges.turnedM2()).sum();
        this.fedInM2 = part(waste, WastePart.TAKE_UP);
        this.usedM2 = openedM2 - keptM2;
        this.scrapM2 = Math.max(0, usedM2 - visibleM2 - overlapM2 - turnedM2 - fedInM2);
        this.disposal = Disposal.of(Door.area(usedM2), terms.liner(), Door.area(scrapM2), terms.film());
    }

    private static double part(WasteAccount waste, WastePart part) {
        return waste.partsM2().getOrDefault(part, 0.0);
    }

    CostLine line(Rounding rounding) {
        return disposal.line("Liner and scrap film", terms.price(), rounding);
    }

    @Override
    public Working working() {
        Working used = Working.of(USED_UP, usedM2, openedM2, keptM2);
        return disposal.working().because(used, Working.of(SCRAP, scrapM2, usedM2, visibleM2, overlapM2, turnedM2, fedInM2));
    }
}
