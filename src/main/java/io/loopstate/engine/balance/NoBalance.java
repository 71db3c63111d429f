package io.loopstate.engine.balance;

import io.loopstate.engine.compression.Envelope;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import java.util.Objects;

/**
 * Why a machine has no steady state.
 *
 * @param component that has none
 * @param reason what it says, with the input it is about and its numbers
 */
public record NoBalance(Component component, EngineException reason) {
    public NoBalance {
        Objects.requireNonNull(component);
        Objects.requireNonNull(reason);
    }

    static NoBalance outdoorTooHot(double got, double critical) {
        return of(
                Component.CONDENSER,
                "Condenser: the outdoor air, with the subcooling asked for, is as hot as the critical point of the refrigerant"
                        + " or hotter: nothing can condense.",
                "outdoorAir.dryBulb",
                got,
                Double.NaN,
                critical);
    }

    static NoBalance condensingAboveCritical() {
        return of(
                Component.CONDENSER,
                "Condenser: it has too little conductance or air for this compressor: the condensing pressure would have to"
                        + " lie above the critical one.",
                "condenser.conductance");
    }

    static NoBalance indoorTooCold(double got, double lowest) {
        return of(
                Component.EVAPORATOR,
                "Evaporator: the indoor air, less the superheat asked for, is as cold as the refrigerant can be or colder:"
                        + " nothing can evaporate.",
                "indoorAir.dryBulb",
                got,
                lowest,
                Double.NaN);
    }

    static NoBalance evaporatingBelowRange() {
        return of(
                Component.EVAPORATOR,
                "Evaporator: it has too little conductance or air for this compressor: the evaporating pressure would have to"
                        + " lie below the range of the refrigerant, or more than 120 K below the air.",
                "evaporator.conductance");
    }

    static NoBalance evaporatingAboveCritical() {
        return of(
                Component.EVAPORATOR,
                "Evaporator: the indoor air is so hot, and the compressor so small for the coil, that the evaporating pressure"
                        + " would have to lie above the critical one.",
                "indoorAir.dryBulb");
    }

    static NoBalance noLift() {
        return of(
                Component.COMPRESSOR,
                "Compressor: both coils would balance with the condensing pressure at or below the evaporating one: the outdoor"
                        + " air is so cold that there is nothing to compress. A control of the condensing pressure is needed.",
                "outdoorAir.dryBulb");
    }

    /** The compressor cannot run where the coils would balance. */
    static NoBalance compressor(EngineException cause) {
        String input = cause.input().orElse(Loop.COMPRESSOR);
        EngineException reason = cause.variable().isPresent()
                ? EngineException.of(
                                ErrorCode.NO_BALANCE,
                                words(cause),
                                cause.variable().get(),
                                cause.got(),
                                cause.lower(),
                                cause.upper())
                        .about(input)
                : EngineException.of(
                        ErrorCode.NO_BALANCE, words(cause), input, cause.got(), cause.lower(), cause.upper());
        return new NoBalance(Component.COMPRESSOR, reason);
    }

    private static String words(EngineException cause) {
        String why = cause.getMessage();
        return "Compressor: it cannot run where the coils would balance. " + Character.toUpperCase(why.charAt(0))
                + why.substring(1);
    }

    private static NoBalance of(Component component, String message, String input) {
        return new NoBalance(
                component, EngineException.of(ErrorCode.NO_BALANCE, message).about(input));
    }

    private static NoBalance of(
            Component component, String message, String input, double got, double lower, double upper) {
        return new NoBalance(component, EngineException.of(ErrorCode.NO_BALANCE, message, input, got, lower, upper));
    }

    /** A balance beyond what a rating map holds for; K, Pa or a ratio. */
    static NoBalance envelope(
            String input, Envelope.Breach.Measure measure, String message, double got, double lower, double upper) {
        return switch (measure) {
            case TEMPERATURE -> envelope(input, message, Variable.TEMPERATURE, got, lower, upper);
            case PRESSURE -> envelope(input, message, Variable.PRESSURE, got, lower, upper);
            case RATIO -> of(Component.COMPRESSOR, message, input, got, lower, upper);
        };
    }

    private static NoBalance envelope(
            String input, String message, Variable variable, double got, double lower, double upper) {
        return new NoBalance(
                Component.COMPRESSOR,
                EngineException.of(ErrorCode.NO_BALANCE, message, variable, got, lower, upper)
                        .about(input));
    }

    static NoBalance airTooHot() {
        return of(
                Component.CONDENSER,
                "Condenser: so little air would leave hotter than the equations of moist air reach.",
                "condenser.airflow.volumeFlow");
    }

    static NoBalance otherRefrigerant() {
        return of(
                Component.COMPRESSOR,
                "Compressor: a rating map holds for its own refrigerant; another one needs its own map or a displacement model.",
                "whatIf.refrigerant");
    }
}
