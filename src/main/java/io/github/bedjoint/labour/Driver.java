package io.github.bedjoint.labour;

import io.github.bedjoint.units.Measure;

/** What the time of a task grows with. */
public enum Driver {
    /** Area that is seen covered, openings out. */
    VISIBLE_AREA(Measure.AREA, "area seen covered, openings out"),
    /** Area by the deduction rule agreed for billing. */
    MEASURED_AREA(Measure.AREA, "area by the deduction rule"),
    /** Visible area along the texture. */
    DEVELOPED_AREA(Measure.AREA, "visible area along the texture"),
    /** Film that is heated and rolled, along the texture; overlaps count twice. See {@link HeatedArea}. */
    HEATED_AREA(Measure.AREA, "film heated and rolled, along the texture, overlaps twice"),
    /** Film opened for the job. */
    FILM_AREA(Measure.AREA, "film opened"),
    /** Length of film that runs through the printer. */
    PRINTED_LENGTH(Measure.LENGTH, "film through the printer"),
    /** Length of printed film that runs through the laminator, lead-in counted. */
    LAMINATED_LENGTH(Measure.LENGTH, "film through the laminator"),
    /** Length of seams between panels. */
    SEAM(Measure.LENGTH, "seams between panels"),
    /** Length of edges that are sealed and heated again. */
    EDGE(Measure.LENGTH, "edges sealed and post-heated"),
    /** Length along the ground, doors out. */
    GROUND_LENGTH(Measure.LENGTH, "length along the ground, doors out"),
    /** Panels, all of them. */
    PANEL(Measure.NUMBER, "panels"),
    /** Panels that one person can hang. */
    PANEL_FOR_ONE(Measure.NUMBER, "panels that one person hangs"),
    /** Panels that need two people: married ones and those over a stated size. */
    PANEL_FOR_TWO(Measure.NUMBER, "panels that need two people"),
    /** Corners that the film turns. */
    CORNER(Measure.NUMBER, "corners turned"),
    /** Openings that are trimmed around or turned into. */
    OPENING(Measure.NUMBER, "openings"),
    /** Walls. */
    WALL(Measure.NUMBER, "walls"),
    /** The job itself. */
    JOB(Measure.NUMBER, "the job"),
    /** Trips beside the installing days on which tasks of the table are done; the stay of other trips is given as a whole. */
    TRIP(Measure.NUMBER, "trips beside the installing days on which tasks are done"),
    /** Installing days on site; their number follows from the hours. */
    DAY(Measure.NUMBER, "installing days");

    private final Measure measure;
    private final String meaning;

    Driver(Measure measure, String meaning) {
        this.measure = measure;
        this.meaning = meaning;
    }

    /**
     * What its amounts are measured in.
     *
     * @return {@link Measure#AREA}, {@link Measure#LENGTH} or {@link Measure#NUMBER}
     */
    public Measure measure() {
        return measure;
    }

    /**
     * What a pace for it is measured in.
     *
     * @return {@link Measure#TIME_PER_AREA}, {@link Measure#TIME_PER_LENGTH} or {@link Measure#TIME}
     */
    public Measure paceMeasure() {
        return switch (measure) {
            case AREA -> Measure.TIME_PER_AREA;
            case LENGTH -> Measure.TIME_PER_LENGTH;
            default -> Measure.TIME;
        };
    }

    /**
     * What it stands for, in a few words.
     *
     * @return the meaning
     */
    public String meaning() {
        return meaning;
    }
}
