package io.loopstate.wiring;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.exc.InputCoercionException;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import io.loopstate.web.problem.ReadingFaults;
import java.io.IOException;
import java.util.Set;

/**
 * Reads a scalar from exactly the JSON types that mean it. A mismatch is noted and the reading goes on, which the
 * platform's coercion checks do not offer.
 */
final class StrictScalar<T> extends StdScalarDeserializer<T> {
    private static final long serialVersionUID = 1L;

    /** How the value is taken from the parser. */
    interface Extract<T> {
        T from(JsonParser parser) throws IOException;
    }

    private final transient Set<JsonToken> tokens;
    private final transient Extract<T> extract;

    private StrictScalar(Class<T> type, Extract<T> extract, JsonToken... tokens) {
        super(type);
        this.tokens = Set.of(tokens);
        this.extract = extract;
    }

    /** The scalars that requests are made of. */
    static SimpleModule module() {
        return new SimpleModule("strict-scalars")
                .addDeserializer(
                        Double.class,
                        new StrictScalar<>(
                                Double.class,
                                JsonParser::getDoubleValue,
                                JsonToken.VALUE_NUMBER_FLOAT,
                                JsonToken.VALUE_NUMBER_INT))
                .addDeserializer(
                        Integer.class,
                        new StrictScalar<>(Integer.class, JsonParser::getIntValue, JsonToken.VALUE_NUMBER_INT))
                .addDeserializer(
                        Boolean.class,
                        new StrictScalar<>(
                                Boolean.class,
                                JsonParser::getBooleanValue,
                                JsonToken.VALUE_TRUE,
                                JsonToken.VALUE_FALSE))
                .addDeserializer(
                        String.class, new StrictScalar<>(String.class, JsonParser::getText, JsonToken.VALUE_STRING));
    }

    @Override
    @SuppressWarnings("unchecked")
    public T deserialize(JsonParser parser, DeserializationContext context) throws IOException {
        if (tokens.contains(parser.currentToken())) {
            try {
                T value = extract.from(parser);
                if (!(value instanceof Double number) || Double.isFinite(number)) {
                    return value;
                }
            } catch (InputCoercionException e) {
                // A whole number too large for its type: the same fault as a number too large for a double.
            }
            if (ReadingFaults.noteOverflow(context, parser)) {
                return null;
            }
        }
        return (T) context.handleUnexpectedToken(_valueClass, parser);
    }
}
