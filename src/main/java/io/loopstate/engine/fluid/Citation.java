package io.loopstate.engine.fluid;

import java.util.Optional;

/** A published source: what to cite, and its DOI where it has one. */
public record Citation(String text, Optional<String> doi) {}
