package io.github.bedjoint.rolls;

import java.util.List;

/** The cuts that part the pieces of a roll, the plainest first; each kind includes the ones before it. */
public enum CutKind {
    /** Cross cuts only: one panel lies across the roll. */
    CROSS,
    /** Every cut runs from edge to edge of what is being cut: cross cuts, then slits, then cross cuts again. */
    GUILLOTINE,
    /** The knife stops and turns inside the film. */
    FREE;

    /**
     * The plainest cuts that part panels.
     *
     * @param pieces the panels at their places, none over another
     * @return the kind
     */
    public static CutKind of(List<PlacedCut> pieces) {
        return Guillotine.cuts(pieces);
    }
}
