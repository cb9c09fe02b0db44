package io.github.bedjoint.conditions;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.working.Verdict;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class SiteCheckProperties {
    private static final Film FILM = Film.of("Sample film", Read.length("54 in"));

    @Provide
    Arbitrary<SiteConditions> sites() {
        Arbitrary<List<Answer>> answers = Arbitraries.of(Answer.class).list().ofSize(Question.values().length);
        Arbitrary<Set<Feature>> features = Arbitraries.of(Feature.class).set();
        return Combinators.combine(
                        Arbitraries.of(Substrate.class), Arbitraries.of(Reach.class), answers, features, features)
                .as((substrate, reach, given, present, covered) -> {
                    SiteConditions site = SiteConditions.outdoor(substrate)
                            .withReach(reach)
                            .withFeatures(new HashSet<>(present))
                            .withCovered(new HashSet<>(covered));
                    for (Question question : Question.values()) {
                        site = site.with(question, given.get(question.ordinal()));
                    }
                    return site;
                });
    }

    @Property
    void of_anySite_everyVerdictHasAReasonAndASource(@ForAll("sites") SiteConditions site) {
        SiteCheck check = SiteCheck.of(site, FILM);
        assertThat(check.verdicts()).isNotEmpty().allSatisfy(verdict -> {
            assertThat(verdict.subject()).isNotBlank();
            assertThat(verdict.reason()).isNotBlank();
            assertThat(verdict.source().citation()).isNotBlank();
        });
        assertThat(check.isRefused()).isEqualTo(!check.verdicts(Verdict.Level.REFUSED).isEmpty());
        assertThat(Arrays.stream(Verdict.Level.values()).mapToInt(level -> check.verdicts(level).size()).sum())
                .isEqualTo(check.verdicts().size());
    }

    @Property
    void of_heatOnWhatMayBurnOrHoldLead_isAlwaysRefused(@ForAll("sites") SiteConditions site) {
        boolean heat = site.answer(Question.HEAT_USED) != Answer.NO;
        boolean foam = site.substrate() == Substrate.RENDER && site.answer(Question.FOAM_BACKED) != Answer.NO;
        boolean lead = site.answer(Question.PAINTED) != Answer.NO
                && site.answer(Question.PAINT_BEFORE_1978) != Answer.NO
                && site.answer(Question.TESTED_FREE_OF_LEAD) != Answer.YES;
        boolean covers = site.covered().stream().anyMatch(Feature::isNeverCovered);
        if (heat && (foam || lead) || covers) {
            assertThat(SiteCheck.of(site, FILM).isRefused()).isTrue();
        }
    }

    @Property
    void of_notKnownInsteadOfYes_isNeverFine(@ForAll("sites") SiteConditions site) {
        // Not to know must not be better than to know the worst, as far as refusals go.
        for (Question question : new Question[] {Question.FOAM_BACKED, Question.PAINT_BEFORE_1978, Question.PAINTED, Question.HEAT_USED}) {
            boolean yes = SiteCheck.of(site.with(question, Answer.YES), FILM).isRefused();
            boolean unknown = SiteCheck.of(site.with(question, Answer.UNKNOWN), FILM).isRefused();
            assertThat(unknown).as(question.text()).isEqualTo(yes);
        }
    }

    @Property
    void cautions_anySite_growWithWhatIsNotKnown(@ForAll("sites") SiteConditions site) {
        for (Question question : Question.values()) {
            if (question != Question.OUTDOOR && question != Question.TESTED_FREE_OF_LEAD) {
                assertThat(Cautions.of(site.with(question, Answer.UNKNOWN)))
                        .containsAll(Cautions.of(site.with(question, Answer.NO)));
            }
        }
        assertThat(Cautions.of(site)).contains(Caution.CONSENT);
    }
}
