package io.loopstate.deployment;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** Every library that is declared for more than tests has its reason in the documentation, and nothing else has. */
class DependenciesTest {
    private static final Pattern ROW = Pattern.compile("(?m)^\\| `([a-z0-9.]+:[A-Za-z0-9_.-]+)` \\| (\\S.*) \\|$");

    @Test
    void everyLibraryHasItsReason() throws IOException, ParserConfigurationException, SAXException {
        List<String> explained = ROW.matcher(Files.readString(Path.of("DEVELOPERS.md")))
                .results()
                .map(row -> row.group(1))
                .toList();
        assertThat(explained).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(declared());
    }

    @Test
    void reasonsAreRead() {
        Matcher row = ROW.matcher("| `com.bucket4j:bucket4j_jdk17-core` | rates of keys |");
        assertThat(row.find()).isTrue();
        assertThat(row.group(1)).isEqualTo("com.bucket4j:bucket4j_jdk17-core");
    }

    private static List<String> declared() throws IOException, ParserConfigurationException, SAXException {
        NodeList all = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(Path.of("pom.xml").toFile())
                .getElementsByTagName("dependency");
        return Stream.iterate(0, i -> i < all.getLength(), i -> i + 1)
                .map(i -> (Element) all.item(i))
                .filter(DependenciesTest::isUsed)
                .filter(dependency -> !text(dependency, "scope").equals("test"))
                .map(dependency -> text(dependency, "groupId") + ':' + text(dependency, "artifactId"))
                .distinct()
                .toList();
    }

    /** Not one whose version is merely set. */
    private static boolean isUsed(Element dependency) {
        Node owner = dependency.getParentNode().getParentNode();
        return owner.getNodeName().equals("project") || owner.getNodeName().equals("profile");
    }

    private static String text(Element dependency, String name) {
        NodeList found = dependency.getElementsByTagName(name);
        return found.getLength() == 0 ? "" : found.item(0).getTextContent();
    }
}
