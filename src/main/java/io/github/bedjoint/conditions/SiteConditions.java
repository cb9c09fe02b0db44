package io.github.bedjoint.conditions;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.ShopUnits;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/**
 * What is known of one wall, the work on it and the weather: answers to the {@linkplain Question questions}, what the wall is made of, how
 * it is reached, what it has that must be left clear, and the temperatures if they were measured.
 *
 * <p>What was not answered has the preset of its question, mostly "not known", which checks treat as the worse case. Immutable.
 */
public final class SiteConditions {
    private static final Range SURFACE = Range.closed(200, 400);

    private final Map<Question, Answer> answers;
    private final Substrate substrate;
    private final Reach reach;
    private final Set<Feature> features;
    private final Set<Feature> covered;
    private final Weather weather;

    private SiteConditions(
            Map<Question, Answer> answers,
            Substrate substrate,
            Reach reach,
            Set<Feature> features,
            Set<Feature> covered,
            Weather weather) {
        this.answers = Collections.unmodifiableMap(answers);
        this.substrate = substrate;
        this.reach = reach;
        this.features = features;
        this.covered = covered;
        this.weather = weather;
    }

    /**
     * A wall outdoors, worked on from the ground, of which nothing else is known.
     *
     * @param substrate what it is made of
     * @return the conditions
     */
    public static SiteConditions outdoor(Substrate substrate) {
        return start(substrate, Answer.YES);
    }

    /**
     * A wall indoors, worked on from the ground, of which nothing else is known.
     *
     * @param substrate what it is made of
     * @return the conditions
     */
    public static SiteConditions indoor(Substrate substrate) {
        return start(substrate, Answer.NO);
    }

    private static SiteConditions start(Substrate substrate, Answer outdoor) {
        Map<Question, Answer> answers = new EnumMap<>(Question.class);
        for (Question question : Question.values()) {
            answers.put(question, question.preset());
        }
        answers.put(Question.OUTDOOR, outdoor);
        return new SiteConditions(
                answers,
                Objects.requireNonNull(substrate),
                Reach.GROUND,
                Set.of(),
                Set.of(),
                new Weather(Double.NaN, Double.NaN, Double.NaN));
    }

    /**
     * The same with an answer to a question.
     *
     * @param question the question
     * @param answer   the answer
     * @return the conditions
     */
    public SiteConditions with(Question question, Answer answer) {
        Map<Question, Answer> changed = new EnumMap<>(answers);
        changed.put(question, answer);
        return new SiteConditions(changed, substrate, reach, features, covered, weather);
    }

    /**
     * The same reached in another way.
     *
     * @param how how the crew reaches the highest place of the work
     * @return the conditions
     */
    public SiteConditions withReach(Reach how) {
        return new SiteConditions(answers, substrate, how, features, covered, weather);
    }

    /**
     * The same with features on or beside the wall, in place of those it had.
     *
     * @param present what there is
     * @return the conditions
     */
    public SiteConditions withFeatures(Set<Feature> present) {
        return new SiteConditions(answers, substrate, reach, ordered(present), covered, weather);
    }

    /**
     * The same with features that the planned film would cover, in place of those it had.
     *
     * @param planned what would be covered
     * @return the conditions
     */
    public SiteConditions withCovered(Set<Feature> planned) {
        return new SiteConditions(answers, substrate, reach, features, ordered(planned), weather);
    }

    private static Set<Feature> ordered(Set<Feature> set) {
        return set.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(set));
    }

    /**
     * The same with the air measured at the wall.
     *
     * @param temperature      temperature of the air, -45 to 60 degrees Celsius
     * @param relativeHumidity relative humidity over water as a share, above 0, at most 1
     * @return the conditions
     * @throws io.github.bedjoint.units.RefusedException if a value is out of range
     */
    public SiteConditions withAir(Quantity<Temperature> temperature, double relativeHumidity) {
        Weather measured =
                new Weather(DewPoint.airK(temperature), DewPoint.humidity(relativeHumidity), weather.surfaceK());
        return new SiteConditions(answers, substrate, reach, features, covered, measured);
    }

    /**
     * The same with the wall's surface temperature measured.
     *
     * @param temperature temperature of the surface, 200 to 400 K
     * @return the conditions
     * @throws io.github.bedjoint.units.RefusedException if it is out of range
     */
    public SiteConditions withSurface(Quantity<Temperature> temperature) {
        double surfaceK = Door.temperatureK("surface temperature", temperature, SURFACE);
        return new SiteConditions(
                answers, substrate, reach, features, covered, new Weather(weather.airK(), weather.humidity(), surfaceK));
    }

    /**
     * The answer to a question.
     *
     * @param question the question
     * @return the answer given, or the question's preset
     */
    public Answer answer(Question question) {
        return Objects.requireNonNull(answers.get(question));
    }

    /** Whether a question was answered with yes. */
    boolean is(Question question) {
        return answer(question) == Answer.YES;
    }

    /** Whether a question was answered with yes or not at all. */
    boolean maybe(Question question) {
        return answer(question) != Answer.NO;
    }

    /**
     * What the wall is made of.
     *
     * @return the substrate
     */
    public Substrate substrate() {
        return substrate;
    }

    /**
     * How the crew reaches the highest place.
     *
     * @return the way
     */
    public Reach reach() {
        return reach;
    }

    /**
     * Features on or beside the wall.
     *
     * @return an unmodifiable set
     */
    public Set<Feature> features() {
        return features;
    }

    /**
     * Features that the planned film would cover.
     *
     * @return an unmodifiable set
     */
    public Set<Feature> covered() {
        return covered;
    }

    /**
     * The dew point of the air at the wall.
     *
     * @return the dew point, or empty while the air was not measured
     */
    public Optional<DewPoint> dewPoint() {
        return Double.isNaN(weather.airK())
                ? Optional.empty()
                : Optional.of(DewPoint.of(Door.of(weather.airK(), ShopUnits.KELVIN), weather.humidity()));
    }

    /**
     * The air temperature, where it was measured.
     *
     * @return the temperature
     */
    public Optional<Quantity<Temperature>> air() {
        return Double.isNaN(weather.airK()) ? Optional.empty() : Optional.of(Door.of(weather.airK(), ShopUnits.KELVIN));
    }

    /**
     * The relative humidity, where it was measured.
     *
     * @return the share, over 0 to 1
     */
    public Optional<Double> relativeHumidity() {
        return Double.isNaN(weather.humidity()) ? Optional.empty() : Optional.of(weather.humidity());
    }

    /**
     * The surface temperature of the wall.
     *
     * @return the temperature in kelvin, or empty while it was not measured
     */
    public Optional<Quantity<Temperature>> surface() {
        return Double.isNaN(weather.surfaceK())
                ? Optional.empty()
                : Optional.of(Door.of(weather.surfaceK(), ShopUnits.KELVIN));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SiteConditions that
                && answers.equals(that.answers)
                && substrate == that.substrate
                && reach == that.reach
                && features.equals(that.features)
                && covered.equals(that.covered)
                && weather.equals(that.weather);
    }

    @Override
    public int hashCode() {
        return Objects.hash(answers, substrate, reach, features, covered, weather);
    }

    /** Substrate, reach and the answers: {@code BRICK from GROUND {OUTDOOR=YES, ...}}. */
    @Override
    public String toString() {
        return substrate + " from " + reach + " " + answers;
    }

    /** Kelvin and a share; NaN where not measured. */
    private record Weather(double airK, double humidity, double surfaceK) {}
}
