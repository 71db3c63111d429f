package io.loopstate.engine.balance;

/**
 * Slopes of both residuals over both variables of a search.
 *
 * @param ee of the evaporator's over its own variable
 * @param ec of the evaporator's over the condenser's variable
 * @param ce of the condenser's over the evaporator's variable
 * @param cc of the condenser's over its own variable
 */
record Jacobian(double ee, double ec, double ce, double cc) {
    /**
     * A guess: needs fall as exp(-y), the flow of a displacement rises with the density of the suction vapor, and falls a
     * little with the pressure ratio.
     */
    static Jacobian guess(Node node) {
        double flow = Math.exp(node.e());
        double ratio = 0.15 * Math.exp(node.c());
        return new Jacobian(-1 - 1.1 * flow, ratio - 0.1 * Math.exp(node.c()), -1.1 * flow, -1 - ratio);
    }

    /** Broyden's update for a step (e, c) that missed by (me, mc). */
    Jacobian updated(double e, double c, double me, double mc) {
        double square = e * e + c * c;
        return new Jacobian(ee + me * e / square, ec + me * c / square, ce + mc * e / square, cc + mc * c / square);
    }

    double determinant() {
        return ee * cc - ec * ce;
    }

    /** The step that cancels the residuals of the variables that are free. */
    Step step(double missE, double missC, boolean freeE, boolean freeC) {
        if (freeE && freeC) {
            return new Step(-(missE * cc - missC * ec) / determinant(), -(ee * missC - ce * missE) / determinant());
        }
        return new Step(freeE ? -missE / ee : 0, freeC ? -missC / cc : 0);
    }

    /** A step in both variables. */
    record Step(double e, double c) {
        Step times(double factor) {
            return new Step(factor * e, factor * c);
        }
    }
}
