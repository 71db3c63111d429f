package io.loopstate.web.batch;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvParseException;
import io.loopstate.web.form.Leaf;
import io.loopstate.web.form.Renderer;
import io.loopstate.web.form.SeparatedText;
import io.loopstate.web.form.Sheet;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.Problem;
import io.loopstate.web.problem.ProblemException;
import io.loopstate.web.problem.ProblemKind;
import io.loopstate.web.problem.ProblemMappers;
import java.io.ByteArrayOutputStream;
import java.nio.charset.CharacterCodingException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A table of inputs as separated text in, the same table with the results behind it out. The columns of the results are those of
 * the first rows, which are answered together.
 */
public final class CsvFormat implements RowFormat {
    /** Rows whose results are seen before the head is written. */
    private static final int LEADING = 64;

    private final ObjectMapper mapper;
    private final Exchange exchange;
    private final TableQuery query;
    private final CsvText text;
    private final int longestRow;
    private final int mostColumns;

    /** Set by {@link #begin} before any other row is answered. */
    private volatile CsvHead head;

    private volatile List<Sheet.Column> results = List.of();

    /** What became of a row; status {@link Answered#NO_ROW} for one without a single cell. */
    private record Outcome(List<String> cells, Map<String, Leaf> values, int status, String error) {
        static Outcome refused(List<String> cells, Problem problem) {
            return new Outcome(cells, Map.of(), problem.status(), Renderer.inline(problem));
        }
    }

    /** Rows of at most so many bytes, and a head of at most so many columns. */
    public CsvFormat(ObjectMapper mapper, Exchange exchange, TableQuery query, int longestRow, int mostColumns) {
        this.mapper = mapper;
        this.exchange = exchange;
        this.query = query;
        this.text = new CsvText(query.layout(), query.charset());
        this.longestRow = longestRow;
        this.mostColumns = mostColumns;
    }

    @Override
    public String contentType() {
        return query.layout().form().contentType();
    }

    @Override
    public RowSplitter splitter() {
        return RowSplitter.records(longestRow, query.layout().separator());
    }

    @Override
    public int leading() {
        return 1 + LEADING;
    }

    @Override
    public List<Answered> begin(List<Row> rows) {
        head = head(rows);
        Values values = new Values(query.layout().picks());
        List<Outcome> outcomes =
                rows.stream().skip(1).map(row -> outcome(row, values)).toList();
        values.refuseUnknown();
        results = results(outcomes);
        List<Answered> answers = new ArrayList<>();
        answers.add(new Answered(
                Answered.NO_ROW, text.bytes(headings(), query.layout().byteOrderMark())));
        outcomes.forEach(outcome -> answers.add(answered(outcome)));
        return answers;
    }

    @Override
    public Answered answer(Row row) {
        return answered(outcome(row, new Values(query.layout().picks())));
    }

    @Override
    public byte[] end(Tally tally, Optional<Problem> problem) {
        ByteArrayOutputStream last = new ByteArrayOutputStream();
        problem.ifPresent(reason ->
                last.writeBytes(answered(Outcome.refused(List.of(), reason)).bytes()));
        if (query.summaryRow()) {
            last.writeBytes(summary(tally.summary(problem)).bytes());
        }
        return last.toByteArray();
    }

    private Answered summary(BatchSummary summary) {
        String counts = summary.statuses().stream()
                .map(status -> status.count() + " with " + status.status())
                .collect(Collectors.joining(", "));
        String words = summary.count() + " rows" + (counts.isEmpty() ? "" : ": " + counts);
        return answered(new Outcome(List.of("summary"), Map.of(), Answered.NO_ROW, words));
    }

    @Override
    public boolean summaryInTrailer() {
        return true;
    }

