package io.loopstate.web.batch;

import io.loopstate.web.form.Form;
import io.loopstate.web.form.Layout;
import io.loopstate.web.form.LayoutReader;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.InputColumn;
import io.loopstate.web.mapping.Operation;
import io.loopstate.web.mapping.Operations;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.web.problem.ProblemKind;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What the query of a table says.
 *
 * @param operation the calculation
 * @param constants inputs and options that hold for every row that has no cell for them
 * @param layout of both tables
 * @param columns what headings mean, as written
 * @param pass headings of columns that are let through, as written
 * @param summaryRow whether a summary stands in a row below
 * @param charset of the table that is sent
 */
public record TableQuery(
        Operation<?, ?, ?, ?> operation,
        Map<String, List<String>> constants,
        Layout layout,
        String columns,
        String pass,
        boolean summaryRow,
        Charset charset) {

    private static final List<String> OWN = List.of("columns", "pass", "summary");
    private static final List<String> LAYOUT = List.of("format", "pick", "sep", "bom", "digits");
    private static final String ROW = "row";
    private static final String TRAILER = "trailer";

    /** Whether a media type is that of a table. */
    public static boolean reads(String mediaType) {
        return form(mediaType).isPresent();
    }

    /**
     * Reads the parameters.
     *
     * @param mediaType of the table that is sent
     * @param charset named beside it, empty for UTF-8
     * @throws ProblemException with every fault
     */
    public static TableQuery read(
            Map<String, List<String>> parameters, String mediaType, String charset, Exchange exchange) {
        Optional<Operation<?, ?, ?, ?>> operation = Optional.ofNullable(parameters.get(BatchQuery.OPERATION))
                .flatMap(names -> Operations.named(names.get(0)));
        List<String> inputs = operation.map(InputColumn::names).orElse(List.of());
        List<String> own = new ArrayList<>(OWN);
        own.addAll(LAYOUT);
        own.addAll(inputs);
        // An unknown calculation is told by its name; its inputs are not known then.
        Map<String, List<String>> named = new LinkedHashMap<>(parameters);
        if (operation.isEmpty()) {
            named.keySet().retainAll(List.of(BatchQuery.OPERATION));
        }
        BatchQuery.read(named, own, exchange);
        Map<String, List<String>> layout = new LinkedHashMap<>(parameters);
        layout.putIfAbsent("format", List.of(form(mediaType).orElseThrow().key()));
        LayoutReader.Choice choice = LayoutReader.read(layout, Form.CSV);
        Layout read = choice.layout();
        List<Fault> faults = new ArrayList<>(choice.faults());
        if (operation.isEmpty()) {
            faults.add(Fault.parameter(BatchQuery.OPERATION, "missing", "A table is about one calculation.")
                    .withAllowed("the path of a calculation below /v1, such as cycle-points/readings"));
        }
        if (faults.isEmpty() && read.form() != Form.CSV && read.form() != Form.TSV) {
            faults.add(Fault.parameter("format", "wrong-value", "A table is answered with a table.")
                    .withGot(read.form().key())
                    .withAllowed("csv, tsv"));
        }
        String summary = first(parameters, "summary", TRAILER);
        if (!summary.equals(ROW) && !summary.equals(TRAILER)) {
            faults.add(Fault.parameter("summary", "wrong-value", "This parameter has two values.")
                    .withGot(summary)
                    .withAllowed(ROW + ", " + TRAILER));
        }
        if (!faults.isEmpty()) {
            throw new ProblemException(ProblemKind.INVALID_REQUEST, faults);
        }
        Map<String, List<String>> constants = new LinkedHashMap<>(parameters);
        constants.keySet().retainAll(inputs);
        return new TableQuery(
                operation.orElseThrow(),
                constants,
                read,
                first(parameters, "columns", ""),
                first(parameters, "pass", ""),
                summary.equals(ROW),
                charset(charset));
    }

    private static String first(Map<String, List<String>> parameters, String name, String absent) {
        return parameters.getOrDefault(name, List.of(absent)).get(0);
    }

    private static Optional<Form> form(String mediaType) {
        return mediaType.equals(Form.CSV.mediaType())
                ? Optional.of(Form.CSV)
                : mediaType.equals(Form.TSV.mediaType()) ? Optional.of(Form.TSV) : Optional.empty();
    }

    /** Spreadsheets of some countries still write the last two. */
    private static Charset charset(String name) {
        return switch (name.toLowerCase(Locale.ROOT)) {
            case "", "utf-8", "utf8", "us-ascii" -> StandardCharsets.UTF_8;
            case "iso-8859-1" -> StandardCharsets.ISO_8859_1;
            case "windows-1252" -> Charset.forName("windows-1252");
            default ->
                throw new ProblemException(
                        ProblemKind.UNSUPPORTED_MEDIA_TYPE,
                        Fault.parameter("Content-Type", "unsupported-charset", "Tables in this charset are not read.")
                                .withGot(name)
                                .withAllowed("utf-8, us-ascii, iso-8859-1, windows-1252"));
        };
    }
}
