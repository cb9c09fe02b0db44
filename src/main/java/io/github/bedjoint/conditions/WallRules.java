package io.github.bedjoint.conditions;

import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Verdict.Level;
import java.util.ArrayList;
import java.util.List;

/** Damp, new and historic walls, and render that may stand on foam. */
final class WallRules {
    private static final Source DAMP_TEST = Source.standard("ASTM D4263 (summary read): plastic sheet 18 x 18 in, at least 16 h");
    private static final Source HISTORIC = Source.handbook("NPS Preservation Brief 1, on coatings of historic masonry");
    private static final Source FOAM = Source.practice("foam behind thin render melts and burns under a heat source");
    private static final Source NEW = Source.practice("film holds the moisture of fresh mortar, render and paint; see the maker's curing time");

    private WallRules() {}

    static List<Verdict> check(SiteConditions site) {
        List<Verdict> verdicts = new ArrayList<>();
        if (site.substrate().isMineral()) {
            verdicts.add(damp(site.answer(Question.DAMP)));
            verdicts.add(historic(site.answer(Question.HISTORIC)));
        }
        verdicts.add(fresh(site.answer(Question.NEW_SUBSTRATE)));
        if (site.substrate() == Substrate.RENDER) {
            verdicts.add(foam(site));
        }
        return verdicts;
    }

    private static Verdict damp(Answer damp) {
        return switch (damp) {
            case NO -> new Verdict(Level.FINE, "damp wall", "tested and found dry", DAMP_TEST);
            case YES -> new Verdict(
                    Level.WARNING, "damp wall", "found damp: film holds the moisture in; find the cause and let it dry first", DAMP_TEST);
            case UNKNOWN -> new Verdict(
                    Level.CAUTION,
                    "damp wall",
                    "not tested: tape a plastic sheet of 18 x 18 in to the wall for at least 16 h and look for moisture under it",
                    DAMP_TEST);
        };
    }

    private static Verdict historic(Answer historic) {
        return switch (historic) {
            case NO -> new Verdict(Level.FINE, "historic masonry", "neither historic nor protected", HISTORIC);
            case YES -> new Verdict(
                    Level.WARNING,
                    "historic masonry",
                    "film holds moisture in and may take the surface along when removed: ask the authority and a conservator first",
                    HISTORIC);
            case UNKNOWN -> new Verdict(Level.CAUTION, "historic masonry", "ask whether the wall is historic or protected", HISTORIC);
        };
    }

    private static Verdict fresh(Answer fresh) {
        return switch (fresh) {
            case NO -> new Verdict(Level.FINE, "new substrate", "mortar, render and paint are not new", NEW);
            case YES -> new Verdict(
                    Level.WARNING, "new substrate", "mortar, render or paint is new: wait until its maker calls it cured", NEW);
            case UNKNOWN -> new Verdict(Level.CAUTION, "new substrate", "ask how old mortar, render and paint are", NEW);
        };
    }

    private static Verdict foam(SiteConditions site) {
        if (!site.maybe(Question.FOAM_BACKED)) {
            return new Verdict(Level.FINE, "foam behind render", "confirmed that there is none", FOAM);
        }
        boolean known = site.is(Question.FOAM_BACKED);
        if (!site.maybe(Question.HEAT_USED)) {
            return new Verdict(Level.CAUTION, "foam behind render", "no heat on this wall" + (known ? "" : " until the build-up is confirmed"), FOAM);
        }
        return new Verdict(
                Level.REFUSED,
                "foam behind render",
                known ? "there is foam behind the render: no heat on this wall" : "no heat on render until its build-up is confirmed to be without foam",
                FOAM);
    }
}
