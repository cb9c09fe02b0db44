package io.github.bedjoint.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the compiled library must not use, looked for in the constant pools of its class files, where every class and method that it calls is named. */
class SafetyTest {
    private static final List<String> FORBIDDEN = List.of(
            "java/net/", "javax/net/", "java/nio/channels/SocketChannel", "java/nio/channels/ServerSocketChannel", "java/nio/channels/DatagramChannel",
            "java/rmi/", "javax/naming/", "java/io/ObjectInputStream", "java/io/ObjectOutputStream", "java/io/Serializable", "java/io/Externalizable",
            "java/lang/reflect/", "java/lang/invoke/MethodHandles$Lookup;)V", "setAccessible", "forName", "newInstance", "loadClass", "defineClass",
            "java/util/ServiceLoader", "java/lang/ProcessBuilder", "java/lang/Runtime;)V", "javax/script/", "sun/misc/Unsafe", "com/fasterxml/jackson/databind");

    /** Only the app: exceptions are serializable by birth, and it asks the command test whether a person watches. */
    private static final Map<String, List<String>> ALLOWED =
            Map.of("app/Progress.class", List.of("java/lang/ProcessBuilder"));

    private static Map<String, String> found(Path classes) throws IOException {
        Map<String, String> found = new TreeMap<>();
        try (Stream<Path> files = Files.walk(classes)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".class")).toList()) {
                String name = classes.relativize(file).toString().replace('\\', '/').replace("io/github/bedjoint/", "");
                String pool = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
                for (String word : FORBIDDEN) {
                    if (pool.contains(word) && !ALLOWED.getOrDefault(name, List.of()).contains(word)) {
                        found.merge(name, word, (one, two) -> one + ", " + two);
                    }
                }
            }
        }
        return found;
    }

    @Test
    void classes_ofTheLibrary_useNoNetworkSerializationReflectionOrProcesses() throws IOException {
        Path classes = Project.root().resolve("target/classes");
        try (Stream<Path> files = Files.walk(classes)) {
            assertThat(files.filter(path -> path.toString().endsWith(".class")).count()).isGreaterThan(200);
        }
        assertThat(found(classes)).isEmpty();
    }

    /** The check is not blind: the tests themselves use reflection and processes. */
    @Test
    void classes_ofTheTests_areCaught() throws IOException {
        Map<String, String> tests = found(Project.root().resolve("target/test-classes"));
        assertThat(tests.get("job/FiguresTest.class")).contains("java/lang/reflect/");
        assertThat(tests.get("app/LinesProcessTest.class")).contains("java/lang/ProcessBuilder");
    }
}
