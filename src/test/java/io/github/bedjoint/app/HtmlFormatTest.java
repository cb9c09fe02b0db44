package io.github.bedjoint.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class HtmlFormatTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... args) {
        return Main.run(InputStream.nullInputStream(), new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8), args);
    }

    private String printed() {
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void cost_formatHtml_printsTheShopsPage() {
        assertThat(run("cost", "docs/jobs/brick-front.json", "--format", "html")).isZero();
        assertThat(printed()).startsWith("<!DOCTYPE html>").endsWith("</html>\n").contains("Shop copy", "EUR 3290.89", "17.80 m²");
    }

    @Test
    void cost_copyCrew_printsNoPrice() {
        assertThat(run("cost", "docs/jobs/brick-front.json", "--format", "html", "--copy", "crew", "--units", "imperial")).isZero();
        assertThat(printed()).contains("Crew copy", "191.60 ft²").doesNotContain("EUR");
    }

    @Test
    void cost_copyCustomer_printsThePrice() {
        assertThat(run("cost", "docs/jobs/brick-front.json", "--format", "html", "--copy", "customer")).isZero();
        assertThat(printed()).contains("Customer copy", "EUR 3290.89").doesNotContain("1919.69");
    }

    @Test
    void cost_oneMore_isForThoseWhoSeeCosts() {
        assertThat(run("cost", "docs/jobs/brick-front.json", "--format", "html", "--one-more")).isZero();
        assertThat(printed()).contains("<h3>Why these rolls</h3>", "Counting all panels gives 6.", "Biggest first: all film, 35.1 % not used", "href=\"#more\"",
                "<li>Every roll 10.0 mm longer");
        out.reset();
        assertThat(run("cost", "docs/jobs/brick-front.json", "--format", "html", "--one-more", "--copy", "crew")).isZero();
        assertThat(printed()).contains("Biggest first").doesNotContain("Why these rolls", "longer at the same price");
    }

    @Test
    void cost_copyWithoutHtml_isRefused() {
        assertThat(run("cost", "docs/jobs/brick-front.json", "--copy", "crew")).isEqualTo(2);
        assertThat(printed()).isEmpty();
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("--format html");
    }

    @Test
    void cost_oneFigureAsHtml_isRefused() {
        assertThat(run("cost", "docs/jobs/brick-front.json", "--format", "html", "--show-working", "rolls.yield")).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("holds every working");
    }
}
