package io.loopstate.web.batch;

import io.loopstate.web.problem.Problem;
import java.util.List;
import java.util.Optional;

/** One JSON object a line, in and out. */
public final class NdjsonFormat implements RowFormat {
    private final JsonRows rows;
    private final int longestRow;

    /** Lines of at most so many bytes. */
    public NdjsonFormat(JsonRows rows, int longestRow) {
        this.rows = rows;
        this.longestRow = longestRow;
    }

    @Override
    public String contentType() {
        return "application/x-ndjson";
    }

    @Override
    public RowSplitter splitter() {
        return RowSplitter.lines(longestRow);
    }

    @Override
    public int leading() {
        return 0;
    }

    @Override
    public List<Answered> begin(List<Row> leading) {
        return leading.stream().map(this::answer).toList();
    }

    @Override
    public Answered answer(Row row) {
        return rows.answer(row);
    }

    @Override
    public byte[] end(Tally tally, Optional<Problem> problem) {
        return rows.end(tally, problem);
    }
}