    @Override
    public String trailer(Tally tally, Optional<Problem> problem) {
        try {
            return mapper.writeValueAsString(tally.summary(problem));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private CsvHead head(List<Row> rows) {
        if (rows.isEmpty()) {
            throw ProblemException.invalid(Fault.request("missing-body", "A table needs a head."));
        }
        if (rows.get(0).tooLong()) {
            throw ProblemException.invalid(
                    Fault.request("row-too-long", "The head of the table is longer than a row may be.")
                            .withAllowed("at most " + longestRow + " bytes"));
        }
        try {
            List<String> cells = text.cells(rows.get(0));
            if (cells.size() > mostColumns) {
                throw ProblemException.invalid(Fault.request("too-many-columns", "The table has too many columns.")
                        .withGot(cells.size() + " columns")
                        .withAllowed("at most " + mostColumns));
            }
            return CsvHead.of(query.operation(), cells, query.columns(), query.pass());
        } catch (CsvParseException e) {
            throw ProblemException.invalid(Fault.request("unreadable-row", CsvText.UNREADABLE));
        } catch (CharacterCodingException e) {
            throw ProblemException.invalid(
                    Fault.request("unreadable-row", CsvText.NOT_TEXT).withHint(CsvText.HOW_TO_SAVE));
        }
    }

    private List<Sheet.Column> results(List<Outcome> outcomes) {
        Map<String, Optional<String>> units = new LinkedHashMap<>();
        outcomes.forEach(outcome -> outcome.values().forEach((name, leaf) -> units.putIfAbsent(name, leaf.unit())));
        // Where no row was answered, what was picked by name has a column all the same.
        if (units.isEmpty()) {
            query.layout().picks().stream()
                    .filter(pick -> pick.matches("[A-Za-z0-9]+"))
                    .forEach(pick -> units.put(pick, Optional.empty()));
        }
        return units.entrySet().stream()
                .map(entry -> new Sheet.Column(entry.getKey(), entry.getValue()))
                .toList();
    }

    private List<String> headings() {
        List<String> headings = new ArrayList<>(head.headings());
        results.forEach(column -> headings.add(column.header()));
        headings.add(head.headings().contains("status") ? "replyStatus" : "status");
        headings.add(head.headings().contains("error") ? "replyError" : "error");
        return headings.stream().map(SeparatedText::harmless).toList();
    }

    private Outcome outcome(Row row, Values values) {
        List<String> cells = List.of();
        try {
            if (row.tooLong()) {
                return refused(
                        cells, ProblemKind.BODY_TOO_LARGE, "row-too-long", "This row is longer than a row may be.");
            }
            cells = text.cells(row);
            if (cells.stream().allMatch(String::isBlank)) {
                return new Outcome(cells, Map.of(), Answered.NO_ROW, "");
            }
            if (cells.size() > head.headings().size()) {
                return refused(
                        cells, ProblemKind.INVALID_REQUEST, "wrong-cells", "This row has more cells than the head.");
            }
            Object reply = exchange.answer(query.operation(), head.parameters(cells, query.constants()));
            JsonNode tree = mapper.valueToTree(reply);
            return new Outcome(cells, values.of(reply.getClass(), tree, this::taken), 200, "");
        } catch (CsvParseException e) {
            return refused(cells, ProblemKind.INVALID_REQUEST, "unreadable-row", CsvText.UNREADABLE);
        } catch (CharacterCodingException e) {
            return refused(cells, ProblemKind.INVALID_REQUEST, "unreadable-row", CsvText.NOT_TEXT);
        } catch (RuntimeException | StackOverflowError e) {
            return Outcome.refused(cells, head.atHeadings(ProblemMappers.ofCalculation(e)));
        }
    }

    private boolean taken(Leaf leaf) {
        return head.headings().contains(leaf.header());
    }

    private Answered answered(Outcome outcome) {
        List<String> line = new ArrayList<>();
        for (int i = 0; i < head.headings().size(); i++) {
            line.add(i < outcome.cells().size() ? text.passed(outcome.cells().get(i)) : "");
        }
        for (Sheet.Column column : results) {
            line.add(text.value(outcome.values().get(column.name()), column));
        }
        line.add(outcome.status() == Answered.NO_ROW ? "" : Integer.toString(outcome.status()));
        line.add(SeparatedText.harmless(outcome.error() + leftOut(outcome)));
        return new Answered(outcome.status(), text.bytes(line, false));
    }

    /** Values that no leading row had have no column; nothing is left out in silence. */
    private String leftOut(Outcome outcome) {
        String names = outcome.values().keySet().stream()
                .filter(name ->
                        results.stream().noneMatch(column -> column.name().equals(name)))
                .collect(Collectors.joining(", "));
        return names.isEmpty()
                ? ""
                : "No column for " + names + ": the first " + LEADING + " rows have none; use pick.";
    }

    private static Outcome refused(List<String> cells, ProblemKind kind, String code, String detail) {
        return Outcome.refused(cells, Problem.of(kind, List.of(Fault.request(code, detail))));
    }
}
