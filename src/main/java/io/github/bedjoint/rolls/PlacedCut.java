package io.github.bedjoint.rolls;

/**
 * One panel at its place on a roll.
 *
 * @param cutId the {@link Cut}
 * @param alongSteps from the end of the lead to the panel's start, along the roll, in steps of 12.5 micrometres
 * @param acrossSteps from the left edge of the printable width to the panel's left edge, in steps
 * @param lengthSteps how far it reaches along the roll, in steps
 * @param widthSteps how far it reaches across, in steps
 * @param turned whether it lies turned by 90 degrees, so that its length reaches across
 */
public record PlacedCut(
        String cutId, long alongSteps, long acrossSteps, long lengthSteps, long widthSteps, boolean turned) {

    /**
     * A panel at a place.
     *
     * @param cut the panel
     * @param along from the end of the lead to its start, in steps of 12.5 micrometres
     * @param across from the left edge of the printable width to its left edge, in steps
     * @param turned whether it lies turned by 90 degrees
     * @return the panel at its place
     */
    public static PlacedCut of(Cut cut, long along, long across, boolean turned) {
        return new PlacedCut(
                cut.id(),
                along,
                across,
                turned ? cut.widthSteps() : cut.lengthSteps(),
                turned ? cut.lengthSteps() : cut.widthSteps(),
                turned);
    }

    /**
     * Where it ends along the roll.
     *
     * @return steps behind the lead
     */
    public long alongEndSteps() {
        return alongSteps + lengthSteps;
    }

    /**
     * Where it ends across the roll.
     *
     * @return steps from the left edge of the printable width
     */
    public long acrossEndSteps() {
        return acrossSteps + widthSteps;
    }
}
