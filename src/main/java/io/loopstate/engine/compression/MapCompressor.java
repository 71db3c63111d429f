package io.loopstate.engine.compression;

import io.loopstate.engine.component.Compressor;
import io.loopstate.engine.component.Condenser;
import io.loopstate.engine.component.OutletCondition;
import io.loopstate.engine.component.Require;
import io.loopstate.engine.compression.Envelope.Breach;
import io.loopstate.engine.cycle.Inputs;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.property.State;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A compressor by its rating map, corrected from the suction state of the rating to the actual one: m = m_r (1 + F (v_r/v - 1)),
 * P = P_r (m/m_r) (dh_s/dh_s,r). Source: A. E. Dabiri, C. K. Rice, ASHRAE Transactions 87(2) (1981) 771-782 (from memory), F =
 * 0.75.
 *
 * @param massFlow kg/s over dew temperatures; this or the capacity
 * @param capacity W over dew temperatures
 * @param power W over dew temperatures, as rated: of a hermetic compressor electrical
 * @param current A over dew temperatures
 * @param ratedSuction superheat (K) or return gas temperature (K) of the rating
 * @param ratedLiquid subcooling or liquid temperature of the rating, which a capacity counts from
 * @param correctionFactor F, 0 (no correction) to 1 (by density)
 * @param heatLossFraction share of the power that the shell gives off, 0 to below 1
 * @param envelope where the map holds
 * @param extrapolate whether to answer outside of it
 */
public record MapCompressor(
        Optional<RatingPolynomial> massFlow,
        Optional<RatingPolynomial> capacity,
        RatingPolynomial power,
        Optional<RatingPolynomial> current,
        OutletCondition ratedSuction,
        OutletCondition ratedLiquid,
        double correctionFactor,
        double heatLossFraction,
        Envelope envelope,
        boolean extrapolate)
        implements CompressorUnit {
    /** F of the source. */
    public static final double USUAL_FACTOR = 0.75;

    public MapCompressor {
        Objects.requireNonNull(power);
        Objects.requireNonNull(ratedSuction);
        Objects.requireNonNull(ratedLiquid);
        Objects.requireNonNull(envelope);
        Require.properShare("heatLossFraction", heatLossFraction);
        if (massFlow.isPresent() == capacity.isPresent()) {
            throw new IllegalArgumentException("either mass flow or capacity");
        }
        if (!(correctionFactor >= 0 && correctionFactor <= 1)) {
            throw EngineException.of(
                    ErrorCode.IMPOSSIBLE_VALUE,
                    "The correction factor is 0 to 1.",
                    "superheatCorrectionFactor",
                    correctionFactor,
                    0,
                    1);
        }
    }

    @Override
    public Running run(Equilibrium equilibrium, State suction, double dischargePressure) {
        return detail(equilibrium, suction, dischargePressure).running();
    }

    /**
     * Rated and actual.
     *
     * @param suctionDew K
     * @param dischargeDew K
     * @param ratedState suction state of the rating
     * @param ratedFlow kg/s
     * @param ratedPower W
     * @param ratedCapacity W, with the rated liquid
     * @param isentropic where compression of the actual suction without loss would end
     * @param current A corrected with the power
     * @param breach the limit of the envelope that the point does not keep; empty inside
     * @param running the summary
     */
    record Detail(
            double suctionDew,
            double dischargeDew,
            State ratedState,
            double ratedFlow,
            double ratedPower,
            double ratedCapacity,
            State isentropic,
            OptionalDouble current,
            Optional<Breach> breach,
            Running running) {}

    Detail detail(Equilibrium equilibrium, State suction, double dischargePressure) {
        double s = equilibrium.saturationAtPressure(suction.pressure()).dew().temperature();
        double d = Inputs.trace(
                "discharge",
                () -> equilibrium.saturationAtPressure(dischargePressure).dew().temperature());
        Optional<Breach> breach = envelope.breach(s, d, suction.pressure(), dischargePressure);
        if (breach.isPresent() && !extrapolate) {
            throw outside(breach.get());
        }
        State rated = Inputs.trace("map.rating", () -> rated(equilibrium, suction.pressure()));
        double effect = rated.specificEnthalpy()
                - Inputs.trace("map.rating", () -> Condenser.outlet(equilibrium, dischargePressure, ratedLiquid))
                        .specificEnthalpy();
        double ratedFlow = massFlow.map(map -> map.at(s, d))
                .orElseGet(() -> capacity.orElseThrow().at(s, d) / effect);
        double ratedPower = power.at(s, d);
        requirePositive("massFlow", ratedFlow);
        requirePositive("power", ratedPower);
        State isentropic = Compressor.isentropicOutlet(equilibrium, suction, dischargePressure);
        double rise = isentropic.specificEnthalpy() - suction.specificEnthalpy();
        double ratedRise = Compressor.isentropicOutlet(equilibrium, rated, dischargePressure)
                        .specificEnthalpy()
                - rated.specificEnthalpy();
        double factor = 1 + correctionFactor * (rated.specificVolume() / suction.specificVolume() - 1);
        double flow = ratedFlow * factor;
        double actual = ratedPower * factor * rise / ratedRise;
        double loss = heatLossFraction * actual;
        State discharge =
                equilibrium.atPressureEnthalpy(dischargePressure, suction.specificEnthalpy() + (actual - loss) / flow);
        return new Detail(
                s,
                d,
                rated,
                ratedFlow,
                ratedPower,
                ratedFlow * effect,
                isentropic,
                amperes(s, d, actual / ratedPower),
                breach,
                new Running(flow, actual, actual, discharge, loss));
    }

    private OptionalDouble amperes(double s, double d, double factor) {
        if (current.isEmpty()) {
            return OptionalDouble.empty();
        }
        double value = current.get().at(s, d);
        requirePositive("current", value);
        return OptionalDouble.of(value * factor);
    }

    private State rated(Equilibrium equilibrium, double pressure) {
        return equilibrium.state(Variable.PRESSURE, pressure, ratedSuction.given(), ratedSuction.value());
    }

    private static void requirePositive(String input, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw EngineException.of(
                    ErrorCode.OUT_OF_RANGE,
                    "The rating map gives nothing above zero here: check the units, the order of the coefficients and the"
                            + " temperatures it counts in.",
                    "map." + input,
                    value,
                    0,
                    Double.NaN);
        }
    }

    private static EngineException outside(Breach breach) {
        String message = breach.message() + "; extrapolate asks for an answer all the same";
        double lower = finite(breach.lower());
        double upper = finite(breach.upper());
        return switch (breach.measure()) {
            case TEMPERATURE ->
                EngineException.of(ErrorCode.OUT_OF_RANGE, message, Variable.TEMPERATURE, breach.got(), lower, upper)
                        .about(breach.port());
            case PRESSURE ->
                EngineException.of(ErrorCode.OUT_OF_RANGE, message, Variable.PRESSURE, breach.got(), lower, upper)
                        .about(breach.port());
            case RATIO ->
                EngineException.of(
                        ErrorCode.OUT_OF_RANGE,
                        message + ". Ratio: " + Math.round(1e3 * breach.got()) / 1e3,
                        "map.envelope." + breach.member(),
                        breach.got(),
                        lower,
                        upper);
        };
    }

    private static double finite(double limit) {
        return Double.isInfinite(limit) ? Double.NaN : limit;
    }
}
