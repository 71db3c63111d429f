package io.loopstate.engine.flash;

import io.loopstate.engine.fluid.Mixture;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.atomic.LongAdder;

/** Models of mixtures of callers' own compositions, the most recently used of them. */
final class RecentMixtures {
    /** Each takes some 100 kB. */
    static final int KEPT = 64;

    private final Map<String, FluidModel> models = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, FluidModel> eldest) {
            return size() > KEPT;
        }
    };

    private final LongAdder hits = new LongAdder();
    private final LongAdder misses = new LongAdder();

    /** How many are kept now. */
    int size() {
        synchronized (models) {
            return models.size();
        }
    }

    /** How often a model was there when it was asked for. */
    long hits() {
        return hits.sum();
    }

    /** How often it had to be made. */
    long misses() {
        return misses.sum();
    }

    /** The model of a mixture, made outside the lock: two at once may make it twice, which does no harm. */
    FluidModel of(Mixture mixture) {
        synchronized (models) {
            FluidModel known = models.get(mixture.designation());
            if (known != null) {
                hits.increment();
                return known;
            }
        }
        misses.increment();
        FluidModel made = FluidModels.of(mixture);
        synchronized (models) {
            models.put(mixture.designation(), made);
        }
        return made;
    }
}
