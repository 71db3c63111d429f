package io.loopstate.wiring.guard;

import java.util.LinkedHashMap;
import java.util.Map;

/** The rates of those who come with tokens: each has one of its own, made with its first request. */
final class Subjects {
    /** Each takes some 500 bytes. Who is forgotten begins again with all of its requests. */
    private static final int KEPT = 10_000;

    private final int requestsPerMinute;
    private final Map<String, Rate> rates = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Rate> eldest) {
            return size() > KEPT;
        }
    };

    Subjects(int requestsPerMinute) {
        this.requestsPerMinute = requestsPerMinute;
    }

    synchronized Rate rate(String subject) {
        return rates.computeIfAbsent(subject, name -> new Rate(requestsPerMinute));
    }
}
