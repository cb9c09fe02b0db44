package io.github.bedjoint.conditions;

import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Verdict.Level;
import java.util.ArrayList;
import java.util.List;

/** What must be left clear of film or of heat, and ladders. */
final class ClearanceRules {
    private static final Source CLEAR = Source.practice("weep holes, vents, movement joints, alarms and signs are never covered");
    private static final Source HOT_AIR = Source.practice("no hot air into weep holes, vents and eaves, nor onto glass");
    private static final Source TWO_HANDS = Source.practice("a ladder is no access for two-handed heat work; local codes decide");

    private ClearanceRules() {}

    static List<Verdict> check(SiteConditions site) {
        List<Verdict> verdicts = new ArrayList<>();
        for (Feature feature : site.covered()) {
            if (feature.isNeverCovered()) {
                verdicts.add(new Verdict(Level.REFUSED, feature.words(), "would be covered: cut the film clear of it", CLEAR));
            }
        }
        for (Feature feature : site.features()) {
            if (feature.isNeverCovered() && !site.covered().contains(feature)) {
                verdicts.add(new Verdict(Level.CAUTION, feature.words(), "is never covered: cut the film clear of it", CLEAR));
            }
            if (feature.isHeatSensitive() && site.maybe(Question.HEAT_USED)) {
                verdicts.add(new Verdict(Level.WARNING, feature.words(), "keep hot air away from it", HOT_AIR));
            }
        }
        if (site.reach() == Reach.LADDER && site.maybe(Question.HEAT_USED)) {
            verdicts.add(new Verdict(
                    Level.WARNING, "ladder", "is no access for two-handed work with heat: take a platform, scaffold or lift", TWO_HANDS));
        }
        return verdicts;
    }
}
