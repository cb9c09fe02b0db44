package io.github.bedjoint.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.opentest4j.TestAbortedException;

/** A headless Chromium of this machine, and axe-core where .ci/browser put it. With -Dbedjoint.browser=required a missing one is a failure. */
final class Browser {
    static final Path FOLDER = Path.of("target", "browser").toAbsolutePath();
    private static final Path AXE = Path.of("target", "axe", "node_modules", "axe-core", "axe.min.js").toAbsolutePath();

    private Browser() {}

    static Path chromium() {
        // What a browser shows does not depend on the JVM's locale; that the page's bytes do not is tested in each of them.
        assumeTrue(System.getProperty("bedjoint.locale", "en-GB").equals("en-GB"), "the browser is asked once, in the run for en-GB");
        for (String folder : System.getenv("PATH").split(File.pathSeparator)) {
            for (String name : List.of("chromium", "chromium-browser", "google-chrome")) {
                Path file = Path.of(folder, name);
                if (Files.isExecutable(file)) {
                    return file;
                }
            }
        }
        return missing("There is no chromium on the PATH: pages were not looked at in a browser. Maybe run .ci/browser.");
    }

    static Path axe() {
        return Files.isReadable(AXE) ? AXE : missing("There is no axe-core in target/axe: accessibility was not checked. Maybe run .ci/browser.");
    }

    /** Leaves the longer half of the looks to .ci/browser. */
    static void onlyWhenRequired() {
        assumeTrue(isRequired(), "only a few looks are taken in the default build: .ci/browser takes all");
    }

    private static boolean isRequired() {
        return System.getProperty("bedjoint.browser", "").equals("required");
    }

    private static Path missing(String words) {
        if (isRequired()) {
            return fail(words);
        }
        throw new TestAbortedException(words);
    }

    /**
     * A page in a frame of a width, since a window cannot be as narrow as a phone.
     *
     * @param name what the findings are called
     * @param width of the frame in pixels
     * @param html the page; the policy that forbids scripts is taken out of it
     * @param scripts what runs at its end: a file, or text in which NAME stands for the name
     */
    record Look(String name, int width, String html, String... scripts) {
        private String page() {
            StringBuilder tags = new StringBuilder();
            for (String script : scripts) {
                tags.append(script.endsWith(".js") ? "<script src=\"file://" + script + "\"></script>" : "<script>" + script.replace("NAME", name) + "</script>");
            }
            return html.replaceAll("<meta http-equiv=\"Content-Security-Policy\"[^>]*>", "").replace("</body>", tags + "</body>");
        }

        private String frame() {
            return "<iframe width=\"" + width + "\" height=\"900\" style=\"border:0\" srcdoc=\"" + page().replace("&", "&amp;").replace("\"", "&quot;") + "\"></iframe>";
        }
    }

    /** Opens all pages at once; what each script left is found by name. */
    static String open(String file, List<Look> looks) throws Exception {
        StringBuilder page = new StringBuilder("<!DOCTYPE html><html><head><meta charset=\"utf-8\"></head><body>");
        looks.forEach(look -> page.append(look.frame()));
        Path written = write(file, page + "</body></html>");
        return run("--hide-scrollbars", "--window-size=1300,900", "--virtual-time-budget=30000", "--dump-dom", written.toUri().toString());
    }

    static Path write(String name, String html) throws IOException {
        Files.createDirectories(FOLDER);
        return Files.writeString(FOLDER.resolve(name + ".html"), html);
    }

    static String probe(boolean open) throws IOException {
        try (@Nullable InputStream in = Browser.class.getResourceAsStream("probe.js")) {
            assertThat(in).isNotNull();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("OPEN", Boolean.toString(open));
        }
    }

    static void screenshot(Path page, int width, int height, Path png) throws Exception {
        run("--hide-scrollbars", "--window-size=" + width + "," + height, "--screenshot=" + png, page.toUri().toString());
    }

    static void pdf(Path page, Path pdf) throws Exception {
        run("--no-pdf-header-footer", "--print-to-pdf=" + pdf, page.toUri().toString());
    }

    private static String run(String... arguments) throws Exception {
        List<String> command = new ArrayList<>(List.of(chromium().toString(), "--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage"));
        command.addAll(Arrays.asList(arguments));
        Path out = Files.createTempFile("chromium", ".out");
        try {
            Process process = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(ProcessBuilder.Redirect.DISCARD).start();
            if (!process.waitFor(120, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                return fail("chromium did not end within two minutes: " + command);
            }
            assertThat(process.exitValue()).as(command.toString()).isZero();
            return Files.readString(out);
        } finally {
            Files.deleteIfExists(out);
        }
    }

    /** The lines that a script left in an element. */
    static List<String> left(String dom, String id) {
        Matcher pre = Pattern.compile("<pre id=\"" + id + "\">(.*?)</pre>", Pattern.DOTALL).matcher(dom);
        assertThat(pre.find()).as("the script left its findings of " + id).isTrue();
        return pre.group(1).replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&").lines().toList();
    }

    /** What the probe found under a name. */
    static List<String> found(List<String> lines, String name) {
        return lines.stream().filter(line -> line.startsWith(name + "\t")).map(line -> line.substring(name.length() + 1)).toList();
    }
}
