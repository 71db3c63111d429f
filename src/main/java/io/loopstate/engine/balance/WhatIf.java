package io.loopstate.engine.balance;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.flash.Equilibrium;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing that is different from the base case. The fans move the same volume of air unless that is the difference.
 *
 * @param kind what is asked
 * @param condenserAirflow outdoor airflow over that of the base case
 * @param condenserConductance over that of the base case, beside what the airflow does to it
 * @param indoorAirflow over that of the base case
 * @param outdoorRise K by which the outdoor air is warmer
 * @param atmosphere Pa instead of that of the base case
 * @param fanSpeed of the condenser fan as a share of full speed, instead of that of the base case
 * @param refrigerant instead of that of the base case
 */
public record WhatIf(
        Kind kind,
        double condenserAirflow,
        double condenserConductance,
        double indoorAirflow,
        double outdoorRise,
        OptionalDouble atmosphere,
        OptionalDouble fanSpeed,
        Optional<Equilibrium> refrigerant) {
    /** Common practice, no source: airflow that a dirty condenser has left. */
    public static final double DIRTY_AIRFLOW = 0.7;
    /** Common practice, no source: conductance that it has left beside what the airflow costs. */
    public static final double DIRTY_CONDUCTANCE = 0.9;
    /** Common practice, no source: K. */
    public static final double HOT_DAY = 10;
    /** Common practice, no source: airflow left by a blocked filter. */
    public static final double LOW_INDOOR_AIRFLOW = 0.6;
    /** Common practice, no source. */
    public static final double HALF_SPEED = 0.5;

    /** What is asked. */
    public enum Kind {
        BASE,
        DIRTY_CONDENSER,
        HOT_DAY,
        ALTITUDE,
        LOW_INDOOR_AIRFLOW,
        CONDENSER_FAN_SLOW,
        CONDENSER_FAN_OFF,
        OTHER_REFRIGERANT
    }

    public WhatIf {
        Objects.requireNonNull(kind);
        Objects.requireNonNull(atmosphere);
        Objects.requireNonNull(fanSpeed);
        Objects.requireNonNull(refrigerant);
        Require.efficiency("whatIf.dirtyCondenserAirflow", condenserAirflow);
        Require.efficiency("whatIf.dirtyCondenserConductance", condenserConductance);
        Require.efficiency("whatIf.lowIndoorAirflow", indoorAirflow);
        Require.finite("whatIf.hotDay", outdoorRise);
    }

    private WhatIf(Kind kind, double condenserAirflow, double condenserConductance, double indoorAirflow, double rise) {
        this(
                kind,
                condenserAirflow,
                condenserConductance,
                indoorAirflow,
                rise,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
    }

    static WhatIf base() {
        return new WhatIf(Kind.BASE, 1, 1, 1, 0);
    }

    /** Shares, above 0 to 1, that are left of the outdoor airflow and of the conductance. */
    public static WhatIf dirtyCondenser(double airflow, double conductance) {
        return new WhatIf(Kind.DIRTY_CONDENSER, airflow, conductance, 1, 0);
    }

    /** Outdoor air warmer by so many K, its water the same. */
    public static WhatIf hotDay(double rise) {
        return new WhatIf(Kind.HOT_DAY, 1, 1, 1, rise);
    }

    /** Atmospheric pressure, Pa. */
    public static WhatIf altitude(double pressure) {
        return new WhatIf(
                Kind.ALTITUDE, 1, 1, 1, 0, OptionalDouble.of(pressure), OptionalDouble.empty(), Optional.empty());
    }

    /** Share, above 0 to 1, that is left of the indoor airflow. */
    public static WhatIf lowIndoorAirflow(double share) {
        return new WhatIf(Kind.LOW_INDOOR_AIRFLOW, 1, 1, share, 0);
    }

    /** The condenser fan at a share of full speed; 0 where it stands still. */
    public static WhatIf condenserFan(double speed) {
        return new WhatIf(
                speed == 0 ? Kind.CONDENSER_FAN_OFF : Kind.CONDENSER_FAN_SLOW,
                1,
                1,
                1,
                0,
                OptionalDouble.empty(),
                OptionalDouble.of(speed),
                Optional.empty());
    }

    /** Another refrigerant: the same displacement, efficiencies and conductances. */
    public static WhatIf refrigerant(Equilibrium equilibrium) {
        return new WhatIf(
                Kind.OTHER_REFRIGERANT,
                1,
                1,
                1,
                0,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.of(equilibrium));
    }
}
