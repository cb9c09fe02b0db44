package io.github.bedjoint.drawing;

/** Colours and strokes. Light fills carry dark text, and no two kinds differ by colour alone. */
final class Look {
    static final String INK = "#1b1f24";
    static final String PAPER = "#ffffff";
    /** Film on a wall or a roll: a light blue that all common kinds of colour blindness tell from the white of the wall. */
    static final String FILM = "#d6e8f5";
    static final String FILM_DARK = "#0b4f7a";
    static final String GREY = "#e7e8ea";
    static final String MASONRY = "#efe3d3";

    static final String[] THIN = {"stroke", INK, "stroke-width", "0.8"};
    static final String[] OUTLINE = {"fill", "none", "stroke", INK, "stroke-width", "2"};
    static final String[] BLANK = {"fill", PAPER, "stroke", INK, "stroke-width", "1"};
    static final String[] DASHED = {"fill", "none", "stroke", INK, "stroke-width", "1", "stroke-dasharray", "4 3"};
    static final String[] PIECE = {"fill", FILM, "stroke", FILM_DARK, "stroke-width", "1"};
    static final String[] LAPPED = {"fill", FILM_DARK};
    static final String[] BOLD = {"font-weight", "bold"};

    private Look() {}
}
