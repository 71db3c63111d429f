package io.loopstate.engine.balance;

import io.loopstate.engine.balance.Loop.Trial;
import java.util.List;
import java.util.Optional;

/**
 * What a search for both pressures ended in: a balance, or why there is none.
 *
 * @param balance the machine where both coils are just large enough, or larger than anything needs
 * @param none the reason
 * @param tried every pair of pressures that was tried, in order
 * @param bracketed whether the fast iteration did not do and brackets did
 */
record Levels(Optional<Trial> balance, Optional<NoBalance> none, List<Attempt> tried, boolean bracketed) {
    Levels {
        tried = List.copyOf(tried);
    }

    /**
     * One pair of pressures that was tried.
     *
     * @param evaporating Pa
     * @param condensing Pa
     * @param massFlow kg/s
     * @param evaporatorShare of the coil that this flow needs
     * @param condenserShare likewise
     */
    record Attempt(
            double evaporating, double condensing, double massFlow, double evaporatorShare, double condenserShare) {}
}
