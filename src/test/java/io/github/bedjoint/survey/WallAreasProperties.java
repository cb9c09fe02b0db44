package io.github.bedjoint.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Steps;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class WallAreasProperties {
    @Property
    void visible_ofAWallWithoutSlopes_equalsTheRaster(@ForAll long seed) {
        Wall wall = RandomWalls.stepped(seed, 400);
        assertThat(WallAreas.of(wall, DeductionRule.none()).visibleM2()).isCloseTo(RandomWalls.rasterM2(wall), within(1e-9));
    }

    @Property
    void measured_ofAGable_equalsTheShoelace(@ForAll long seed) {
        Wall wall = RandomWalls.gabled(seed);
        List<Point> p = wall.outline().points();
        double twice = 0;
        for (int i = 0; i < p.size(); i++) {
            Point a = p.get(i);
            Point b = p.get((i + 1) % p.size());
            twice += Steps.toM(a.xSteps()) * Steps.toM(b.ySteps()) - Steps.toM(b.xSteps()) * Steps.toM(a.ySteps());
        }
        assertThat(WallAreas.of(wall, DeductionRule.none()).measuredM2()).isCloseTo(twice / 2, within(1e-9));
    }

    @Property
    void areas_ofAMirroredWall_areTheSame(@ForAll long seed) {
        WallAreas wall = WallAreas.of(RandomWalls.gabled(seed), DeductionRule.allOpenings());
        WallAreas mirrored = WallAreas.of(RandomWalls.mirrored(wall.wall()), DeductionRule.allOpenings());
        assertThat(mirrored.visibleM2()).isCloseTo(wall.visibleM2(), within(1e-9));
        assertThat(mirrored.edges().openingRimsM()).isCloseTo(wall.edges().openingRimsM(), within(1e-9));
        assertThat(mirrored.edges().lengthM(Edge.Kind.FREE)).isCloseTo(wall.edges().lengthM(Edge.Kind.FREE), within(1e-9));
    }

    @Property
    void working_ofAnyWall_evaluates(@ForAll long seed) {
        WorkingCheck.check(WallAreas.of(RandomWalls.stepped(seed), DeductionRule.allOpenings()).working());
    }

    @Property
    void outline_movedAnywhere_givesTheSameArea(@ForAll long seed) {
        Wall wall = RandomWalls.gabled(seed);
        List<Point> moved = wall.outline().points().stream().map(p -> new Point(p.xSteps() + 123_457, p.ySteps() - 7_001)).toList();
        assertThat(WallAreas.of(Wall.polygon("moved", moved), DeductionRule.none()).measuredM2())
                .isCloseTo(WallAreas.of(wall, DeductionRule.none()).measuredM2(), within(1e-9));
    }
}
