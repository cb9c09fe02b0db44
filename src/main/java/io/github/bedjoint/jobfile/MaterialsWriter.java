package io.github.bedjoint.jobfile;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.film.FilmFigure;
import io.github.bedjoint.film.Ink;
import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.job.DisposalTerms;
import io.github.bedjoint.job.Materials;
import io.github.bedjoint.units.Steps;
import java.io.IOException;
import java.util.List;

/** Writes film, laminate, ink, consumables and coatings. */
final class MaterialsWriter {
    private final JsonOut out;

    MaterialsWriter(JsonOut out) {
        this.out = out;
    }

    void write(Materials materials) throws IOException {
        out.object("film", () -> {
            film(materials.film());
            rolls(materials.filmRolls());
        });
        if (materials.laminate().isPresent()) {
            out.object("laminate", () -> {
                out.field("name", materials.laminate().get().name());
                out.steps("rollWidth", materials.laminate().get().rollWidthSteps());
                out.steps("leadIn", Steps.up(materials.leadIn().getValue().doubleValue()));
                rolls(materials.laminateRolls());
            });
        }
        if (materials.ink().isPresent()) {
            out.object("ink", () -> ink(materials.ink().get()));
        }
        if (!materials.coatings().isEmpty()) {
            coatings(materials);
        }
        if (!materials.consumables().isEmpty()) {
            out.array("consumables", () -> {
                for (Materials.Consumable used : materials.consumables()) {
                    out.item(() -> {
                        out.field("title", used.title());
                        out.field("price", used.price().toString());
                    });
                }
            });
        }
    }

    void disposal(DisposalTerms terms) throws IOException {
        out.sized("liner", terms.linerKgM2(), "kg/m2");
        out.sized("film", terms.filmKgM2(), "kg/m2");
        out.field("price", terms.price().toString());
    }

    private void coatings(Materials materials) throws IOException {
        out.array("coatings", () -> {
            for (Materials.PricedCoating used : materials.coatings()) {
                out.item(() -> {
                    out.field("name", used.coating().name());
                    out.sized("consumption", used.coating().m3PerM2(), "m3/m2");
                    out.count("coats", used.coating().coats());
                    out.field("price", used.price().toString());
                });
            }
        });
    }

    /** What was given with the film; what was not is left to the defaults, which say so. */
    private void film(Film film) throws IOException {
        out.field("name", film.name());
        given(film, FilmFigure.ROLL_WIDTH, "rollWidth", "m");
        given(film, FilmFigure.EDGE_MARGIN, "edgeMargin", "m");
        if (film.isGiven(FilmFigure.LEAST_OVERLAP)) {
            out.object("overlap", () -> {
                given(film, FilmFigure.LEAST_OVERLAP, "least", "m");
                given(film, FilmFigure.MOST_OVERLAP, "most", "m");
            });
        }
        if (film.isGiven(FilmFigure.USABLE_STRETCH)) {
            out.number("usableStretch", film.usableStretch());
        }
        given(film, FilmFigure.THICKNESS, "thickness", "m");
        given(film, FilmFigure.OUTGAS, "outgas", "s");
        if (film.isGiven(FilmFigure.LEAST_SURFACE_TEMPERATURE)) {
            out.object("surfaceTemperature", () -> {
                given(film, FilmFigure.LEAST_SURFACE_TEMPERATURE, "least", "K");
                given(film, FilmFigure.MOST_SURFACE_TEMPERATURE, "most", "K");
            });
        }
    }

    private void given(Film film, FilmFigure figure, String name, String unit) throws IOException {
        if (film.isGiven(figure)) {
            out.sized(name, film.figure(figure).orElseThrow(), unit);
        }
    }

    private void rolls(List<RollOffer> rolls) throws IOException {
        out.array("rolls", () -> {
            for (RollOffer roll : rolls) {
                out.item(() -> roll(roll));
            }
        });
    }

    private void roll(RollOffer roll) throws IOException {
        out.field("id", roll.id());
        if (roll.widthSteps() > 0) {
            out.steps("width", roll.widthSteps());
        }
        out.steps("length", roll.lengthSteps());
        out.field("price", roll.price().toString());
        if (roll.available() != RollOffer.UNLIMITED) {
            out.count("available", roll.available());
        }
        if (roll.leastOrder() > 0) {
            out.count("leastOrder", roll.leastOrder());
        }
        if (roll.inCarton() > 1) {
            out.count("inCarton", roll.inCarton());
        }
        if (!roll.lot().isEmpty()) {
            out.field("lot", roll.lot());
        }
        if (roll.bestBefore().isPresent()) {
            out.field("bestBefore", roll.bestBefore().get().toString());
        }
    }

    private void ink(Ink ink) throws IOException {
        out.word("family", ink.family());
        out.sized("consumption", ink.m3PerM2(), "m3/m2");
        out.number("coverage", ink.coverage());
        out.field("price", ink.price().toString());
    }
}
