package io.github.bedjoint.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import java.io.IOException;
import java.io.StringReader;
import java.math.RoundingMode;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FieldsTest {
    private static <T> T read(String json, Function<Fields, T> reader) throws IOException {
        return Fields.whole(JsonNode.read(new StringReader(json)), reader);
    }

    private static RefusedException refused(String json, Function<Fields, ?> reader) {
        RefusedException e = catchThrowableOfType(RefusedException.class, () -> read(json, reader));
        assertThat(e).as(json).isNotNull();
        return e;
    }

    @Test
    void whole_knownFields_areRead() throws IOException {
        String json = "{\"a\": \"54 in\", \"b\": 0.35, \"c\": 3, \"d\": true, \"e\": \"half-up\", \"f\": null}";
        String all = read(json, f -> f.read("a", Read::length).getValue() + " " + f.number("b") + " " + f.count("c") + " " + f.flag("d")
                + " " + f.word("e", RoundingMode.class) + " " + f.has("f") + " " + f.has("g"));
        assertThat(all).isEqualTo("54 0.35 3 true HALF_UP false false");
    }

    @Test
    void end_unknownField_isRefusedWithPathValueLineAndWhatIsKnown() {
        RefusedException e = refused("{\n \"a\": {\n  \"b\": 1,\n  \"bb\": 2\n }\n}", f -> f.object("a", g -> g.count("b")));
        assertThat(e.parameter()).isEqualTo("a.bb");
        assertThat(e).hasMessageContaining("2 (line 4)").hasMessageContaining("not a field that is known").hasMessageContaining("[b]");
    }

    @Test
    void end_nameWithADot_isNotMistakenForItsLastPart() {
        assertThat(refused("{\"b\": 1, \"x.b\": 2}", f -> f.count("b")).parameter()).isEqualTo("x.b");
    }

    @Test
    void get_missingField_isRefusedWithItsPath() {
        RefusedException e = refused("{\"walls\": [{\"width\": \"3 m\"}]}", f -> f.list("walls", node -> Fields.whole(node, w -> w.text("name"))));
        assertThat(e.parameter()).isEqualTo("walls[0].name");
        assertThat(e).hasMessageContaining("absent (line 1)").hasMessageContaining("width");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"a\": 54}         | must be a text",
                "{\"a\": \"54\"}     | must go on with a unit",
                "{\"a\": \"54 kg\"}  | must have another unit than 'kg'",
                "{\"a\": [\"1 m\"]}  | must be a text",
                "{\"a\": {}}         | must be a text",
                "{\"a\": null}       | must be given",
                "{\"a\": true}       | must be a text"
            })
    void read_wrongTypeOrUnit_isRefused(String json, String limit) {
        RefusedException e = refused(json, f -> f.read("a", Read::length));
        assertThat(e.parameter()).isEqualTo("a");
        assertThat(e.limit()).contains(limit);
        assertThat(e.value()).contains("line 1");
    }

    @Test
    void with_refusalFromAnotherRoom_carriesPathValueAndLimit() {
        RefusedException e = refused(
                "{\"film\": {\"margin\": \"-3 mm\"}}",
                f -> f.object("film", g -> g.with(1.0, "margin", n -> g.read(n, Read::length), (one, length) ->
                        Door.lengthM("edge margin", length, Range.NOT_NEGATIVE))));
        assertThat(e.parameter()).isEqualTo("film.margin");
        assertThat(e.value()).isEqualTo("'-3 mm' (line 1)");
        assertThat(e.limit()).startsWith("must be at least 0 m");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "", "  ", "{", "{\"a\":1,}", "{\"a\":1} x", "{\"a\":1}{}", "{\"a\":1,\"a\":2}", "[1", "{\"a\": NaN}", "{'a': 1}",
                "{\"a\": 1e999999999}", "\u0000"
            })
    void read_textThatIsNoJobFile_isRefused(String text) {
        assertThatThrownBy(() -> read(text, f -> f.count("a"))).isInstanceOf(RefusedException.class).hasMessageStartingWith("job file is ");
    }

    @Test
    void read_deepNesting_isRefused() {
        assertThatThrownBy(() -> JsonNode.read(new StringReader("[".repeat(100_000)))).isInstanceOf(RefusedException.class);
    }

    @Test
    void whole_arrayForObject_isRefused() {
        assertThat(refused("[]", f -> 1)).hasMessageContaining("must be an object");
        assertThat(refused("{\"a\": [1]}", f -> f.object("a", g -> 1)).parameter()).isEqualTo("a");
        assertThat(refused("{\"a\": {}}", f -> f.list("a", g -> 1)).parameter()).isEqualTo("a");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.5", "\"3\"", "99999999999", "true"})
    void count_notAWholeNumber_isRefused(String value) {
        assertThat(refused("{\"n\": " + value + "}", f -> f.count("n"))).hasMessageContaining("whole number");
    }

    @Test
    void word_unknown_listsTheWords() {
        assertThat(refused("{\"mode\": \"halfup\"}", f -> f.word("mode", RoundingMode.class))).hasMessageContaining("half-up, half-down");
    }
}
