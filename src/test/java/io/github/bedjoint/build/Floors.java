package io.github.bedjoint.build;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The floors of the house and what a source file may not do in it.
 *
 * <p>A package imports lower floors only: neither upwards nor sideways. A new package gets a row in {@link #FLOORS}.
 * Comments and strings are not code: a {@code @link} to a higher floor is fine as long as nothing is imported for it.
 */
final class Floors {

    static final String ROOT = "io.github.bedjoint";

    static final Map<String, Integer> FLOORS = Map.ofEntries(
            Map.entry("units", 0),
            Map.entry("working", 1),
            Map.entry("texture", 2),
            Map.entry("film", 2),
            Map.entry("survey", 3),
            Map.entry("conditions", 3),
            Map.entry("layout", 4),
            Map.entry("rolls", 5),
            Map.entry("labour", 5),
            Map.entry("patterns", 6),
            Map.entry("checker", 6),
            Map.entry("waste", 6),
            Map.entry("schedule", 6),
            Map.entry("price", 6),
            Map.entry("calibration", 6),
            Map.entry("skyline", 7),
            Map.entry("bounds", 8),
            Map.entry("cutting", 9),
            Map.entry("job", 10),
            Map.entry("risk", 11),
            Map.entry("drawing", 12),
            Map.entry("jobfile", 12),
            Map.entry("app", 13));

    static final int LONGEST_FILE = 400;

    private static final Pattern NOT_CODE = Pattern.compile("\"\"\".*?\"\"\""
            + "|\"[^\"\\\\\n]*+(?:\\\\.[^\"\\\\\n]*+)*+\""
            + "|'(?:\\\\.|[^'\\\\\n])+?'"
            + "|/\\*.*?\\*/"
            + "|//[^\n]*", Pattern.DOTALL);
    private static final Pattern PACKAGE = Pattern.compile("(?m)^\\s*package\\s+([\\w.]+)\\s*;");
    /** The package part of a qualified name of ours: lower-case segments; the type begins with a capital or is "*". */
    private static final Pattern USE = Pattern.compile("\\b" + Pattern.quote(ROOT) + "((?:\\.[a-z]\\w*+)*+)\\s*+\\.\\s*+[A-Z*]");
    private static final Pattern NULL_MARKED = Pattern.compile("@(org\\.jspecify\\.annotations\\.)?NullMarked\\b");
    private static final Pattern SHUNNED = Pattern.compile("(^|\\.)(util|utils|common|impl|internal)(\\.|$)");

    private Floors() {
    }

    /** One Java file: its name (for the message and for package-info) and its text. */
    record SourceFile(String name, String text) {

        String code() {
            return NOT_CODE.matcher(text).replaceAll(" ");
        }

        String packageName() {
            Matcher m = PACKAGE.matcher(code());
            return m.find() ? m.group(1) : "";
        }

        boolean isPackageInfo() {
            return name.endsWith("package-info.java");
        }
    }

    /** Every Java file under a source folder but the module declaration. */
    static List<SourceFile> read(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(f -> f.toString().endsWith(".java"))
                    .filter(f -> !f.endsWith("module-info.java"))
                    .sorted()
                    .map(f -> new SourceFile(folder.relativize(f).toString().replace('\\', '/'), text(f)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Everything wrong with a set of source files, one line each; empty when the house stands. */
    static List<String> faults(List<SourceFile> files) {
        List<String> faults = new ArrayList<>();
        for (SourceFile file : files) {
            faults.addAll(faultsOf(file));
        }
        Map<Boolean, TreeSet<String>> packages = files.stream().collect(Collectors.partitioningBy(
                f -> f.isPackageInfo() && NULL_MARKED.matcher(f.code()).find(),
                Collectors.mapping(SourceFile::packageName, Collectors.toCollection(TreeSet::new))));
        packages.get(false).stream()
                .filter(p -> !packages.get(true).contains(p))
                .forEach(p -> faults.add(p + " has no package-info.java with @NullMarked"));
        return faults;
    }

    private static List<String> faultsOf(SourceFile file) {
        List<String> faults = new ArrayList<>();
        String home = file.packageName();
        if (SHUNNED.matcher(home).find()) {
            faults.add(file.name() + ": a package named " + home + " says nothing of what it holds");
        }
        Integer floor = floor(home);
        if (floor == null) {
            faults.add(file.name() + ": package " + home + " has no floor");
        } else {
            for (String used : packagesUsed(file)) {
                Integer other = floor(used);
                if (other == null) {
                    faults.add(file.name() + ": uses " + used + ", which has no floor");
                } else if (!used.equals(home) && other >= floor) {
                    faults.add(file.name() + ": floor " + floor + " uses " + used + " on floor " + other);
                }
            }
        }
        long lines = file.text().lines().count();
        if (lines > LONGEST_FILE) {
            faults.add(file.name() + ": " + lines + " lines, more than " + LONGEST_FILE);
        }
        return faults;
    }

    /** Packages of ours named in imports and in qualified names. */
    static TreeSet<String> packagesUsed(SourceFile file) {
        TreeSet<String> used = new TreeSet<>();
        Matcher m = USE.matcher(file.code());
        while (m.find()) {
            used.add(ROOT + m.group(1));
        }
        return used;
    }

    static Integer floor(String packageName) {
        return packageName.startsWith(ROOT + ".") ? FLOORS.get(packageName.substring(ROOT.length() + 1)) : null;
    }
}
