package io.github.bedjoint.conditions;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Whether a film may be applied to a wall as things stand: every rule that applies, each with a verdict, a reason and a source.
 *
 * <p>What is not known counts as the worse case. A refusal is a result, not an exception: the job can be costed, but it must not be done before
 * the reason is removed. Immutable.
 */
public final class SiteCheck implements Explained {
    private final SiteConditions conditions;
    private final List<Verdict> verdicts;

    private SiteCheck(SiteConditions conditions, List<Verdict> verdicts) {
        this.conditions = conditions;
        this.verdicts = List.copyOf(verdicts);
    }

    /**
     * Checks a film against the conditions of a wall.
     *
     * @param conditions what is known of the wall, the work and the weather
     * @param film       the film, for its temperature limits
     * @return the verdicts
     */
    public static SiteCheck of(SiteConditions conditions, Film film) {
        List<Verdict> verdicts = new ArrayList<>();
        verdicts.addAll(WeatherRules.check(conditions, film));
        verdicts.addAll(WallRules.check(conditions));
        verdicts.addAll(PaintRules.check(conditions));
        verdicts.addAll(ClearanceRules.check(conditions));
        return new SiteCheck(conditions, verdicts);
    }

    /**
     * Checks only what was measured at one moment: the surface against the dew point of the air and the limits of the film.
     *
     * @param conditions what was measured
     * @param film       the film, for its temperature limits
     * @return a verdict for each rule of the dew point, and one for the film's limits
     */
    public static List<Verdict> weather(SiteConditions conditions, Film film) {
        return List.copyOf(WeatherRules.check(conditions, film));
    }

    /**
     * All verdicts, the harmless ones included, in the order weather, wall, paint, clearance.
     *
     * @return an unmodifiable list
     */
    public List<Verdict> verdicts() {
        return verdicts;
    }

    /**
     * The verdicts of one level.
     *
     * @param level how grave
     * @return an unmodifiable list, maybe empty
     */
    public List<Verdict> verdicts(Verdict.Level level) {
        return verdicts.stream().filter(verdict -> verdict.level() == level).toList();
    }

    /**
     * The gravest level among the verdicts.
     *
     * @return the level; fine when no rule applied
     */
    public Verdict.Level worst() {
        return verdicts.stream().map(Verdict::level).max(Verdict.Level::compareTo).orElse(Verdict.Level.FINE);
    }

    /**
     * Whether a rule says that the film must not be applied as things stand.
     *
     * @return true when a verdict is a refusal
     */
    public boolean isRefused() {
        return worst() == Verdict.Level.REFUSED;
    }

    /** The working of the surface temperatures that the dew point asks for; a heading alone while the air was not measured. */
    @Override
    public Working working() {
        List<Working> parts = conditions
                .dewPoint()
                .map(dewPoint -> Arrays.stream(SpreadRule.values())
                        .map(rule -> rule.working(dewPoint))
                        .toList())
                .orElse(List.of());
        return Working.group("Conditions on site", parts);
    }

    /** All verdicts, one a line. */
    @Override
    public String toString() {
        return String.join("\n", verdicts.stream().map(Verdict::toString).toList());
    }
}
