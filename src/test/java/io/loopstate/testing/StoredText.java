package io.loopstate.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A text compared with a stored one: words to the letter, numbers to what the service promises across processors. */
public final class StoredText {
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?([eE][-+]?[0-9]+)?");
    private static final Pattern VERSION = Pattern.compile("(\"engineVersion\" ?: ?\")[^\"]*");
    private static final double PROMISE = 1e-9;
    private static final boolean BLESS = Boolean.getBoolean("examples.bless");

    private StoredText() {}

    /** Fails where a text is not what is stored; with {@code -Dexamples.bless=true} stores it instead. */
    public static void check(Path file, String text) throws IOException {
        String plain = VERSION.matcher(text).replaceAll("$1any");
        if (BLESS && !(Files.exists(file) && same(plain, Files.readString(file)))) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, plain);
        }
        compare(file.toString(), plain, Files.readString(file));
    }

    private static boolean same(String text, String stored) {
        try {
            compare("", text, stored);
            return true;
        } catch (AssertionError different) {
            return false;
        }
    }

    private static void compare(String place, String text, String stored) {
        assertThat(NUMBER.matcher(text).replaceAll("#"))
                .as(place)
                .isEqualTo(NUMBER.matcher(stored).replaceAll("#"));
        List<Double> numbers = numbers(text);
        List<Double> expected = numbers(stored);
        for (int i = 0; i < expected.size(); i++) {
            assertThat(Math.abs(numbers.get(i) - expected.get(i)))
                    .as("number %d of %s: %s instead of %s", i, place, numbers.get(i), expected.get(i))
                    .isLessThanOrEqualTo(PROMISE * Math.abs(expected.get(i)));
        }
    }

    private static List<Double> numbers(String text) {
        List<Double> numbers = new ArrayList<>();
        Matcher matcher = NUMBER.matcher(text);
        while (matcher.find()) {
            numbers.add(Double.parseDouble(matcher.group()));
        }
        return numbers;
    }
}
