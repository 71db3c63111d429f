package io.loopstate.web.form;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** XML for the path expressions of spreadsheets: no namespace, no nesting, bare numbers. */
final class FlatXml {
    private static final String UNFIT_FOR_NAMES = "[^A-Za-z0-9_.-]";
    private static final String UNFIT_FOR_TEXT = "[^\\t\\n\\r\\u0020-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]";

    private FlatXml() {}

    /** A sheet of one row has its values below the root, any other has rows there. */
    static String of(Sheet sheet, Layout layout) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newFactory().createXMLStreamWriter(text);
            xml.writeStartDocument("UTF-8", "1.0");
            xml.writeStartElement("reply");
            for (List<JsonNode> row : sheet.rows()) {
                if (!sheet.single()) {
                    xml.writeStartElement("row");
                }
                row(xml, sheet.columns(), row, layout);
                if (!sheet.single()) {
                    xml.writeEndElement();
                }
            }
            xml.writeEndElement();
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return text.toString();
    }

    private static void row(XMLStreamWriter xml, List<Sheet.Column> columns, List<JsonNode> row, Layout layout)
            throws XMLStreamException {
        for (int i = 0; i < columns.size(); i++) {
            JsonNode value = row.get(i);
            if (!value.isMissingNode()) {
                xml.writeStartElement(name(columns.get(i).name()));
                Optional<String> unit = columns.get(i).unit();
                if (unit.isPresent()) {
                    xml.writeAttribute("unit", unit.get());
                }
                xml.writeCharacters(text(value, layout));
                xml.writeEndElement();
            }
        }
    }

    private static String text(JsonNode value, Layout layout) {
        return layout.text(value).replaceAll(UNFIT_FOR_TEXT, "\uFFFD");
    }

    private static String name(String name) {
        String fit = name.replaceAll(UNFIT_FOR_NAMES, "_");
        return Character.isLetter(fit.charAt(0)) ? fit : '_' + fit;
    }
}
