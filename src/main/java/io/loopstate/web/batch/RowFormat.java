package io.loopstate.web.batch;

import io.loopstate.web.problem.Problem;
import java.util.List;
import java.util.Optional;

/** How the rows of one stream are read and answered. */
public interface RowFormat {
    /** Content type of the answers. */
    String contentType();

    /** Cuts the body into rows. */
    RowSplitter splitter();

    /** How many rows have to be seen together before the first answer can be written. */
    int leading();

    /**
     * The answers to the leading rows, or to all of a shorter body, with what stands above them.
     *
     * @throws io.loopstate.web.problem.ProblemException if the body as a whole is refused
     */
    List<Answered> begin(List<Row> rows);

    /** The answer to one of the rows that follow; called by many threads. Refusals are answers too. */
    Answered answer(Row row);

    /** What stands below the answers; a problem says why rows at the end were not answered. */
    byte[] end(Tally tally, Optional<Problem> problem);

    /** Whether the summary follows the body as a trailer. */
    default boolean summaryInTrailer() {
        return false;
    }

    /** The summary for a trailer: ASCII on one line. */
    default String trailer(Tally tally, Optional<Problem> problem) {
        throw new UnsupportedOperationException("no trailer");
    }
}
