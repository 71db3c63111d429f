package io.loopstate.web.mapping;

import io.loopstate.engine.error.Variable;
import io.loopstate.units.QuantityKind;

/** What the engine calls a kind of number, as a kind of quantity. New ones do not compile until they are placed here. */
final class EngineKinds {
    private EngineKinds() {}

    static QuantityKind of(io.loopstate.engine.cycle.QuantityKind kind) {
        return switch (kind) {
            case TEMPERATURE -> QuantityKind.TEMPERATURE;
            case TEMPERATURE_DIFFERENCE -> QuantityKind.TEMPERATURE_DIFFERENCE;
            case PRESSURE -> QuantityKind.PRESSURE;
            case PRESSURE_DIFFERENCE -> QuantityKind.PRESSURE_DIFFERENCE;
            case SPECIFIC_ENERGY, SPECIFIC_ENTHALPY -> QuantityKind.SPECIFIC_ENERGY;
            case SPECIFIC_ENTROPY, SPECIFIC_HEAT_CAPACITY -> QuantityKind.SPECIFIC_ENTROPY;
            case DENSITY -> QuantityKind.DENSITY;
            case SPECIFIC_VOLUME -> QuantityKind.SPECIFIC_VOLUME;
            case MASS_FLOW -> QuantityKind.MASS_FLOW;
            case VOLUME_FLOW -> QuantityKind.VOLUME_FLOW;
            case POWER -> QuantityKind.POWER;
            case VOLUMETRIC_CAPACITY -> QuantityKind.VOLUMETRIC_CAPACITY;
            case LENGTH -> QuantityKind.LENGTH;
            case VOLTAGE -> QuantityKind.VOLTAGE;
            case CURRENT -> QuantityKind.ELECTRIC_CURRENT;
            case AREA -> QuantityKind.AREA;
            case HUMIDITY_RATIO -> QuantityKind.HUMIDITY_RATIO;
            case THERMAL_CONDUCTANCE -> QuantityKind.THERMAL_CONDUCTANCE;
            case HEAT_TRANSFER_COEFFICIENT -> QuantityKind.HEAT_TRANSFER_COEFFICIENT;
            case SENSIBLE_HEAT_FACTOR -> QuantityKind.SENSIBLE_HEAT_FACTOR;
            case TOTAL_HEAT_FACTOR -> QuantityKind.TOTAL_HEAT_FACTOR;
            case LATENT_HEAT_FACTOR -> QuantityKind.LATENT_HEAT_FACTOR;
            case FOULING_RESISTANCE -> QuantityKind.FOULING_RESISTANCE;
            case VOLUME -> QuantityKind.VOLUME;
            case MASS -> QuantityKind.MASS;
            case ENERGY -> QuantityKind.ENERGY;
            case SPEED -> QuantityKind.SPEED;
            case FREQUENCY -> QuantityKind.FREQUENCY;
            case RATIO -> QuantityKind.RATIO;
        };
    }

    static QuantityKind of(Variable variable) {
        return switch (variable) {
            case TEMPERATURE -> QuantityKind.TEMPERATURE;
            case PRESSURE -> QuantityKind.PRESSURE;
            case DENSITY -> QuantityKind.DENSITY;
            case SPECIFIC_VOLUME -> QuantityKind.SPECIFIC_VOLUME;
            case SPECIFIC_ENTHALPY, SPECIFIC_INTERNAL_ENERGY -> QuantityKind.SPECIFIC_ENERGY;
            case SPECIFIC_ENTROPY -> QuantityKind.SPECIFIC_ENTROPY;
            case VAPOR_QUALITY -> QuantityKind.RATIO;
            case SUPERHEAT, SUBCOOLING -> QuantityKind.TEMPERATURE_DIFFERENCE;
        };
    }

    /** The name that a variable has as an input, {@code specificEnthalpy}. */
    static String name(Variable variable) {
        return switch (variable) {
            case TEMPERATURE -> "temperature";
            case PRESSURE -> "pressure";
            case DENSITY -> "density";
            case SPECIFIC_VOLUME -> "specificVolume";
            case SPECIFIC_ENTHALPY -> "specificEnthalpy";
            case SPECIFIC_ENTROPY -> "specificEntropy";
            case SPECIFIC_INTERNAL_ENERGY -> "specificInternalEnergy";
            case VAPOR_QUALITY -> "vaporQuality";
            case SUPERHEAT -> "superheat";
            case SUBCOOLING -> "subcooling";
        };
    }
}
