package io.loopstate.engine.coexistence;

/** Amounts of the components per volume and their logarithms, in which the iterations run. */
final class Amounts {
    private Amounts() {}

    static double[] exp(double[] logarithms) {
        double[] amounts = new double[logarithms.length];
        for (int i = 0; i < amounts.length; i++) {
            amounts[i] = Math.exp(logarithms[i]);
        }
        return amounts;
    }

    static double[] log(double[] amounts) {
        double[] logarithms = new double[amounts.length];
        for (int i = 0; i < logarithms.length; i++) {
            logarithms[i] = Math.log(amounts[i]);
        }
        return logarithms;
    }
}
