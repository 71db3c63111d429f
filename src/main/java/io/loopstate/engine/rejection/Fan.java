package io.loopstate.engine.rejection;

import io.loopstate.engine.component.Require;
import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;

/**
 * The fan of a coil.
 *
 * @param speed as a share of full speed, to which the airflow is proportional; 0 where it stands still
 * @param exponent with which the conductance follows the airflow
 * @param exponentAssumed whether that is common practice instead of the maker's
 * @param naturalDraft airflow without a fan, as a share of that at full speed
 */
public record Fan(double speed, double exponent, boolean exponentAssumed, double naturalDraft) {
    /** Common practice, no source: between laminar and turbulent air over fins. */
    public static final double USUAL_EXPONENT = 0.5;
    /** Common practice, no source: what rises through a warm coil by itself. */
    public static final double USUAL_NATURAL_DRAFT = 0.1;

    public Fan {
        if (!(speed >= 0 && speed <= 1)) {
            throw EngineException.of(
                    ErrorCode.IMPOSSIBLE_VALUE, "A share of full speed is 0 to 1.", "fanSpeed", speed, 0, 1);
        }
        Require.properShare("airflowExponent", exponent);
        Require.efficiency("naturalDraft", naturalDraft);
    }

    /** At full speed. */
    public static Fan full() {
        return new Fan(1, USUAL_EXPONENT, true, USUAL_NATURAL_DRAFT);
    }

    /** Airflow over that at full speed. */
    public double airflow() {
        return airflow(speed);
    }

    /** Airflow over that at full speed, at another share of it. */
    public double airflow(double share) {
        return Math.max(share, naturalDraft);
    }

    /** Conductance over that at full airflow. */
    double conductance() {
        return Math.pow(airflow(), exponent);
    }
}
