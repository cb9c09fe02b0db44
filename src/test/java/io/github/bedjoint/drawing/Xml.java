package io.github.bedjoint.drawing;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.helpers.DefaultHandler;

/** A page or drawing read back by the JDK's parser. */
final class Xml {
    private Xml() {}

    static Document parse(String text) {
        try {
            DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
            builder.setErrorHandler(new DefaultHandler());
            return builder.parse(new InputSource(new StringReader(text)));
        } catch (Exception e) {
            throw new AssertionError("not well-formed: " + e.getMessage(), e);
        }
    }

    static List<Element> all(Document document, String name) {
        return all(document.getElementsByTagName(name));
    }

    static List<Element> all(Element parent, String name) {
        return all(parent.getElementsByTagName(name));
    }

    private static List<Element> all(NodeList nodes) {
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    static List<String> texts(Document document, String name) {
        return all(document, name).stream().map(Element::getTextContent).toList();
    }
}
