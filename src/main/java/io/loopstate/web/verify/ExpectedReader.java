package io.loopstate.web.verify;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeType;
import io.loopstate.units.QuantityKind;
import io.loopstate.units.QuantityParser;
import io.loopstate.units.Reading;
import io.loopstate.units.UnitFault;
import io.loopstate.units.UnitToken;
import io.loopstate.web.dto.VerifyExpectation;
import io.loopstate.web.problem.Fault;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Reads one expectation. */
final class ExpectedReader {
    private static final int LONGEST_POINTER = 500;
    private static final int LONGEST_TEXT = 1000;
    private static final String ABSOLUTE = "absoluteTolerance";
    private static final String RELATIVE = "relativeTolerance";

    private final FileNode node;

    private ExpectedReader(FileNode node) {
        this.node = node;
    }

    /** The expectation at a pointer of the file; empty after a fault. */
    static Optional<Expected> read(JsonNode node, String pointer, List<Fault> faults) {
        int before = faults.size();
        return FileNode.of(node, pointer, VerifyExpectation.class, faults)
                .flatMap(object -> new ExpectedReader(object).read())
                .filter(expected -> faults.size() == before);
    }

    private Optional<Expected> read() {
        Optional<JsonPointer> pointer = pointer();
        List<String> given = Stream.of("value", "text", "flag")
                .filter(name -> node.member(name).isPresent())
                .toList();
        if (given.size() != 1) {
            node.fault("value-missing", "Exactly one expected value is needed.", "one of value, text, flag");
            return Optional.empty();
        }
        Optional<JsonNode> value = node.member(
                given.get(0),
                switch (given.get(0)) {
                    case "text" -> new JsonNodeType[] {JsonNodeType.STRING};
                    case "flag" -> new JsonNodeType[] {JsonNodeType.BOOLEAN};
                    default -> new JsonNodeType[] {JsonNodeType.NUMBER, JsonNodeType.STRING, JsonNodeType.BOOLEAN};
                });
        if (value.isEmpty()) {
            return Optional.empty();
        }
        JsonNode expected = value.get();
        if (expected.isNumber()) {
            return pointer.flatMap(at -> number(at, expected.doubleValue()));
        }
        for (String name : List.of("unit", ABSOLUTE, "toleranceUnit", RELATIVE)) {
            if (node.member(name).isPresent()) {
                node.fault(name, "not-applicable", "Text and truth values are compared for equality.", name, null);
            }
        }
        if (expected.asText().length() > LONGEST_TEXT) {
            node.fault(given.get(0), "text-too-long", "This text is too long.", null, LONGEST_TEXT + " characters");
        }
        return pointer.map(at -> Expected.words(at, new Expected.Words(expected.asText(), expected.isBoolean())));
    }

    /** RFC 6901, also in its form for the fragment of an address. */
    private Optional<JsonPointer> pointer() {
        node.require("pointer", "an RFC 6901 pointer such as /superheat");
        Optional<String> text = node.text("pointer", LONGEST_POINTER);
        try {
            return text.map(p -> p.startsWith("#") ? URLDecoder.decode(p.substring(1), StandardCharsets.UTF_8) : p)
                    .map(JsonPointer::compile);
        } catch (IllegalArgumentException e) {
            node.fault(
                    "pointer",
                    "pointer-malformed",
                    "A pointer begins with a slash.",
                    text.orElse(null),
                    "an RFC 6901 pointer",
                    Optional.of("Write for example /points/0/temperature."));
            return Optional.empty();
        }
    }

    private Optional<Expected> number(JsonPointer pointer, double value) {
        if (!Double.isFinite(value)) {
            node.fault("value", "number-not-finite", "Only finite numbers are taken.", null, "a finite number");
            return Optional.empty();
        }
        Optional<UnitToken> unit = Optional.empty();
        if (node.member("unit").isPresent()) {
            unit = node.text("unit", QuantityParser.MAX_LENGTH).flatMap(this::unit);
            if (unit.isEmpty()) {
                return Optional.empty();
            }
        }
        if (node.member(ABSOLUTE).isEmpty() && node.member(RELATIVE).isEmpty()) {
            node.fault(
                    "tolerance-missing",
                    "A number needs a tolerance: results are promised to a relative 1e-9, not to the last bit.",
                    "absoluteTolerance, relativeTolerance or both");
        }
        OptionalDouble absolute = absolute(unit);
        OptionalDouble relative = relative(unit);
        return Optional.of(
                Expected.number(pointer, new Expected.Number(value, unit, absolute.orElse(0), relative.orElse(0))));
    }

