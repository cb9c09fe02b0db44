package io.github.bedjoint.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Holds docs/formulas to the formula constants: the pages are generated from them. Run with {@code BEDJOINT_WRITE_PAGES=1} in the
 * environment to write them anew.
 */
class FormulaPageTest {
    private static final Path FOLDER = Project.root().resolve("docs/formulas");
    private static FormulaPages pages;

    @BeforeAll
    static void generate() throws IOException {
        pages = new FormulaPages();
    }

    @Test
    void formulaPages_ofTheConstants_areUpToDate() throws IOException {
        Map<String, String> all = pages.all();
        if (System.getenv("BEDJOINT_WRITE_PAGES") != null) {
            write(all);
        }
        assertThat(read()).as("docs/formulas; BEDJOINT_WRITE_PAGES=1 writes it anew").isEqualTo(all);
    }

    @Test
    void formulaPages_ofEveryFigure_haveAWorkedNumber() {
        assertThat(pages.withoutNumber()).as("figures that need an example in SurfaceExamples or WorkExamples").isEmpty();
    }

    private static void write(Map<String, String> all) throws IOException {
        Files.createDirectories(FOLDER);
        for (Path old : files()) {
            Files.delete(old);
        }
        for (Map.Entry<String, String> page : all.entrySet()) {
            Files.writeString(FOLDER.resolve(page.getKey()), page.getValue());
        }
    }

    private static Map<String, String> read() throws IOException {
        Map<String, String> found = new TreeMap<>();
        for (Path file : files()) {
            found.put(file.getFileName().toString(), Files.readString(file));
        }
        return found;
    }

    private static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.toList();
        }
    }
}
