package io.github.bedjoint.build;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.build.Floors.SourceFile;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sources keep the rules, and each rule finds the line planted for it. */
class HouseRulesTest {

    private static final List<SourceFile> TESTS = Floors.read(Project.root().resolve("src/test/java"));

    @Test
    void breaches_ofTheLibrary_areNone() {
        assertThat(HouseRules.breaches(Floors.read(Project.root().resolve("src/main/java")))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {
            "System.out.println(1);",
            "e.printStackTrace();",
            "long t = System.nanoTime();",
            "LocalDate d = LocalDate.now();",
            "String.format(\"%d\", 1);",
            "String.format(pattern, 1);",
            "\"%d\".formatted(1);",
            "s.toLowerCase();",
            "Locale.getDefault();",
            "new Random();",
            "Math.random();",
            "Quantities.getQuantity(\"1.5 m\");",
            "try { f(); } catch (IOException e) { }",
            "try { f(); } catch (IOException e) { /* never */ }",
            "private final Quantity<Length> width;",
            "// TODO later"})
    void breaches_plantedLine_found(String line) {
        assertThat(HouseRules.breaches(List.of(in("layout", line)))).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {
            "// System.out.println(1);",
            "String.format(Locale.ROOT, \"%d\", 1);",
            "s.toLowerCase(Locale.ROOT);",
            "new Random(seed);",
            "Quantities.getQuantity(1.5, METRE);",
            "try { f(); } catch (IOException e) { throw new UncheckedIOException(e); }",
            "Quantity<Length> width() { return Steps.toLength(steps); }",
            "private final Quantity<Length> width(double w) { return of(w); }"})
    void breaches_rightLine_none(String line) {
        assertThat(HouseRules.breaches(List.of(in("layout", line)))).isEmpty();
    }

    @Test
    void breaches_printingInTheApp_none() {
        assertThat(HouseRules.breaches(List.of(in("app", "System.exit(2);")))).isEmpty();
    }

    @Test
    void testClasses_areNamedSoThatTheBuildRunsThem() {
        Pattern test = Pattern.compile("@(Test|ParameterizedTest|TestFactory|RepeatedTest|Property|Example)\\b");
        List<String> unseen = TESTS.stream()
                .filter(f -> test.matcher(f.code()).find())
                .map(SourceFile::name)
                .filter(n -> !n.endsWith("Test.java") && !n.endsWith("Properties.java"))
                .toList();
        String pom = Floors.text(Project.root().resolve("pom.xml"));

        assertThat(unseen).isEmpty();
        assertThat(pom).contains("<include>**/*Test.java</include>", "<include>**/*Properties.java</include>");
    }

    @Test
    void testClasses_switchNothingOff() {
        assertThat(TESTS).noneMatch(f -> Pattern.compile("@Disabled\\b").matcher(f.code()).find());
    }

    private static SourceFile in(String home, String line) {
        return new SourceFile(home + "/A.java", "package io.github.bedjoint." + home + ";\nclass A {\n" + line + "\n}\n");
    }
}