    private Optional<UnitToken> unit(String text) {
        try {
            return Optional.of(Units.anyKind(text));
        } catch (UnitFault fault) {
            fault("unit", text, fault);
            return Optional.empty();
        }
    }

    /** In steps of the unit. */
    private OptionalDouble absolute(Optional<UnitToken> unit) {
        Optional<JsonNode> given = node.member(ABSOLUTE, JsonNodeType.NUMBER, JsonNodeType.STRING, JsonNodeType.OBJECT);
        if (given.isEmpty()) {
            if (node.member("toleranceUnit").isPresent()
                    && node.member(ABSOLUTE).isEmpty()) {
                node.fault("toleranceUnit", "not-applicable", "There is no absoluteTolerance.", null, null);
            }
            return OptionalDouble.empty();
        }
        QuantityKind kind = Units.ofDifferences(unit.map(UnitToken::kind).orElse(QuantityKind.RATIO));
        Optional<String> named = node.text("toleranceUnit", QuantityParser.MAX_LENGTH);
        JsonNode tolerance = given.get();
        if (tolerance.isNumber() && named.isEmpty()) {
            if (unit.isPresent() && Units.pointsOnly(unit.get())) {
                node.fault(
                        ABSOLUTE,
                        "tolerance-unit-missing",
                        "The tolerance of a temperature is a temperature difference, whose unit has to be named.",
                        tolerance.asText(),
                        "toleranceUnit K or delta_degF",
                        Optional.of("Write \"toleranceUnit\": \"" + Units.stepOf(unit.get()) + "\"."));
                return OptionalDouble.empty();
            }
            return notNegative(ABSOLUTE, tolerance.doubleValue());
        }
        try {
            Reading reading = tolerance.isNumber()
                    ? QuantityParser.parse(kind, tolerance.doubleValue(), named.orElseThrow())
                    : tolerance.isTextual()
                            ? QuantityParser.parse(kind, tolerance.textValue())
                            : QuantityParser.parse(
                                    kind,
                                    tolerance.path("value").asDouble(Double.NaN),
                                    tolerance.path("unit").asText());
            double steps = unit.map(token -> Units.steps(reading, token))
                    .orElse(reading.unit().factor() * reading.value());
            return notNegative(ABSOLUTE, steps);
        } catch (UnitFault fault) {
            fault(named.isPresent() && tolerance.isNumber() ? "toleranceUnit" : ABSOLUTE, fault.got(), fault);
            return OptionalDouble.empty();
        }
    }

    private OptionalDouble relative(Optional<UnitToken> unit) {
        Optional<JsonNode> given = node.member(RELATIVE, JsonNodeType.NUMBER);
        if (given.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (unit.isPresent() && Units.pointsOnly(unit.get())) {
            node.fault(
                    RELATIVE,
                    "relative-temperature",
                    Units.NO_RELATIVE,
                    given.get().asText(),
                    "absoluteTolerance");
            return OptionalDouble.empty();
        }
        return notNegative(RELATIVE, given.get().doubleValue());
    }

    private OptionalDouble notNegative(String name, double value) {
        if (value >= 0 && Double.isFinite(value)) {
            return OptionalDouble.of(value);
        }
        node.fault(name, "tolerance-negative", "A tolerance is not negative.", Double.toString(value), "0 or more");
        return OptionalDouble.empty();
    }

    private void fault(String name, String got, UnitFault fault) {
        node.fault(
                name,
                Units.code(fault),
                fault.getMessage(),
                got,
                fault.allowed().isEmpty() ? null : fault.allowed(),
                Optional.of(fault.hint()).filter(hint -> !hint.isEmpty()));
    }
}
