package io.loopstate.web.form;

import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Nearest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;

/** Reads the parameters that say how a reply is to be written; they are the same for every operation. */
public final class LayoutReader {
    /** Names of the parameters; {@code dec} is an option of every calculation as well and not among them. */
    public static final List<String> NAMES = List.of("format", "pick", "errors", "digits", "sep", "bom");

    private static final int MOST_DIGITS = 17;
    private static final int MOST_PICKS = 100;
    private static final Map<String, Character> SEPARATORS =
            Map.of(",", ',', "comma", ',', ";", ';', "semicolon", ';', "\t", '\t', "tab", '\t', "|", '|', "pipe", '|');

    private final Map<String, List<String>> parameters;
    private final List<Fault> faults = new ArrayList<>();

    private LayoutReader(Map<String, List<String>> parameters) {
        this.parameters = parameters;
    }

    /**
     * What was asked for; what cannot be read counts as absent.
     *
     * @param faults what is wrong with it; empty where nothing is
     */
    public record Choice(Layout layout, List<Fault> faults) {
        /** Copies the faults. */
        public Choice {
            faults = List.copyOf(faults);
        }
    }

    /** The layout asked for, in the form that the client accepts where none is named. */
    public static Choice read(Map<String, List<String>> parameters, Form accepted) {
        return new LayoutReader(parameters).read(Optional.of(accepted));
    }

    /** What is wrong with the parameters whatever form the client accepts; empty where nothing is. */
    public static List<Fault> faults(Map<String, List<String>> parameters) {
        for (String name : NAMES) {
            if (parameters.containsKey(name)) {
                return new LayoutReader(parameters).read(Optional.empty()).faults();
            }
        }
        return List.of();
    }

    private Choice read(Optional<Form> accepted) {
        Optional<Form> form = format().or(() -> accepted);
        List<String> picks = picks(form);
        boolean inline = word("errors", "inline", "status").equals("inline");
        OptionalInt digits = digits();
        char mark = value("dec").equals(",") ? ',' : '.';
        char separator = separator(form, mark);
        boolean bom = word("bom", "1", "0").equals("1");
        Layout layout = new Layout(form.orElse(Form.JSON), picks, inline, digits, separator, mark, bom);
        return new Choice(layout, faults);
    }

    private Optional<Form> format() {
        String wanted = value("format");
        Optional<Form> form = Form.named(wanted);
        if (form.isEmpty() && !wanted.isEmpty()) {
            fault("format", "wrong-value", "There is no such form of a reply.", String.join(", ", Form.keys()))
                    .accept(Nearest.hint(wanted, Form.keys()));
        }
        return form;
    }

    private List<String> picks(Optional<Form> form) {
        if (!parameters.containsKey("pick")) {
            if (is(form, Form.TXT)) {
                faults.add(Fault.parameter("pick", "missing", "This form holds one value: pick says which.")
                        .withAllowed(
                                "the name of a value, such as superheat, or its RFC 6901 pointer, such as /superheat")
                        .withHint("The same request with format=csv shows the names."));
            }
            return List.of();
        }
        List<String> picks = names(value("pick"));
        if (picks.contains("") || picks.size() > MOST_PICKS) {
            fault(
                            "pick",
                            "wrong-value",
                            "A name between the commas is missing, or there are too many.",
                            "up to " + MOST_PICKS + " names or pointers, with commas between")
                    .accept(null);
            return List.of();
        }
        if (is(form, Form.TXT) && picks.size() > 1) {
            fault("pick", "wrong-value", "This form holds one value.", "one name or pointer")
                    .accept("Several values go into one row of format=csv.");
        } else if (is(form, Form.JSON) || is(form, Form.SVG)) {
            fault("pick", "not-applicable", "This form holds the whole reply.", "format=txt, csv, tsv, html or xml")
                    .accept("Add format=txt for one value.");
        }
        return picks;
    }

    /** Mostly one. */
    private static List<String> names(String picks) {
        return picks.indexOf(',') < 0
                ? List.of(picks.strip())
                : Arrays.stream(picks.split(",", -1)).map(String::strip).toList();
    }

    private static boolean is(Optional<Form> form, Form wanted) {
        return form.isPresent() && form.get() == wanted;
    }

    private OptionalInt digits() {
        String wanted = value("digits");
        if (!wanted.isEmpty() && wanted.matches("[1-9]|1[0-7]")) {
            return OptionalInt.of(Integer.parseInt(wanted));
        }
        if (!wanted.isEmpty()) {
            fault("digits", "wrong-value", "This is no number of significant digits.", "1 to " + MOST_DIGITS)
                    .accept(null);
        }
        return OptionalInt.empty();
    }

    private char separator(Optional<Form> form, char mark) {
        if (is(form, Form.TSV)) {
            return '\t';
        }
        char usual = mark == ',' ? ';' : ',';
        String wanted = value("sep");
        if (wanted.isEmpty()) {
            return usual;
        }
        Character separator = SEPARATORS.get(wanted);
        if (separator == null) {
            fault("sep", "wrong-value", "Cells are not separated by this.", "comma, semicolon, tab or pipe")
                    .accept(null);
            return usual;
        }
        if (separator == mark) {
            fault("sep", "wrong-value", "The separator is the decimal mark as well.", "another than dec")
                    .accept("Use sep=semicolon.");
        }
        return separator;
    }

    /** One of two words; the second where the parameter is absent or wrong. */
    private String word(String name, String special, String usual) {
        String wanted = value(name);
        if (!wanted.isEmpty() && !wanted.equals(special) && !wanted.equals(usual)) {
            fault(name, "wrong-value", "This parameter has two values.", special + " or " + usual)
                    .accept(null);
        }
        return wanted.equals(special) ? special : usual;
    }

    private String value(String name) {
        List<String> values = parameters.get(name);
        return values == null || values.isEmpty() ? "" : values.get(0);
    }

    /** A fault that waits for its hint. */
    private Consumer<String> fault(String name, String code, String detail, String allowed) {
        return hint -> faults.add(Fault.parameter(name, code, detail)
                .withGot(value(name))
                .withAllowed(allowed)
                .withHint(hint));
    }
}
