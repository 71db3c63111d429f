package io.loopstate.web.chart;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A picture as a strict reader of XML sees it. */
public record Picture(Document document) {
    /** Fails where the text is not well-formed. */
    public static Picture of(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            return new Picture(factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg))));
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    public Element root() {
        return document.getDocumentElement();
    }

    public List<Element> elements(String name) {
        NodeList nodes = document.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    List<Element> all() {
        return elements("*");
    }

    public List<String> texts() {
        return elements("text").stream().map(Element::getTextContent).toList();
    }

    /** The edges of the panels: rectangles that are not filled themselves, in the group of the ink. */
    public List<Element> frames() {
        return elements("rect").stream()
                .filter(rect ->
                        ((Element) rect.getParentNode()).getAttribute("stroke").equals("#1c1c1c"))
                .toList();
    }

    public static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }
}
