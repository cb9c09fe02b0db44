package io.github.bedjoint.rolls;

/**
 * A kind of roll that may be opened: a new one to buy, or a remnant on the shelf.
 *
 * @param id name of the row, unique in a job and not blank
 * @param widthSteps printable width, in steps of 12.5 micrometres, 1 to 800,000,000
 * @param lengthSteps length on the roll, in steps of 12.5 micrometres, 1 to 800,000,000
 * @param cost price of opening one, in minor money units (cents), 0 to 10^12; 0 is a remnant that is written off
 * @param available how many there are, or {@link #UNLIMITED}
 * @param lot production lot, for {@link LotRule#ONE_LOT_PER_WALL}; may be empty
 */
public record Stock(String id, long widthSteps, long lengthSteps, long cost, int available, String lot) {

    /** As many rolls as the job needs can be bought. */
    public static final int UNLIMITED = -1;

    /**
     * Checks the row.
     *
     * @param id as above
     * @param widthSteps as above
     * @param lengthSteps as above
     * @param cost as above
     * @param available as above
     * @param lot as above
     * @throws io.github.bedjoint.units.RefusedException if the name is blank or a number is out of its range
     */
    public Stock {
        Limits.name("stock id", id);
        Limits.between("stock width", widthSteps, 1, Limits.MAX_LENGTH, "steps");
        Limits.between("stock length", lengthSteps, 1, Limits.MAX_LENGTH, "steps");
        Limits.between("stock cost", cost, 0, Limits.MAX_COST, "minor units");
        Limits.between("stock available", available, UNLIMITED, Limits.MAX_PIECES, "rolls");
    }
}
