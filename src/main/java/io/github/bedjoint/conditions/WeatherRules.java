package io.github.bedjoint.conditions;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.film.FilmFigure;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Verdict.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Dew point and the film's temperature window. */
final class WeatherRules {
    private static final String WINDOW = "surface temperature";

    private WeatherRules() {}

    static List<Verdict> check(SiteConditions site, Film film) {
        List<Verdict> verdicts = new ArrayList<>(dew(site));
        verdicts.add(window(site, film));
        return verdicts;
    }

    private static List<Verdict> dew(SiteConditions site) {
        Optional<DewPoint> dewPoint = site.dewPoint();
        List<Verdict> verdicts = new ArrayList<>();
        for (SpreadRule rule : SpreadRule.values()) {
            if (dewPoint.isPresent() && site.surface().isPresent()) {
                verdicts.add(rule.verdict(dewPoint.get(), site.surface().get()));
            } else {
                String least = dewPoint
                        .map(known -> "; the surface must be at least "
                                + Measure.TEMPERATURE.print(
                                        known.celsius() + rule.marginK() + DewPoint.ZERO_CELSIUS_K, UnitStyle.METRIC))
                        .orElse("");
                verdicts.add(new Verdict(
                        Level.CAUTION,
                        rule.toString(),
                        "air temperature, humidity and surface temperature must be measured at the wall before applying" + least,
                        rule.source()));
            }
        }
        return verdicts;
    }

    private static Verdict window(SiteConditions site, Film film) {
        Optional<Double> least = film.figure(FilmFigure.LEAST_SURFACE_TEMPERATURE);
        Optional<Double> most = film.figure(FilmFigure.MOST_SURFACE_TEMPERATURE);
        Source source = film.source(FilmFigure.LEAST_SURFACE_TEMPERATURE);
        if (least.isEmpty() || most.isEmpty()) {
            return new Verdict(Level.CAUTION, WINDOW, "the limits of " + film.name() + " are not known: see its data sheet", source);
        }
        String limits = print(least.get()) + " to " + print(most.get());
        if (site.surface().isEmpty()) {
            return new Verdict(
                    Level.CAUTION, WINDOW, "must be measured before applying; " + film.name() + " asks for " + limits, source);
        }
        double surfaceK = site.surface().get().getValue().doubleValue();
        boolean inside = surfaceK >= least.get() - 1e-9 && surfaceK <= most.get() + 1e-9;
        return new Verdict(
                inside ? Level.FINE : Level.REFUSED,
                WINDOW,
                print(surfaceK) + " is " + (inside ? "inside" : "outside") + " the limits of " + film.name() + ", " + limits,
                source);
    }

    private static String print(double kelvin) {
        return Measure.TEMPERATURE.print(kelvin, UnitStyle.METRIC);
    }
}
