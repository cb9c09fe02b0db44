package io.github.bedjoint.conditions;

import io.github.bedjoint.working.Source;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** The cautions that belong to a job, chosen by what the job contains. */
public final class Cautions {
    /** What stands above every list of cautions. */
    public static final String PREFACE =
            "The usual cautions, not all of them. Local codes, the film's data sheet and licensed people decide.";

    private Cautions() {}

    /**
     * The cautions for one wall.
     *
     * @param site its conditions
     * @return the cautions in the order of {@link Caution}
     */
    public static List<Caution> of(SiteConditions site) {
        return of(List.of(site));
    }

    /**
     * The cautions for all walls of a job, each once.
     *
     * @param sites the conditions of its walls
     * @return the cautions in the order of {@link Caution}
     */
    public static List<Caution> of(List<SiteConditions> sites) {
        return Arrays.stream(Caution.values())
                .filter(caution -> sites.stream().anyMatch(caution::appliesTo))
                .toList();
    }

    /**
     * Cautions as plain text: the preface, then one paragraph each with its sources.
     *
     * @param cautions the cautions
     * @return lines, each ended by a line feed
     */
    public static String text(List<Caution> cautions) {
        return PREFACE + "\n"
                + cautions.stream().map(Cautions::paragraph).collect(Collectors.joining());
    }

    private static String paragraph(Caution caution) {
        String sources = caution.defersTo().stream().map(Source::toString).collect(Collectors.joining("; "));
        return caution.title() + ": " + caution.text() + " (" + sources + ")\n";
    }
}
