package io.loopstate.web.page;

import io.loopstate.web.form.LayoutReader;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A request put together from what a form sent. A field and its unit become one parameter; a parameter that the form does not have is
 * handed on, so that a query of the service is a query of the page as well.
 */
final class Composition {
    static final String ASK = "ask";
    static final String REFRIGERANT = "refrigerant";
    static final String OWN_BLEND = "ownBlend";
    static final String PICK = "pick";
    static final String ARGUMENTS = "arguments";
    static final String UNITS = "units";
    static final String DIGITS = "digits";
    static final String DEC = "dec";

    /** What the page itself reads, and forms of a reply, which a page has one of. */
    private static final Set<String> OF_THE_PAGE = Stream.concat(
                    Stream.of(ASK, OWN_BLEND, ARGUMENTS, "_"), LayoutReader.NAMES.stream())
            .filter(name -> !name.equals(DIGITS))
            .collect(Collectors.toUnmodifiableSet());

    /** Digits and marks without a word behind them; what it means is for the service to say. */
    private static final Pattern BARE = Pattern.compile("[^\\p{L}°%µ\"]*\\d[^\\p{L}°%µ\"]*(?:[eE][+-]?\\d+)?");

    private static final Pattern WITH_UNIT = Pattern.compile("([-+\\d.,eE]+) ([A-Za-z_0-9]+)");

    private final Question question;
    private final Map<String, List<String>> sent;

    Composition(Map<String, List<String>> sent) {
        this.question = Questions.named(first(sent, ASK));
        this.sent = sent;
    }

    Question question() {
        return question;
    }

    /** Whether something is asked, or the form only looked at. */
    boolean asked() {
        return sent.containsKey(REFRIGERANT) || !sent(OWN_BLEND).isEmpty();
    }

    /** What was sent under a name, without spaces around it; empty where nothing was. */
    String sent(String name) {
        return first(sent, name);
    }

    /** Whether anything was sent under a name, be it empty. */
    boolean given(String name) {
        return sent.containsKey(name);
    }

    /** Whether replies are in inch-pound units, which is also what fields without a unit begin with. */
    boolean inchPound() {
        String units = sent(UNITS).toUpperCase(Locale.ROOT);
        return units.isEmpty() ? !asked() : !units.startsWith("SI");
    }

    /** The number of a field as it was sent, or all of it where its unit is none of those offered. */
    String number(Field field) {
        Matcher parts = parts(field);
        return parts == null ? sent(field.name()) : parts.group(1);
    }

    /** The unit of a field. */
    String unit(Field field) {
        Matcher parts = parts(field);
        String unit = parts == null ? sent(field.unitName()) : parts.group(2);
        return unit.isEmpty() ? field.units().usual(inchPound()) : unit;
    }

    private Matcher parts(Field field) {
        Matcher matcher = WITH_UNIT.matcher(sent(field.name()));
        return matcher.matches() && field.units().tokens().contains(matcher.group(2)) ? matcher : null;
    }

    /** The parameters of the calculation. */
    Map<String, List<String>> parameters() {
        Map<String, List<String>> parameters = new LinkedHashMap<>();
        List<String> refrigerants = Stream.of(sent(REFRIGERANT), sent(OWN_BLEND))
                .filter(text -> !text.isEmpty())
                .toList();
        // Two of them are for the service to refuse.
        if (!refrigerants.isEmpty()) {
            parameters.put(REFRIGERANT, refrigerants);
        }
        for (Field field : question.fields()) {
            put(parameters, field.name(), value(field));
        }
        Set<String> unitNames = question.fields().stream().map(Field::unitName).collect(Collectors.toUnmodifiableSet());
        new TreeMap<>(sent).forEach((name, values) -> {
            boolean known = OF_THE_PAGE.contains(name) || unitNames.contains(name) || parameters.containsKey(name);
            List<String> given = values.stream()
                    .map(String::strip)
                    .filter(value -> !value.isEmpty())
                    .toList();
            if (!known && !given.isEmpty()) {
                parameters.put(name, given);
            }
        });
        return parameters;
    }

    private String value(Field field) {
        String text = sent(field.name());
        return field.units().tokens().isEmpty() || !BARE.matcher(text).matches() ? text : text + ' ' + unit(field);
    }

    /** Path and query of the calculation, as a client sends it. */
    String target() {
        return "/v1/" + question.operation() + '?' + query(parameters());
    }

    static String query(Map<String, List<String>> parameters) {
        return parameters.entrySet().stream()
                .flatMap(entry -> entry.getValue().stream().map(value -> entry.getKey() + '=' + encoded(value)))
                .collect(Collectors.joining("&"));
    }

    /** Escaped for a query, but for what may stand there and is easier to read so. */
    private static String encoded(String value) {
        return URLEncoder.encode(value, StandardCharsets.UTF_8)
                .replace("%2C", ",")
                .replace("%2F", "/")
                .replace("%28", "(")
                .replace("%29", ")")
                .replace("%3D", "=");
    }

    private static void put(Map<String, List<String>> parameters, String name, String value) {
        if (!value.isEmpty()) {
            parameters.put(name, List.of(value));
        }
    }

    private static String first(Map<String, List<String>> sent, String name) {
        List<String> values = sent.get(name);
        return values == null || values.isEmpty() ? "" : values.get(0).strip();
    }
}
