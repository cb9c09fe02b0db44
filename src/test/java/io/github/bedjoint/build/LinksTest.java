package io.github.bedjoint.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every relative link of a page leads to a file of the project, and to a heading of it where it names one. */
class LinksTest {
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]*)(?:#([^)]*))?\\)");

    private static List<String> broken(Path page, String text) {
        List<String> broken = new ArrayList<>();
        Matcher link = LINK.matcher(text);
        while (link.find()) {
            String target = link.group(1).strip();
            Path file = target.isEmpty() ? page : page.resolveSibling(target);
            if (!target.matches("[a-z]+:.*") && !(Files.exists(file) && (link.group(2) == null || hasHeading(file, link.group(2))))) {
                broken.add(page.getFileName() + ": " + link.group().substring(2, link.group().length() - 1));
            }
        }
        return broken;
    }

    /** Headings are named as Markdown viewers name them: small letters, blanks as hyphens, no punctuation. */
    private static boolean hasHeading(Path file, String name) {
        return Floors.text(file).lines()
                .filter(line -> line.startsWith("#"))
                .map(line -> line.replaceFirst("^#+ ", "").toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N} -]", "").replace(' ', '-'))
                .anyMatch(name::equals);
    }

    @Test
    void links_ofAllPages_leadSomewhere() throws IOException {
        List<String> broken = new ArrayList<>();
        int links = 0;
        try (Stream<Path> docs = Files.walk(Project.root().resolve("docs")); Stream<Path> root = Files.list(Project.root())) {
            for (Path page : Stream.concat(docs, root).filter(path -> path.toString().endsWith(".md")).toList()) {
                String text = Files.readString(page);
                links += (int) LINK.matcher(text).results().count();
                broken.addAll(broken(page, text));
            }
        }
        assertThat(broken).isEmpty();
        assertThat(links).isGreaterThan(400);
    }

    @Test
    void broken_linkToNoFileOrHeading_isFound() {
        assertThat(broken(
                        Project.root().resolve("README.md"),
                        "[a](docs/none.md) [b](LICENSE) [c](https://example.org/) [d](#the-five-figures) [e](#none) [f](docs/embedding.md#as-a-child-process)"))
                .containsExactly("README.md: docs/none.md", "README.md: #none");
    }
}
