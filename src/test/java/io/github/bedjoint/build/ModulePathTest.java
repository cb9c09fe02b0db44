package io.github.bedjoint.build;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.units.Read;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A stranger's module that requires ours, compiled and run on the module path with the optional jars left out: what an
 * embedder gets from the one dependency is enough. The suite itself runs on the class path and cannot see this.
 */
class ModulePathTest {

    /** The run-time dependencies that are not optional. */
    static final List<String> NEEDED =
            List.of("indriya-", "unit-api-", "uom-lib-common-", "jakarta.inject-api-", "joda-money-", "commons-lang3-");
    /** Javac asks for it (requires static transitive); nothing loads it at run time. */
    static final List<String> NEEDED_TO_COMPILE = List.of("jspecify-");

    @TempDir
    private Path temp;

    @Test
    void consumerModule_withoutOptionalJars_compilesAndPrintsAValue() throws Exception {
        String path = ours() + File.pathSeparator + jars(NEEDED);
        String compilePath = path + File.pathSeparator + jars(NEEDED_TO_COMPILE);
        Path consumer = write("module-info.java", "module shop { requires io.github.bedjoint; }");
        Path main = write("shop/Main.java", """
                package shop;

                import io.github.bedjoint.units.Read;
                import io.github.bedjoint.units.ShopUnits;
                import javax.measure.Quantity;
                import javax.measure.quantity.Length;
                import org.joda.money.Money;

                class Main {
                    public static void main(String[] args) {
                        Quantity<Length> roll = Read.length("54 in");
                        Money fee = Money.parse("EUR 12.50");
                        System.out.printf(java.util.Locale.ROOT, "%.4f m, %s%n",
                                roll.to(ShopUnits.METRE).getValue().doubleValue(), fee);
                        for (String module : new String[] {"com.fasterxml.jackson.core", "info.picocli"}) {
                            System.out.println(module + " " + ModuleLayer.boot().findModule(module).isPresent());
                        }
                    }
                }
                """);

        run("javac", "--release", "17", "-p", compilePath, "-d", temp.resolve("out").toString(), consumer.toString(), main.toString());

        // 54 in x 0.0254 m/in = 1.3716 m
        assertThat(java("-p", path + File.pathSeparator + temp.resolve("out"), "-m", "shop/shop.Main")).isEqualTo("""
                1.3716 m, EUR 12.50
                com.fasterxml.jackson.core false
                info.picocli false
                """);
    }

    @Test
    void consumerModule_usingThePackageOfTheApp_doesNotCompile() throws Exception {
        Path consumer = write("module-info.java", "module shop { requires io.github.bedjoint; }");
        Path main = write("shop/Main.java", "package shop; import io.github.bedjoint.app.*; class Main { }");
        StringWriter err = new StringWriter();

        String path = String.join(File.pathSeparator, ours().toString(), jars(NEEDED), jars(NEEDED_TO_COMPILE));
        int code = tool("javac").run(new PrintWriter(err), new PrintWriter(err), "--release", "17", "-p", path, "-d", temp.resolve("out").toString(), consumer.toString(), main.toString());

        assertThat(code).isNotZero();
        assertThat(err.toString()).contains("io.github.bedjoint.app");
    }

    /** Our classes, packed as the thin jar is. */
    private Path ours() throws URISyntaxException {
        Path jar = temp.resolve("bedjoint.jar");
        Path classes = Path.of(Read.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        run("jar", "--create", "--file", jar.toString(), "-C", classes.toString(), ".");
        return jar;
    }

    /** The jars of the class path of this test whose names begin so, exactly one each. */
    private static String jars(List<String> names) {
        List<String> jars = Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(e -> names.stream().anyMatch(n -> Path.of(e).getFileName().toString().startsWith(n)))
                .toList();
        assertThat(jars).hasSameSizeAs(names);
        return String.join(File.pathSeparator, jars);
    }

    private Path write(String name, String text) throws IOException {
        Path file = temp.resolve("src").resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private static ToolProvider tool(String name) {
        return ToolProvider.findFirst(name).orElseThrow();
    }

    private static void run(String name, String... arguments) {
        StringWriter out = new StringWriter();
        int code = tool(name).run(new PrintWriter(out), new PrintWriter(out), arguments);
        assertThat(code).as(name + ": " + out).isZero();
    }

    private static String java(String... arguments) throws IOException, InterruptedException {
        List<String> command = Stream.concat(
                Stream.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()), Stream.of(arguments)).toList();
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(out).isZero();
        return out.replace(System.lineSeparator(), "\n");
    }
}
