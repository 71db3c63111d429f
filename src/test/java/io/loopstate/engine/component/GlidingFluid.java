package io.loopstate.engine.component;

import io.loopstate.engine.error.Variable;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.flash.Saturation;
import io.loopstate.engine.fluid.Citation;
import io.loopstate.engine.fluid.CriticalPoint;
import io.loopstate.engine.fluid.Limits;
import io.loopstate.engine.fluid.ReferenceState;
import io.loopstate.engine.fluid.Refrigerant;
import io.loopstate.engine.property.Phase;
import io.loopstate.engine.property.State;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An invented fluid whose bubble and dew temperatures at one pressure are a known glide apart, for tests of what is counted
 * from where: T = 250 K + 30 K ln(p / 1 bar), plus the glide for the dew point. Everything else is a linear toy.
 */
public final class GlidingFluid implements Equilibrium {
    private static final double LATENT_HEAT = 200e3;
    private static final double HEAT_CAPACITY = 1000;

    private final double glide;

    public GlidingFluid(double glide) {
        this.glide = glide;
    }

    public static double bubbleTemperature(double pressure) {
        return 250 + 30 * Math.log(pressure / 1e5);
    }

    private static double pressureAtBubble(double temperature) {
        return 1e5 * Math.exp((temperature - 250) / 30);
    }

    @Override
    public Saturation saturationAtTemperature(double temperature) {
        return new Saturation(
                edge(Phase.LIQUID, temperature, pressureAtBubble(temperature)),
                edge(Phase.VAPOR, temperature, pressureAtBubble(temperature - glide)));
    }

    @Override
    public Saturation saturationAtPressure(double pressure) {
        double bubble = bubbleTemperature(pressure);
        return new Saturation(edge(Phase.LIQUID, bubble, pressure), edge(Phase.VAPOR, bubble + glide, pressure));
    }

    @Override
    public State atPressureTemperature(double pressure, double temperature) {
        double bubble = bubbleTemperature(pressure);
        return temperature > bubble + glide
                ? state(Phase.VAPOR, temperature, pressure, Double.NaN)
                : state(Phase.LIQUID, temperature, pressure, Double.NaN);
    }

    @Override
    public State atPressureEnthalpy(double pressure, double enthalpy) {
        double bubble = bubbleTemperature(pressure);
        double liquid = HEAT_CAPACITY * bubble;
        double vapor = HEAT_CAPACITY * (bubble + glide) + LATENT_HEAT;
        if (enthalpy < liquid) {
            return state(Phase.LIQUID, enthalpy / HEAT_CAPACITY, pressure, Double.NaN);
        }
        return enthalpy > vapor
                ? state(Phase.VAPOR, (enthalpy - LATENT_HEAT) / HEAT_CAPACITY, pressure, Double.NaN)
                : state(Phase.TWO_PHASE, bubble, pressure, (enthalpy - liquid) / (vapor - liquid));
    }

    @Override
    public State atPressureEntropy(double pressure, double entropy) {
        throw new UnsupportedOperationException();
    }

    @Override
    public State state(Variable first, double firstValue, Variable second, double secondValue, Optional<Phase> phase) {
        throw new UnsupportedOperationException();
    }

    private static State edge(Phase phase, double temperature, double pressure) {
        return state(phase, temperature, pressure, phase == Phase.LIQUID ? 0 : 1);
    }

    private static State state(Phase phase, double temperature, double pressure, double quality) {
        double enthalpy = HEAT_CAPACITY * temperature
                + (phase == Phase.VAPOR ? LATENT_HEAT : phase == Phase.TWO_PHASE ? quality * LATENT_HEAT : 0);
        double nan = Double.NaN;
        return new State(
                phase,
                temperature,
                pressure,
                phase == Phase.LIQUID ? 1000 : 10,
                enthalpy,
                nan,
                enthalpy,
                quality,
                HEAT_CAPACITY,
                HEAT_CAPACITY,
                200,
                nan,
                nan,
                nan,
                nan,
                nan);
    }

    @Override
    public Refrigerant refrigerant() {
        return Identity.INSTANCE;
    }

    @Override
    public ReferenceState referenceState() {
        return ReferenceState.IIR;
    }

    private enum Identity implements Refrigerant {
        INSTANCE;

        @Override
        public double acentricFactor() {
            return 0;
        }

        @Override
        public String designation() {
            return "gliding";
        }

        @Override
        public List<String> aliases() {
            return List.of();
        }

        @Override
        public Optional<String> formula() {
            return Optional.empty();
        }

        @Override
        public Optional<String> casNumber() {
            return Optional.empty();
        }

        @Override
        public Kind kind() {
            return Kind.BLEND;
        }

        @Override
        public double molarMass() {
            return 0.1;
        }

        @Override
        public Limits limits() {
            return new Limits(100, 1000, 1e9);
        }

        @Override
        public CriticalPoint criticalPoint() {
            return new CriticalPoint(400, 50e5, 400);
        }

        @Override
        public double minSaturationTemperature() {
            return 100;
        }

        @Override
        public OptionalDouble normalBoilingPoint() {
            return OptionalDouble.of(bubbleTemperature(101325));
        }

        @Override
        public List<Citation> sources() {
            return List.of(new Citation("invented", Optional.empty()));
        }
    }
}
