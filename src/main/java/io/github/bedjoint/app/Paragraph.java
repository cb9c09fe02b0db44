package io.github.bedjoint.app;

/** Text broken into lines of at most a hundred characters. */
final class Paragraph {
    private static final int WIDTH = 100;

    private Paragraph() {}

    /**
     * Adds a paragraph.
     *
     * @param out   what it is added to
     * @param first what its first line begins with
     * @param next  what its other lines begin with
     * @param text  its text, broken at blanks
     */
    static void add(StringBuilder out, String first, String next, String text) {
        StringBuilder line = new StringBuilder(first);
        for (String word : text.split(" ")) {
            if (line.length() + word.length() > WIDTH) {
                out.append(line.toString().stripTrailing()).append('\n');
                line = new StringBuilder(next);
            }
            line.append(word).append(' ');
        }
        out.append(line.toString().stripTrailing()).append('\n');
    }
}
