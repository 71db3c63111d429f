package io.loopstate.web.mapping;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.fluid.Blend;
import io.loopstate.engine.property.Phase;
import io.loopstate.units.Plausibility;
import io.loopstate.units.QuantityKind;
import io.loopstate.units.Reading;
import io.loopstate.units.UnitToken;
import io.loopstate.web.dto.Candidate;
import io.loopstate.web.dto.FluidPhase;
import io.loopstate.web.dto.Quantity;
import io.loopstate.web.problem.EngineProblems;
import io.loopstate.web.problem.Fault;
import io.loopstate.web.problem.ProblemException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Words an error of the engine: at the client's field and in the client's units. */
final class EngineFaults {
    /** Relative distance within which a number of the engine is the client's own. */
    private static final double SAME = 1e-9;
    /** K between evaporating and condensing; common practice, no source. */
    private static final double USUAL_LIFT = 100;

    private final Input<?> input;
    private final Map<String, List<String>> inputs;

    EngineFaults(Input<?> input, Map<String, List<String>> inputs) {
        this.input = input;
        this.inputs = inputs;
    }

    ProblemException problem(EngineException e) {
        Optional<String> path = path(e);
        String code = EngineProblems.faultCode(e.code());
        Fault fault = path.map(p -> input.place(p).fault(code, detail(e)))
                .orElseGet(() -> Fault.request(code, detail(e)))
                .withHint(hint(e))
                .withCandidates(e.candidates().stream().map(this::candidate).toList());
        return new ProblemException(EngineProblems.kind(e.code()), withNumbers(fault, e, path));
    }

    /** The member that the error is about: named by the engine, or the one that gives the variable. */
    private Optional<String> path(EngineException e) {
        Optional<String> variable = e.variable().map(EngineKinds::name);
        if (e.input().isEmpty()) {
            return variable.filter(name -> input.shape().leaves().containsKey(name) && input.given(name));
        }
        String name = e.input().get();
        if (input.shape().leaves().containsKey(name)) {
            // Only a contradiction can be about what was not given.
            boolean about =
                    input.given(name) || e.code() == ErrorCode.CONTRADICTORY_INPUTS || e.code() == ErrorCode.NO_BALANCE;
            return about ? Optional.of(name) : Optional.empty();
        }
        List<String> members = inputs.getOrDefault(
                name,
                input.shape().leaves().keySet().stream()
                        .filter(path -> Paths.parent(path).equals(name))
                        .toList());
        List<String> given = members.stream().filter(input::given).toList();
        return given.stream()
                .filter(path -> Paths.last(path).equals(variable.orElse("")))
                .findFirst()
                .or(() -> given.stream().findFirst())
                .or(() -> members.stream().findFirst());
    }

    private Fault withNumbers(Fault fault, EngineException e, Optional<String> path) {
        Optional<QuantityKind> kind = kind(e, path);
        String raw = path.flatMap(input::value).map(Given::words).orElse(null);
        if (kind.isEmpty()) {
            return fault.withGot(raw);
        }
        Optional<List<?>> list = path.flatMap(input::numbers);
        if (list.isPresent() && e.variable().isEmpty()) {
            return ofList(fault, list.get(), e);
        }
        Optional<Reading> own = path.flatMap(input::reading).filter(reading -> alike(reading.kind(), kind.get()));
        UnitToken unit = own.map(Reading::unit)
                .filter(token -> token.measures(kind.get()))
                .orElseGet(() -> input.output().units().unitFor(kind.get()));
        boolean plain = kind.get() == QuantityKind.RATIO;
        boolean clientsOwn = raw != null && (own.isPresent() ? same(own.get(), e.got()) : plain);
        String prefix = own.isPresent() || plain
                ? ""
                : e.variable().map(variable -> variable.words() + ' ').orElse("");
        String got = Double.isNaN(e.got()) ? null : prefix + Words.brief(in(unit, e.got())) + suffix(unit, plain);
        return fault.withGot(clientsOwn || got == null ? raw : got)
                .withAllowed(allowed(e.code(), prefix, in(unit, e.lower()), in(unit, e.upper()), suffix(unit, plain)));
    }

