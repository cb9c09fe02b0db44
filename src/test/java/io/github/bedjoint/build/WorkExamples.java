package io.github.bedjoint.build;

import io.github.bedjoint.calibration.Calibration;
import io.github.bedjoint.calibration.JobLog;
import io.github.bedjoint.calibration.PaceFit;
import io.github.bedjoint.conditions.DewPoint;
import io.github.bedjoint.cutting.RollPlanner;
import io.github.bedjoint.film.Film;
import io.github.bedjoint.labour.Allowance;
import io.github.bedjoint.labour.Amounts;
import io.github.bedjoint.labour.Driver;
import io.github.bedjoint.labour.HeatRolling;
import io.github.bedjoint.labour.HeatRolling.Speeds;
import io.github.bedjoint.labour.HeatedArea;
import io.github.bedjoint.labour.HeightBands;
import io.github.bedjoint.labour.Hire;
import io.github.bedjoint.labour.Labour;
import io.github.bedjoint.labour.Learning;
import io.github.bedjoint.labour.Pace;
import io.github.bedjoint.labour.Premium;
import io.github.bedjoint.labour.Rating;
import io.github.bedjoint.labour.StandardTime;
import io.github.bedjoint.labour.Trip;
import io.github.bedjoint.labour.WorkPlace;
import io.github.bedjoint.price.BreakEven;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.CostVariance;
import io.github.bedjoint.price.Disposal;
import io.github.bedjoint.price.LineKind;
import io.github.bedjoint.price.OrderQuantity;
import io.github.bedjoint.price.Overhead;
import io.github.bedjoint.price.PriceBuildUp;
import io.github.bedjoint.price.PriceEffect;
import io.github.bedjoint.price.PriceRules;
import io.github.bedjoint.price.Profit;
import io.github.bedjoint.price.Rounding;
import io.github.bedjoint.price.ServiceCost;
import io.github.bedjoint.risk.Spread;
import io.github.bedjoint.rolls.Cut;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.rolls.Stock;
import io.github.bedjoint.schedule.ThreePoint;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.waste.FilmYield;
import io.github.bedjoint.waste.WasteAccount;
import io.github.bedjoint.waste.WastePart;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** One plain example of each result about hours, dates, price and paces, with round numbers. */
final class WorkExamples {
    private static final String LOG = """
            job,heated_area [m2],seam [m],panel,hours
            a,10,8,4,7.0
            b,20,12,7,12.9
            c,15,20,6,11.9
            d,30,10,12,19.5
            e,25,24,8,17.2
            f,12,15,9,12.4
            """;

    private WorkExamples() {}

    static Stream<Explained> results() {
        Amounts amounts = Amounts.none().withInner(Driver.VISIBLE_AREA, 20).withInner(Driver.HEATED_AREA, 24).withInner(Driver.SEAM, 12);
        Labour labour = Labour.withDefaults()
                .withTrips(List.of(Trip.of(Trip.Purpose.WASH, Read.time("1 h"), Read.time("15 min")).withPeople(2).doing("wash")))
                .withPremium(Premium.onSite("night", 0.25));
        HeatRolling projected = HeatRolling.of(Read.speed("0.6 m/min"), Speeds.PROJECTED, Read.length("25 cm")).withPassOverlap(Read.length("5 cm"));
        HeatRolling developed = HeatRolling.of(Read.speed("0.6 m/min"), Speeds.DEVELOPED, Read.length("25 cm"));
        PaceFit fit = Calibration.withDefaults().fit(JobLog.parse(LOG));
        return Stream.of(
                DewPoint.of(Read.temperature("20 C"), 0.5),
                labour.estimate(List.of(WorkPlace.of("bay", amounts).repeated(4, Learning.crawford(0.8)))),
                labour.estimate(List.of(WorkPlace.of("bay", amounts).repeated(4, Learning.wright(0.8)))),
                StandardTime.of(Read.time("20 s"), Rating.percent(120), Allowance.onJobTime(0.2)),
                StandardTime.of(Read.time("20 s"), Rating.percent(120), Allowance.onWorkingDay(0.2)),
                Learning.crawford(0.8).over(Read.time("10 h"), 4),
                Learning.wright(0.8).over(Read.time("10 h"), 4),
                projected.over(Read.length("1.3 m"), Read.length("3 m"), 1.25),
                developed.over(Read.length("1.3 m"), Read.length("3 m"), 1.25),
                HeatedArea.of(1.2, Read.area("10 m2"), Read.area("0.5 m2")),
                HeightBands.defaults().over(Read.length("0 m"), Read.length("5 m")),
                new Hire("lift", Read.money("EUR 120.00"), Read.money("EUR 85.50"), 3).over(5, 1),
                ThreePoint.of(Read.time("5 h"), Read.time("8 h"), Read.time("17 h")),
                FilmYield.of(Read.area("18 m2"), Read.area("24 m2")),
                twoWidths(),
                fit,
                fit.pace(Driver.HEATED_AREA),
                fit.pace(Driver.SEAM),
                fit.pace(Driver.PANEL),
                fit.predict(Amounts.none().withInner(Driver.HEATED_AREA, 25).withInner(Driver.SEAM, 15).withInner(Driver.PANEL, 8), 0.9),
                fit.against(Map.of(Driver.HEATED_AREA, Pace.perArea(Read.timePerArea("30 min/m2")))).orElseThrow());
    }

