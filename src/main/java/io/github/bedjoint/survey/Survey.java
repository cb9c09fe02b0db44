package io.github.bedjoint.survey;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.RefusedException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * All walls of a job, each under a name of its own.
 *
 * @param walls the walls in the order of the survey
 */
public record Survey(List<Wall> walls) {
    private static final int MOST_WALLS = 1000;

    /**
     * Checks that there are walls and that their names differ.
     *
     * @param walls the walls in the order of the survey
     * @throws RefusedException if there is no wall, more than 1000, or two of one name
     */
    public Survey {
        walls = List.copyOf(walls);
        Door.count("walls", walls.size(), 1, MOST_WALLS);
        Set<String> names = new HashSet<>();
        for (int i = 0; i < walls.size(); i++) {
            if (!names.add(walls.get(i).name())) {
                throw new RefusedException("walls[" + i + "].name", "'" + walls.get(i).name() + "'",
                        "must differ from the names of the walls before", "Maybe add where it is, such as north or south.");
            }
        }
    }

    /**
     * The survey of these walls.
     *
     * @param walls 1 to 1000 walls with different names
     * @return the survey
     * @throws RefusedException if there is no wall or two have one name
     */
    public static Survey of(Wall... walls) {
        return new Survey(List.of(walls));
    }

    /**
     * The wall of a name.
     *
     * @param name the name
     * @return the wall
     * @throws RefusedException if there is none of that name
     */
    public Wall wall(String name) {
        return walls.stream().filter(wall -> wall.name().equals(name)).findFirst().orElseThrow(() -> new RefusedException(
                "wall name", "'" + name + "'", "must be one of " + walls.stream().map(Wall::name).toList(),
                "Maybe it is spelled otherwise."));
    }
}