    /** About a list the engine speaks of how many numbers it has. */
    private static Fault ofList(Fault fault, List<?> numbers, EngineException e) {
        long different = numbers.stream().distinct().count();
        String got = numbers.size() + " numbers" + (different < numbers.size() ? ", " + different + " different" : "");
        return fault.withGot(got).withAllowed(allowed(e.code(), "", e.lower(), e.upper(), " numbers"));
    }

    /** What the numbers of an error are, empty where that is not known. */
    private Optional<QuantityKind> kind(EngineException e, Optional<String> path) {
        Optional<QuantityKind> member =
                path.map(p -> input.shape().leaves().get(p)).map(m -> m.kind() == null ? QuantityKind.RATIO : m.kind());
        if (e.variable().isEmpty()) {
            return member.filter(kind -> e.input().equals(path) || e.input().equals(path.map(Paths::last)));
        }
        QuantityKind variable = EngineKinds.of(e.variable().get());
        // The engine speaks of a pressure drop as of a pressure.
        return Optional.of(member.filter(kind -> alike(kind, variable)).orElse(variable));
    }

    private static boolean alike(QuantityKind a, QuantityKind b) {
        return a == b
                || a == QuantityKind.PRESSURE_DIFFERENCE && b == QuantityKind.PRESSURE
                || a == QuantityKind.PRESSURE && b == QuantityKind.PRESSURE_DIFFERENCE;
    }

    private boolean same(Reading reading, double si) {
        double own = reading.toSi(input.atmosphere());
        return Double.isNaN(si) || Math.abs(own - si) <= SAME * Math.abs(si);
    }

    private double in(UnitToken unit, double si) {
        return Double.isNaN(si) ? si : unit.fromSi(si, input.atmosphere());
    }

    private static String suffix(UnitToken unit, boolean plain) {
        return plain ? "" : " " + unit;
    }

    private static String allowed(ErrorCode code, String prefix, double lower, double upper, String suffix) {
        if (Double.isNaN(lower)) {
            return Double.isNaN(upper) ? null : prefix + "at most " + Words.upper(upper) + suffix;
        }
        if (Double.isNaN(upper)) {
            return prefix + "at least " + Words.lower(lower) + suffix;
        }
        // At the critical point itself there is no saturation.
        boolean open = code == ErrorCode.ABOVE_CRITICAL;
        if (lower <= upper) {
            return prefix + Words.lower(lower) + " to " + (open ? "below " : "") + Words.upper(upper) + suffix;
        }
        // A vacuum counts the other way.
        return prefix + (open ? "above " : "") + Words.lower(upper) + " to " + Words.upper(lower) + suffix;
    }

    private String detail(EngineException e) {
        return switch (e.code()) {
            case AMBIGUOUS_STATE -> "Several states satisfy these two variables; they are listed as candidates.";
            case NOT_IN_PHASE ->
                "No state with these two variables is in the phase asked for; those that exist are listed as candidates.";
            case PAIR_NOT_INDEPENDENT -> "These two variables together do not fix a state.";
            case NOT_CONVERGED -> "The calculation did not converge.";
            case ABOVE_CRITICAL -> blend().map(EngineFaults::aboveCritical).orElse(Words.sentence(e.getMessage()));
            case OUT_OF_RANGE,
                    IMPOSSIBLE_VALUE,
                    ON_SATURATION_LINE,
                    NO_SUCH_STATE,
                    REFERENCE_STATE_UNDEFINED,
                    TWO_PHASE_UNDEFINED,
                    NO_PHASE_BOUNDARY,
                    CONTRADICTORY_INPUTS,
                    NO_BALANCE -> Words.sentence(e.getMessage());
        };
    }

    private Optional<Blend> blend() {
        return input.equilibrium().refrigerant() instanceof Blend blend ? Optional.of(blend) : Optional.empty();
    }

