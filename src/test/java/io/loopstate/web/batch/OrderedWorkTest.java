package io.loopstate.web.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Order, bounds and ends of the window. */
@Timeout(60)
class OrderedWorkTest {
    private static final int WINDOW = 16;

    private final ExecutorService threads = Executors.newFixedThreadPool(4);
    private final Semaphore ready = new Semaphore(0);

    @AfterEach
    void stop() {
        threads.shutdownNow();
    }

    @Test
    void answersComeInOrderHoweverLongEachTakes() throws InterruptedException {
        Random random = new Random(1);
        int[] spins = random.ints(20_000, 0, 2_000).toArray();
        AtomicInteger atOnce = new AtomicInteger();
        AtomicInteger most = new AtomicInteger();
        OrderedWork<Integer> work = new OrderedWork<>(
                threads,
                3,
                WINDOW,
                1 << 20,
                row -> {
                    most.accumulateAndGet(atOnce.incrementAndGet(), Math::max);
                    for (int i = 0; i < spins[row]; i++) {
                        Thread.onSpinWait();
                    }
                    atOnce.decrementAndGet();
                    return new Answered(row, new byte[1]);
                },
                ready::release);
        List<Integer> taken = new ArrayList<>();
        int offered = 0;
        while (taken.size() < spins.length) {
            while (offered < spins.length && work.hasRoom()) {
                work.offer(offered++);
            }
            Optional<Answered> answer = work.take();
            if (answer.isPresent()) {
                taken.add(answer.get().status());
            } else {
                ready.acquire();
            }
            assertThat(offered - taken.size()).isLessThanOrEqualTo(WINDOW);
        }
        assertThat(work.isEmpty()).isTrue();
        assertThat(taken).isSorted().doesNotHaveDuplicates().hasSize(spins.length);
        assertThat(most.get()).isBetween(1, 3);
    }

    /** Nobody takes anything out: no more is begun than the bytes allow, one more for each thread. */
    @Test
    void waitingBytesAreBounded() throws InterruptedException {
        AtomicInteger begun = new AtomicInteger();
        OrderedWork<Integer> work = new OrderedWork<>(
                threads,
                2,
                WINDOW,
                1_000,
                row -> {
                    begun.incrementAndGet();
                    return new Answered(row, new byte[400]);
                },
                ready::release);
        for (int i = 0; i < WINDOW; i++) {
            work.offer(i);
        }
        assertThat(work.hasRoom()).isFalse();
        Thread.sleep(200);
        assertThat(begun.get()).isBetween(3, 4);
        for (int i = 0; i < WINDOW; ) {
            Optional<Answered> answer = work.take();
            if (answer.isPresent()) {
                assertThat(answer.get().status()).isEqualTo(i++);
            } else {
                ready.acquire();
            }
        }
        assertThat(begun.get()).isEqualTo(WINDOW);
    }

    @Test
    void cancelledRowsAreNotBegun() throws InterruptedException {
        CountDownLatch first = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        AtomicInteger begun = new AtomicInteger();
        OrderedWork<Integer> work = new OrderedWork<>(
                threads,
                1,
                WINDOW,
                1 << 20,
                row -> {
                    begun.incrementAndGet();
                    first.countDown();
                    await(go);
                    return new Answered(row, new byte[1]);
                },
                ready::release);
        for (int i = 0; i < WINDOW; i++) {
            work.offer(i);
        }
        first.await();
        work.cancel();
        go.countDown();
        threads.shutdown();
        assertThat(threads.awaitTermination(20, TimeUnit.SECONDS)).isTrue();
        assertThat(begun.get()).isEqualTo(1);
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
