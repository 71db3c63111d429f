package io.loopstate.engine.transport;

import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.fluid.Fluid;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Transport properties of fluids, the correlations of each built when first asked for and then kept. Thread-safe. */
public final class TransportLibrary {
    private final Catalog catalog;
    private final Map<String, TransportProperties> built = new ConcurrentHashMap<>();

    /** @param catalog of the fluids, where reference fluids of corresponding-states correlations are found */
    public TransportLibrary(Catalog catalog) {
        this.catalog = catalog;
    }

    public TransportProperties of(Fluid fluid) {
        return built.computeIfAbsent(fluid.designation(), designation -> TransportProperties.of(fluid, catalog));
    }
}
