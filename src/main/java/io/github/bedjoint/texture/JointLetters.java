package io.github.bedjoint.texture;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Symbol;
import java.util.Map;
import java.util.function.Function;

/**
 * Writes one formula twice: with the letters of the bed joint (x_b, j_b, ...) and with those of the head joint (x_h, j_h, ...).
 *
 * @param place the joint whose letters are given
 */
record JointLetters(Joint.Place place) {

    static Map<Joint.Place, Formula> both(Function<JointLetters, Formula> formula) {
        return Map.of(
                Joint.Place.BED, formula.apply(new JointLetters(Joint.Place.BED)),
                Joint.Place.HEAD, formula.apply(new JointLetters(Joint.Place.HEAD)));
    }

    private String suffix() {
        return place == Joint.Place.BED ? "b" : "h";
    }

    String id(String name) {
        return "texture." + name + "." + place.word;
    }

    /** A text in which {@code _} at the end of a letter stands for the joint's place. */
    String text(String text) {
        return text.replaceAll("_(?![a-z])", "_" + suffix());
    }

    Symbol symbol(String letter, Measure measure, String meaning) {
        return new Symbol(letter + "_" + suffix(), measure, meaning + " of the " + place.word + " joint");
    }

    Symbol length(String letter, String meaning) {
        return symbol(letter, Measure.LENGTH, meaning);
    }
}
