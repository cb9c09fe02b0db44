package io.github.bedjoint.conditions;

import io.github.bedjoint.working.Source;
import java.util.List;
import java.util.function.Predicate;

/**
 * The usual cautions of the work. Each says when it applies, what to mind, and to whom it defers: local codes, a licensed
 * person, the film's data sheet. None of them replaces those.
 */
public enum Caution {
    /** Heat sources. */
    HEAT(
            "Heat",
            site -> site.maybe(Question.HEAT_USED),
            "A heat gun or torch is an ignition source as a naked flame is. Air from it is common practice at 538 to 816 °C (1000 to 1500 °F), the "
                    + "film at 110 to 120 °C (230 to 248 °F): the film's data sheet and local codes win. Mind burns and what is behind the wall.",
            Source.handbook("laboratory safety article: a heat gun is an ignition source"),
            Source.practice("temperatures of air and film")),
    /** Hot-work permit, extinguisher and fire watch. */
    HOT_WORK(
            "Hot work",
            site -> site.maybe(Question.HEAT_USED),
            "Ask the owner and the fire authority for a hot-work permit, keep an extinguisher at hand, and watch the wall after the last heat for as "
                    + "long as the permit or local code says.",
            Source.practice("permit, extinguisher and watch; the local fire code decides")),
    /** Alcohol and other solvents. */
    SOLVENT(
            "Alcohol and solvents",
            site -> site.maybe(Question.SOLVENT_USED),
            "Isopropyl alcohol has a flash point of 12 °C (53 °F), a lower explosive limit of 2.0 % and a recommended exposure limit of 400 ppm. No heat "
                    + "until it is dry and its vapour gone; no alcohol or gas near heat; air the place; read the safety data sheet.",
            Source.handbook("NIOSH Pocket Guide to Chemical Hazards 0359")),
    /** Dust and silica. */
    DUST(
            "Dust and silica",
            site -> site.substrate().isMineral() || site.maybe(Question.DRY_ABRASION),
            "Masonry dust may hold crystalline silica (limit 50, action level 25 µg/m³ in US construction). Brush wet or with a vacuum; no dry sweeping, no "
                    + "compressed air.",
            Source.standard("29 CFR 1926.1153")),
    /** Work above the ground. */
    HEIGHT(
            "Height",
            site -> site.reach().isHigh(),
            "Plan how the crew gets up and what stops a fall. Ladders, scaffolds and lifts have rules of their own and may ask for a trained or licensed "
                    + "person. A ladder is no access for two-handed heat work.",
            Source.standard("29 CFR 1926.1053(b)(1); 29 CFR 1926.451 and 1926.453 from memory"),
            Source.standard("Work at Height Regulations 2005 (UK)")),
    /** Lifts. */
    LIFT(
            "Lift",
            site -> site.reach() == Reach.LIFT,
            "Keep to the lift's wind limit and load, look for overhead lines, and have an operator with the licence that local law asks for.",
            Source.standard("29 CFR 1926.453, from memory"),
            Source.practice("wind limit and overhead lines; the lift's manual and the network operator decide")),
    /** Mains electricity. */
    ELECTRICITY(
            "Electricity",
            site -> site.maybe(Question.MAINS_POWER),
            "Give each heat source a circuit that bears it, with ground-fault protection; no damaged leads, no wet connections. A licensed electrician "
                    + "decides where there is doubt.",
            Source.standard("29 CFR 1926.404(b)(1)")),
    /** Lead in old paint. */
    LEAD(
            "Lead paint",
            site -> site.maybe(Question.PAINTED)
                    && site.maybe(Question.PAINT_BEFORE_1978)
                    && !site.is(Question.TESTED_FREE_OF_LEAD),
            "Paint of before 1978 may hold lead: have it tested, and where it holds lead have a certified firm do what disturbs it. No heat and no dry "
                    + "abrasion before.",
            Source.standard("40 CFR 745 Subpart E; 40 CFR 745.85 from memory")),
    /** Damp or historic masonry. */
    MASONRY(
            "Damp and historic masonry",
            site -> site.substrate().isMineral() && (site.maybe(Question.HISTORIC) || site.maybe(Question.DAMP)),
            "Film holds moisture in a damp, new or historic wall and may damage it. Test for damp; ask the heritage authority before touching protected "
                    + "masonry.",
            Source.handbook("NPS Preservation Brief 1"),
            Source.standard("ASTM D4263 (summary read)")),
    /** Fire classes of finishes indoors. */
    FIRE_CLASS(
            "Fire class of finishes",
            site -> site.answer(Question.OUTDOOR) != Answer.YES,
            "Codes limit how a wall finish indoors may burn. Ask the film's maker for the test report of film, laminate and substrate together, and the "
                    + "building authority for the class it wants; whether thin finishes are excused the local code decides.",
            Source.standard("ASTM E84, NFPA 286, EN 13501-1"),
            Source.standard("NFPA 101 10.2.1.2 on finishes thinner than 0.90 mm, edition not known")),
    /** The owner's written consent. */
    CONSENT(
            "Owner's consent",
            site -> true,
            "Have the owner's consent in writing, with what removal may do to the wall, before film is ordered.",
            Source.practice("written consent; the contract and local law decide"));

    private final String title;
    private final Predicate<SiteConditions> applies;
    private final String text;
    private final List<Source> defersTo;

    Caution(String title, Predicate<SiteConditions> applies, String text, Source... defersTo) {
        this.title = title;
        this.applies = applies;
        this.text = text;
        this.defersTo = List.of(defersTo);
    }

    /**
     * What it is about.
     *
     * @return a heading of a few words
     */
    public String title() {
        return title;
    }

    /**
     * What to mind.
     *
     * @return a few sentences
     */
    public String text() {
        return text;
    }

    /**
     * What it rests on and to whom it defers.
     *
     * @return one source or more
     */
    public List<Source> defersTo() {
        return defersTo;
    }

    /**
     * Whether it belongs to a job.
     *
     * @param site the conditions of a wall; what is not known counts as the worse case
     * @return true when the job contains what it is about
     */
    public boolean appliesTo(SiteConditions site) {
        return applies.test(site);
    }
}
