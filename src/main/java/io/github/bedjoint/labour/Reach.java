package io.github.bedjoint.labour;

import io.github.bedjoint.survey.Access;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * By what the time of a task is multiplied at a place because of height and access: the mean of the factors of its parts, weighted by their area. Immutable.
 */
public final class Reach implements Explained {
    private static final Source MEAN = Source.geometry("mean weighted by area");
    private static final Symbol FACTOR = Symbol.number("f", "factor of height and access");

    static final Formula PART = Formula.of(
            "labour.reach-part",
            "Share of the factor",
            Symbol.number("c", "share of the factor"),
            "s * k",
            MEAN,
            Symbol.number("s", "share of the area that is reached so"),
            Symbol.number("k", "factor of that access"));
    static final Formula MIXED =
            Formula.of("labour.reach", "Factor of height and access", FACTOR, "sum(c_i)", MEAN, Symbol.number("c_i", "share of the factor"));

    /** Work from the ground. */
    public static final Reach GROUND = Reach.of(1, Source.practice("paces are those of work from the ground"));

    private static final Source LADDER_SOURCE =
            Source.practice("a ladder leaves no hand free for heat and roller; see the local rules for work at height");

    private final List<Part> parts;
    private final double factor;
    private final Source source;

    /** A part of the area: how it is reached (or not stated), its share, and its factor. */
    record Part(Optional<Access> access, double share, double factor) {
        double share(double total) {
            return share / total;
        }
    }

    private Reach(List<Part> parts, Source source) {
        this.parts = parts;
        this.factor = parts.stream().mapToDouble(part -> part.share() * part.factor()).sum();
        this.source = source;
    }

    /**
     * One factor for the whole place.
     *
     * @param factor 0.1 to 10; 1 is work from the ground
     * @param source where it comes from
     * @return the reach
     * @throws RefusedException if the factor is not 0.1 to 10
     */
    public static Reach of(double factor, Source source) {
        Door.number("access factor", factor, Range.closed(0.1, 10));
        return new Reach(List.of(new Part(Optional.empty(), 1, factor)), source);
    }

    /** Parts by area; their shares become parts of one. */
    static Reach mixed(List<Part> byArea, Source source) {
        double total = byArea.stream().mapToDouble(Part::share).sum();
        List<Part> parts = new ArrayList<>();
        for (Part part : byArea) {
            if (part.share() > 0) {
                parts.add(new Part(part.access(), part.share(total), part.factor()));
            }
        }
        return new Reach(List.copyOf(parts), source);
    }

    /**
     * The factor.
     *
     * @return by what the time is multiplied
     */
    public double factor() {
        return factor;
    }

    /**
     * In which ways the place is reached.
     *
     * @return the ways that are known; none where one factor was stated
     */
    public Set<Access> accesses() {
        return parts.stream().flatMap(part -> part.access().stream()).collect(Collectors.toUnmodifiableSet());
    }

    /**
     * Where the factors come from.
     *
     * @return the source
     */
    public Source source() {
        return source;
    }

    /**
     * What is wrong with the access.
     *
     * @return a warning where a part is reached from a ladder, otherwise nothing
     */
    public List<Verdict> verdicts() {
        return parts.stream().anyMatch(part -> part.access().filter(access -> !access.leavesBothHandsFree()).isPresent())
                ? List.of(new Verdict(
                        Verdict.Level.WARNING,
                        "access",
                        "Heat-rolling takes both hands, and a ladder takes one: plan a platform, scaffold or lift",
                        LADDER_SOURCE))
                : List.of();
    }

    @Override
    public Working working() {
        return Working.sum(MIXED, factor, parts.stream().map(part -> part.share() * part.factor()).toList())
                .because(parts.stream()
                        .map(part -> Working.of(PART, part.share() * part.factor(), part.share(), part.factor())
                                .whose(part.access().map(Access::name).orElse("stated")))
                        .toArray(Working[]::new))
                .noting("Factors: " + source + ".");
    }

    /** The factor and how the area is reached. */
    @Override
    public String toString() {
        return "factor " + Print.number(factor) + ": " + parts.stream().map(Reach::words).collect(Collectors.joining(", "));
    }

    private static String words(Part part) {
        return Print.number(100 * part.share()) + " % " + part.access().map(access -> "from " + access.toString().toLowerCase(Locale.ROOT)).orElse("of the area")
                + " at " + Print.number(part.factor());
    }
}
