package io.loopstate.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.engine.fluid.Composition;
import io.loopstate.engine.fluid.CompositionException;
import io.loopstate.units.DecimalMark;
import io.loopstate.units.QuantityKind;
import io.loopstate.units.QuantityParser;
import io.loopstate.units.Reading;
import io.loopstate.units.UnitFault;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Random texts as quantities and as compositions: each is read as finite numbers or refused, within a second. */
class ParserFuzzTest {
    private static final int SLICE = 50_000;
    private static final long LONGEST = 1_000_000_000;
    private static final int TRIES = 3;
    private static final int MOST_FINDINGS = 20;
    private static final QuantityKind[] KINDS = QuantityKind.values();

    private final List<String> findings = new ArrayList<>();
    private long read;
    private long slowest;

    @Test
    void slice() {
        run(20_261_127, SLICE);
    }

    @Test
    @Tag("fuzz")
    void many() {
        run(Long.getLong("fuzz.seed", 1L), Integer.getInteger("fuzz.inputs", SLICE));
    }

    private void run(long seed, int inputs) {
        Random random = new Random(seed);
        RandomTexts texts = new RandomTexts(random);
        long begin = System.nanoTime();
        for (int i = 0; i < inputs && findings.size() < MOST_FINDINGS; i++) {
            if (i % 5 == 0) {
                String text = texts.chance(0.9) ? texts.composition() : texts.noise();
                timed(text, () -> composition(text));
            } else {
                QuantityKind kind = KINDS[random.nextInt(KINDS.length)];
                DecimalMark mark = texts.chance(0.2) ? DecimalMark.COMMA : DecimalMark.POINT;
                String text = texts.chance(0.9) ? texts.quantity(kind) : texts.noise();
                timed(kind + " " + text, () -> quantity(kind, text, mark));
            }
        }
        System.out.printf(
                "%d parser inputs, %d read, %d s, slowest %d ms%n",
                inputs, read, (System.nanoTime() - begin) / 1_000_000_000, slowest / 1_000_000);
        assertThat(findings).isEmpty();
        // Neither everything nor nothing may be refused, or the texts would test nothing.
        assertThat(read).isBetween(inputs / 4L, inputs - inputs / 4L);
    }

    private void timed(String text, Runnable parser) {
        for (int i = 0; i < TRIES; i++) {
            long begin = System.nanoTime();
            try {
                parser.run();
            } catch (RuntimeException e) {
                findings.add(e + ": " + text);
                return;
            }
            long took = System.nanoTime() - begin;
            if (took < LONGEST) {
                slowest = Math.max(slowest, took);
                return;
            }
        }
        findings.add("slow: " + text);
    }

    private void quantity(QuantityKind kind, String text, DecimalMark mark) {
        try {
            Reading reading = QuantityParser.parse(kind, text, mark);
            read++;
            if (!Double.isFinite(reading.value())) {
                findings.add("not finite: " + text);
            }
        } catch (UnitFault fault) {
            if (fault.getMessage() == null || fault.got() == null) {
                findings.add("says nothing: " + text);
            }
        }
    }

    private void composition(String text) {
        try {
            Composition composition = Composition.parse(text);
            read++;
            if (!composition.massFractions().stream().allMatch(Double::isFinite)) {
                findings.add("not finite: " + text);
            }
        } catch (CompositionException refused) {
            if (refused.getMessage() == null) {
                findings.add("says nothing: " + text);
            }
        }
    }
}
