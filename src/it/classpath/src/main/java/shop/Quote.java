package shop;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.job.Job;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.job.Materials;
import io.github.bedjoint.price.PriceRules;
import io.github.bedjoint.survey.Survey;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.units.Read;
import java.util.List;
import org.joda.money.CurrencyUnit;

/** One wall of 2.60 m x 2.40 m = 6.24 m2: two drops of 1.37 m film reach 2.74 m less one overlap. */
public final class Quote {
    private Quote() {}

    public static void main(String[] args) {
        Wall wall = Wall.rectangle("back wall", Read.length("2.60 m"), Read.length("2.40 m"));
        Film film = Film.of("film", Read.length("1370 mm"));
        Materials materials = Materials.of(film, List.of(RollOffer.of("25 m", Read.length("25 m"), Read.money("EUR 250.00"))));
        JobCost cost = JobCost.of(Job.builder("quote", Survey.of(wall), materials, PriceRules.in(CurrencyUnit.EUR)).build());

        expect(2, cost.layouts().get(0).panels().size());
        expect(1, cost.filmPlan().rolls().size());
        expect(6.24, cost.areas().visible().getValue().doubleValue());
        expect(CurrencyUnit.EUR, cost.total().getCurrencyUnit());
        // What is optional did not come along.
        for (String optional : List.of("com.fasterxml.jackson.core.JsonFactory", "picocli.CommandLine", "org.ojalgo.matrix.store.R064Store")) {
            expect(false, isThere(optional));
        }
    }

    private static boolean isThere(String className) {
        try {
            Class.forName(className);
            return true;
        } catch (ClassNotFoundException absent) {
            return false;
        }
    }

    private static void expect(Object expected, Object actual) {
        if (!expected.equals(actual)) {
            throw new AssertionError("expected " + expected + ", got " + actual);
        }
    }
}
