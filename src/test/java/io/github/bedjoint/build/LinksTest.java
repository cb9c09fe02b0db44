package io.github.bedjoint.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every relative link of a page leads to a file of the project. */
class LinksTest {
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]+)(#[^)]*)?\\)");

    private static List<String> broken(Path page, String text) {
        List<String> broken = new ArrayList<>();
        Matcher link = LINK.matcher(text);
        while (link.find()) {
            String target = link.group(1).strip();
            if (!target.matches("[a-z]+:.*") && !Files.exists(page.resolveSibling(target))) {
                broken.add(page.getFileName() + ": " + target);
            }
        }
        return broken;
    }

    @Test
    void links_ofAllPages_leadSomewhere() throws IOException {
        List<String> broken = new ArrayList<>();
        int links = 0;
        try (Stream<Path> docs = Files.walk(Project.root().resolve("docs"))) {
            List<Path> pages = new ArrayList<>(docs.filter(path -> path.toString().endsWith(".md")).toList());
            pages.add(Project.root().resolve("README.md"));
            pages.add(Project.root().resolve("DEVELOPERS.md"));
            for (Path page : pages) {
                String text = Files.readString(page);
                links += (int) LINK.matcher(text).results().count();
                broken.addAll(broken(page, text));
            }
        }
        assertThat(broken).isEmpty();
        assertThat(links).isGreaterThan(15);
    }

    @Test
    void broken_linkToNoFile_isFound() {
        assertThat(broken(Project.root().resolve("README.md"), "[x](docs/none.md) [y](LICENSE) [z](https://example.org/)"))
                .containsExactly("README.md: docs/none.md");
    }
}
