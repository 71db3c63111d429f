package io.loopstate.engine.transport;

import io.loopstate.engine.fluid.Citation;

/** A correlation, the paper it comes from and the range stated there. */
record Correlation<T>(T formula, Citation source, CorrelationRange range) {}
