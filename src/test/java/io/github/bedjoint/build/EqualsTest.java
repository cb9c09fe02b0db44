package io.github.bedjoint.build;

import io.github.bedjoint.conditions.DewPoint;
import io.github.bedjoint.labour.Pace;
import io.github.bedjoint.labour.Task;
import io.github.bedjoint.labour.TaskKind;
import io.github.bedjoint.labour.TaskTable;
import io.github.bedjoint.risk.Input;
import io.github.bedjoint.risk.Spread;
import io.github.bedjoint.layout.JointPhase;
import io.github.bedjoint.schedule.Rain;
import io.github.bedjoint.schedule.WorkCalendar;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.texture.ContourProfile;
import io.github.bedjoint.texture.FlatSurface;
import io.github.bedjoint.texture.GaugeTolerance;
import io.github.bedjoint.texture.GridSurface;
import io.github.bedjoint.texture.JointProfile;
import io.github.bedjoint.texture.MasonrySurface;
import io.github.bedjoint.texture.SpotSurface;
import io.github.bedjoint.texture.Surface;
import io.github.bedjoint.units.PriceRate;
import io.github.bedjoint.units.Read;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import nl.jqno.equalsverifier.EqualsVerifier;
import nl.jqno.equalsverifier.Warning;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every value type keeps the contract of equals and hashCode, and every field counts but those that follow from the others. */
class EqualsTest {
    private static final Path CLASSES = Path.of("target", "classes");
    /** What is kept only to be found sooner, and an input's binding, which its name stands for. */
    private static final Map<Class<?>, String[]> FOLLOWING = Map.of(
            Input.class, new String[] {"replans", "binding"},
            Spread.class, new String[] {"shape"},
            Rain.class, new String[] {"last"},
            WorkCalendar.class, new String[] {"compiled", "unblocked"},
            ContourProfile.class, new String[] {"lengthM", "worst"},
            DewPoint.class, new String[] {"gamma", "celsius"},
            GridSurface.class, new String[] {"grid", "askedWindowM"},
            MasonrySurface.class, new String[] {"lengthM", "cellM2", "crossingM2", "jointShare", "jointsRatio", "areaRatio", "faceStretch"},
            SpotSurface.class, new String[] {"wall", "kind", "depthsM", "total"},
            TaskTable.class, new String[] {"tasks"});

    static List<Class<?>> valueTypes() throws IOException {
        try (Stream<Path> files = Files.walk(CLASSES)) {
            return files.map(CLASSES::relativize).map(Path::toString).filter(f -> f.startsWith("io") && f.endsWith(".class"))
                    .map(f -> f.substring(0, f.length() - 6).replace('/', '.').replace('\\', '.')).sorted().<Class<?>>map(EqualsTest::load)
                    .filter(c -> !c.isRecord() && hasEquals(c))
                    // Equal when they come to the same in inner units, however written: PriceRateTest.
                    .filter(c -> c != PriceRate.class).toList();
        }
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name, false, EqualsTest.class.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new AssertionError(e);
        }
    }

    private static boolean hasEquals(Class<?> type) {
        return Stream.of(type.getDeclaredMethods()).anyMatch(m -> m.getName().equals("equals") && !m.isBridge());
    }

    @ParameterizedTest
    @MethodSource("valueTypes")
    void equals_ofAValueType_keepsItsContract(Class<?> type) {
        // Types that refuse what the verifier would make up.
        EqualsVerifier.forClass(type)
                .suppress(Warning.NULL_FIELDS)
                .withIgnoredFields(FOLLOWING.getOrDefault(type, new String[0]))
                .withPrefabValues(Pace.class, Pace.perPiece(Read.time("1 min")), Pace.perPiece(Read.time("2 min")))
                .withPrefabValues(TaskKind.class, TaskTable.defaults().tasks().get(0).kind(), TaskTable.defaults().tasks().get(1).kind())
                .withPrefabValues(Task.class, TaskTable.defaults().tasks().get(0), TaskTable.defaults().tasks().get(1))
                .withPrefabValues(GaugeTolerance.class, GaugeTolerance.none(), GaugeTolerance.none().withHeight(Read.length("1 mm")))
                .withPrefabValues(Opening.class, opening(1), opening(2))
                .withPrefabValues(JointPhase.class, new JointPhase(10_000, 1, 1, 0.5), new JointPhase(20_000, 1, 1, 0.5))
                .withPrefabValues(WorkCalendar.class, WorkCalendar.weekdays(ZoneOffset.UTC), WorkCalendar.roundTheClock(ZoneOffset.UTC))
                .withPrefabValues(Surface.class, FlatSurface.flat(), MasonrySurface.of(Read.length("215 mm"), Read.length("65 mm"), Read.length("10 mm"), Read.length("10 mm"), JointProfile.flush()))
                .verify();
    }

    private static Opening opening(long size) {
        return new Opening(Opening.Kind.WINDOW, 0, 0, size, size, Opening.Treatment.TRIMMED, 0);
    }
}
