package io.github.bedjoint.working;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/** Finds the formula constants of the compiled library, private ones and collections of them included. */
public final class FormulaConstants {
    private static final Path CLASSES = Path.of("target", "classes");

    private FormulaConstants() {}

    public static List<Formula> all() {
        List<Formula> formulas = new ArrayList<>();
        try (Stream<Path> files = Files.walk(CLASSES)) {
            files.map(CLASSES::relativize)
                    .map(path -> path.toString().replace(java.io.File.separatorChar, '.'))
                    .filter(name -> name.startsWith("io.github.bedjoint.") && name.endsWith(".class") && !name.endsWith("-info.class"))
                    .sorted()
                    .forEach(name -> collect(name.substring(0, name.length() - ".class".length()), formulas));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return formulas;
    }

    private static void collect(String className, List<Formula> formulas) {
        try {
            for (Field field : Class.forName(className).getDeclaredFields()) {
                if (Modifier.isStatic(field.getModifiers()) && !field.isSynthetic()) {
                    field.setAccessible(true);
                    Object value = field.get(null);
                    if (value instanceof Formula formula) {
                        formulas.add(formula);
                    } else if (value instanceof Collection<?> many) {
                        many.stream().filter(Formula.class::isInstance).map(Formula.class::cast).forEach(formulas::add);
                    } else if (value instanceof java.util.Map<?, ?> map) {
                        map.values().stream().filter(Formula.class::isInstance).map(Formula.class::cast).forEach(formulas::add);
                    }
                }
            }
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(className, e);
        }
    }
}
