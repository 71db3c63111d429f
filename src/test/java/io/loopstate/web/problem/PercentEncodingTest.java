package io.loopstate.web.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class PercentEncodingTest {

    @Property(tries = 300)
    void whateverIsEscapedAsUtf8Passes(
            @ForAll @AlphaChars @StringLength(min = 1, max = 8) String name, @ForAll("text") String value) {
        String escaped = URLEncoder.encode(value, StandardCharsets.UTF_8);
        assertThat(PercentEncoding.check("/v1/x?" + name + "=" + escaped)).isEmpty();
        assertThat(PercentEncoding.escapeRaw("/v1/x?" + name + "=" + escaped))
                .isEqualTo("/v1/x?" + name + "=" + escaped);
    }

    /** A command line sends the bytes of UTF-8 as they are; the server sees one character per byte. */
    @Property(tries = 300)
    void rawUtf8BecomesTheSameAsEscapedUtf8(@ForAll("text") String value) {
        String letters = value.codePoints()
                .filter(Character::isLetter)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        String asReceived = new String(letters.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
        assertThat(PercentEncoding.check("/x?a=" + asReceived)).isEmpty();
        assertThat(PercentEncoding.escapeRaw("/x?a=" + asReceived))
                .isEqualTo("/x?a=" + URLEncoder.encode(letters, StandardCharsets.UTF_8));
    }

    @Test
    void everyBrokenParameterIsNamed() {
        Problem problem = PercentEncoding.check("/x?a=5%&b=ok&c=%B0&d=%").orElseThrow();
        assertThat(problem.status()).isEqualTo(400);
        assertThat(problem.errors()).extracting(Fault::parameter).containsExactly("a", "c", "d");
        assertThat(problem.errors()).extracting(Fault::got).containsExactly("a=5%", "c=%B0", "d=%");
        assertThat(problem.errors().get(0).hint()).contains("%25");
        assertThat(problem.errors().get(1).hint()).contains("%C2%B0");
    }

    /** Any text without lone halves of surrogate pairs, which have no UTF-8 form. */
    @Provide
    Arbitrary<String> text() {
        return Arbitraries.strings()
                .ofMaxLength(12)
                .filter(text -> StandardCharsets.UTF_8.newEncoder().canEncode(text));
    }
}
