package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;

/**
 * What a task is, whatever its pace. Immutable.
 *
 * @param id       its short name, lower case letters, digits and dashes
 * @param title    its name for a reader
 * @param stage    where it is done
 * @param driver   what its time grows with
 * @param people   how many people it takes at least, 1 to 10
 * @param machine  what does the work
 * @param attended the share of machine time in which someone stands by, 0 to 1; 1 for work by hand
 * @param allowed  whether the allowance is added to its time
 * @param reached  whether height and access slow it down
 */
public record TaskKind(
        String id, String title, Stage stage, Driver driver, int people, Machine machine, double attended, boolean allowed, boolean reached) {
    /**
     * Checks every part.
     *
     * @param id       its short name, lower case letters, digits and dashes
     * @param title    its name for a reader
     * @param stage    where it is done
     * @param driver   what its time grows with
     * @param people   how many people it takes at least, 1 to 10
     * @param machine  what does the work
     * @param attended the share of machine time in which someone stands by, 0 to 1; 1 for work by hand
     * @param allowed  whether the allowance is added to its time
     * @param reached  whether height and access slow it down
     * @throws RefusedException if a part cannot be accepted
     */
    public TaskKind {
        id = Door.text("task", id);
        if (!isId(id)) {
            throw new RefusedException(
                    "task", "'" + id + "'", "must be lower case letters, digits and dashes", "Maybe put the words into the title.");
        }
        title = Door.text("title of task", title);
        Door.count("people of task " + id, people, 1, 10);
        Door.number("attended share of task " + id, attended, Range.SHARE);
        if (machine == Machine.NONE && attended != 1) {
            throw new RefusedException(
                    "attended share of task " + id,
                    Double.toString(attended),
                    "must be 1 where no machine does the work",
                    "Maybe name the machine.");
        }
        if (driver == Driver.DAY && stage != Stage.SITE) {
            throw new RefusedException(
                    "stage of task " + id, stage.toString(), "must be SITE for a task of each installing day", "Maybe use JOB.");
        }
    }

    private static boolean isId(String id) {
        for (int i = 0; i < id.length(); i++) {
            char c = id.charAt(i);
            if (!(c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '-' && i > 0)) {
                return false;
            }
        }
        return true;
    }
}
