package io.github.bedjoint.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The README and the continuous integration give one and the same test command. */
class CommandsTest {

    private static final List<String> README = Fences.of(Floors.text(Project.root().resolve("README.md"))).stream()
            .filter(b -> b.info().equals("bash"))
            .flatMap(b -> b.text().lines())
            .toList();
    private static final List<String> CI = Floors.text(Project.root().resolve(".ci/run")).lines().toList();

    @Test
    void ciRun_runsTheReadmesTestCommand_first() {
        List<String> tests = README.stream().filter(l -> l.startsWith("mvn ") && l.endsWith(" verify")).toList();

        assertThat(tests).hasSize(1);
        assertThat(CI.stream().filter(l -> l.startsWith("mvn "))).containsExactly(tests.get(0));
    }

    @Test
    void ciRun_failsWithItsFirstFailingCommand() {
        assertThat(CI).contains("set -euo pipefail");
    }

    @Test
    void testCommand_isNotQuiet_soTheNumberOfTestsIsSeen() {
        assertThat(CI.stream().filter(l -> l.contains("mvn "))).noneMatch(l -> l.matches(".*\\s(-q|--quiet|-DskipTests\\S*)(\\s.*)?"));
    }
}
