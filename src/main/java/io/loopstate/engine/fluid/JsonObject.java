package io.loopstate.engine.fluid;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A JSON object of a coefficient file, read-only, with accessors that fail loudly on a missing or mistyped entry. */
public final class JsonObject {
    private static final JsonFactory FACTORY = new JsonFactory();

    private final Map<String, Object> members;

    private JsonObject(Map<String, Object> members) {
        this.members = members;
    }

    /** Reads one object and closes the stream. */
    public static JsonObject read(InputStream stream) throws IOException {
        try (JsonParser parser = FACTORY.createParser(stream)) {
            parser.nextToken();
            return (JsonObject) value(parser);
        }
    }

    private static Object value(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(parser);
            case START_ARRAY -> array(parser);
            case VALUE_STRING -> parser.getText();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
            case VALUE_TRUE -> Boolean.TRUE;
            case VALUE_FALSE -> Boolean.FALSE;
            case VALUE_NULL -> Optional.empty();
            default -> throw new IOException("unexpected " + parser.currentToken());
        };
    }

    private static JsonObject object(JsonParser parser) throws IOException {
        Map<String, Object> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            parser.nextToken();
            members.put(name, value(parser));
        }
        return new JsonObject(Collections.unmodifiableMap(members));
    }

    private static List<Object> array(JsonParser parser) throws IOException {
        List<Object> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(parser));
        }
        return Collections.unmodifiableList(items);
    }

    private <T> T required(String name, Class<T> type) {
        Object value = members.get(name);
        if (!type.isInstance(value)) {
            throw new IllegalArgumentException("member " + name + " is missing or not a " + type.getSimpleName());
        }
        return type.cast(value);
    }

    /** Whether the member exists and is not null. */
    public boolean has(String name) {
        Object value = members.get(name);
        return value != null && !Optional.empty().equals(value);
    }

    public double number(String name) {
        return required(name, Double.class);
    }

    public OptionalDouble optionalNumber(String name) {
        return has(name) ? OptionalDouble.of(number(name)) : OptionalDouble.empty();
    }

    public String text(String name) {
        return required(name, String.class);
    }

    public Optional<String> optionalText(String name) {
        return has(name) ? Optional.of(text(name)) : Optional.empty();
    }

    public boolean flag(String name) {
        return has(name) && required(name, Boolean.class);
    }

    public JsonObject object(String name) {
        return required(name, JsonObject.class);
    }

    public Optional<JsonObject> optionalObject(String name) {
        return has(name) ? Optional.of(object(name)) : Optional.empty();
    }

    /** An array of numbers, a copy. */
    public double[] numbers(String name) {
        List<?> items = required(name, List.class);
        double[] numbers = new double[items.size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = (Double) items.get(i);
        }
        return numbers;
    }

    /** An array of numbers, empty where the member is absent. */
    public double[] optionalNumbers(String name) {
        return has(name) ? numbers(name) : new double[0];
    }

    public List<JsonObject> objects(String name) {
        List<JsonObject> objects = new ArrayList<>();
        for (Object item : required(name, List.class)) {
            objects.add((JsonObject) item);
        }
        return List.copyOf(objects);
    }

    public List<String> optionalTexts(String name) {
        List<String> texts = new ArrayList<>();
        if (has(name)) {
            for (Object item : required(name, List.class)) {
                texts.add((String) item);
            }
        }
        return List.copyOf(texts);
    }

    /** Arrays of arrays of texts. */
    List<List<String>> textLists(String name) {
        List<List<String>> lists = new ArrayList<>();
        for (Object row : required(name, List.class)) {
            lists.add(((List<?>) row).stream().map(String.class::cast).toList());
        }
        return List.copyOf(lists);
    }

    /** Arrays of arrays of numbers, copies. */
    public double[][] matrix(String name) {
        List<?> rows = required(name, List.class);
        double[][] matrix = new double[rows.size()][];
        for (int i = 0; i < matrix.length; i++) {
            matrix[i] = ((List<?>) rows.get(i))
                    .stream().mapToDouble(v -> (Double) v).toArray();
        }
        return matrix;
    }
}
