package io.github.bedjoint.job;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.jobfile.RandomJobs;
import io.github.bedjoint.price.Overhead;
import io.github.bedjoint.price.PriceBuildUp;
import io.github.bedjoint.price.Profit;
import io.github.bedjoint.price.Rounding;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.FormulaConstants;
import io.github.bedjoint.working.WorkingCheck;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;

/** The guard of the whole tree: every formula of every drawn job is evaluated from its text, and at the end none was left out. */
class JobWorkingProperties {
    private static final int WALLS = 8;
    private static final Map<String, Integer> COUNTS = new ConcurrentHashMap<>();
    private static int jobs;

    /** What no job made from a job file holds; each is checked by the tests of its room. */
    private static final Pattern ELSEWHERE = Pattern.compile(String.join("|",
            "calibration\\..*", // jobs done, not a job to come
            "risk\\..*", // ranges over a job
            "labour\\.(average-law.*|unit-law.*|learning-.*|repeated|times-learned|basic-of-observed|heat-.*)", // called by whoever sets a pace
            "labour\\.(trip-(days|tasks)|hire-cost|reach.*)", // only where tasks are done on a trip, or a wall is high enough
            "layout\\.(cut-.*|shape-trim|take-up|reach|extra-as-wall|spare.*)", // explained per panel and print list, or with film fed in only
            "price\\.(break-even-.*|disposal-.*|ordered|spare|per-area.*|variance.*|price-variance-.*|usage-variance-.*|overhead-(spending|efficiency))",
            "price\\.line-by-(length|mass)", // extras of a job file are counts
            "rolls\\.(coverage|drops-per-roll|area-division|over-widths)", // of one roll and one length, for who asks; of rolls of several widths
            "schedule\\.(three-point-.*|lead-time)", "labour\\..*-learned",
            "texture\\.(bed-length|head-length|unit-count|variance.*|take-up|stretch-left|.*uncertainty)", // counts and uncertainty on demand
            "job\\.least-contact", // unknown where a measured surface is bridged
            "texture\\.(face-stretch|local-stretch.*|mean-stretch-.*|no-stretch)", // of stretchWorking, which the verdict of Follow states
            "texture\\.(adjusted.*|gauge-.*|grid.*|less-noise|noise|profile.*|profiles|sa|sq|sdq|sdr|spot.*|stepped)" // measured surfaces, which few jobs have
            ));

    private static final Pattern DRAWN = Pattern.compile("texture\\..*|job\\.(film-used-up|scrap-film)");

    /** A job as a shop has it, with ink, laminate, dates and a surveyed site; if it cannot be planned, the next one. */
    private static JobCost priced(long seed) {
        JobCost cost = JobProperties.cost(RandomJobs.rich(seed));
        return cost.isPriced() && cost.timetable().isPresent() ? cost : priced(seed + 1);
    }

    @Property
    void working_ofEveryJob_agreesWithItsText(@ForAll long seed) {
        JobCost cost = priced(seed);
        WorkingCheck.check(cost.working(), COUNTS);
        for (Rounding rounding : Rounding.values()) {
            PriceBuildUp byMargin = PriceBuildUp.of(cost.price().lines(), cost.labour().totalPaid(), cost.job().rules()
                    .withProfit(Profit.margin(0.35)).withOverhead(Overhead.perHour(Read.pricePerTime("EUR 12.30/h"))).withRounding(rounding));
            PriceBuildUp byMarkup = PriceBuildUp.of(cost.price().lines(), cost.labour().totalPaid(), cost.job().rules()
                    .withProfit(Profit.markup(0.35)).withOverhead(Overhead.onLabourCost(0.8)).withRounding(rounding));
            WorkingCheck.check(byMargin.working(), COUNTS);
            WorkingCheck.check(byMarkup.working(), COUNTS);
        }
        for (int i = 0; i < WALLS; i++) {
            WorkingCheck.check(RandomJobs.drawnWall(seed * WALLS + i).surface().working(), COUNTS);
        }
        jobs++;
    }

    @AfterContainer
    static void everyFormulaOfAJob_wasMetAsOftenAsJobsWereDrawn() {
        Map<String, Integer> seldom = new TreeMap<>();
        for (Formula formula : FormulaConstants.all()) {
            int count = COUNTS.getOrDefault(formula.id(), 0);
            // Which joints a wall has and whether its film is thrown away for money is drawn, so each is met less often here; the properties of
            // the rooms draw 1,000 of each.
            int least = DRAWN.matcher(formula.id()).matches() ? jobs / 5 : jobs;
            if (count < least && !ELSEWHERE.matcher(formula.id()).matches()) {
                seldom.put(formula.id(), count);
            }
        }
        assertThat(seldom).as("formulas met less often than " + jobs + " times").isEmpty();
    }
}
