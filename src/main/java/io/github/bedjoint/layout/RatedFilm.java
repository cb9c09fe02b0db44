package io.github.bedjoint.layout;

import io.github.bedjoint.film.Film;

/**
 * A film with what a layout in it costs, so that films of several widths can be compared.
 *
 * @param film  the film
 * @param rates the rates, with a metre of this film
 */
public record RatedFilm(Film film, Rates rates) {}
