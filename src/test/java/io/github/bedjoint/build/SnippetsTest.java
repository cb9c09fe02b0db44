package io.github.bedjoint.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import io.github.bedjoint.build.Fences.Example;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Runs every Java block of README.md and docs/*.md.
 *
 * <p>The convention:
 * <ul>
 * <li>A page is one JShell session with the imports of docs/start.jsh: a block sees the variables of the blocks above it.
 * <li>A block that shows something is followed, with blank lines at most between, by a {@code text} block that holds all of
 *     it: first what it prints, then the value of its last line if that line is an expression, as JShell writes values.
 * <li>A block without a {@code text} block shows nothing.
 * <li>A refusal shows as {@code |  Exception <class>: <message>} and ends its block.
 * <li>No block is left out: an info string such as "java noexec" fails.
 * </ul>
 */
class SnippetsTest {

    private static final Path ROOT = Project.root();
    private static final String IMPORTS = Floors.text(ROOT.resolve("docs/start.jsh"));

    @TestFactory
    Stream<DynamicContainer> javaBlocks_ofEachPage_showTheTextBelowThem() throws IOException {
        List<Path> pages = new ArrayList<>(List.of(ROOT.resolve("README.md")));
        try (Stream<Path> docs = Files.list(ROOT.resolve("docs"))) {
            docs.filter(p -> p.toString().endsWith(".md")).sorted().forEach(pages::add);
        }
        return pages.stream().map(page -> dynamicContainer(ROOT.relativize(page).toString(), tests(Floors.text(page))));
    }

    /** One test a block, lazily and in order; the shell of the page is closed by the last one. */
    private static Stream<DynamicTest> tests(String markdown) {
        List<Example> examples = Fences.examples(markdown);
        if (examples.isEmpty()) {
            return Stream.empty();
        }
        Shell shell = new Shell(IMPORTS);
        return examples.stream()
                .map(e -> dynamicTest("line " + e.java().line(), () -> check(shell, e)))
                .onClose(shell::close);
    }

    private static void check(Shell shell, Example example) {
        String expected = example.expected() == null ? "" : example.expected();
        assertThat(shell.run(example.java().text())).isEqualTo(expected);
    }

    @Test
    void start_holdsImportsAndLabelsButNoCommands() {
        // A feedback or mode command in a start file fails on both JDKs with noise at every start.
        assertThat(IMPORTS.lines().filter(l -> !l.isBlank()))
                .allMatch(l -> l.matches("import [\\w.]+(\\.\\*)?;|Map\\.of\\(ShopUnits.*SimpleUnitFormat.getInstance\\(\\)::label\\);"));
    }

    @Test
    void run_expressionAndPrint_printedThenValue() {
        assertThat(shown("int a = 2;\nSystem.out.println(\"a²\");\na * a")).isEqualTo("a²\n4\n");
        assertThat(shown("\"x\" + 1")).isEqualTo("\"x1\"\n");
        assertThat(shown("var l = List.of(1, 2);\nl")).isEqualTo("[1, 2]\n");
    }

    @Test
    void run_declarationAndAssignment_showNothing() {
        assertThat(shown("int a = 2; a = 3;\nrecord R(int x) {\n}\nimport java.util.function.*;")).isEmpty();
    }

    @Test
    void run_chainOverLinesAndComments_readAsWritten() {
        assertThat(shown("// first\nvar s = List.of(1, 2).stream()\n    .map(i -> i + 1) // more\n    .toList();\ns.size()\n// end"))
                .isEqualTo("2\n");
        assertThat(shown("if (1 > 2) {\n} else if (2 > 1) System.out.println(5);")).isEqualTo("5\n");
    }

    @Test
    void run_exception_showsItsFirstLineAndStops() {
        assertThat(shown("System.out.println(1);\nInteger.parseInt(\"x\");\nSystem.out.println(2);"))
                .isEqualTo("1\n|  Exception java.lang.NumberFormatException: For input string: \"x\"\n");
    }

    @Test
    void run_wrongCode_fails() {
        assertThatThrownBy(() -> shown("int a = \"x\";")).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("incompatible types");
        assertThatThrownBy(() -> shown("nowhere.call()")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> shown("void f() { g(); }")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> shown("for (int i = 0; i < 3; i++) {")).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("not complete");
    }

    @Test
    void check_otherValueThanTheText_fails() {
        try (Shell shell = new Shell(IMPORTS)) {
            Example example = Fences.examples("```java\n1 + 1\n```\n\n```text\n3\n```\n").get(0);

            assertThatThrownBy(() -> check(shell, example)).isInstanceOf(AssertionError.class);
        }
    }

    @Test
    void check_valueWithoutAText_fails() {
        try (Shell shell = new Shell(IMPORTS)) {
            Example example = Fences.examples("```java\n1 + 1\n```\nSome words.\n\n```text\n2\n```\n").get(0);

            assertThat(example.expected()).isNull();
            assertThatThrownBy(() -> check(shell, example)).isInstanceOf(AssertionError.class);
        }
    }

    @Test
    void examples_javaNoexec_refused() {
        assertThatThrownBy(() -> Fences.examples("```java noexec\nx\n```\n")).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("java noexec");
    }

    @Test
    void of_openBlock_refused() {
        assertThatThrownBy(() -> Fences.of("a\n```java\nx\n")).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("line 2");
    }

    @Test
    void of_blockInAList_losesItsIndent() {
        assertThat(Fences.of("- a\n\n  ```java\n  if (b) {\n    c();\n  ```\n").get(0).text()).isEqualTo("if (b) {\n  c();\n");
    }

    private static String shown(String block) {
        try (Shell shell = new Shell(IMPORTS)) {
            return shell.run(block);
        }
    }
}