    /** A panel of 1.5 x 5 m from a roll of 1.52 m, four of 1 x 2.5 m from one of 1 m, each roll 10 m long with a lead of 0.1 m. */
    private static WasteAccount twoWidths() {
        List<Stock> stock = List.of(new Stock("wide", 121_600, 808_000, 13_000, 1, ""), new Stock("narrow", 80_000, 808_000, 10_000, 1, ""));
        List<Cut> cuts = List.of(new Cut("w", 120_000, 400_000, 1, ""), new Cut("n", 80_000, 200_000, 4, ""));
        RollPlan plan = RollPlanner.withDefaults().withLead(8_000).withCuts(CutKind.CROSS).plan(cuts, stock);
        return WasteAccount.of(plan, Film.of("film", Read.length("1 m")), Map.of(WastePart.VISIBLE, 17.5));
    }

    static Stream<Explained> money() {
        List<Explained> all = new ArrayList<>(lines("8.00", 1));
        for (Rounding rounding : Rounding.values()) {
            all.add(CostLine.of(LineKind.FILM, "Film", Read.area("31.5 m2"), Read.pricePerArea("EUR 7.95/m2"), rounding));
        }
        CostLine hour = CostLine.of(LineKind.SITE_LABOUR, "work", Read.time("1 h"), Read.pricePerTime("EUR 40/h"), Rounding.HALF_UP);
        PriceBuildUp price = price(lines("8.00", 1), "20 h");
        all.add(price);
        BreakEven even = BreakEven.of(price);
        all.add(even);
        all.add(even.against(PriceEffect.of(price, hour, Read.time("1 h"))));
        CostVariance variance = CostVariance.of(price, lines("9.00", 1.1), Read.time("22 h"), Money.parse("EUR 250"));
        all.add(variance);
        all.addAll(variance.lines());
        all.add(ServiceCost.of(Money.parse("EUR 1672"), Read.area("20 m2"), 5));
        all.add(Disposal.of(Read.area("30 m2"), Read.massPerArea("90 g/m2"), Read.area("4 m2"), Read.massPerArea("200 g/m2")));
        all.add(new OrderQuantity(5, 0, 4));
        return all.stream();
    }

    /** A line for each measure that has prices. */
    private static List<CostLine> lines(String price, double more) {
        Rounding mode = Rounding.HALF_UP;
        return List.of(
                CostLine.ofInner(LineKind.FILM, "Film", 30 * more, Read.pricePerArea("EUR " + price + "/m2"), mode),
                CostLine.ofInner(LineKind.LAMINATE, "Laminate", 25 * more, Read.pricePerLength("EUR " + price + "/m"), mode),
                CostLine.ofInner(LineKind.INK, "Ink", 0.0003 * more, Read.pricePerVolume("EUR " + price + "/L"), mode),
                CostLine.ofInner(LineKind.DISPOSAL, "Disposal", 3.5 * more, Read.pricePerMass("EUR " + price + "/kg"), mode),
                CostLine.ofInner(LineKind.SITE_LABOUR, "Labour", 72_000 * more, Read.pricePerTime("EUR " + price + "/h"), mode),
                CostLine.each(LineKind.LUMP, "Permit", (int) Math.ceil(more), Money.parse("EUR " + price)));
    }

    private static PriceBuildUp price(List<CostLine> lines, String hours) {
        PriceRules rules = PriceRules.in(CurrencyUnit.EUR).withOverhead(Overhead.perHour(Read.pricePerTime("EUR 12/h"))).withContingency(0.1)
                .withProfit(Profit.margin(0.25)).withDiscount(0.05).withTax(0.2);
        return PriceBuildUp.of(lines, Read.time(hours), rules);
    }

    static Stream<Explained> spreads() {
        return Stream.of(Spread.triangular(1, 2, 6), Spread.pert(1, 2, 6));
    }

    static Stream<Working> workings() {
        return Stream.of(results(), money(), spreads()).flatMap(all -> all).map(Explained::working);
    }

    static List<Explained> all() {
        return Collections.unmodifiableList(Stream.of(results(), money(), spreads()).flatMap(all -> all).toList());
    }
}
