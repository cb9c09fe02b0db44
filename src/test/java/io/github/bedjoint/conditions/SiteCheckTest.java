package io.github.bedjoint.conditions;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Verdict.Level;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The rules of design and trade, each seen in every state. */
class SiteCheckTest {
    private static final Film FILM = Film.of("Sample film", Read.length("54 in"))
            .withSurfaceTemperatures(Read.temperature("10 degC"), Read.temperature("40 degC"));

    /** A brick wall about which everything is known and nothing is wrong. */
    static SiteConditions fine() {
        SiteConditions site = SiteConditions.outdoor(Substrate.BRICK);
        for (Question question : Question.values()) {
            if (question != Question.OUTDOOR && question.preset() == Answer.UNKNOWN) {
                site = site.with(question, Answer.NO);
            }
        }
        return site.withAir(Read.temperature("20 degC"), 0.5).withSurface(Read.temperature("20 degC"));
    }

    private static Level level(SiteConditions site, String subject) {
        return verdict(site, subject).level();
    }

    private static Verdict verdict(SiteConditions site, String subject) {
        List<Verdict> found = SiteCheck.of(site, FILM).verdicts().stream()
                .filter(verdict -> verdict.subject().equals(subject))
                .toList();
        assertThat(found).as(subject).hasSize(1);
        return found.get(0);
    }

    @Test
    void of_everythingKnownAndGood_isFine() {
        SiteCheck check = SiteCheck.of(fine(), FILM);
        assertThat(check.worst()).isEqualTo(Level.FINE);
        assertThat(check.isRefused()).isFalse();
        assertThat(check.verdicts()).hasSize(6).allMatch(verdict -> verdict.level() == Level.FINE);
        WorkingCheck.check(check.working());
    }

    @Test
    void of_nothingKnown_warnsAndRefusesHeatOnOldPaint() {
        SiteCheck check = SiteCheck.of(SiteConditions.outdoor(Substrate.BRICK), FILM);
        assertThat(check.isRefused()).isTrue();
        assertThat(check.verdicts(Level.REFUSED)).extracting(Verdict::subject).containsExactly("paint before 1978");
        assertThat(check.verdicts(Level.CAUTION)).hasSizeGreaterThan(5);
        assertThat(check.working().parts()).isEmpty();
    }

    @Test
    void window_limitsNotKnown_pointsToTheDataSheet() {
        SiteCheck check = SiteCheck.of(fine(), Film.of("Other film", Read.length("54 in")));
        assertThat(check.verdicts(Level.CAUTION)).singleElement().satisfies(verdict -> {
            assertThat(verdict.reason()).contains("data sheet");
            assertThat(verdict.source().kind()).isEqualTo(Source.Kind.ASSUMED);
        });
    }

    @ParameterizedTest
    @CsvSource({"9.9 degC, REFUSED", "10 degC, FINE", "50 degF, FINE", "40 degC, FINE", "40.1 degC, REFUSED", "313.15 K, FINE"})
    void window_atAndBeyondItsEnds_isAsTheSheetSays(String surface, Level expected) {
        SiteConditions site = fine().withAir(Read.temperature("5 degC"), 0.3).withSurface(Read.temperature(surface));
        assertThat(level(site, "surface temperature")).isEqualTo(expected);
    }

    @Test
    void dew_onlyAirKnown_saysTheLeastSurface() {
        SiteConditions site = SiteConditions.outdoor(Substrate.BRICK).withAir(Read.temperature("25 degC"), 0.6);
        // 16.69 + 3
        assertThat(verdict(site, "3 K rule").reason()).contains("at least 19.6");
        assertThat(level(site, "3 K rule")).isEqualTo(Level.CAUTION);
    }

