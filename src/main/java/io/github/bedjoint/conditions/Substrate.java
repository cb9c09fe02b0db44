package io.github.bedjoint.conditions;

/** What the wall is made of, as far as it matters to heat and moisture. */
public enum Substrate {
    /** Brick in mortar. */
    BRICK(true),
    /** Concrete block in mortar. */
    BLOCK(true),
    /** Natural stone in mortar. */
    STONE(true),
    /** Cast concrete. */
    CONCRETE(true),
    /** Stucco or render, on whatever stands behind it. */
    RENDER(true),
    /** Plaster or plasterboard indoors. */
    PLASTER(false),
    /** Metal, wood or plastic panel. */
    PANEL(false);

    private final boolean mineral;

    Substrate(boolean mineral) {
        this.mineral = mineral;
    }

    /**
     * Whether it is mineral and porous, so that it gives off dust when worked and holds water.
     *
     * @return true for brick, block, stone, concrete and render
     */
    public boolean isMineral() {
        return mineral;
    }
}
