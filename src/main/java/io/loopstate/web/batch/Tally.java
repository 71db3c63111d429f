package io.loopstate.web.batch;

import io.loopstate.web.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Counts answers by status; for one thread. */
public final class Tally {
    private static final int OK = 200;

    private final Map<Integer, Long> statuses = new TreeMap<>();
    private long count;

    /** Counts one answer; what answers no row is not counted. */
    public void add(int status) {
        if (status == Answered.NO_ROW) {
            return;
        }
        statuses.merge(status, 1L, Long::sum);
        count++;
    }

    /** Rows counted. */
    public long count() {
        return count;
    }

    /** What was counted, with the reason for which rows were left unanswered. */
    public BatchSummary summary(Optional<Problem> problem) {
        long succeeded = statuses.getOrDefault(OK, 0L);
        List<StatusCount> counts = statuses.entrySet().stream()
                .map(entry -> new StatusCount(entry.getKey(), entry.getValue()))
                .toList();
        return new BatchSummary(count, succeeded, count - succeeded, counts, problem.orElse(null));
    }
}
