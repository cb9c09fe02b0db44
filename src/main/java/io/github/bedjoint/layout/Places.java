package io.github.bedjoint.layout;

/**
 * Where the film of a panel ends up, by place on the wall, in square metres; the parts add up to the panel.
 *
 * @param visibleM2 on the wall, first layer
 * @param overlapM2 on the wall, over a panel that hangs already
 * @param bleedM2   beyond the wall within the extra length of its edges, or turned into an opening
 * @param trimM2    beyond that: cut off along the shape of the wall
 * @param cutOutM2  over an opening that stays open
 * @param takeUpM2  fed in along the texture, beyond what the panel covers on the wall
 */
public record Places(double visibleM2, double overlapM2, double bleedM2, double trimM2, double cutOutM2, double takeUpM2) {

    /**
     * All parts together.
     *
     * @return square metres of film
     */
    public double totalM2() {
        return visibleM2 + overlapM2 + bleedM2 + trimM2 + cutOutM2 + takeUpM2;
    }
}
