package io.github.bedjoint.build;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.conditions.SiteCheck;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.price.CostVariance;
import io.github.bedjoint.survey.WallAreas;
import io.github.bedjoint.texture.Surface;
import io.github.bedjoint.working.Explained;
import java.io.IOException;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every result prints in a shell as a person reads it: a value, its unit, and in one line what it is made of. */
class ResultsPrintTest {
    private static final Pattern VALUE = Pattern.compile(
            "-?\\d+(\\.\\d+)? (m|mm|m²|mm²|mL|kg|h|min|s|%|°C|units|panels?|drops?|files?|heights|points|rolls?|days?)\\b.*|(EUR|USD) -?\\d+.*|factor \\d.*|\\d+(\\.\\d+)? ± .*|\\d{4}-\\d\\d-\\d\\d.*");

    /** These list their parts, one a line. */
    private static final Set<Class<?>> LISTS = Set.of(CostVariance.class, SiteCheck.class);

    private static List<Explained> results() throws IOException {
        List<Explained> all = new ArrayList<>(SurfaceExamples.results().toList());
        all.addAll(WorkExamples.results().toList());
        all.addAll(WorkExamples.money().toList());
        for (String name : List.of("brick-front", "block-gable", "reading-room")) {
            JobCost cost = JobCost.of(JobFile.read(Project.root().resolve("docs/jobs/" + name + ".json")));
            all.addAll(List.of(cost, cost.areas(), cost.waste(), cost.labour(), cost.labour().siteDays(), cost.price()));
            for (WallAreas wall : cost.areas().walls()) {
                all.add(wall);
                all.add(wall.edges());
            }
            cost.layouts().forEach(layout -> all.addAll(layout.seams()));
            all.addAll(cost.labour().tasks());
            all.addAll(cost.labour().trips());
            cost.laminate().ifPresent(all::add);
            cost.timetable().ifPresent(all::add);
            cost.timetable().ifPresent(dates -> all.addAll(dates.slots()));
        }
        WorkExamples.results().forEach(result -> {
            if (result instanceof io.github.bedjoint.labour.LabourEstimate estimate) {
                all.addAll(estimate.trips());
            }
        });
        return all;
    }

    @Test
    void results_ofEveryKind_printValueUnitAndReason() throws IOException {
        for (Explained result : results()) {
            String text = result.toString();
            assertThat(text.lines().count()).as(text).isEqualTo(LISTS.contains(result.getClass()) ? text.lines().count() : 1);
            assertThat(VALUE.matcher(text).find()).as("value and unit in: %s", text).isTrue();
            assertThat(text.split("[ :,;]+").length).as("reason in: %s", text).isGreaterThanOrEqualTo(4);
            assertThat(text).doesNotContainPattern("@[0-9a-f]{5}|\\w\\[|\\d\\.\\d{7}|\\b1 (rolls|days|panels|walls|runs|files)");
        }
    }

    /** A result that is not among the examples would not be looked at above. */
    @Test
    void results_ofTheLibrary_allHaveAnExample() throws IOException {
        Set<String> looked = results().stream().map(result -> result.getClass().getSimpleName()).collect(Collectors.toCollection(TreeSet::new));
        Set<String> missing = new TreeSet<>();
        try (Stream<Path> classes = Files.walk(Project.root().resolve("target/classes"))) {
            for (Path file : classes.filter(path -> path.toString().endsWith(".class")).toList()) {
                String name = Project.root().resolve("target/classes").relativize(file).toString().replace(java.io.File.separatorChar, '.');
                if (name.startsWith("io.github.bedjoint.") && !name.contains("-info")) {
                    Class<?> type = load(name.substring(0, name.length() - ".class".length()));
                    boolean isResult = Modifier.isPublic(type.getModifiers()) && Explained.class.isAssignableFrom(type) && !type.isInterface() && !Surface.class.isAssignableFrom(type);
                    if (isResult && !looked.contains(type.getSimpleName())) {
                        missing.add(type.getSimpleName());
                    }
                }
            }
        }
        // A range and the conditions of a site are given, not worked out: they print as they were given.
        missing.removeAll(Set.of("Spread", "SiteCheck"));
        assertThat(missing).isEmpty();
        assertThat(looked).hasSizeGreaterThan(35);
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name, false, ResultsPrintTest.class.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(name, e);
        }
    }

    /** Worked by hand from the sizes in SurfaceExamples and WorkExamples. */
    @ParameterizedTest
    @ValueSource(strings = {
        // 20 s x 1.2 = 24 s; x 1.2 = 28.8 s, / 0.8 = 30 s
        "28.8 s standard: 20 s observed at a rating of 120 %, allowance of 20 % on job time",
        "30 s standard: 20 s observed at a rating of 120 %, allowance of 20 % on the working day",
        // unit law: 10 + 8 + 7.0210 + 6.4 = 31.421; average law: 4 x 6.4 = 25.6
        "6.4 h for unit 4, 31.421 h for all: first unit 10 h, each doubling takes 80 %",
        // (1300 - 50) / 200 = 6.25, so 7 strips; 21 m at 0.6 m/min
        "35 min: 7 strips of 3 m, 1 pass",
        // 1300 / 250 = 5.2, so 6 strips; 18 m x 1.25 at 0.6 m/min
        "37.5 min: 6 strips of 3 m, 1 pass",
        // 1.2 x 10.5
        "12.6 m² heated: 10 m² visible and 0.5 m² of overlap, 1.2 times",
        // 0.4 + 0.46 + 0.26
        "factor 1.12: 40 % from ground at 1, 40 % from platform at 1.15, 20 % from scaffold at 1.3",
        // 120 + 5 x 85.50
        "EUR 547.50: 1 lift, 5 days at EUR 85.50, delivery EUR 120.00",
        // (5 + 4 x 8 + 17) / 6, (17 - 5) / 6
        "9 h ± 2 h: at least 5 h, most likely 8 h, at most 17 h",
        "75.0 %: 18 m² visible of 24 m² opened",
        // 30 x 0.09 + 4 x 0.2
        "3.5 kg to dispose of: 30 m² of liner, 4 m² of scrap",
        "8 rolls ordered: 5 needed, at least 0, 4 in a carton",
        // 25000 / 2450 = 10.2; (10 x 0.98 + 0.02) x 2.4
        "10 drops cover 23.568 m²",
        "3 files for gable, 1 spare panel with 3 m of film",
        // 65 + 5 + 10 + 5 = 85 over 75
        "profile of 5 points over 75 mm, 1.1333 as long"
    })
    void toString_ofAPlainExample_isWorkedByHand(String text) throws IOException {
        assertThat(results()).extracting(Explained::toString).contains(text);
    }
}
