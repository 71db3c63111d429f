package io.loopstate.web.mapping;

import io.loopstate.web.chart.Chart;
import io.loopstate.web.dto.ChartName;
import java.util.Objects;

/**
 * A calculation with the charts that its result is drawn as.
 *
 * @param operation the calculation
 * @param choice whether the client chooses among several by the parameter {@code chart}
 * @param drawing makes the chart
 * @param <T> the request
 * @param <S> the engine's input
 * @param <R> the engine's result
 */
public record Picture<T, S, R>(Operation<T, S, R, ?> operation, boolean choice, Drawing<T, R> drawing) {
    public Picture {
        Objects.requireNonNull(operation);
        Objects.requireNonNull(drawing);
    }

    /** A calculation that is drawn in one way. */
    static <T, S, R> Picture<T, S, R> of(Operation<T, S, R, ?> operation, SingleDrawing<T, R> drawing) {
        return new Picture<>(operation, false, (input, result, name) -> drawing.of(input, result));
    }

    /** Makes one of several charts from the input and the result. */
    public interface Drawing<T, R> {
        Chart of(Input<T> input, R result, ChartName name);
    }

    /** Makes the one chart from the input and the result. */
    interface SingleDrawing<T, R> {
        Chart of(Input<T> input, R result);
    }
}
