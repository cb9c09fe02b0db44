/**
 * Costs the application of printed, laminated film from rolls onto rough and flat walls.
 *
 * <p>Quantities go in and come out as JSR-385 {@code Quantity}, money as Joda-Money. JSON job files need Jackson's
 * streaming core, ranges over a job need commons-statistics-distribution and commons-rng-simple, and the example app needs picocli; all
 * are optional and nothing else asks for them.
 */
module io.github.bedjoint {
    requires transitive java.measure;
    requires transitive org.joda.money;
    requires static transitive org.jspecify;

    requires java.xml;
    requires org.apache.commons.lang3;
    requires tech.units.indriya;

    requires static com.fasterxml.jackson.core;
    requires static info.picocli;
    requires static ojalgo;
    requires static org.apache.commons.rng.api;
    requires static org.apache.commons.rng.simple;
    requires static org.apache.commons.statistics.distribution;

    // One line a package, in the order of the floors; javac refuses the export of a package without a type.
    exports io.github.bedjoint.units;
    exports io.github.bedjoint.working;
    exports io.github.bedjoint.texture;
    exports io.github.bedjoint.film;
    exports io.github.bedjoint.survey;
    exports io.github.bedjoint.conditions;
    exports io.github.bedjoint.layout;
    exports io.github.bedjoint.rolls;
    exports io.github.bedjoint.labour;
    exports io.github.bedjoint.checker;
    exports io.github.bedjoint.waste;
    exports io.github.bedjoint.schedule;
    exports io.github.bedjoint.calibration;
    exports io.github.bedjoint.price;
    exports io.github.bedjoint.cutting;
    exports io.github.bedjoint.job;
    exports io.github.bedjoint.risk;
    exports io.github.bedjoint.drawing;
    exports io.github.bedjoint.jobfile;
}
