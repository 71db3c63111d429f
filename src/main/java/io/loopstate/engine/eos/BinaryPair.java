package io.loopstate.engine.eos;

import java.util.List;

/**
 * Interaction of two components of a mixture, Kunz and Wagner (2012), eqs. 7.9, 7.10 and 7.3.
 *
 * @param first index of a component; the betas belong to this order, beta_ji = 1 / beta_ij
 * @param second index of the other
 * @param betaT of the reducing temperature
 * @param gammaT of the reducing temperature
 * @param betaV of the reducing volume
 * @param gammaV of the reducing volume
 * @param weight factor F of the departure function
 * @param departure its terms, empty where there is none
 */
public record BinaryPair(
        int first,
        int second,
        double betaT,
        double gammaT,
        double betaV,
        double gammaV,
        double weight,
        List<ResidualTerm> departure) {
    public BinaryPair {
        departure = List.copyOf(departure);
    }
}
