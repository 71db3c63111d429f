package io.loopstate.web.mapping;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.transport.TransportProperties;
import io.loopstate.units.Atmosphere;
import io.loopstate.units.QuantityKind;
import io.loopstate.units.QuantityParser;
import io.loopstate.units.Reading;
import io.loopstate.units.UnitFault;
import io.loopstate.units.UnitToken;
import io.loopstate.web.dto.Quantity;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.ProblemKind;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * A request that was read, and what is wrong with it so far. What concerns several members is checked here, by the paths of
 * the members; {@link #refuseFaults()} then ends the request if anything was wrong.
 *
 * @param <T> the request record; its quantities are SI, and a member with a fault is {@code null}
 */
public final class Input<T> {
    private final T request;
    private final Shape shape;
    private final Source source;
    private final Faults faults;
    private final ValueReader values;
    private final Refrigerants.Chosen refrigerant;
    private final Refrigerants refrigerants;
    private final Output output;
    private final boolean explain;

    Input(
            T request,
            Shape shape,
            Source source,
            Faults faults,
            ValueReader values,
            Refrigerants.Chosen refrigerant,
            Refrigerants refrigerants,
            Output output,
            boolean explain) {
        this.request = request;
        this.shape = shape;
        this.source = source;
        this.faults = faults;
        this.values = values;
        this.refrigerant = refrigerant;
        this.refrigerants = refrigerants;
        this.output = output;
        this.explain = explain;
    }

    /** The same request with another output. */
    Input<T> withOutput(Output other) {
        return new Input<>(request, shape, source, faults, values, refrigerant, refrigerants, other, explain);
    }

    T request() {
        return request;
    }

    /** The states of the refrigerant asked for; only after {@link #refuseFaults()}. */
    Equilibrium equilibrium() {
        return refrigerant.equilibrium();
    }

    /** The states of a fluid that the request does not name, with its default reference state. */
    Equilibrium equilibrium(String designation) {
        return refrigerants.equilibrium(designation);
    }

    /**
     * The states of a refrigerant that another member names, with its default reference state; empty where none is named, or
     * where nobody knows it, which is a fault.
     */
    Optional<Equilibrium> equilibriumOf(String path) {
        requireKnown(path);
        String designation = (String) values.value(path);
        boolean fitted = Boolean.TRUE.equals(values.value("requireFitted"));
        return Optional.ofNullable(refrigerants.choose(path, designation, null, fitted, source, faults))
                .map(Refrigerants.Chosen::equilibrium);
    }

    /** The standard atmosphere at the altitude that a member states; empty where none is, or after a fault. */
    Optional<Atmosphere> atmosphereAt(String path) {
        OptionalDouble altitude = si(path);
        return altitude.isEmpty()
                ? Optional.empty()
                : RequestReader.attempt(path, source, faults, () -> Atmosphere.atAltitude(altitude.getAsDouble()));
    }

    /** The correlations of its transport properties; empty for a blend, for which nothing is estimated. */
    Optional<TransportProperties> transport() {
        return refrigerant.transport();
    }

    /** The same, empty where nothing of them is shown: they cost more than a state, and a cell of a spreadsheet asks for one number. */
    Optional<TransportProperties> transportShown(Class<?> reply) {
        boolean other = source.soleNumber(reply)
                .filter(name -> !States.TRANSPORT.contains(name))
                .isPresent();
        return other ? Optional.empty() : transport();
    }

    Output output() {
        return output;
    }

    Atmosphere atmosphere() {
        return output.atmosphere();
    }

    /** Whether the reply shows its working. */
    boolean explain() {
        return explain;
    }

    Shape shape() {
        return shape;
    }

    /** The quantity at a path as the client gave it. */
    Optional<Reading> reading(String path) {
        return Optional.ofNullable(readings().get(path));
    }

    /** The quantities given, by path. */
    Map<String, Reading> readings() {
        return values.readings();
    }

    /** The number at a path in SI, empty where it was not given or has a fault. */
    OptionalDouble si(String path) {
        requireKnown(path);
        Object value = values.value(path);
        return value instanceof Quantity quantity
                ? OptionalDouble.of(quantity.value())
                : value instanceof Double number ? OptionalDouble.of(number) : OptionalDouble.empty();
    }

    /** The list of numbers at a path, empty where there is none. */
    Optional<List<?>> numbers(String path) {
        return values.value(path) instanceof List<?> list ? Optional.of(list) : Optional.empty();
    }

    Optional<Given> value(String path) {
        return source.value(path);
    }

    Place place(String path) {
        return source.value(path).map(Given::place).orElseGet(() -> source.place(path));
    }

    /** Whether the client gave something at a path, sound or not. */
    boolean given(String path) {
        requireKnown(path);
        return source.value(path).isPresent() || faults.at(path);
    }

    /** Whether any member of a record is given that stands in the request itself; not where the request has no such record. */
    boolean givenWithin(String name) {
        Shape.Member record = shape.names().get(name);
        return record != null && source.within(record.path(), record.nested());
    }

    /** Exactly one of these members has to be given. */
    void exactlyOne(String... paths) {
        if (noneGiven(paths)) {
            faults.add(
                    ProblemKind.INVALID_REQUEST,
                    source.missing(paths[0])
                            .fault("missing", "One of these is required: " + names(paths) + ".")
                            .withAllowed("exactly one of " + names(paths)));
        }
        atMost(1, paths);
    }

    /** Without a stream, since every request is asked this several times. */
    private boolean noneGiven(String... paths) {
        for (String path : paths) {
            if (given(path)) {
                return false;
            }
        }
        return true;
    }

    /** Exactly so many of these members have to be given. */
    void exactly(int count, String... paths) {
        List<String> given = Arrays.stream(paths).filter(this::given).toList();
        if (given.size() < count) {
            faults.add(
                    ProblemKind.INVALID_REQUEST,
                    Fault.request("missing", "Exactly " + count + " of these are required: " + names(paths) + ".")
                            .withGot(given.isEmpty() ? "none" : names(given.toArray(String[]::new)))
                            .withAllowed("exactly " + count + " of " + names(paths)));
        }
        atMost(count, paths);
    }

    /** No more than one of these members may be given. */
    void atMostOne(String... paths) {
        atMost(1, paths);
    }

    private void atMost(int count, String... paths) {
        int found = 0;
        for (String path : paths) {
            found += source.value(path).isPresent() ? 1 : 0;
        }
        if (found > count) {
            refuseBeyond(count, paths);
        }
    }

    private void refuseBeyond(int count, String... paths) {
        String[] given = Arrays.stream(paths)
                .filter(path -> source.value(path).isPresent())
                .toArray(String[]::new);
        Arrays.stream(given)
                .skip(count)
                .forEach(path -> faults.add(
                        path,
                        ProblemKind.INVALID_REQUEST,
                        place(path)
                                .fault("too-many-inputs", "These exclude each other: " + names(paths) + ".")
                                .withGot(names(given))
                                .withAllowed((count == 1 ? "one" : Integer.toString(count)) + " of them")
                                .withHint("Leave out what follows from the rest.")));
    }

    /** None of these members may be given, for a reason that follows the name. */
    void refuseMembers(String reason, String... paths) {
        Arrays.stream(paths)
                .filter(path -> source.value(path).isPresent())
                .forEach(path -> faults.add(
                        path,
                        ProblemKind.INVALID_REQUEST,
                        place(path)
                                .fault("not-applicable", source.name(path) + ": " + reason + ".")
                                .withGot(source.value(path).orElseThrow().words())
                                .withHint("Leave it out.")));
    }

    /** The unit that a text names, empty where it is absent or names none of this kind, which is a fault. */
    Optional<UnitToken> unit(String path, QuantityKind kind) {
        Optional<Given> given = source.value(path).filter(value -> !faults.at(path));
        if (given.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    QuantityParser.parse(kind, 1, given.get().node().asText()).unit());
        } catch (UnitFault fault) {
            faults.add(path, UnitProblems.kind(fault.code()), UnitProblems.fault(given.get(), fault));
            return Optional.empty();
        }
    }

    /** A fault of a list that has the wrong length. */
    void requireLength(String path, List<Double> numbers, int length) {
        if (numbers != null && numbers.size() != length) {
            faults.add(
                    path,
                    ProblemKind.INVALID_REQUEST,
                    place(path)
                            .fault("wrong-length", "This list has the wrong length.")
                            .withGot(numbers.size() + " numbers")
                            .withAllowed(length + " numbers"));
        }
    }

    /** If the first member is given, the second has to be as well. */
    void needs(String path, String needed, String reason) {
        if (given(path) && !given(needed)) {
            faults.add(
                    ProblemKind.INVALID_REQUEST,
                    source.missing(needed)
                            .fault("missing", "This is required with " + source.name(path) + ": " + reason));
        }
    }

    /** A value of the engine; what it refuses is about the input of this name. */
    <V> V engine(String name, Supplier<V> value) {
        try {
            return value.get();
        } catch (EngineException e) {
            throw e.input().isPresent() ? e : e.about(name);
        }
    }

    /** Ends the request with every fault found, if there is any. */
    void refuseFaults() {
        faults.refuse();
    }

    private void requireKnown(String path) {
        if (!shape.leaves().containsKey(path)) {
            throw new IllegalArgumentException("no member " + path);
        }
    }

    private String names(String... paths) {
        return Arrays.stream(paths).map(source::name).collect(Collectors.joining(", "));
    }
}
