package io.loopstate.web.problem;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.deser.DeserializationProblemHandler;
import com.fasterxml.jackson.databind.deser.ValueInstantiator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * Gathers what is wrong with a JSON body while it is read on, so that all faults are reported at once.
 *
 * <p>One instance serves one body: it travels as an attribute of the reader. The {@linkplain #handler() handler} is
 * shared.
 */
public final class ReadingFaults {
    /** Attribute of the reader under which the instance travels. */
    public static final String ATTRIBUTE = ReadingFaults.class.getName();

    private static final int LIMIT = 50;

    private final List<Fault> faults = new ArrayList<>();

    /** What was found so far. */
    public List<Fault> faults() {
        return List.copyOf(faults);
    }

    /**
     * For deserializers: notes a fault and lets the reading go on.
     *
     * @return whether it was noted; if not, the caller has to throw
     */
    public static boolean note(DeserializationContext context, Fault fault) {
        if (!(context.getAttribute(ATTRIBUTE) instanceof ReadingFaults gathered)) {
            return false;
        }
        if (gathered.faults.size() < LIMIT) {
            gathered.faults.add(fault);
        }
        return true;
    }

    /** For deserializers: the place that the parser is at, as a pointer in URI fragment form. */
    public static String here(JsonParser parser) {
        return Pointer.of(parser.getParsingContext().pathAsPointer());
    }

    /**
     * For deserializers: notes that the number the parser is at does not fit.
     *
     * @return whether it was noted; if not, the caller has to throw
     */
    public static boolean noteOverflow(DeserializationContext context, JsonParser parser) throws IOException {
        return note(
                context,
                Fault.at(here(parser), "wrong-value", "This number is too large.")
                        .withGot(parser.getText()));
    }

    /** Turns unknown names and wrong types into gathered faults. */
    public static DeserializationProblemHandler handler() {
        return new Handler();
    }

    private static final class Handler extends DeserializationProblemHandler {
        @Override
        public boolean handleUnknownProperty(
                DeserializationContext context,
                JsonParser parser,
                JsonDeserializer<?> deserializer,
                Object beanOrClass,
                String name)
                throws IOException {
            Fault fault = JsonFaults.unknownName(place(context, parser, name), name, knownNames(deserializer));
            if (!note(context, fault)) {
                return false;
            }
            parser.skipChildren();
            return true;
        }

        @Override
        public Object handleUnexpectedToken(
                DeserializationContext context, JavaType type, JsonToken token, JsonParser parser, String message)
                throws IOException {
            return wrongType(context, type.getRawClass(), token, parser);
        }

        @Override
        public Object handleMissingInstantiator(
                DeserializationContext context,
                Class<?> type,
                ValueInstantiator instantiator,
                JsonParser parser,
                String message)
                throws IOException {
            return wrongType(context, type, parser.currentToken(), parser);
        }

        @Override
        public Object handleWeirdNumberValue(
                DeserializationContext context, Class<?> type, Number number, String message) throws IOException {
            JsonParser parser = context.getParser();
            return wrongType(context, type, parser.currentToken(), parser);
        }

        private static Object wrongType(
                DeserializationContext context, Class<?> type, JsonToken token, JsonParser parser) throws IOException {
            // A primitive has no value to stand for "unreadable".
            if (type.isPrimitive()) {
                return NOT_HANDLED;
            }
            Fault fault = JsonFaults.wrongType(here(parser), type, token, parser.getText());
            if (!note(context, fault)) {
                return NOT_HANDLED;
            }
            parser.skipChildren();
            return null;
        }

        @Override
        public Object handleWeirdStringValue(
                DeserializationContext context, Class<?> type, String text, String message) {
            if (type.isPrimitive()) {
                return NOT_HANDLED;
            }
            Fault fault = JsonFaults.wrongText(here(context.getParser()), type, text, message);
            return note(context, fault) ? null : NOT_HANDLED;
        }

        /** Unknown members of a record are handed over after its end, from a buffer that has lost its place. */
        private static String place(DeserializationContext context, JsonParser parser, String name) {
            return parser == context.getParser() ? here(parser) : Pointer.child(here(context.getParser()), name);
        }

        private static Collection<String> knownNames(JsonDeserializer<?> deserializer) {
            List<String> names = new ArrayList<>();
            if (deserializer.getKnownPropertyNames() != null) {
                deserializer.getKnownPropertyNames().forEach(name -> names.add(name.toString()));
            }
            names.sort(null);
            return names;
        }
    }
}
