package io.loopstate.web.batch;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import io.loopstate.web.mapping.InputColumn;
import io.loopstate.web.mapping.Operation;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Nearest;
import io.loopstate.web.problem.Problem;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.web.problem.ProblemKind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the columns of a table mean.
 *
 * @param headings as they stand in the table
 * @param inputs for each column the input that it holds; empty for one that is passed through
 */
record CsvHead(List<String> headings, List<Optional<InputColumn>> inputs) {
    private static final String ALL = "*";
    /**
     * Reads a head.
     *
     * @param columns parameter {@code columns}: {@code ours:theirs,...}
     * @param pass parameter {@code pass}: headings of columns that hold no input, {@code *} for all that name none
     * @throws ProblemException with every column that means nothing
     */
    static CsvHead of(Operation<?, ?, ?, ?> operation, List<String> cells, String columns, String pass) {
        List<Fault> faults = new ArrayList<>();
        List<String> headings = cells.stream().map(String::strip).toList();
        Map<String, String> ours = mapping(columns, headings, faults);
        List<String> passed = split("pass", pass, faults);
        passed.stream()
                .filter(heading -> !headings.contains(heading) && !heading.equals(ALL))
                .forEach(heading -> faults.add(absent("pass", heading, headings)));
        List<Optional<InputColumn>> inputs = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (String heading : headings) {
            Optional<InputColumn> input = passed.contains(heading)
                    ? Optional.empty()
                    : InputColumn.of(operation, ours.getOrDefault(heading, heading));
            boolean let = passed.contains(heading) || passed.contains(ALL) && !ours.containsKey(heading);
            if (input.isEmpty() && !let) {
                faults.add(unknown(operation, heading, ours.getOrDefault(heading, heading), headings));
            }
            input.ifPresent(column -> {
                column.fault(operation, heading).ifPresent(faults::add);
                if (!names.add(column.name())) {
                    faults.add(Fault.parameter(heading, "duplicate-column", "Two columns hold the same input.")
                            .withGot(column.name()));
                }
            });
            inputs.add(input);
        }
        if (!faults.isEmpty()) {
            throw new ProblemException(ProblemKind.INVALID_REQUEST, faults);
        }
        return new CsvHead(headings, inputs);
    }

    /** The cells of a row as the parameters of a query; an empty cell leaves what holds for all rows. */
    Map<String, List<String>> parameters(List<String> cells, Map<String, List<String>> constants) {
        Map<String, List<String>> own = new LinkedHashMap<>();
        for (int i = 0; i < cells.size(); i++) {
            String cell = cells.get(i).strip();
            Optional<InputColumn> input = inputs.get(i);
            if (input.isPresent() && !cell.isEmpty()) {
                own.put(input.get().name(), List.of(input.get().parameter(cell)));
            }
        }
        Map<String, List<String>> parameters = new LinkedHashMap<>(constants);
        if (BatchQuery.AIR_PRESSURE.stream().anyMatch(own::containsKey)) {
            parameters.keySet().removeAll(BatchQuery.AIR_PRESSURE);
        }
        parameters.putAll(own);
        return parameters;
    }

    /** The same problem with the headings of the table for the names of the inputs. */
    Problem atHeadings(Problem problem) {
        return problem.retold(
                fault -> fault.parameter() == null ? fault : fault.atParameter(heading(fault.parameter())));
    }

    private String heading(String input) {
        for (int i = 0; i < inputs.size(); i++) {
            if (inputs.get(i).isPresent() && inputs.get(i).get().name().equals(input)) {
                String heading = headings.get(i);
                return heading.startsWith(input) ? heading : heading + " (" + input + ')';
            }
        }
        return input;
    }

    private static Fault unknown(Operation<?, ?, ?, ?> operation, String heading, String ours, List<String> headings) {
        List<String> known = InputColumn.names(operation);
        String near = Nearest.hint(ours.split("_")[0], known);
        String hint = near != null
                ? near
                : headings.size() == 1 && heading.matches(".*[;,\t|].*")
                        ? "This may be a row of several cells: say what is between them, sep=semicolon, comma, tab or pipe."
                        : "Name its input with columns=input_unit:" + heading + ", or let it through with pass="
                                + heading + " (pass=* for all such columns).";
        return Fault.parameter(heading, "unknown-column", "This column is no input of the calculation.")
                .withGot(ours)
                .withAllowed(String.join(", ", known))
                .withHint(hint);
    }

    private static Map<String, String> mapping(String columns, List<String> headings, List<Fault> faults) {
        Map<String, String> ours = new LinkedHashMap<>();
        for (String pair : split("columns", columns, faults)) {
            int colon = pair.indexOf(':');
            String theirs = pair.substring(colon + 1).strip();
            if (colon < 1) {
                faults.add(Fault.parameter("columns", "wrong-value", "A pair of this mapping has no colon.")
                        .withGot(pair)
                        .withAllowed("input:heading, for example suctionPressure_psig:Suction"));
            } else if (!headings.contains(theirs)) {
                faults.add(absent("columns", theirs, headings));
            } else if (ours.put(theirs, pair.substring(0, colon).strip()) != null) {
                faults.add(Fault.parameter("columns", "duplicate-column", "This heading is given two meanings.")
                        .withGot(theirs));
            }
        }
        return ours;
    }

    private static Fault absent(String parameter, String heading, List<String> headings) {
        return Fault.parameter(parameter, "unknown-column", "The table has no column of this heading.")
                .withGot(heading)
                .withAllowed(String.join(", ", headings))
                .withHint(Nearest.hint(heading, headings));
    }

    /** A list with commas between; a heading with a comma stands in quotes, as in a table. */
    private static List<String> split(String parameter, String list, List<Fault> faults) {
        if (list.isBlank()) {
            return List.of();
        }
        try (CsvReader<CsvRecord> csv = CsvReader.builder().ofCsvRecord(list)) {
            Iterator<CsvRecord> lines = csv.iterator();
            List<String> items =
                    lines.next().getFields().stream().map(String::strip).toList();
            if (lines.hasNext()) {
                throw new CsvParseException("more than one line");
            }
            return items;
        } catch (CsvParseException e) {
            faults.add(Fault.parameter(
                            parameter,
                            "wrong-value",
                            "This list cannot be read: it is one line, with its quotes closed.")
                    .withGot(list));
            return List.of();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
