package io.loopstate.web.verification;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.units.UnitToken;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Published values: those bundled, or any of the same form. */
final class PublishedValues {
    private static final String RESOURCE = "/verification/published.json";

    private final Map<String, PublishedSource> sources = new LinkedHashMap<>();
    private final List<PublishedRow> rows = new ArrayList<>();
    private final List<Gap> leftOut = new ArrayList<>();

    /**
     * Where numbers were published.
     *
     * @param citation in full
     * @param doi empty where there is none
     */
    record PublishedSource(String citation, Optional<String> doi) {}

    /**
     * Numbers that are not compared.
     *
     * @param source key
     * @param place in the source
     * @param rows their names
     * @param values how many numbers
     * @param reason why they are not compared
     */
    record Gap(String source, String place, List<String> rows, int values, String reason) {}

    /** Of a file. */
    PublishedValues(JsonNode file) {
        file.get("sources")
                .forEach(source -> sources.put(
                        source.get("source").textValue(),
                        new PublishedSource(
                                source.get("citation").textValue(),
                                Optional.ofNullable(source.path("doi").textValue()))));
        file.get("rows").forEach(row -> rows.add(row(row, file.get("reasons"))));
        file.get("leftOut").forEach(gap -> leftOut.add(gap(gap)));
    }

    /** As bundled. */
    static PublishedValues bundled() {
        return new PublishedValues(file());
    }

    /** The file that is bundled. */
    static JsonNode file() {
        try (InputStream in = PublishedValues.class.getResourceAsStream(RESOURCE)) {
            return new ObjectMapper().readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** By their keys. */
    Map<String, PublishedSource> sources() {
        return sources;
    }

    List<PublishedRow> rows() {
        return rows;
    }

    List<Gap> leftOut() {
        return leftOut;
    }

    private static Gap gap(JsonNode gap) {
        List<String> names = new ArrayList<>();
        gap.get("rows").forEach(name -> names.add(name.textValue()));
        return new Gap(
                gap.get("source").textValue(),
                gap.get("place").textValue(),
                names,
                gap.get("values").intValue(),
                gap.get("reason").textValue());
    }

    private static PublishedRow row(JsonNode row, JsonNode reasons) {
        String[] request = row.get("request").textValue().split("\\?", 2);
        List<PublishedValue> values = new ArrayList<>();
        row.get("values").forEach(value -> values.add(value(value, reasons)));
        return new PublishedRow(
                row.get("id").textValue(),
                row.get("table").textValue(),
                row.get("source").textValue(),
                row.get("place").textValue(),
                row.get("origin").textValue(),
                row.get("topic").textValue(),
                row.get("request").textValue(),
                request[0],
                parameters(request[1]),
                List.copyOf(values));
    }

    private static Map<String, List<String>> parameters(String query) {
        Map<String, List<String>> parameters = new LinkedHashMap<>();
        for (String parameter : query.split("&")) {
            String[] parts = parameter.split("=", 2);
            parameters.put(parts[0], List.of(URLDecoder.decode(parts[1], StandardCharsets.UTF_8)));
        }
        return parameters;
    }

    private static PublishedValue value(JsonNode value, JsonNode reasons) {
        String printed = value.get("printed").textValue();
        return new PublishedValue(
                value.get("column").textValue(),
                JsonPointer.compile(value.get("pointer").textValue()),
                Optional.ofNullable(value.path("unit").textValue()).map(UnitToken::of),
                number(value, "molarMass"),
                printed,
                digit(new BigDecimal(printed), value.path("significantDigits").intValue()),
                number(value, "allowed"),
                value.has("reason")
                        ? reasons.get(value.get("reason").textValue()).textValue()
                        : "");
    }

    /** The unit of the last digit; that of so many significant digits where copies lost or gained zeros at the end. */
    private static double digit(BigDecimal printed, int significant) {
        int magnitude = printed.precision() - printed.scale();
        return significant == 0
                ? printed.ulp().doubleValue()
                : BigDecimal.ONE.scaleByPowerOfTen(magnitude - significant).doubleValue();
    }

    private static OptionalDouble number(JsonNode value, String name) {
        return value.has(name) ? OptionalDouble.of(value.get(name).doubleValue()) : OptionalDouble.empty();
    }
}
