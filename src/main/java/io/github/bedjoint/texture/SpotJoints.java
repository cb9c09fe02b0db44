package io.github.bedjoint.texture;

import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Joints of masonry whose depth was measured in spots: the mean over the spots.
 *
 * @param spots the joints of each spot
 */
record SpotJoints(List<JointAreas> spots) implements JointAreas {
    static final Formula MEAN = Formula.of(
            "texture.spot-joints", "Surface in joints from spot depths", Symbol.number("q", "developed area of joints to the area of the wall"),
            "T / n", Source.geometry("mean over the spots"), Symbol.number("T", "those of the spots, added up"),
            Symbol.number("n", "number of spots"));
    static final Formula TOTAL = Formula.of(
            "texture.spot-joints-total", "Surface in joints of the spots", Symbol.number("T", "those of the spots, added up"), "sum(q_i)",
            Source.geometry("one wall for each depth"), Symbol.number("q_i", "developed area of joints with the depth of one spot"));

    private double total(ToDoubleFunction<JointAreas> which) {
        return spots.stream().mapToDouble(which).sum();
    }

    @Override
    public double level() {
        return total(JointAreas::level) / spots.size();
    }

    @Override
    public double upright() {
        return total(JointAreas::upright) / spots.size();
    }

    @Override
    public Working working() {
        return Working.group("Surface in joints", List.of(mean(JointAreas::level, "level joints"), mean(JointAreas::upright, "upright joints")));
    }

    private Working mean(ToDoubleFunction<JointAreas> which, String whose) {
        Working sum = Working.sum(TOTAL, total(which), spots.stream().map(which::applyAsDouble).toList());
        return Working.of(MEAN, total(which) / spots.size(), total(which), spots.size()).because(sum).whose(whose);
    }

    @Override
    public String toString() {
        return describe();
    }
}
