package io.github.bedjoint.waste;

/** Where film that was opened ends, in the order in which it is accounted for. */
public enum WastePart {
    /** Seen on the wall, first layer: not waste. */
    VISIBLE("visible on the wall"),
    /** Second layer where panels overlap. */
    OVERLAP("overlap"),
    /** Beyond the wall's edge for bleed, tuck or corner turn, and turned into openings. */
    BLEED("bleed, tuck and turn"),
    /** Cut away outside a sloped or stepped edge. */
    SHAPE_TRIM("shape trim"),
    /** Cut out over an opening, both layers. */
    CUT_OUT("cut out over openings"),
    /** Fed in along the texture, so that the film need not stretch so far. */
    TAKE_UP("film fed in"),
    /** Printable width beside a panel that is narrower, and between panels side by side. */
    WIDTH_TRIM("width trim"),
    /** Unprinted margins along both edges of the roll. */
    EDGE_MARGIN("edge margins"),
    /** Panels made to spare. */
    SPARE("spare panels"),
    /** Between panels, from edge to edge of the roll. */
    GAP("gaps between panels"),
    /** Lost at the start of each roll. */
    LEAD("lead"),
    /** Lost at the core of each roll. */
    TAIL("tail"),
    /** Left on a roll and kept. */
    KEPT_REMNANT("remnants kept"),
    /** Left on a roll and too short to keep. */
    SCRAP("remnants scrapped");

    private final String title;

    WastePart(String title) {
        this.title = title;
    }

    /**
     * The part in words.
     *
     * @return a heading
     */
    public String title() {
        return title;
    }
}
