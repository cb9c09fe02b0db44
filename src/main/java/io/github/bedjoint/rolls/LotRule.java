package io.github.bedjoint.rolls;

/** Whether the panels of one wall may come from rolls of different production lots. */
public enum LotRule {
    /** Any roll serves any wall. */
    ANY,
    /** All panels of one wall come from rolls of one lot, so that colour and finish agree across its seams. */
    ONE_LOT_PER_WALL
}
