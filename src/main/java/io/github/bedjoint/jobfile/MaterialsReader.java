package io.github.bedjoint.jobfile;

import io.github.bedjoint.film.Coating;
import io.github.bedjoint.film.Film;
import io.github.bedjoint.film.Ink;
import io.github.bedjoint.film.InkFamily;
import io.github.bedjoint.film.Laminate;
import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.job.DisposalTerms;
import io.github.bedjoint.job.Materials;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Read;
import java.util.List;
import java.util.function.BiFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.joda.money.CurrencyUnit;

/** Reads film, laminate, ink, consumables and coatings. */
final class MaterialsReader {
    private MaterialsReader() {}

    static Materials materials(Fields f, CurrencyUnit currency) {
        Materials materials = f.object("film", film -> film(film, currency));
        if (f.has("laminate")) {
            Materials bare = materials;
            materials = f.object("laminate", l -> bare.withLaminate(
                    Laminate.of(l.text("name"), l.read("rollWidth", Read::length)), rolls(l, currency, RollOffer::withWidth), l.read("leadIn", Read::length)));
        }
        if (f.has("ink")) {
            materials = materials.withInk(f.object("ink", i -> ink(i, currency)));
        }
        if (f.has("consumables")) {
            for (Materials.Consumable used : f.list("consumables", node -> Fields.whole(node, c -> consumable(c, currency)))) {
                materials = materials.withConsumable(used.title(), used.price());
            }
        }
        if (f.has("coatings")) {
            for (Materials.PricedCoating used : f.list("coatings", node -> Fields.whole(node, c -> coating(c, currency)))) {
                materials = materials.withCoating(used.coating(), used.price());
            }
        }
        return materials;
    }

    private static Materials film(Fields f, CurrencyUnit currency) {
        Film film = Film.of(f.text("name"), f.read("rollWidth", Read::length));
        film = f.with(film, "edgeMargin", n -> f.read(n, Read::length), Film::withEdgeMargin);
        if (f.has("overlap")) {
            Film bare = film;
            film = f.object("overlap", o -> bare.withOverlapRange(o.read("least", Read::length), o.read("most", Read::length)));
        }
        film = f.with(film, "usableStretch", f::number, Film::withUsableStretch);
        film = f.with(film, "thickness", n -> f.read(n, Read::length), Film::withThickness);
        film = f.with(film, "outgas", n -> f.read(n, Read::time), Film::withOutgas);
        if (f.has("surfaceTemperature")) {
            Film bare = film;
            film = f.object("surfaceTemperature", t ->
                    bare.withSurfaceTemperatures(t.read("least", Read::temperature), t.read("most", Read::temperature)));
        }
        Film read = film;
        return Materials.of(read, rolls(f, currency, (roll, width) -> {
            // The film in this width is made here, so that one that leaves nothing printable is refused under its own path.
            read.withRollWidth(width);
            return roll.withWidth(width);
        }));
    }

    private static List<RollOffer> rolls(Fields f, CurrencyUnit currency, BiFunction<RollOffer, Quantity<Length>, RollOffer> wide) {
        return f.list("rolls", node -> Fields.whole(node, r -> roll(r, currency, wide)));
    }

    private static RollOffer roll(Fields f, CurrencyUnit currency, BiFunction<RollOffer, Quantity<Length>, RollOffer> wide) {
        RollOffer roll = RollOffer.of(f.text("id"), f.read("length", Read::length), f.priced("price", currency, Read::money));
        roll = f.with(roll, "width", n -> f.read(n, Read::length), wide);
        roll = f.with(roll, "available", f::count, RollOffer::withAvailable);
        roll = f.with(roll, "leastOrder", f::count, (r, least) -> r.orderedBy(least, r.inCarton()));
        roll = f.with(roll, "inCarton", f::count, (r, carton) -> r.orderedBy(r.leastOrder(), carton));
        roll = f.with(roll, "lot", f::text, RollOffer::withLot);
        return f.with(roll, "bestBefore", n -> CalendarReader.date(f.get(n)), RollOffer::withBestBefore);
    }

    private static Ink ink(Fields f, CurrencyUnit currency) {
        Ink ink = Ink.of(
                f.word("family", InkFamily.class), f.read("consumption", Read::volumePerArea), f.priced("price", currency, Read::pricePerVolume));
        return f.with(ink, "coverage", f::number, Ink::withCoverage);
    }

    private static Materials.PricedCoating coating(Fields f, CurrencyUnit currency) {
        Coating coating = Coating.of(f.text("name"), f.read("consumption", Read::volumePerArea));
        coating = f.with(coating, "coats", f::count, Coating::withCoats);
        return new Materials.PricedCoating(coating, f.priced("price", currency, Read::pricePerVolume));
    }

    static DisposalTerms disposal(Fields f, CurrencyUnit currency) {
        return DisposalTerms.of(
                f.read("liner", Read::massPerArea), f.read("film", Read::massPerArea), f.priced("price", currency, Read::pricePerMass));
    }

    private static Materials.Consumable consumable(Fields f, CurrencyUnit currency) {
        PriceRate<Area> price = f.priced("price", currency, Read::pricePerArea);
        return new Materials.Consumable(f.read("title", text -> Door.text("title", text)), price);
    }
}
