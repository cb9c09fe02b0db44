package io.github.bedjoint.working;

import io.github.bedjoint.units.UnitStyle;
import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/** Lays a working out as nested {@code details}; the JDK's XML writer does the escaping. */
final class HtmlPrinter {
    private final Shown shown;

    HtmlPrinter(UnitStyle style) {
        shown = new Shown(style);
    }

    String print(Working working) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter out = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            print(working, out, null);
            out.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("a text in memory could not be written", e);
        }
        return text.toString();
    }

    private void print(Working working, XMLStreamWriter out, @Nullable CurrencyUnit outer) throws XMLStreamException {
        CurrencyUnit currency = working.currency().orElse(outer);
        if (shown.isRepeated(working, currency)) {
            element(out, "p", working.title() + ": " + shown.result(working, currency) + " (shown above)");
            return;
        }
        out.writeStartElement("details");
        String result = shown.result(working, currency);
        element(out, "summary", working.title() + (result.isEmpty() ? "" : ": " + result));
        if (working.formula().isPresent()) {
            Formula formula = working.formula().get();
            element(out, "p", formula.toString());
            element(out, "p", formula.result().name() + " = " + shown.substituted(working, currency));
            out.writeStartElement("ul");
            for (String letter : shown.letters(working, currency)) {
                element(out, "li", letter);
            }
            out.writeEndElement();
            element(out, "p", "Source: " + formula.source());
        }
        if (!working.note().isEmpty()) {
            element(out, "p", working.note());
        }
        for (Working part : working.parts()) {
            print(part, out, currency);
        }
        out.writeEndElement();
    }

    private static void element(XMLStreamWriter out, String name, String text) throws XMLStreamException {
        out.writeStartElement(name);
        out.writeCharacters(text.codePoints()
                .map(c -> isXml(c) ? c : '\uFFFD')
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString());
        out.writeEndElement();
    }

    /** The characters of XML 1.0, production 2 (Char); the writer passes others on as they are. */
    private static boolean isXml(int c) {
        return c == '\t' || c == '\n' || c == '\r' || c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000;
    }
}
