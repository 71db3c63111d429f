package io.loopstate.web.mapping;

import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * One calculation: what is read, how it becomes the input of the engine, the call, and how its result becomes the reply.
 *
 * @param request the request record
 * @param spec checks what concerns several members and makes the engine's input
 * @param engine the one call of the engine
 * @param reply makes the reply
 * @param inputs for names of inputs in the engine's errors that are no members of the request: the members they may stem
 *     from
 * @param <T> the request
 * @param <S> the engine's input
 * @param <R> the engine's result
 * @param <A> the reply
 */
public record Operation<T, S, R, A>(
        Class<T> request,
        Function<Input<T>, S> spec,
        Function<S, R> engine,
        Answer<T, R, A> reply,
        Map<String, List<String>> inputs) {

    /** Makes the reply from the input and the result. */
    public interface Answer<T, R, A> {
        A of(Input<T> input, R result, Trust trust);
    }
}
