package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.WorkingCheck;
import java.util.HashMap;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class MasonrySurfaceProperties {
    @Provide
    Arbitrary<Walls> walls() {
        return Walls.any();
    }

    @Property
    void areaRatio_anyWall_isAtLeastOneAndAtLeastItsFaces(@ForAll("walls") Walls wall) {
        MasonrySurface surface = wall.inMillimetres();
        assertThat(surface.areaRatio()).isGreaterThanOrEqualTo(1);
        assertThat(surface.areaRatio()).isGreaterThanOrEqualTo(1 + (1 - surface.jointShare()) * (wall.faceRatio() - 1) - 1e-12);
        assertThat(surface.localStretch())
                .isGreaterThanOrEqualTo(surface.meanStretchUp() - 1e-12)
                .isGreaterThanOrEqualTo(surface.meanStretchAlong() - 1e-12);
        assertThat(surface.jointShare()).isBetween(0.0, 1.0);
    }

    @Property
    void areaRatio_sameWallInInchesFeetMetres_isTheSame(@ForAll("walls") Walls wall) {
        double ratio = wall.inMillimetres().areaRatio();
        assertThat(wall.in(ShopUnits.INCH, 25.4).areaRatio()).isCloseTo(ratio, within(1e-9));
        assertThat(wall.in(ShopUnits.FOOT, 304.8).areaRatio()).isCloseTo(ratio, within(1e-9));
        assertThat(wall.in(ShopUnits.METRE, 1000).areaRatio()).isCloseTo(ratio, within(1e-9));
    }

    @Property
    void working_anyWall_textEqualsCode(@ForAll("walls") Walls wall) {
        for (MasonrySurface surface : new MasonrySurface[] {wall.inMillimetres(), wall.headsAsBeds()}) {
            WorkingCheck.check(surface.working(), new HashMap<>());
            WorkingCheck.check(surface.stretchWorking(), new HashMap<>());
            WorkingCheck.check(surface.joints().orElseThrow().working());
        }
    }

    @Property
    void areaRatio_headsAndBedsSwappedByTurningTheWall_changesOnlyWhereJointsMeet(@ForAll("walls") Walls wall) {
        // Equal joints and profiles, stack bond: the wall turned by 90 degrees is the same wall.
        Walls stack = new Walls(wall.length(), wall.height(), wall.bed(), wall.bed(), wall.beds(), wall.beds(), Bond.STACK, 1);
        Walls turned = new Walls(wall.height(), wall.length(), wall.bed(), wall.bed(), wall.beds(), wall.beds(), Bond.STACK, 1);
        // A sloped bed runs through at the head's end, so the turned wall has the same area too: K = j x.
        assertThat(turned.inMillimetres().areaRatio()).isCloseTo(stack.inMillimetres().areaRatio(), within(1e-12));
    }
}
