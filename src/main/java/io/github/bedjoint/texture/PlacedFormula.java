package io.github.bedjoint.texture;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Symbol;
import java.util.function.Function;

/**
 * One formula written twice: with the letters of the bed joint (x_b, j_b, ...) and with those of the head joint (x_h, j_h, ...).
 *
 * @param bed  the formula for bed joints
 * @param head the formula for head joints
 */
record PlacedFormula(Formula bed, Formula head) {

    static PlacedFormula of(Function<Letters, Formula> formula) {
        return new PlacedFormula(formula.apply(new Letters(Joint.Place.BED)), formula.apply(new Letters(Joint.Place.HEAD)));
    }

    Formula get(Joint.Place place) {
        return place == Joint.Place.BED ? bed : head;
    }

    /** Gives letters their place: {@code _} at the end of a letter becomes {@code _b} or {@code _h}. */
    record Letters(Joint.Place place) {

        String suffix() {
            return place == Joint.Place.BED ? "b" : "h";
        }

        String id(String name) {
            return "texture." + name + "." + place.word;
        }

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
}
