package io.loopstate.engine;

import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.ReferenceState;

/** Fluids of the catalog for tests, made once. */
public final class TestFluids {
    private static final Catalog CATALOG = Catalog.bundled();
    private static final Equilibria EQUILIBRIA = new Equilibria();

    private TestFluids() {}

    /** A fluid with the IIR reference state. */
    public static Equilibrium of(String designation) {
        return of(designation, ReferenceState.IIR);
    }

    public static Equilibrium of(String designation, ReferenceState reference) {
        return EQUILIBRIA.of(CATALOG.refrigerant(designation).orElseThrow(), reference);
    }
}
