package io.github.bedjoint.jobfile;

import com.fasterxml.jackson.core.JsonGenerator;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/** Writes a working as JSON: the stored numbers in inner units, and beside each how a reader sees it. */
final class WorkingWriter {
    private static final int TERMS = 3;

    private final JsonGenerator json;
    private final UnitStyle style;

    WorkingWriter(JsonGenerator json, UnitStyle style) {
        this.json = json;
        this.style = style;
    }

    void write(Working working, @Nullable CurrencyUnit outer) throws IOException {
        CurrencyUnit currency = working.currency().orElse(outer);
        json.writeStartObject();
        json.writeStringField("title", working.title());
        if (working.formula().isPresent()) {
            Formula formula = working.formula().get();
            json.writeStringField("id", formula.id());
            json.writeStringField("formula", formula.toString());
            value("result", formula.result(), working.result().orElseThrow(), currency);
            json.writeArrayFieldStart("values");
            values(working, formula.symbols(), currency);
            json.writeEndArray();
            json.writeStringField("source", formula.source().toString());
        }
        if (!working.note().isEmpty()) {
            json.writeStringField("note", working.note());
        }
        if (!working.parts().isEmpty()) {
            json.writeArrayFieldStart("parts");
            for (Working part : working.parts()) {
                write(part, currency);
            }
            json.writeEndArray();
        }
        json.writeEndObject();
    }

    /** A value for each letter; of a sum the count and the first terms. */
    private void values(Working working, List<Symbol> symbols, @Nullable CurrencyUnit currency) throws IOException {
        boolean sum = working.values().size() != symbols.size() || working.formula().orElseThrow().text().startsWith("sum(");
        if (!sum) {
            for (int i = 0; i < symbols.size(); i++) {
                value("", symbols.get(i), working.values().get(i), currency);
            }
            return;
        }
        json.writeStartObject();
        json.writeStringField("letter", symbols.get(0).name());
        json.writeStringField("meaning", symbols.get(0).meaning());
        json.writeNumberField("terms", working.values().size());
        json.writeArrayFieldStart("first");
        for (Number term : working.values().subList(0, Math.min(TERMS, working.values().size()))) {
            number(term);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void value(String field, Symbol symbol, Number value, @Nullable CurrencyUnit currency) throws IOException {
        if (field.isEmpty()) {
            json.writeStartObject();
        } else {
            json.writeObjectFieldStart(field);
        }
        json.writeStringField("letter", symbol.name());
        json.writeStringField("meaning", symbol.meaning());
        json.writeFieldName("value");
        number(value);
        json.writeStringField("unit", unit(symbol.measure(), currency));
        String text = symbol.measure().print(value, style);
        json.writeStringField("text", currency == null ? text : text.replace("¤", currency.getCode()));
        json.writeEndObject();
    }

    private void number(Number value) throws IOException {
        if (value instanceof BigDecimal decimal) {
            json.writeNumber(decimal);
        } else if (value instanceof Long || value instanceof Integer) {
            json.writeNumber(value.longValue());
        } else {
            json.writeNumber(value.doubleValue());
        }
    }

    private static String unit(Measure measure, @Nullable CurrencyUnit currency) {
        String unit = measure.unit().toString();
        return currency == null ? unit : unit.replace("¤", currency.getCode());
    }
}