    @ParameterizedTest
    @CsvSource({"NO, FINE", "YES, WARNING", "UNKNOWN, CAUTION"})
    void wallQuestions_eachAnswer_hasItsLevel(Answer answer, Level expected) {
        assertThat(level(fine().with(Question.DAMP, answer), "damp wall")).isEqualTo(expected);
        assertThat(level(fine().with(Question.HISTORIC, answer), "historic masonry")).isEqualTo(expected);
        assertThat(level(fine().with(Question.NEW_SUBSTRATE, answer), "new substrate")).isEqualTo(expected);
        SiteConditions painted = fine().with(Question.PAINTED, Answer.YES);
        assertThat(level(painted.with(Question.PAINT_LIFTS, answer), "paint that may lift")).isEqualTo(expected);
        assertThat(level(painted.with(Question.LOW_SURFACE_ENERGY, answer), "low surface energy paint")).isEqualTo(expected);
    }

    @Test
    void damp_notTested_describesTheTest() {
        // ASTM D4263 (summary): plastic sheet 18 x 18 in, at least 16 h.
        assertThat(verdict(fine().with(Question.DAMP, Answer.UNKNOWN), "damp wall").reason()).contains("18 x 18 in", "16 h");
    }

    @ParameterizedTest
    @CsvSource({
        "UNKNOWN, YES, REFUSED",
        "YES, YES, REFUSED",
        "NO, YES, FINE",
        "UNKNOWN, NO, CAUTION",
        "YES, NO, CAUTION",
        "UNKNOWN, UNKNOWN, REFUSED"
    })
    void foam_onRender_isRefusedUntilConfirmed(Answer foam, Answer heat, Level expected) {
        SiteConditions render = SiteConditions.outdoor(Substrate.RENDER)
                .with(Question.FOAM_BACKED, foam)
                .with(Question.HEAT_USED, heat);
        assertThat(level(render, "foam behind render")).isEqualTo(expected);
    }

    @Test
    void foam_onBrick_isNoMatter() {
        assertThat(SiteCheck.of(SiteConditions.outdoor(Substrate.BRICK), FILM).verdicts())
                .noneMatch(verdict -> verdict.subject().equals("foam behind render"));
    }

    @ParameterizedTest
    @CsvSource({
        "YES, NO, YES, NO, REFUSED",
        "UNKNOWN, NO, YES, NO, REFUSED",
        "UNKNOWN, NO, NO, YES, REFUSED",
        "UNKNOWN, UNKNOWN, YES, NO, REFUSED",
        "UNKNOWN, NO, NO, NO, WARNING",
        "NO, NO, YES, YES, FINE",
        "YES, YES, YES, YES, FINE"
    })
    void lead_heatOrAbrasionBeforeATest_isRefused(Answer old, Answer tested, Answer heat, Answer abrasion, Level expected) {
        SiteConditions painted = fine()
                .with(Question.PAINTED, Answer.YES)
                .with(Question.PAINT_BEFORE_1978, old)
                .with(Question.TESTED_FREE_OF_LEAD, tested)
                .with(Question.HEAT_USED, heat)
                .with(Question.DRY_ABRASION, abrasion);
        assertThat(level(painted, "paint before 1978")).isEqualTo(expected);
    }

    @ParameterizedTest
    @EnumSource(value = Feature.class, names = {"WEEP_HOLE", "VENT", "MOVEMENT_JOINT", "ALARM", "SIGN"})
    void covered_whatIsNeverCovered_isRefused(Feature feature) {
        SiteConditions cold = fine().with(Question.HEAT_USED, Answer.NO);
        assertThat(level(cold.withCovered(Set.of(feature)), feature.words())).isEqualTo(Level.REFUSED);
        assertThat(level(cold.withFeatures(Set.of(feature)), feature.words())).isEqualTo(Level.CAUTION);
    }

    @ParameterizedTest
    @EnumSource(value = Feature.class, names = {"EAVES", "GLASS"})
    void features_heatSensitive_warnOfHotAir(Feature feature) {
        assertThat(level(fine().withFeatures(Set.of(feature)), feature.words())).isEqualTo(Level.WARNING);
        assertThat(SiteCheck.of(fine().withFeatures(Set.of(feature)).with(Question.HEAT_USED, Answer.NO), FILM).worst())
                .isEqualTo(Level.FINE);
    }

    @Test
    void features_weepHoleWithHeat_areBothKeptClearAndCool() {
        List<Verdict> verdicts = SiteCheck.of(fine().withFeatures(Set.of(Feature.WEEP_HOLE)), FILM).verdicts().stream()
                .filter(verdict -> verdict.subject().equals("weep hole"))
                .toList();
        assertThat(verdicts).extracting(Verdict::level).containsExactly(Level.CAUTION, Level.WARNING);
    }

