package io.github.bedjoint.working;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes HTML and SVG that are also well-formed XML; the JDK's XML writer does the escaping.
 *
 * <p>Characters that XML 1.0 does not know, such as most control characters, become U+FFFD. Not safe for use by several threads.
 */
public final class Markup {

    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter out;

    /** An empty text. */
    public Markup() {
        try {
            out = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
        } catch (XMLStreamException e) {
            throw unwritten(e);
        }
    }

    /**
     * Writes the line that makes a page HTML 5.
     *
     * @return this
     */
    public Markup doctype() {
        try {
            out.writeDTD("<!DOCTYPE html>");
        } catch (XMLStreamException e) {
            throw unwritten(e);
        }
        return this;
    }

    /**
     * Opens an element.
     *
     * @param name       its name
     * @param attributes names and values by turns
     * @return this
     */
    public Markup open(String name, String... attributes) {
        try {
            out.writeStartElement(name);
            write(attributes);
        } catch (XMLStreamException e) {
            throw unwritten(e);
        }
        return this;
    }

    /**
     * Writes text.
     *
     * @param words any text; it is escaped
     * @return this
     */
    public Markup text(String words) {
        try {
            out.writeCharacters(readable(words));
        } catch (XMLStreamException e) {
            throw unwritten(e);
        }
        return this;
    }

    /**
     * Closes the element opened last.
     *
     * @return this
     */
    public Markup close() {
        try {
            out.writeEndElement();
        } catch (XMLStreamException e) {
            throw unwritten(e);
        }
        return this;
    }

    /**
     * Writes an element that holds only text.
     *
     * @param name       its name
     * @param words      any text; it is escaped
     * @param attributes names and values by turns
     * @return this
     */
    public Markup element(String name, String words, String... attributes) {
        return open(name, attributes).text(words).close();
    }

    /**
     * Writes an element that holds nothing: a shape of SVG, or {@code meta}, {@code br}, {@code hr} of HTML.
     *
     * @param name       its name
     * @param attributes names and values by turns
     * @return this
     */
    public Markup empty(String name, String... attributes) {
        try {
            out.writeEmptyElement(name);
            write(attributes);
            // The writer leaves a start tag open until it knows what follows.
            out.writeCharacters("");
        } catch (XMLStreamException e) {
            throw unwritten(e);
        }
        return this;
    }

    private void write(String... attributes) throws XMLStreamException {
        for (int i = 0; i < attributes.length; i += 2) {
            out.writeAttribute(attributes[i], readable(attributes[i + 1]));
        }
    }

    private static String readable(String words) {
        return words.codePoints()
                .map(c -> isXml(c) ? c : '\uFFFD')
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    /** The characters of XML 1.0, production 2 (Char); the writer passes others on as they are. */
    private static boolean isXml(int c) {
        return c == '\t' || c == '\n' || c == '\r' || c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000;
    }

    private static IllegalStateException unwritten(XMLStreamException e) {
        return new IllegalStateException("a text in memory could not be written", e);
    }

    /** What was written so far. */
    @Override
    public String toString() {
        try {
            out.flush();
        } catch (XMLStreamException e) {
            throw unwritten(e);
        }
        return text.toString();
    }
}
