package io.github.bedjoint.build;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.build.Floors.SourceFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The real sources keep the floors, and each planted wrong file is found, so the check can fail. */
class FloorsTest {

    private static final Path MAIN = Project.root().resolve("src/main/java");
    /** What no other module sees: the app, and how rolls are searched. */
    private static final Set<String> HIDDEN = Set.of("app", "patterns", "skyline", "bounds");
    private static final SourceFile LAYOUT = marked("layout");

    @Test
    void faults_ofTheLibrary_areNone() {
        assertThat(Floors.read(MAIN)).isNotEmpty();
        assertThat(Floors.faults(Floors.read(MAIN))).isEmpty();
    }

    /** What the checker says does not rest on the search for plans. */
    @Test
    void checker_ofTheLibrary_usesOnlyWhatJobAndPlanAre() {
        List<SourceFile> checker = Floors.read(MAIN.resolve("io/github/bedjoint/checker"));

        assertThat(checker).isNotEmpty()
                .allSatisfy(f -> assertThat(Floors.packagesUsed(f)).isSubsetOf(Floors.ROOT + ".checker", Floors.ROOT + ".rolls"));
    }

    @Test
    void moduleInfo_exports_everyOpenPackage() {
        String module = new SourceFile("module-info.java", Floors.text(MAIN.resolve("module-info.java"))).code();

        assertThat(named("exports\\s+([\\w.]+)\\s*;", module)).containsExactlyInAnyOrderElementsOf(open());
    }

    @Test
    void startOfTheShell_imports_everyOpenPackage() {
        String start = Floors.text(Project.root().resolve("docs/start.jsh"));

        assertThat(named("import (io\\.github\\.bedjoint\\.[\\w.]+)\\.\\*;", start))
                .containsExactlyInAnyOrderElementsOf(open());
    }

    /** The packages that others see. */
    private static Set<String> open() {
        return Floors.read(MAIN).stream()
                .filter(f -> !f.isPackageInfo())
                .map(SourceFile::packageName)
                .filter(p -> !HIDDEN.contains(p.substring(Floors.ROOT.length() + 1)))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<String> named(String pattern, String text) {
        return Pattern.compile(pattern).matcher(text).results().map(r -> r.group(1)).toList();
    }

    @Test
    void faults_importOfALowerFloor_none() {
        assertThat(faults("layout", "import io.github.bedjoint.survey.Wall;")).isEmpty();
    }

    @Test
    void faults_importOfAHigherFloor_named() {
        assertThat(faults("layout", "import io.github.bedjoint.rolls.Plan;"))
                .containsExactly("layout/A.java: floor 4 uses io.github.bedjoint.rolls on floor 5");
    }

    @Test
    void faults_importOfTheSameFloor_named() {
        SourceFile rolls = file("rolls", "import io.github.bedjoint.labour.Pace;");

        assertThat(Floors.faults(List.of(rolls, marked("rolls"))))
                .containsExactly("rolls/A.java: floor 5 uses io.github.bedjoint.labour on floor 5");
    }

    @Test
    void faults_staticAndStarImports_named() {
        assertThat(faults("layout", "import static io.github.bedjoint.job.Job.cost;")).hasSize(1);
        assertThat(faults("layout", "import io.github.bedjoint.job.*;")).hasSize(1);
    }

    @Test
    void faults_qualifiedNameInCode_named() {
        assertThat(faults("layout", "class A { io.github.bedjoint.job.Job j; }")).hasSize(1);
        assertThat(faults("layout", "class A { io.github.bedjoint.job\n    .Job j; }")).hasSize(1);
    }

    @Test
    void faults_qualifiedNameInACommentOrString_none() {
        assertThat(faults("layout", "/** {@link io.github.bedjoint.job.Job} */ // io.github.bedjoint.job.Job"))
                .isEmpty();
        assertThat(faults("layout", "class A { String s = \"\\\" io.github.bedjoint.job.Job\"; }")).isEmpty();
    }

    @Test
    void faults_codeAfterAStringThatLooksLikeAComment_named() {
        assertThat(faults("layout", "class A { String s = \"/* //\"; io.github.bedjoint.job.Job j; char c = '\"'; }"))
                .hasSize(1);
    }

    @Test
    void faults_unknownPackage_named() {
        SourceFile stray = file("paint", "class A {}");

        assertThat(Floors.faults(List.of(stray, marked("paint"))))
                .allMatch(f -> f.contains("package io.github.bedjoint.paint has no floor"))
                .hasSize(2);
        assertThat(faults("layout", "import io.github.bedjoint.paint.Tin;")).hasSize(1);
        assertThat(faults("layout", "import io.github.bedjoint.Root;")).hasSize(1);
    }

    @Test
    void faults_packageNamedForNothing_named() {
        assertThat(Floors.faults(List.of(file("layout.internal", ""), marked("layout.internal"))))
                .anyMatch(f -> f.contains("says nothing of what it holds"));
    }

    @Test
    void faults_packageWithoutNullMarked_named() {
        SourceFile plain = new SourceFile("layout/package-info.java", "// @NullMarked\npackage io.github.bedjoint.layout;");

        assertThat(Floors.faults(List.of(file("layout", "class A {}"), plain)))
                .containsExactly("io.github.bedjoint.layout has no package-info.java with @NullMarked");
    }

    @Test
    void faults_fileLength_400AllowedAnd401Named() {
        assertThat(Floors.faults(List.of(LAYOUT, longFile(400)))).isEmpty();
        assertThat(Floors.faults(List.of(LAYOUT, longFile(401))))
                .containsExactly("layout/Long.java: 401 lines, more than 400");
    }

    private static List<String> faults(String home, String body) {
        return Floors.faults(List.of(file(home, body), marked(home)));
    }

    private static SourceFile file(String home, String body) {
        return new SourceFile(home + "/A.java", "package io.github.bedjoint." + home + ";\n" + body + "\n");
    }

    private static SourceFile marked(String home) {
        return new SourceFile(home + "/package-info.java", "@NullMarked\npackage io.github.bedjoint." + home + ";\n");
    }

    private static SourceFile longFile(int lines) {
        return new SourceFile("layout/Long.java", "package io.github.bedjoint.layout;\n" + "\n".repeat(lines - 1));
    }
}
