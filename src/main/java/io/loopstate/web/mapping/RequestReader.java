package io.loopstate.web.mapping;

import io.loopstate.units.Atmosphere;
import io.loopstate.units.DecimalMark;
import io.loopstate.units.Reading;
import io.loopstate.units.UnitFault;
import io.loopstate.units.UnitSelection;
import io.loopstate.units.UnitSystem;
import io.loopstate.web.dto.ReferencePoint;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.ProblemKind;
import io.loopstate.web.problem.ValidationProblems;
import jakarta.validation.ConstraintViolation;
import jakarta.validation.Validator;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** Reads any request record from any source, and gathers every fault on the way. */
public final class RequestReader {
    private final Refrigerants refrigerants;
    private final Validator validator;

    /** Reads requests about these refrigerants; constraints on the records are checked by the validator. */
    public RequestReader(Refrigerants refrigerants, Validator validator) {
        this.refrigerants = refrigerants;
        this.validator = validator;
    }

    <T> Input<T> read(Class<T> type, Source source) {
        return read(type, source, new Faults());
    }

    /** As above, adding to faults that were found already. */
    <T> Input<T> read(Class<T> type, Source source, Faults faults) {
        Shape shape = Shape.of(type);
        source.open(shape, faults);
        DecimalMark mark = decimalMark(source, faults);
        Atmosphere atmosphere = atmosphere(shape, source, mark, faults);
        ValueReader values = new ValueReader(source, faults, mark, atmosphere);
        T request = type.cast(record(shape, values, source, faults));
        validate(shape, request, source, faults);
        Refrigerants.Chosen refrigerant = refrigerants.choose(
                (String) values.value("refrigerant"),
                (ReferencePoint) values.value("referenceState"),
                Boolean.TRUE.equals(values.value("requireFitted")),
                source,
                faults);
        Output output = new Output(selection((String) values.value("units"), source, faults), atmosphere);
        boolean explain = Boolean.TRUE.equals(values.value("explain"));
        Input<T> input =
                new Input<>(request, shape, source, faults, values, refrigerant, refrigerants, output, explain);
        input.atMostOne("atmosphericPressure", "altitude");
        return input;
    }

    private static Object record(Shape shape, ValueReader values, Source source, Faults faults) {
        List<Object> components = new ArrayList<>(shape.members().size());
        for (Shape.Member member : shape.members()) {
            components.add(member.nested() == null ? values.read(member) : nested(member, values, source, faults));
        }
        return shape.construct(components);
    }

    /** A record within the request; {@code null} where the client gave none of its members. */
    private static Object nested(Shape.Member member, ValueReader values, Source source, Faults faults) {
        if (!member.unwrapped()) {
            Optional<Given> given = source.value(member.path());
            if (given.isPresent()
                    && !given.get().place().inQuery()
                    && !given.get().node().isObject()) {
                faults.add(
                        member.path(),
                        ProblemKind.INVALID_REQUEST,
                        given.get()
                                .place()
                                .fault("wrong-type", "This value has the wrong type.")
                                .withGot(given.get().typed())
                                .withAllowed("an object"));
                return null;
            }
            if (!source.within(member.path(), member.nested())) {
                return null;
            }
        }
        return record(member.nested(), values, source, faults);
    }

    private static DecimalMark decimalMark(Source source, Faults faults) {
        Optional<Given> given = source.value("dec");
        if (given.isEmpty() || given.get().node().asText().equals(".")) {
            return DecimalMark.POINT;
        }
        if (!given.get().node().asText().equals(",")) {
            faults.add(
                    "dec",
                    ProblemKind.INVALID_REQUEST,
                    given.get()
                            .place()
                            .fault("wrong-value", "The decimal mark is a point or a comma.")
                            .withGot(given.get().words())
                            .withAllowed(". or ,"));
        }
        return DecimalMark.COMMA;
    }

    private static Atmosphere atmosphere(Shape shape, Source source, DecimalMark mark, Faults faults) {
        ValueReader values = new ValueReader(source, faults, mark, Atmosphere.standard());
        return known(shape, "atmosphericPressure", values, source, faults, Atmosphere::ofReading)
                .or(() -> known(
                        shape,
                        "altitude",
                        values,
                        source,
                        faults,
                        reading -> Atmosphere.atAltitude(reading.toSi(Atmosphere.standard()))))
                .orElse(Atmosphere.standard());
    }

    private static Optional<Atmosphere> known(
            Shape shape,
            String path,
            ValueReader values,
            Source source,
            Faults faults,
            Function<Reading, Atmosphere> atmosphere) {
        if (!shape.leaves().containsKey(path)) {
            return Optional.empty();
        }
        values.read(shape.leaves().get(path));
        return Optional.ofNullable(values.readings().get(path))
                .flatMap(reading -> attempt(path, source, faults, () -> atmosphere.apply(reading)));
    }

    private static UnitSelection selection(String text, Source source, Faults faults) {
        return attempt("units", source, faults, () -> UnitSelection.parse(text))
                .orElse(UnitSelection.of(UnitSystem.SI));
    }

    /** A value read from the text at a path; empty after a fault of its unit. */
    static <V> Optional<V> attempt(String path, Source source, Faults faults, Supplier<V> value) {
        try {
            return Optional.of(value.get());
        } catch (UnitFault fault) {
            faults.add(
                    path,
                    UnitProblems.kind(fault.code()),
                    UnitProblems.fault(source.value(path).orElseThrow(), fault));
            return Optional.empty();
        }
    }

    private void validate(Shape shape, Object request, Source source, Faults faults) {
        List<ConstraintViolation<Object>> violations = ValidationProblems.sorted(validator.validate(request));
        for (ConstraintViolation<Object> violation : violations) {
            String path = shape.withoutUnwrapped(violation.getPropertyPath().toString());
            if (shape.leaves().containsKey(path) && !faults.at(path)) {
                Optional<Given> given = source.value(path);
                Place place = given.map(Given::place).orElseGet(() -> source.missing(path));
                Fault fault = ValidationProblems.fault(violation, place::fault);
                faults.add(
                        path,
                        ValidationProblems.kind(violation),
                        given.map(value -> fault.withGot(value.words())).orElse(fault));
            } else if (!faults.at(path) && source.value(path).isEmpty()) {
                // A record without any member; what checks its members comes later and knows which ones.
                String member = shape.leaves().keySet().stream()
                        .filter(leaf -> leaf.startsWith(path + '.'))
                        .findFirst()
                        .orElse(path);
                faults.addLast(source.missing(member).fault("missing", "This value is required."));
            }
        }
    }
}
