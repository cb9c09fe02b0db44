package io.github.bedjoint.rolls;

/**
 * A panel to cut, once or several times, without a splice.
 *
 * @param id name of the panel, unique in a job and not blank
 * @param widthSteps width across the roll, in steps of 12.5 micrometres, 1 to 800,000,000
 * @param lengthSteps length along the roll, in steps of 12.5 micrometres, 1 to 800,000,000
 * @param quantity number of such panels, 1 to 1,000,000
 * @param group the wall it hangs on, for {@link LotRule#ONE_LOT_PER_WALL}; may be empty
 * @param rotate whether it may lie turned by 90 degrees; a print has an up and a film a grain, so only where that is no matter
 */
public record Cut(String id, long widthSteps, long lengthSteps, int quantity, String group, boolean rotate) {

    /**
     * Checks the row.
     *
     * @param id as above
     * @param widthSteps as above
     * @param lengthSteps as above
     * @param quantity as above
     * @param group as above
     * @param rotate as above
     * @throws io.github.bedjoint.units.RefusedException if the name is blank or a number is out of its range
     */
    public Cut {
        Limits.name("cut id", id);
        Limits.between("cut width", widthSteps, 1, Limits.MAX_LENGTH, "steps");
        Limits.between("cut length", lengthSteps, 1, Limits.MAX_LENGTH, "steps");
        Limits.between("cut quantity", quantity, 1, Limits.MAX_PIECES, "panels");
    }

    /**
     * A panel that is not turned.
     *
     * @param id as above
     * @param widthSteps as above
     * @param lengthSteps as above
     * @param quantity as above
     * @param group as above
     * @throws io.github.bedjoint.units.RefusedException if the name is blank or a number is out of its range
     */
    public Cut(String id, long widthSteps, long lengthSteps, int quantity, String group) {
        this(id, widthSteps, lengthSteps, quantity, group, false);
    }
}
