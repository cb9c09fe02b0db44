package io.github.bedjoint.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the pages say of the dependencies is what the pom and the jars say. */
class DependenciesTest {

    @Test
    void licences_ofEveryDependencyOfThePom_areListed() throws IOException {
        List<String> artifacts = Pattern.compile("<dependency>\\s*<groupId>(?!\\$)[^<]*</groupId>\\s*<artifactId>([^<]+)</artifactId>")
                .matcher(Files.readString(Path.of("pom.xml"))).results().map(m -> m.group(1)).distinct().toList();
        String page = Files.readString(Path.of("DEVELOPERS.md"));

        assertThat(artifacts).contains("indriya", "jqwik").allSatisfy(artifact -> assertThat(page).contains('`' + artifact + '`'));
    }

    @Test
    void sizeOnTheReadme_isThatOfTheJarsMavenBrings() throws IOException {
        Matcher said = Pattern.compile("(\\d+) jars of (\\d+\\.\\d) MB together").matcher(Files.readString(Path.of("README.md")));
        assertThat(said.find()).isTrue();
        List<Path> jars = Stream.concat(ModulePathTest.NEEDED.stream(), ModulePathTest.NEEDED_TO_COMPILE.stream()).map(DependenciesTest::jar).toList();

        long bytes = 0;
        for (Path jar : jars) {
            bytes += Files.size(jar);
        }
        assertThat(said.group(1)).isEqualTo(Integer.toString(jars.size()));
        assertThat(Double.parseDouble(said.group(2))).isEqualTo(Math.round(bytes / 1e5) / 10.0);
    }

    private static Path jar(String name) {
        return Stream.of(System.getProperty("java.class.path").split(java.io.File.pathSeparator)).map(Path::of)
                .filter(p -> p.getFileName().toString().startsWith(name)).findFirst().orElseThrow();
    }
}
