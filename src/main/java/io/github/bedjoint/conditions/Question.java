package io.github.bedjoint.conditions;

/** What must be known of a wall and of the work on it before film is applied; each can be answered yes, no or not known. */
public enum Question {
    /** The wall is outdoors. */
    OUTDOOR("Is the wall outdoors?", Answer.UNKNOWN),
    /** Heat is used on the wall. */
    HEAT_USED("Is heat used on the wall?", Answer.YES),
    /** The wall is brushed, scraped or sanded dry. */
    DRY_ABRASION("Is the wall brushed, scraped or sanded dry?", Answer.NO),
    /** Alcohol or another solvent is used. */
    SOLVENT_USED("Is alcohol or another solvent used?", Answer.YES),
    /** Mains electricity is used. */
    MAINS_POWER("Is mains electricity used?", Answer.YES),
    /** The masonry is historic or protected. */
    HISTORIC("Is the masonry historic or protected?", Answer.UNKNOWN),
    /** Mortar, render or paint is new and may not have cured. */
    NEW_SUBSTRATE("Is mortar, render or paint new?", Answer.UNKNOWN),
    /** Render stands on foam. */
    FOAM_BACKED("Is there foam behind the render?", Answer.UNKNOWN),
    /** The wall is damp, by a test. */
    DAMP("Did a test find the wall damp?", Answer.UNKNOWN),
    /** The wall is painted. */
    PAINTED("Is the wall painted?", Answer.UNKNOWN),
    /** Some of the paint is older than 1978. */
    PAINT_BEFORE_1978("Is any of the paint older than 1978?", Answer.UNKNOWN),
    /** The paint was tested and found free of lead. */
    TESTED_FREE_OF_LEAD("Was the paint tested and found free of lead?", Answer.NO),
    /** The paint is loose, chalking or flaking. */
    PAINT_LIFTS("Is the paint loose, chalking or flaking?", Answer.UNKNOWN),
    /** The paint is one to which little sticks. */
    LOW_SURFACE_ENERGY("Is it a paint to which little sticks, such as one with silicone or against graffiti?", Answer.UNKNOWN);

    private final String text;
    private final Answer preset;

    Question(String text, Answer preset) {
        this.text = text;
        this.preset = preset;
    }

    /**
     * The question in words.
     *
     * @return one sentence
     */
    public String text() {
        return text;
    }

    /**
     * The answer while nobody gave one.
     *
     * @return not known for what must be looked at, yes or no for what the usual work is
     */
    public Answer preset() {
        return preset;
    }
}
