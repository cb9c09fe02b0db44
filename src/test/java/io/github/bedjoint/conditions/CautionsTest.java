package io.github.bedjoint.conditions;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CautionsTest {
    @ParameterizedTest
    @EnumSource(Caution.class)
    void everyCaution_hasTextAndDefersToSomething(Caution caution) {
        assertThat(caution.title()).isNotBlank();
        assertThat(caution.text()).hasSizeGreaterThan(40).endsWith(".");
        assertThat(caution.defersTo()).isNotEmpty();
    }

    @Test
    void of_outdoorBrickFromALiftWithHeat_holdsAllButFireClass() {
        SiteConditions site = SiteConditions.outdoor(Substrate.BRICK).withReach(Reach.LIFT);
        assertThat(Cautions.of(site))
                .containsExactly(
                        Caution.HEAT,
                        Caution.HOT_WORK,
                        Caution.SOLVENT,
                        Caution.DUST,
                        Caution.HEIGHT,
                        Caution.LIFT,
                        Caution.ELECTRICITY,
                        Caution.LEAD,
                        Caution.MASONRY,
                        Caution.CONSENT);
    }

    @Test
    void of_indoorPanelColdAndUnpainted_holdsOnlyWhatTheJobHas() {
        SiteConditions site = SiteConditions.indoor(Substrate.PANEL)
                .with(Question.HEAT_USED, Answer.NO)
                .with(Question.SOLVENT_USED, Answer.NO)
                .with(Question.MAINS_POWER, Answer.NO)
                .with(Question.PAINTED, Answer.NO);
        assertThat(Cautions.of(site)).containsExactly(Caution.FIRE_CLASS, Caution.CONSENT);
    }

    @Test
    void of_twoWalls_holdsEachCautionOnce() {
        SiteConditions inside = SiteConditions.indoor(Substrate.PANEL);
        SiteConditions outside = SiteConditions.outdoor(Substrate.BRICK).withReach(Reach.SCAFFOLD);
        assertThat(Cautions.of(List.of(inside, outside)))
                .contains(Caution.FIRE_CLASS, Caution.HEIGHT)
                .doesNotHaveDuplicates()
                .isSorted();
        assertThat(Cautions.of(List.<SiteConditions>of())).isEmpty();
    }

    @Test
    void lead_testedFree_isGone() {
        SiteConditions site = SiteConditions.outdoor(Substrate.BRICK).with(Question.TESTED_FREE_OF_LEAD, Answer.YES);
        assertThat(Cautions.of(site)).doesNotContain(Caution.LEAD);
    }

    @Test
    void text_ofAll_hasThePublishedFiguresAndDefersInThePreface() {
        String text = Cautions.text(List.of(Caution.values()));
        assertThat(text).startsWith(Cautions.PREFACE);
        // NIOSH Pocket Guide 0359; 29 CFR 1926.1153; common practice for the temperatures.
        assertThat(text).contains("12 °C (53 °F)", "2.0 %", "400 ppm", "50, action level 25 µg/m³", "110 to 120 °C (230 to 248 °F)");
        assertThat(text).contains("29 CFR 1926.404(b)(1)", "40 CFR 745 Subpart E", "ASTM E84", "NPS Preservation Brief 1");
        assertThat(text.lines()).hasSize(Caution.values().length + 1);
    }
}
