package io.github.bedjoint.texture;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;

/** How units are laid: which faces are seen and whether head joints of neighbouring courses stand in line. */
public enum Bond {
    /** Stretchers only, each course shifted. */
    STRETCHER,
    /** Stretchers only, head joints in line. */
    STACK,
    /** Stretcher and header in turn in every course. */
    FLEMISH,
    /** A course of stretchers and a course of headers in turn. */
    ENGLISH;

    static final Formula HEADER = Formula.of(
            "texture.header",
            "Face length of a header",
            new Symbol("w", Measure.LENGTH, "face length of a header"),
            "(l_s - j_h) / 2",
            Source.geometry("two headers and a joint are as long as a stretcher"),
            new Symbol("l_s", Measure.LENGTH, "face length of a stretcher"),
            new Symbol("j_h", Measure.LENGTH, "width of the head joint"));
    static final Formula FLEMISH_LENGTH = Formula.of(
            "texture.flemish-length",
            "Mean face length in Flemish bond",
            new Symbol("l", Measure.LENGTH, "mean face length of a unit"),
            "(l_s + w) / 2",
            Source.geometry("as many headers as stretchers in each course"),
            new Symbol("l_s", Measure.LENGTH, "face length of a stretcher"),
            new Symbol("w", Measure.LENGTH, "face length of a header"));
    static final Formula ENGLISH_LENGTH = Formula.of(
            "texture.english-length",
            "Mean face length in English bond",
            new Symbol("l", Measure.LENGTH, "mean face length of a unit"),
            "2 / (1 / (l_s + j_h) + 1 / (w + j_h)) - j_h",
            Source.geometry("as many courses of headers as of stretchers; the number of units along a course is averaged"),
            new Symbol("l_s", Measure.LENGTH, "face length of a stretcher"),
            new Symbol("w", Measure.LENGTH, "face length of a header"),
            new Symbol("j_h", Measure.LENGTH, "width of the head joint"));

    /** Whether headers are seen. */
    boolean hasHeaders() {
        return this == FLEMISH || this == ENGLISH;
    }

    /** Face length of a header in metres, by {@link #HEADER}. */
    static double headerM(double stretcherM, double headM) {
        return (stretcherM - headM) / 2;
    }

    /** Mean face length of a unit in metres. */
    double meanLengthM(double stretcherM, double headM) {
        double header = headerM(stretcherM, headM);
        return switch (this) {
            case STRETCHER, STACK -> stretcherM;
            case FLEMISH -> (stretcherM + header) / 2;
            case ENGLISH -> 2 / (1 / (stretcherM + headM) + 1 / (header + headM)) - headM;
        };
    }

    /** How {@link #meanLengthM} came about; only for bonds with headers. */
    Working lengthWorking(double stretcherM, double headM) {
        double header = headerM(stretcherM, headM);
        double mean = meanLengthM(stretcherM, headM);
        Working length = this == FLEMISH
                ? Working.of(FLEMISH_LENGTH, mean, stretcherM, header)
                : Working.of(ENGLISH_LENGTH, mean, stretcherM, header, headM);
        return length.because(Working.of(HEADER, header, stretcherM, headM));
    }
}
