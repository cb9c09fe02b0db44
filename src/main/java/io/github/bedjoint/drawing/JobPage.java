package io.github.bedjoint.drawing;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.job.OneMore;
import io.github.bedjoint.risk.Outcome;
import io.github.bedjoint.risk.RiskResult;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Markup;
import io.github.bedjoint.working.Source;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A costed job as one page of HTML: summary, walls with drawings, cut list, rolls, hours, dates, price, verdicts, cautions, and the
 * working of each figure folded under it.
 *
 * <p>The page is one file that needs no script, no font and no network, and forbids them; it prints on A4 and Letter. Metric and for
 * the shop, until told otherwise. The same job gives the same bytes. Immutable.
 */
public final class JobPage {
    private final JobCost cost;
    private final UnitStyle style;
    private final Copy copy;
    private final @Nullable RiskResult risk;
    private final @Nullable OneMore oneMore;

    private JobPage(JobCost cost, UnitStyle style, Copy copy, @Nullable RiskResult risk, @Nullable OneMore oneMore) {
        this.cost = cost;
        this.style = style;
        this.copy = copy;
        this.risk = risk;
        this.oneMore = oneMore;
    }

    /**
     * The page of a job.
     *
     * @param cost a costed job; one that cannot be done is shown as far as it was worked out, with the reasons first
     * @return the page for the shop in metric units
     */
    public static JobPage of(JobCost cost) {
        return new JobPage(cost, UnitStyle.METRIC, Copy.SHOP, null, null);
    }

    /**
     * The same in other units.
     *
     * @param other the reader's units
     * @return a new page
     */
    public JobPage withUnits(UnitStyle other) {
        return new JobPage(cost, other, copy, risk, oneMore);
    }

    /**
     * The same for another reader.
     *
     * @param other for whom it is
     * @return a new page
     */
    public JobPage withCopy(Copy other) {
        return new JobPage(cost, style, other, risk, oneMore);
    }

    /**
     * The same with how sure its figures are, for those who may see it: the crew sees hours, film and hand-over, the customer nothing.
     *
     * @param spread what the simulation of this job gave
     * @return a new page
     */
    public JobPage withRanges(RiskResult spread) {
        return new JobPage(cost, style, copy, spread, oneMore);
    }

    /**
     * The same with what one more of something would change, for those who may see costs.
     *
     * @param effects the effects on this job, which is planned again for them
     * @return a new page
     */
    public JobPage withOneMore(OneMore effects) {
        return new JobPage(cost, style, copy, risk, effects);
    }

    /**
     * The page.
     *
     * @return a whole HTML document, well-formed as XML too
     */
    public String html() {
        PageWriter page = new PageWriter(cost, style, copy);
        Markup out = page.out;
        out.doctype().open("html", "lang", "en");
        head(out);
        out.open("body").open("header");
        out.element("h1", cost.job().name());
        if (!cost.job().note().isEmpty()) {
            out.element("p", cost.job().note());
        }
        out.element("p", copy.title(), "class", "kind");
        contents(out);
        out.close().open("main");
        new SummaryPart(page).write();
        new WallPart(page).write();
        if (cost.isPriced()) {
            priced(page);
        }
        new CheckPart(page).write();
        sources(page);
        out.close().close().close();
        return out + "\n";
    }

    private void priced(PageWriter page) {
        if (copy.hasWork()) {
            new FilmPart(page).write();
            new TimePart(page).hours();
        }
        if (hasDates()) {
            new TimePart(page).dates();
        }
        if (copy.hasPrice()) {
            new MoneyPart(page).write();
        }
        if (oneMore != null && copy.hasCosts()) {
            oneMore(page, oneMore);
        }
        if (risk != null && hasSpread()) {
            new SpreadPart(page, risk).write();
        }
    }

    private void oneMore(PageWriter page, OneMore effects) {
        page.section("more", "One more");
        page.list(effects.lines(style));
        page.end();
    }

    /** Not where nothing could be simulated, and not for the customer. */
    private boolean hasSpread() {
        return risk != null && copy.hasWork() && risk.of(Outcome.PAID_TIME).count() > 0;
    }

    private boolean hasDates() {
        return cost.isPriced() && cost.timetable().filter(Timetable::isPossible).isPresent();
    }

    private void head(Markup out) {
        out.open("head").empty("meta", "charset", "utf-8");
        out.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        out.empty("meta", "http-equiv", "Content-Security-Policy", "content", "default-src 'none'; style-src 'unsafe-inline'");
        out.element("title", cost.job().name() + ", " + copy.title().toLowerCase(Locale.ROOT));
        out.element("style", look()).close();
    }

    private void contents(Markup out) {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("summary", "Summary");
        parts.put("walls", "Walls");
        if (cost.isPriced() && copy.hasWork()) {
            parts.put("cuts", "Cut list");
            parts.put("rolls", "Rolls");
            parts.put("hours", "Hours");
        }
        if (hasDates()) {
            parts.put("dates", "Dates");
        }
        if (cost.isPriced() && copy.hasPrice()) {
            parts.put("price", "Price");
        }
        if (cost.isPriced() && oneMore != null && copy.hasCosts()) {
            parts.put("more", "One more");
        }
        if (cost.isPriced() && hasSpread()) {
            parts.put("sure", "How sure");
        }
        parts.put("verdicts", "Verdicts");
        parts.put("cautions", "Cautions");
        parts.put("sources", "Sources");
        out.open("nav", "aria-label", "Parts of this page").open("ul");
        parts.forEach((id, title) -> out.open("li").element("a", title, "href", "#" + id).close());
        out.close().close();
    }

    private static void sources(PageWriter page) {
        page.out.open("div", "class", "origins");
        page.section("sources", "Sources of the workings");
        page.out.element("p", "Each working above names one of these by its number.");
        page.out.open("ol", "class", "sources");
        int number = 0;
        for (Source source : page.sources) {
            number++;
            page.out.element("li", source.toString(), "id", "source-" + number);
        }
        page.out.close();
        page.end();
        page.out.close();
    }

    private static String look() {
        try (InputStream css = JobPage.class.getResourceAsStream("page.css")) {
            if (css == null) {
                throw new IllegalStateException("page.css is missing beside JobPage");
            }
            return new String(css.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The page. */
    @Override
    public String toString() {
        return html();
    }
}