    private static String aboveCritical(Blend blend) {
        return "At and above the critical point of " + blend.designation()
                + " there is no pair of a bubble and a dew point.";
    }

    /** A blend has phases up to the tops of its phase boundary, which lie a little above the critical point. */
    private String whereBlendsCoexist(Blend blend) {
        Output out = input.output();
        Quantity hottest = out.of(QuantityKind.TEMPERATURE, blend.figures().cricondentherm());
        Quantity tightest = out.of(QuantityKind.PRESSURE, blend.figures().cricondenbar());
        return "Liquid and vapor of " + blend.designation() + " coexist up to " + Words.brief(hottest.value()) + ' '
                + hottest.unit() + " and up to " + Words.brief(tightest.value()) + ' ' + tightest.unit()
                + "; a state there is fixed by temperature and pressure.";
    }

    private String hint(EngineException e) {
        Optional<String> slip = path(e).flatMap(input::reading).flatMap(reading -> slip(reading, e));
        Optional<String> tops = Optional.of(e.code())
                .filter(ErrorCode.ABOVE_CRITICAL::equals)
                .flatMap(code -> blend())
                .map(this::whereBlendsCoexist);
        if (slip.isPresent() || tops.isPresent()) {
            return Stream.of(tops, slip).flatMap(Optional::stream).collect(Collectors.joining(" "));
        }
        return switch (e.code()) {
            case ABOVE_CRITICAL ->
                "Above the critical point there is no saturation: a state there is fixed by temperature and pressure.";
            case ON_SATURATION_LINE -> "Give vaporQuality with one of the two instead.";
            case AMBIGUOUS_STATE -> "Choose one of them with phase, or give another variable.";
            case NOT_IN_PHASE -> "Leave phase out, or choose the phase of a candidate.";
            case PAIR_NOT_INDEPENDENT -> "Give another variable with one of them.";
            case NOT_CONVERGED -> "This is a defect of the engine: please report the request.";
            case OUT_OF_RANGE,
                    IMPOSSIBLE_VALUE,
                    NO_SUCH_STATE,
                    REFERENCE_STATE_UNDEFINED,
                    TWO_PHASE_UNDEFINED,
                    NO_PHASE_BOUNDARY,
                    CONTRADICTORY_INPUTS,
                    NO_BALANCE -> null;
        };
    }

    /** The same number in a unit in which it would have been allowed. */
    private Optional<String> slip(Reading reading, EngineException e) {
        boolean same =
                e.variable().map(EngineKinds::of).filter(reading.kind()::equals).isPresent();
        double upper = Double.isNaN(e.upper()) ? usualUpper(e) : e.upper();
        if (!same || Double.isNaN(e.lower()) || Double.isNaN(upper)) {
            return Optional.empty();
        }
        return Plausibility.hints(reading, e.lower(), upper, input.atmosphere()).stream()
                .findFirst()
                .map(unit -> "Check the unit: " + Words.brief(reading.value()) + " " + unit + " would be in range.");
    }

    /** Upper end of what is usual for a high side that has to lie above a low side; NaN for any other error. */
    private double usualUpper(EngineException e) {
        if (e.code() != ErrorCode.CONTRADICTORY_INPUTS || e.variable().isEmpty()) {
            return Double.NaN;
        }
        return switch (e.variable().get()) {
            case PRESSURE ->
                2 * input.equilibrium().refrigerant().criticalPoint().pressure();
            case TEMPERATURE -> e.lower() + USUAL_LIFT;
            default -> Double.NaN;
        };
    }

    private Candidate candidate(EngineException.Candidate state) {
        Output out = input.output();
        return new Candidate(
                FluidPhase.valueOf(Phase.valueOf(state.phase()).name()),
                out.of(QuantityKind.TEMPERATURE, state.temperature()),
                out.of(QuantityKind.PRESSURE, state.pressure()),
                out.of(QuantityKind.DENSITY, state.density()));
    }
}
