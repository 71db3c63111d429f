package io.loopstate.web.mapping;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Numbers and messages inside sentences. */
class WordsTest {
    @Test
    void numbersAreShort() {
        assertThat(Words.brief(118)).isEqualTo("118");
        assertThat(Words.brief(0.1)).isEqualTo("0.1");
        assertThat(Words.brief(-0.0)).isEqualTo("0");
        assertThat(Words.brief(101.0619666)).isEqualTo("101.062");
        assertThat(Words.brief(4_059_276.374)).isEqualTo("4059280");
        assertThat(Words.brief(1.5e-7)).isEqualTo("1.5E-7");
    }

    @Property
    void limitsAreRoundedInward(@ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
        assertThat(Double.parseDouble(Words.lower(value))).isGreaterThanOrEqualTo(value);
        assertThat(Double.parseDouble(Words.upper(value))).isLessThanOrEqualTo(value);
    }

    @Test
    void messagesAreSentences() {
        assertThat(Words.sentence("no state has this")).isEqualTo("No state has this.");
        assertThat(Words.sentence("A sentence.")).isEqualTo("A sentence.");
    }
}
