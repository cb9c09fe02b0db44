package io.github.bedjoint.jobfile;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.layout.Picture;
import io.github.bedjoint.survey.Edge;
import io.github.bedjoint.survey.MovementJoint;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Writes a wall: size or outline, surface, edges, openings, access. */
final class WallWriter {
    private final JsonOut out;

    WallWriter(JsonOut out) {
        this.out = out;
    }

    void write(Wall wall, Job job) throws IOException {
        out.field("name", wall.name());
        long width = wall.widthSteps();
        long height = wall.heightSteps();
        if (wall.outline().points().equals(List.of(new Point(0, 0), new Point(width, 0), new Point(width, height), new Point(0, height)))) {
            out.steps("width", width);
            out.steps("height", height);
        } else {
            out.array("outline", () -> {
                for (Point point : wall.outline().points()) {
                    out.pair(JsonOut.steps(point.xSteps()), JsonOut.steps(point.ySteps()));
                }
            });
        }
        out.object("surface", () -> new SurfaceWriter(out).write(wall.surface()));
        out.object("edges", () -> {
            for (Side side : Side.values()) {
                out.object(Fields.word(side), () -> edge(wall.edge(side)));
            }
        });
        if (!wall.openings().isEmpty()) {
            out.array("openings", () -> {
                for (Opening opening : wall.openings()) {
                    out.item(() -> opening(opening));
                }
            });
        }
        if (!wall.movementJoints().isEmpty()) {
            out.array("movementJoints", () -> {
                for (MovementJoint joint : wall.movementJoints()) {
                    out.item(() -> out.steps(joint.upright() ? "x" : "y", joint.atSteps()));
                }
            });
        }
        if (!wall.tolerance().isNone()) {
            out.object("tolerances", () -> {
                out.sized("wall", wall.tolerance().wallM(), "m");
                out.sized("opening", wall.tolerance().openingM(), "m");
            });
        }
        out.word("access", wall.access());
        ofJob(wall.name(), job);
    }

    private void ofJob(String wall, Job job) throws IOException {
        long bottomSteps = job.access().bottomSteps(wall);
        if (bottomSteps > 0) {
            out.steps("bottom", bottomSteps);
        }
        Optional<Picture> picture = job.statedPicture(wall);
        if (picture.isPresent()) {
            Picture place = picture.get();
            out.object("picture", () -> {
                out.steps("left", place.leftSteps());
                out.steps("bottom", place.bottomSteps());
                out.steps("width", place.rightSteps() - place.leftSteps());
                out.steps("height", place.topSteps() - place.bottomSteps());
            });
        }
        Optional<Double> accessFactor = job.statedFactor(wall);
        if (accessFactor.isPresent()) {
            out.number("accessFactor", accessFactor.get());
        }
    }

    private void edge(Edge edge) throws IOException {
        out.word("kind", edge.kind());
        out.steps("extra", edge.extraSteps());
        out.flag("sealed", edge.sealed());
    }

    private void opening(Opening opening) throws IOException {
        out.word("kind", opening.kind());
        out.steps("left", opening.leftSteps());
        out.steps("bottom", opening.bottomSteps());
        out.steps("width", opening.rightSteps() - opening.leftSteps());
        out.steps("height", opening.topSteps() - opening.bottomSteps());
        if (opening.treatment() == Opening.Treatment.TURNED_IN) {
            out.steps("turnedIn", opening.turnSteps());
        } else {
            out.word("treatment", opening.treatment());
        }
    }
}
