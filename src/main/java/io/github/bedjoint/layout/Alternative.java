package io.github.bedjoint.layout;

import io.github.bedjoint.units.Print;

/**
 * Another way to cover a wall that cannot be divided as asked, with its layout and so with its cost.
 *
 * @param what   what would be different, in a few words
 * @param layout the layout
 */
public record Alternative(String what, PanelLayout layout) {

    /** What, and the cost at the planner's rates. */
    @Override
    public String toString() {
        return what + ": " + layout + ", cost " + Print.number(layout.cost());
    }
}
