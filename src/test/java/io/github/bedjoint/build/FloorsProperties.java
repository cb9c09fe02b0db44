package io.github.bedjoint.build;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.build.Floors.SourceFile;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The floor check over every pair of packages and over comments put anywhere. */
class FloorsProperties {

    @Property
    void faults_ofOneImport_areThereExactlyWhenItIsNotLower(@ForAll("packages") String home, @ForAll("packages") String used) {
        List<String> faults = Floors.faults(List.of(
                new SourceFile("A.java", "package " + name(home) + ";\nimport " + name(used) + ".B;\n"),
                new SourceFile("package-info.java", "@NullMarked\npackage " + name(home) + ";")));

        boolean allowed = home.equals(used) || Floors.FLOORS.get(used) < Floors.FLOORS.get(home);
        assertThat(faults).hasSize(allowed ? 0 : 1);
    }

    @Property
    void packagesUsed_withNoiseAroundTheCode_areTheSame(@ForAll("noise") String before, @ForAll("noise") String after) {
        String text = before + "\nimport io.github.bedjoint.job.Job;\n" + after;

        assertThat(Floors.packagesUsed(new SourceFile("A.java", text))).containsExactly("io.github.bedjoint.job");
    }

    @Provide
    Arbitrary<String> packages() {
        return Arbitraries.of(Floors.FLOORS.keySet().stream().sorted().toList());
    }

    /** Comments and literals that hold each other's marks and a name of ours. */
    @Provide
    Arbitrary<String> noise() {
        return Arbitraries.of("// \" io.github.bedjoint.risk.Risk /*\n", "/* ' // io.github.bedjoint.risk.Risk */", "\"/* \\\" //\"",
                "'\"'", "'\\''", "\"\"\"\n /* io.github.bedjoint.risk.Risk \" \"\"\"", "\"\\\\\"", " x = y / z; ")
                .list().ofMaxSize(8).map(parts -> String.join(" ", parts));
    }

    private static String name(String floor) {
        return Floors.ROOT + "." + floor;
    }
}
