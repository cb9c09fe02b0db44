package io.github.bedjoint.drawing;

/** Ways to hatch a rectangle, told apart in black and white. */
enum Hatch {
    /** Lines that rise to the right. */
    RISING(6),
    /** Lines that fall to the right. */
    FALLING(6),
    /** Both. */
    CROSSED(7),
    /** Upright lines. */
    UPRIGHT(4),
    /** Level lines. */
    LEVEL(4);

    private final double pitch;

    Hatch(double pitch) {
        this.pitch = pitch;
    }

    /** Takes one line. */
    interface Pen {
        void line(double x1, double y1, double x2, double y2);
    }

    void lines(double x, double y, double width, double height, Pen pen) {
        switch (this) {
            case RISING -> slanted(x, y, width, height, false, pen);
            case FALLING -> slanted(x, y, width, height, true, pen);
            case CROSSED -> {
                slanted(x, y, width, height, false, pen);
                slanted(x, y, width, height, true, pen);
            }
            case UPRIGHT -> {
                for (double at = pitch / 2; at < width; at += pitch) {
                    pen.line(x + at, y, x + at, y + height);
                }
            }
            case LEVEL -> {
                for (double at = pitch / 2; at < height; at += pitch) {
                    pen.line(x, y + at, x + width, y + at);
                }
            }
        }
    }

    /** Lines a + b = c inside the rectangle, a from the left or, for falling ones, from the right. */
    private void slanted(double x, double y, double width, double height, boolean falling, Pen pen) {
        for (double c = pitch; c < width + height; c += pitch) {
            double a1 = Math.max(0, c - height);
            double a2 = Math.min(width, c);
            double x1 = falling ? x + width - a1 : x + a1;
            double x2 = falling ? x + width - a2 : x + a2;
            pen.line(x1, y + c - a1, x2, y + c - a2);
        }
    }
}
