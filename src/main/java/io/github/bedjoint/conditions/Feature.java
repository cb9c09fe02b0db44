package io.github.bedjoint.conditions;

/** What a wall may have that film must leave clear or heat must stay away from. */
public enum Feature {
    /** Opening low in a wall through which its cavity drains. */
    WEEP_HOLE("weep hole", true, true),
    /** Opening for air or exhaust. */
    VENT("vent", true, true),
    /** Joint in which the wall moves. */
    MOVEMENT_JOINT("movement joint", true, false),
    /** Alarm, detector or its call point. */
    ALARM("alarm", true, false),
    /** Safety, traffic or other sign that must stay legible. */
    SIGN("sign", true, false),
    /** Edge of a roof above the wall. */
    EAVES("eaves", false, true),
    /** Window or other glass. */
    GLASS("glass", false, true);

    private final String words;
    private final boolean neverCovered;
    private final boolean heatSensitive;

    Feature(String words, boolean neverCovered, boolean heatSensitive) {
        this.words = words;
        this.neverCovered = neverCovered;
        this.heatSensitive = heatSensitive;
    }

    /**
     * The feature in words.
     *
     * @return one or two words
     */
    public String words() {
        return words;
    }

    /**
     * Whether film may never cover it.
     *
     * @return true for weep holes, vents, movement joints, alarms and signs
     */
    public boolean isNeverCovered() {
        return neverCovered;
    }

    /**
     * Whether hot air must not be blown into or onto it.
     *
     * @return true for weep holes, vents, eaves and glass
     */
    public boolean isHeatSensitive() {
        return heatSensitive;
    }
}
