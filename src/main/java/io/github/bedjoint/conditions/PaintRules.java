package io.github.bedjoint.conditions;

import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Verdict.Level;
import java.util.ArrayList;
import java.util.List;

/** Paint that may hold lead, that may lift, or to which little sticks. */
final class PaintRules {
    private static final Source LEAD = Source.standard("40 CFR 745 Subpart E; practices named in 40 CFR 745.85 from memory");
    private static final Source PATCH = Source.practice("adhesion test patch of the film on the wall itself, left for the film's curing time");

    private PaintRules() {}

    static List<Verdict> check(SiteConditions site) {
        List<Verdict> verdicts = new ArrayList<>();
        if (site.maybe(Question.PAINTED)) {
            verdicts.add(lead(site));
            verdicts.add(patch(site.answer(Question.PAINT_LIFTS), "paint that may lift", "loose, chalking or flaking paint comes off with the film"));
            verdicts.add(patch(site.answer(Question.LOW_SURFACE_ENERGY), "low surface energy paint", "little sticks to this paint"));
        }
        return verdicts;
    }

    private static Verdict lead(SiteConditions site) {
        String subject = "paint before 1978";
        if (site.is(Question.TESTED_FREE_OF_LEAD)) {
            return new Verdict(Level.FINE, subject, "tested and found free of lead", LEAD);
        }
        if (!site.maybe(Question.PAINT_BEFORE_1978)) {
            return new Verdict(Level.FINE, subject, "all of the paint is of 1978 or later", LEAD);
        }
        String age = site.is(Question.PAINT_BEFORE_1978) ? "paint of before 1978" : "paint of unknown age";
        boolean disturbs = site.maybe(Question.HEAT_USED) || site.maybe(Question.DRY_ABRASION);
        return disturbs
                ? new Verdict(Level.REFUSED, subject, age + " may hold lead: no heat and no dry abrasion until it is tested", LEAD)
                : new Verdict(Level.WARNING, subject, age + " may hold lead: test it before it is disturbed", LEAD);
    }

    private static Verdict patch(Answer answer, String subject, String why) {
        return switch (answer) {
            case NO -> new Verdict(Level.FINE, subject, "looked for and not found", PATCH);
            case YES -> new Verdict(Level.WARNING, subject, why + ": adhesion test patch before film is ordered", PATCH);
            case UNKNOWN -> new Verdict(Level.CAUTION, subject, "not known: look at the paint and make an adhesion test patch", PATCH);
        };
    }
}
