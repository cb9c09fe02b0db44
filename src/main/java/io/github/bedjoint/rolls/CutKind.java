package io.github.bedjoint.rolls;

/** The cuts that part the pieces of a roll, the plainest first; each kind includes the ones before it. */
public enum CutKind {
    /** Cross cuts only: one panel lies across the roll. */
    CROSS,
    /** Every cut runs from edge to edge of what is being cut: cross cuts, then slits, then cross cuts again. */
    GUILLOTINE,
    /** The knife stops and turns inside the film. */
    FREE
}
