package io.loopstate.fuzz;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.testing.HttpConnection;
import io.loopstate.testing.HttpReply;
import java.io.IOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;

/** Many random requests over a few connections, and what is wrong with the replies. */
final class RequestRun {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    /** A slow reply is asked for again: it is the request that has to be slow, not the machine. */
    private static final int TRIES = 3;

    private static final int BUSY = 503;
    private static final int MOST_FINDINGS = 30;
    private static final List<String> LEAKS = List.of("Exception", "fasterxml", "\tat ", "io.loopstate");

    private final URI server;
    private final long longest;
    private final Map<Integer, AtomicLong> byStatus = new ConcurrentHashMap<>();
    private final List<String> findings = Collections.synchronizedList(new ArrayList<>());
    private volatile long slowest;

    /** A reply may take so many nanoseconds. */
    RequestRun(URI server, long longest) {
        this.server = server;
        this.longest = longest;
    }

    /** Sends so many requests, half of them queries, in the order of a seed for each connection. */
    void run(long seed, int requests, int connections) throws InterruptedException {
        List<Thread> threads = new ArrayList<>();
        for (int i = 0; i < connections; i++) {
            long own = seed + i;
            int share = requests / connections;
            Thread thread = new Thread(() -> one(new RandomRequests(own), share));
            thread.start();
            threads.add(thread);
        }
        for (Thread thread : threads) {
            thread.join();
        }
    }

    /** What was wrong, a line each; empty where nothing was. */
    List<String> findings() {
        return List.copyOf(findings);
    }

    long requests() {
        return byStatus.values().stream().mapToLong(AtomicLong::get).sum();
    }

    /** How many were answered with a status. */
    long answered(int status) {
        return byStatus.getOrDefault(status, new AtomicLong()).get();
    }

    @Override
    public String toString() {
        return requests() + " requests, by status " + new TreeMap<>(byStatus) + ", slowest " + slowest / 1_000_000
                + " ms, findings " + findings.size();
    }

    private void one(RandomRequests requests, int count) {
        try (HttpConnection connection = new HttpConnection(server)) {
            for (int i = 0; i < count && findings.size() < MOST_FINDINGS; i++) {
                RandomRequests.Request request = i % 2 == 0 ? requests.query() : requests.body();
                ask(connection, request);
            }
        } catch (IOException | RuntimeException e) {
            // A reply that cannot be read, or a fault of this program: neither may pass for a run without findings.
            find(e.toString());
        }
    }

    private void ask(HttpConnection connection, RandomRequests.Request request) {
        String wrong = "";
        for (int i = 0; i < TRIES; i++) {
            long begin = System.nanoTime();
            try {
                HttpReply reply = connection.send(request.target(), request.body(), request.accept());
                long took = System.nanoTime() - begin;
                byStatus.computeIfAbsent(reply.status(), key -> new AtomicLong())
                        .incrementAndGet();
                String found = wrong(reply);
                if (!found.isEmpty() && reply.status() != BUSY) {
                    find(found + ": " + request);
                    return;
                }
                wrong = reply.status() == BUSY ? found : took > longest ? took / 1_000_000 + " ms" : "";
                if (wrong.isEmpty()) {
                    slowest = Math.max(slowest, took);
                    return;
                }
            } catch (IOException e) {
                wrong = e.toString();
            }
        }
        find(wrong + ": " + request);
    }

    private static String wrong(HttpReply reply) {
        if (reply.status() >= 500 || reply.status() < 200) {
            return "status " + reply.status() + ' ' + reply.text();
        }
        if (reply.contentType().contains("json")) {
            try {
                // Reads no number that is not finite.
                MAPPER.readTree(reply.text());
            } catch (JsonProcessingException e) {
                return "no JSON: " + e.getOriginalMessage();
            }
        } else if (Stream.of(",NaN", "Infinity").anyMatch(reply.text()::contains)) {
            return "a number that is none in " + reply.contentType();
        }
        // A text of the client's own may be repeated to it.
        return reply.status() == 200
                ? ""
                : LEAKS.stream()
                        .filter(reply.text()::contains)
                        .findFirst()
                        .map("tells of "::concat)
                        .orElse("");
    }

    private void find(String finding) {
        synchronized (findings) {
            if (findings.size() < MOST_FINDINGS) {
                findings.add(finding);
            }
        }
    }
}
