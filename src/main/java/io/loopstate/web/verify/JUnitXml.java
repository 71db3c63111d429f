package io.loopstate.web.verify;

import io.loopstate.web.dto.VerifyCaseReport;
import io.loopstate.web.dto.VerifyReport;
import java.io.StringWriter;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * A report as the XML that build servers read: a suite with a test for each case. The class name, which some of them show as
 * the suite, is the name of the file; warnings are the output of a test. It holds no time, so that equal runs are equal bytes.
 */
public final class JUnitXml {
    private static final XMLOutputFactory FACTORY = XMLOutputFactory.newInstance();

    private final XMLStreamWriter xml;

    private JUnitXml(XMLStreamWriter xml) {
        this.xml = xml;
    }

    /**
     * One test.
     *
     * @param name unique in its suite
     * @param failures a line each; none where it passed
     * @param output a line each
     */
    public record Test(String name, List<String> failures, List<String> output) {
        /** Copies the lists. */
        public Test {
            failures = List.copyOf(failures);
            output = List.copyOf(output);
        }
    }

    /**
     * Some tests under one name.
     *
     * @param name of the suite, and the class name of its tests
     * @param tests in order
     */
    public record Group(String name, List<Test> tests) {
        /** Copies the list. */
        public Group {
            tests = List.copyOf(tests);
        }
    }

    /** The report as XML. */
    public static String of(VerifyReport report) {
        List<Test> tests = report.cases().stream().map(JUnitXml::test).toList();
        return of(report.name(), List.of(new Group(report.name(), tests)));
    }

    private static Test test(VerifyCaseReport report) {
        return new Test(report.id(), ReportLines.failures(report), ReportLines.warnings(report));
    }

    /** Suites as XML. */
    public static String of(String name, List<Group> groups) {
        StringWriter out = new StringWriter();
        try {
            XMLStreamWriter xml = FACTORY.createXMLStreamWriter(out);
            new JUnitXml(xml).write(name, groups);
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return out.toString();
    }

    private void write(String name, List<Group> groups) throws XMLStreamException {
        xml.writeStartDocument("UTF-8", "1.0");
        line(0);
        xml.writeStartElement("testsuites");
        counts(name, groups.stream().flatMap(group -> group.tests().stream()).toList());
        for (Group group : groups) {
            line(1);
            xml.writeStartElement("testsuite");
            counts(group.name(), group.tests());
            for (Test test : group.tests()) {
                test(group.name(), test);
            }
            line(1);
            xml.writeEndElement();
        }
        line(0);
        xml.writeEndElement();
        xml.writeEndDocument();
        line(0);
    }

    private void counts(String name, List<Test> tests) throws XMLStreamException {
        long failures =
                tests.stream().filter(test -> !test.failures().isEmpty()).count();
        attribute("name", name);
        attribute("tests", Integer.toString(tests.size()));
        attribute("failures", Long.toString(failures));
        attribute("errors", "0");
        attribute("skipped", "0");
    }

    private void test(String suite, Test test) throws XMLStreamException {
        line(2);
        if (test.failures().isEmpty() && test.output().isEmpty()) {
            xml.writeEmptyElement("testcase");
        } else {
            xml.writeStartElement("testcase");
        }
        attribute("classname", suite);
        attribute("name", test.name());
        if (!test.failures().isEmpty()) {
            line(3);
            xml.writeStartElement("failure");
            attribute("message", test.failures().get(0));
            attribute("type", "mismatch");
            text(test.failures());
            xml.writeEndElement();
        }
        if (!test.output().isEmpty()) {
            line(3);
            xml.writeStartElement("system-out");
            text(test.output());
            xml.writeEndElement();
        }
        if (!test.failures().isEmpty() || !test.output().isEmpty()) {
            line(2);
            xml.writeEndElement();
        }
    }

    private void attribute(String name, String value) throws XMLStreamException {
        xml.writeAttribute(name, Characters.clean(value));
    }

    private void text(List<String> lines) throws XMLStreamException {
        // A greater-than sign alone would be allowed, but not after two brackets.
        xml.writeCharacters(String.join("\n", lines));
    }

    private void line(int depth) throws XMLStreamException {
        xml.writeCharacters("\n" + "  ".repeat(depth));
    }
}
