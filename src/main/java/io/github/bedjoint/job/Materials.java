package io.github.bedjoint.job;

import io.github.bedjoint.film.Coating;
import io.github.bedjoint.film.Film;
import io.github.bedjoint.film.Ink;
import io.github.bedjoint.film.Laminate;
import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * What a job is made of: film and its rolls, and optionally laminate, ink, consumables by visible area, and coatings by
 * developed area.
 *
 * <p>Without laminate the film is hung as printed; without ink it is plain. Rolls may come in several widths, of which the film's own is that
 * of the rolls that state none; a width that no laminate roll covers is left out, see {@link #uncovered()}. Immutable.
 */
public final class Materials {
    private final Film film;
    private final List<RollOffer> filmRolls;
    private final @Nullable Laminate laminate;
    private final List<RollOffer> laminateRolls;
    private final long leadInSteps;
    private final @Nullable Ink ink;
    private final List<Consumable> consumables;
    private final List<PricedCoating> coatings;

    private Materials(
            Film film,
            List<RollOffer> filmRolls,
            @Nullable Laminate laminate,
            List<RollOffer> laminateRolls,
            long leadInSteps,
            @Nullable Ink ink,
            List<Consumable> consumables,
            List<PricedCoating> coatings) {
        this.film = film;
        this.filmRolls = List.copyOf(filmRolls);
        this.laminate = laminate;
        this.laminateRolls = List.copyOf(laminateRolls);
        this.leadInSteps = leadInSteps;
        this.ink = ink;
        this.consumables = List.copyOf(consumables);
        this.coatings = List.copyOf(coatings);
        FilmWidths.check(this);
    }

    /**
     * Film and the rolls it comes on.
     *
     * @param film  the film
     * @param rolls its rolls, at least one
     * @return the materials
     * @throws RefusedException if there is no roll, two have one id, or one leaves nothing printable beside the overlap
     */
    public static Materials of(Film film, List<RollOffer> rolls) {
        return new Materials(film, some("film rolls", rolls), null, List.of(), 0, null, List.of(), List.of());
    }

    /**
     * The same with a laminate.
     *
     * @param cover  the laminate; its rolls are at least as wide as the narrowest of the film
     * @param rolls  its rolls, at least one
     * @param leadIn laminate lost at the start of each run, 0 to 100 m
     * @return the materials
     * @throws RefusedException if the laminate is narrower than every film roll, there is no roll, two have one id, or the lead-in is out of range
     */
    public Materials withLaminate(Laminate cover, List<RollOffer> rolls, Quantity<Length> leadIn) {
        long steps = Steps.up(Door.lengthM("lead-in", leadIn, Range.closed(0, 100)));
        return new Materials(film, filmRolls, cover, some("laminate rolls", rolls), steps, ink, consumables, coatings);
    }

    /**
     * The same with an ink.
     *
     * @param printed the ink
     * @return the materials
     */
    public Materials withInk(Ink printed) {
        return new Materials(film, filmRolls, laminate, laminateRolls, leadInSteps, printed, consumables, coatings);
    }

    /**
     * The same with one more consumable.
     *
     * @param title what it is
     * @param price its price by visible area
     * @return the materials
     * @throws RefusedException if the title is blank
     */
    public Materials withConsumable(String title, PriceRate<Area> price) {
        List<Consumable> more = new ArrayList<>(consumables);
        more.add(new Consumable(Door.text("consumable", title), price));
        return new Materials(film, filmRolls, laminate, laminateRolls, leadInSteps, ink, more, coatings);
    }

    /**
     * The same with another film, or other rolls of the same.
     *
     * @param other the film, in a width that the laminate covers if there is one
     * @param rolls its rolls, at least one
     * @return the materials
     * @throws RefusedException if there is no roll, the laminate is narrower than all of them, or one leaves nothing printable beside the overlap
     */
    public Materials withFilm(Film other, List<RollOffer> rolls) {
        return new Materials(other, some("film rolls", rolls), laminate, laminateRolls, leadInSteps, ink, consumables, coatings);
    }

    /**
     * The same with these consumables in place of those it has.
     *
     * @param all what is used up by visible area
     * @return the materials
     */
    public Materials withConsumables(List<Consumable> all) {
        return new Materials(film, filmRolls, laminate, laminateRolls, leadInSteps, ink, all, coatings);
    }

    /**
     * The same with one more coating of the wall, such as primer or cleaner.
     *
     * @param coating what is spread and how much
     * @param price   its price by volume
     * @return the materials
     */
    public Materials withCoating(Coating coating, PriceRate<Volume> price) {
        List<PricedCoating> more = new ArrayList<>(coatings);
        more.add(new PricedCoating(coating, price));
        return new Materials(film, filmRolls, laminate, laminateRolls, leadInSteps, ink, consumables, more);
    }

    private static List<RollOffer> some(String parameter, List<RollOffer> rolls) {
        if (rolls.isEmpty()) {
            throw new RefusedException(parameter, "empty", "must hold at least one roll", "Maybe the price list is missing.");
        }
        Set<String> ids = new HashSet<>();
        for (RollOffer roll : rolls) {
            if (!ids.add(roll.id())) {
                throw new RefusedException(parameter, "'" + roll.id() + "' twice", "must each have an id of their own", "Maybe add the lot to it.");
            }
        }
        return rolls;
    }

    /**
     * The film.
     *
     * @return the film
     */
    public Film film() {
        return film;
    }

    /**
     * The film's rolls.
     *
     * @return the offers
     */
    public List<RollOffer> filmRolls() {
        return filmRolls;
    }

    /**
     * The film in each width that it can be hung in.
     *
     * @return one for each width of its rolls, in the order in which they are offered; rolls of which there are none, and those that no
     *     laminate covers, left out
     */
    public List<Film> films() {
        return new FilmWidths(this).films();
    }

    /**
     * The film in each width that it is offered in but cannot be hung in, since no laminate roll is as wide.
     *
     * @return one for each such width; empty without a laminate
     */
    public List<Film> uncovered() {
        return new FilmWidths(this).uncovered();
    }

    /**
     * The laminate.
     *
     * @return the laminate, or empty
     */
    public Optional<Laminate> laminate() {
        return Optional.ofNullable(laminate);
    }

    /**
     * The laminate's rolls.
     *
     * @return the offers, empty without a laminate
     */
    public List<RollOffer> laminateRolls() {
        return laminateRolls;
    }

    /**
     * Laminate lost at the start of each run.
     *
     * @return the length
     */
    public Quantity<Length> leadIn() {
        return Steps.toLength(leadInSteps);
    }

    long leadInSteps() {
        return leadInSteps;
    }

    /**
     * The ink.
     *
     * @return the ink, or empty
     */
    public Optional<Ink> ink() {
        return Optional.ofNullable(ink);
    }

    /**
     * What is used up by visible area.
     *
     * @return the consumables
     */
    public List<Consumable> consumables() {
        return consumables;
    }

    /**
     * What is spread on the wall by developed area.
     *
     * @return the coatings
     */
    public List<PricedCoating> coatings() {
        return coatings;
    }

    /**
     * Something that is spread on the wall along its texture, such as primer.
     *
     * @param coating what is spread and how much
     * @param price   its price by volume
     */
    public record PricedCoating(Coating coating, PriceRate<Volume> price) {}

    /**
     * Something that is used up with the visible area, such as cleaner or edge sealer.
     *
     * @param title what it is
     * @param price its price by visible area
     */
    public record Consumable(String title, PriceRate<Area> price) {}
}
