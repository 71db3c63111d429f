package io.loopstate.engine.balance;

import io.loopstate.engine.balance.Loop.Trial;

/**
 * Two variables of a search and the residuals there, the logarithms of both shares.
 *
 * @param e of the evaporating pressure
 * @param c of the condensing pressure
 * @param fe of the evaporator
 * @param fc of the condenser
 * @param trial the machine there
 */
record Node(double e, double c, double fe, double fc, Trial trial) {
    static Node of(double e, double c, Trial trial) {
        return new Node(e, c, Math.log(trial.evaporatorShare()), Math.log(trial.condenserShare()), trial);
    }

    boolean sound() {
        return Double.isFinite(fe) && Double.isFinite(fc);
    }
}
