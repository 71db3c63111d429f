package io.loopstate.web.problem;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PointerTest {

    /** RFC 6901, section 6: the pointers of its example document as URI fragments. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "``;#",
                "/foo;#/foo",
                "/foo/0;#/foo/0",
                "/;#/",
                "/a~1b;#/a~1b",
                "/c%d;#/c%25d",
                "/e^f;#/e%5Ef",
                "/g|h;#/g%7Ch",
                "/i\\j;#/i%5Cj",
                "/k\"l;#/k%22l",
                "/ ;#/%20",
                "/m~0n;#/m~0n"
            })
    void fragmentsAreThoseOfTheStandard(String pointer, String fragment) {
        assertThat(Pointer.of(JsonPointer.compile(pointer))).isEqualTo(fragment);
    }
}
