package io.github.bedjoint.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.job.OneMore;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The shipped schemas against what the code reads and writes, by a public validator. */
class JobSchemaTest {
    private static final JsonSchemaFactory FACTORY = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);
    private static final JsonSchema JOB = FACTORY.getSchema(JobSchema.JOB.text());
    private static final JsonSchema RESULT = FACTORY.getSchema(JobSchema.RESULT.text());

    private static Set<ValidationMessage> faults(JsonSchema schema, String json) {
        return schema.validate(json, InputFormat.JSON);
    }

    private static String demo(String name) throws IOException {
        return Files.readString(Path.of("docs", "jobs", name + ".json"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"brick-front", "reading-room", "block-gable"})
    void schemas_ofDemoJobs_holdForFileWrittenFileAndResult(String name) throws IOException {
        assertThat(faults(JOB, demo(name))).isEmpty();
        JobCost cost = JobCost.of(JobFile.parse(demo(name)));
        assertThat(faults(JOB, JobFile.write(cost.job()))).isEmpty();
        assertThat(faults(RESULT, JobResult.of(cost).toString())).isEmpty();
        assertThat(faults(RESULT, JobResult.of(cost).withWorking(cost.working()).toString())).isEmpty();
        assertThat(faults(RESULT, JobResult.of(cost).withOneMore(OneMore.of(cost)).toString())).isEmpty();
    }

    @Test
    void schemas_ofRandomJobs_holdForFileAndResult() throws IOException {
        for (long seed = 1; seed <= 60; seed++) {
            String json = JsonTree.write(RandomJobs.tree(seed, UnitStyle.METRIC));
            assertThat(faults(JOB, json)).as("seed " + seed).isEmpty();
            assertThat(faults(RESULT, JobResult.of(JobCost.of(JobFile.parse(json))).toString())).as("seed " + seed).isEmpty();
        }
    }

    @Test
    void schemas_ofRanges_holdForFileAndResult() throws IOException {
        String job = demo("brick-front");
        String ranged = job.substring(0, job.lastIndexOf('}')) + ", \"ranges\": {\"seed\": 3, \"jobs\": 50, \"inputs\": ["
                + "{\"input\": \"pace\", \"of\": \"seam\", \"pert\": [\"1 min/m\", \"1.5 min/m\", \"2 min/m\"]},"
                + "{\"input\": \"rain-chance\", \"list\": [0.1, 0.3]}]}}";
        assertThat(faults(JOB, ranged)).isEmpty();
        assertThat(faults(RESULT, JobResult.of(JobFile.document(new StringReader(ranged))).toString())).isEmpty();
    }

    /** What the schema refuses the reader refuses too. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"bedjoint\": 1                 | \"bedjoint\": 2",
                "\"currency\": \"EUR\"         | \"currency\": \"euro\"",
                "\"note\":                       | \"remark\":",
                "\"kind\": \"raked\"           | \"kind\": \"rakedd\"",
                "\"width\": \"7.20 m\",        | ",
                "\"siteCrew\": 2                 | \"siteCrew\": \"2\"",
                "\"margin\": 0.30                | \"margin\": 1.5",
                "\"access\": \"ground\"        | \"access\": 3",
                "\"start\": \"2027-04-12\"     | \"start\": 20270412",
                "\"painted\": \"no\"           | \"painted\": \"nope\"",
                "\"leastSliver\":               | \"weatherSide\": \"top\", \"leastSliver\":",
                "\"leastSliver\":               | \"weatherSide\": \"bottom\", \"leastSliver\":"
            })
    void job_whatTheSchemaRefuses_theReaderRefuses(String right, String wrong) throws IOException {
        String job = demo("brick-front");
        assertThat(job).contains(right);
        String changed = job.replace(right, wrong == null ? "" : wrong);
        assertThat(faults(JOB, changed)).isNotEmpty();
        assertThatThrownBy(() -> JobFile.parse(changed)).isInstanceOf(RefusedException.class);
    }

    /** Each field that the schema names is a word of the readers, so none is left over from an older format. */
    @Test
    void job_fieldsOfTheSchema_areKnownToTheReaders() throws IOException {
        StringBuilder sources = new StringBuilder();
        try (Stream<Path> files = Files.list(Path.of("src/main/java/io/github/bedjoint/jobfile"))) {
            for (Path file : files.filter(path -> path.toString().endsWith("Reader.java") || path.toString().matches(".*Job(Ranges|Document|Out|Writer)\\.java")).toList()) {
                sources.append(Files.readString(file));
            }
        }
        Set<String> unknown = new TreeSet<>();
        fields(JsonNode.read(new StringReader(JobSchema.JOB.text())), unknown);
        // Sides, ways of access and questions are words of enums, read by name.
        Set<String> words = Stream.of(io.github.bedjoint.survey.Side.values(), io.github.bedjoint.survey.Access.values(),
                        io.github.bedjoint.conditions.Question.values())
                .flatMap(java.util.Arrays::stream)
                .map(Fields::word)
                .collect(Collectors.toSet());
        unknown.removeIf(field -> words.contains(field) || sources.indexOf('"' + field + '"') >= 0);
        assertThat(unknown).isEmpty();
    }

    private static void fields(JsonNode node, Set<String> names) {
        if (node.fields() != null) {
            JsonNode properties = node.fields().get("properties");
            if (properties != null && properties.fields() != null) {
                names.addAll(properties.fields().keySet());
            }
            node.fields().values().forEach(field -> fields(field, names));
        }
        if (node.items() != null) {
            node.items().forEach(item -> fields(item, names));
        }
    }

    /** Each object of the schema has a section on the page, each of its fields a row, starred where it is required; and nothing else has. */
    @Test
    void page_ofTheJobFile_namesEveryFieldOfTheSchemaAndNoOther() throws IOException {
        Map<String, Object> schema = JsonTree.object(JsonTree.parse(JobSchema.JOB.text()));
        TreeMap<String, TreeSet<String>> wanted = new TreeMap<>();
        fields("job", schema, wanted);
        JsonTree.object(schema.get("$defs")).forEach((name, part) -> fields(name, JsonTree.object(part), wanted));
        wanted.values().removeIf(Set::isEmpty);
        TreeMap<String, TreeSet<String>> found = new TreeMap<>();
        String section = "";
        for (String line : Files.readAllLines(Path.of("docs", "job-file.md"))) {
            if (line.startsWith("### `")) {
                section = line.substring(5, line.length() - 1);
                found.put(section, new TreeSet<>());
            } else if (line.startsWith("| `")) {
                String cell = line.substring(2, line.indexOf(" |", 2));
                assertThat(found.get(section).add(cell.replace("`", ""))).as(line).isTrue();
            }
        }
        assertThat(found).isEqualTo(wanted);
    }

    private static void fields(String section, Map<String, Object> part, Map<String, TreeSet<String>> all) {
        collect("", part, all.computeIfAbsent(section, name -> new TreeSet<>()));
    }

    /** Fields of an object, of the objects in it and of the alternatives that it may be, but not of parts with a name of their own. */
    private static void collect(String path, Map<String, Object> part, Set<String> fields) {
        if (part.get("items") instanceof Map<?, ?>) {
            collect(path, JsonTree.object(part.get("items")), fields);
        }
        if (part.get("oneOf") instanceof List<?> ways) {
            ways.forEach(way -> collect(path, JsonTree.object(way), fields));
        }
        if (part.get("properties") instanceof Map<?, ?>) {
            List<?> required = part.get("required") instanceof List<?> names ? names : List.of();
            JsonTree.object(part.get("properties")).forEach((name, field) -> {
                fields.add(path + name + (required.contains(name) ? " *" : ""));
                collect(path + name + ".", JsonTree.object(field), fields);
            });
        }
    }
}
