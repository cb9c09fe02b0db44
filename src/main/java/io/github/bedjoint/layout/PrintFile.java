package io.github.bedjoint.layout;

import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;

/**
 * One file for the print room: which part of the picture a panel shows, and how often it is printed.
 *
 * @param name          wall, order of application and count, such as {@code north-03-of-08}
 * @param panel         the panel
 * @param fromLeftSteps from the picture's left side to the panel's, as one stands before the wall; negative beyond the picture
 * @param fromTopSteps  from the picture's upper side down to the panel's; negative beyond the picture
 * @param quarterTurn   whether the file is turned by a quarter on the roll: a band that lies along it, or a drop that lies across it
 * @param whole         whether the picture covers the whole panel; what it does not cover stays blank
 * @param copies        how often it is printed: once, and once more for each spare
 */
public record PrintFile(
        String name, Panel panel, long fromLeftSteps, long fromTopSteps, boolean quarterTurn, boolean whole, int copies) {

    static PrintFile of(Panel panel, int count, Picture picture, int copies) {
        int digits = Math.max(2, Integer.toString(count).length());
        String name = panel.wall() + "-" + pad(panel.number(), digits) + "-of-" + pad(count, digits);
        long left = panel.lowerLeft().xSteps();
        long bottom = panel.lowerLeft().ySteps();
        boolean whole = left >= picture.leftSteps()
                && bottom >= picture.bottomSteps()
                && left + panel.alongSteps() <= picture.rightSteps()
                && bottom + panel.upSteps() <= picture.topSteps();
        return new PrintFile(
                name, panel, left - picture.leftSteps(), picture.topSteps() - bottom - panel.upSteps(),
                panel.direction() == Direction.BANDS, whole, copies);
    }

    /** The same for a panel that lies across the roll. */
    PrintFile turned() {
        return new PrintFile(name, panel, fromLeftSteps, fromTopSteps, !quarterTurn, whole, copies);
    }

    private static String pad(int number, int digits) {
        String text = Integer.toString(number);
        return "0".repeat(Math.max(0, digits - text.length())) + text;
    }

    /** Name, size on the wall, offset in the picture and copies. */
    @Override
    public String toString() {
        return name + ": " + cut(panel.alongSteps()) + " wide, " + cut(panel.upSteps()) + " high, from the picture's left "
                + cut(fromLeftSteps) + ", from its top " + cut(fromTopSteps) + (quarterTurn ? ", turned" : "")
                + (whole ? "" : ", partly blank") + ", " + copies + (copies == 1 ? " copy" : " copies");
    }

    private static String cut(long steps) {
        return Print.cut(steps, UnitStyle.METRIC);
    }
}