    @Test
    void reach_ladderWithHeat_warns() {
        assertThat(level(fine().withReach(Reach.LADDER), "ladder")).isEqualTo(Level.WARNING);
        assertThat(SiteCheck.of(fine().withReach(Reach.SCAFFOLD), FILM).worst()).isEqualTo(Level.FINE);
    }

    @Test
    void toString_oneLineEach() {
        assertThat(SiteCheck.of(fine(), FILM).toString().lines()).hasSize(6).allMatch(line -> line.startsWith("FINE "));
    }

    @Test
    void equals_sameAnswers_isEqual() {
        assertThat(fine()).isEqualTo(fine()).hasSameHashCodeAs(fine()).isNotEqualTo(fine().with(Question.DAMP, Answer.YES));
        assertThat(SiteConditions.indoor(Substrate.PANEL).toString()).startsWith("PANEL from GROUND {OUTDOOR=NO");
    }

    @ParameterizedTest
    @EnumSource(Feature.class)
    void isHeatSensitive_weepHolesVentsEavesAndGlass_only(Feature feature) {
        assertThat(feature.isHeatSensitive()).isEqualTo(Set.of(Feature.WEEP_HOLE, Feature.VENT, Feature.EAVES, Feature.GLASS).contains(feature));
    }

    @ParameterizedTest
    @EnumSource(Question.class)
    void text_everyQuestion_asks(Question question) {
        assertThat(question.text()).endsWith("?").hasSizeGreaterThan(15);
    }

    @Test
    void air_measuredOrNot_isGivenBackInKelvin() {
        SiteConditions unknown = SiteConditions.outdoor(Substrate.BRICK);
        assertThat(unknown.air()).isEmpty();
        assertThat(unknown.relativeHumidity()).isEmpty();
        SiteConditions known = unknown.withAir(Read.temperature("25 degC"), 0.6);
        assertThat(known.air().orElseThrow().getValue().doubleValue()).isEqualTo(298.15);
        assertThat(known.relativeHumidity()).contains(0.6);
    }

    @Test
    void window_insideAndOutside_isSaidWithItsLimits() {
        SiteConditions dry = fine().withAir(Read.temperature("5 degC"), 0.3);
        assertThat(verdict(dry.withSurface(Read.temperature("15 degC")), "surface temperature").reason())
                .isEqualTo("15 °C is inside the limits of Sample film, 10 °C to 40 °C");
        assertThat(verdict(dry.withSurface(Read.temperature("41 degC")), "surface temperature").reason())
                .isEqualTo("41 °C is outside the limits of Sample film, 10 °C to 40 °C");
    }

    @Test
    void paint_beforeOrUnknown_isSaid() {
        SiteConditions painted = fine().with(Question.PAINTED, Answer.YES);
        assertThat(verdict(painted.with(Question.PAINT_BEFORE_1978, Answer.YES), "paint before 1978").reason()).startsWith("paint of before 1978 may hold lead");
        assertThat(verdict(painted.with(Question.PAINT_BEFORE_1978, Answer.UNKNOWN), "paint before 1978").reason()).startsWith("paint of unknown age may hold lead");
    }

    @Test
    void foam_knownOrNot_isSaid() {
        SiteConditions render = SiteConditions.outdoor(Substrate.RENDER);
        SiteConditions known = render.with(Question.FOAM_BACKED, Answer.YES);
        assertThat(verdict(known, "foam behind render").reason()).isEqualTo("there is foam behind the render: no heat on this wall");
        assertThat(verdict(render, "foam behind render").reason()).isEqualTo("no heat on render until its build-up is confirmed to be without foam");
        assertThat(verdict(known.with(Question.HEAT_USED, Answer.NO), "foam behind render").reason()).isEqualTo("no heat on this wall");
        assertThat(verdict(render.with(Question.HEAT_USED, Answer.NO), "foam behind render").reason())
                .isEqualTo("no heat on this wall until the build-up is confirmed");
    }
}
