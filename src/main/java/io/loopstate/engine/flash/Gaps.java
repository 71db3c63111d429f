package io.loopstate.engine.flash;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What a search along a line does not see: beyond the range there is nothing, and in its gaps nothing is computed. */
final class Gaps {
    private final List<EngineException> met = new ArrayList<>();

    /** What a flash finds, empty beyond the range and in a gap, which is remembered. */
    <T> Optional<T> ifComputed(Supplier<T> flash) {
        try {
            return Optional.of(flash.get());
        } catch (EngineException e) {
            if (e.isGap()) {
                met.add(e);
            } else if (e.code() != ErrorCode.OUT_OF_RANGE) {
                throw e;
            }
            return Optional.empty();
        }
    }

    /** Why states within the range are not computed, of the first gap that was met. */
    Optional<EngineException> first() {
        return met.stream().findFirst();
    }
}
