package io.github.bedjoint.texture;

/** Which diagonal divides a cell of a height grid into two triangles; the area read depends on it, so it is stated with the result. */
public enum Diagonal {
    /** From a point to the one in the next row and the next column. */
    FALLING("falling diagonal"),
    /** From a point to the one in the next row and the column before. */
    RISING("rising diagonal");

    private final String words;

    Diagonal(String words) {
        this.words = words;
    }

    /**
     * The diagonal in words.
     *
     * @return two words
     */
    public String words() {
        return words;
    }
}
