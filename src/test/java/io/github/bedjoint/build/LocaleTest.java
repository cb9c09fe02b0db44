package io.github.bedjoint.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The runs of the suite must differ in the locale, or they prove nothing about it. */
class LocaleTest {

    @Test
    void defaultLocale_inEachRun_isTheOneTheBuildAsksFor() {
        String asked = System.getProperty("bedjoint.locale");
        assumeTrue(asked != null, "not started by the build");

        assertThat(Locale.getDefault().toLanguageTag()).isEqualTo(asked);
    }
}
