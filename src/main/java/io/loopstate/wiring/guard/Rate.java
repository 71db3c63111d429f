package io.loopstate.wiring.guard;

import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import java.time.Duration;

/** How often a key may ask: a bucket that refills steadily, by the clock that only runs forward. */
final class Rate {
    private static final long SECOND = 1_000_000_000;

    private final int requestsPerMinute;
    private final Bucket bucket;

    /** One request. */
    record Turn(boolean allowed, long left, long secondsToFull, long secondsToNext) {}

    Rate(int requestsPerMinute) {
        this.requestsPerMinute = requestsPerMinute;
        this.bucket = Bucket.builder()
                .addLimit(limit ->
                        limit.capacity(requestsPerMinute).refillGreedy(requestsPerMinute, Duration.ofMinutes(1)))
                .withNanosecondPrecision()
                .build();
    }

    Turn take() {
        ConsumptionProbe probe = bucket.tryConsumeAndReturnRemaining(1);
        return new Turn(
                probe.isConsumed(),
                probe.getRemainingTokens(),
                seconds(probe.getNanosToWaitForReset()),
                Math.max(1, seconds(probe.getNanosToWaitForRefill())));
    }

    int requestsPerMinute() {
        return requestsPerMinute;
    }

    private static long seconds(long nanoseconds) {
        return (nanoseconds + SECOND - 1) / SECOND;
    }
}
