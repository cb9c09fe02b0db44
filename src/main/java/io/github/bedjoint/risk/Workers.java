package io.github.bedjoint.risk;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;

/** Does the same for many numbers on several threads; which thread takes which number does not matter to whoever writes by number. */
record Workers(int threads) {
    private static final int AT_ONCE = 128;

    void forEach(int count, IntConsumer body) {
        if (threads == 1 || count == 1) {
            for (int i = 0; i < count; i++) {
                body.accept(i);
            }
            return;
        }
        int atOnce = Math.max(1, Math.min(AT_ONCE, count / threads));
        AtomicInteger next = new AtomicInteger();
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<?>> running = new ArrayList<>();
            for (int thread = 0; thread < threads; thread++) {
                running.add(pool.submit(() -> {
                    for (int from = next.getAndAdd(atOnce); from < count; from = next.getAndAdd(atOnce)) {
                        for (int i = from; i < Math.min(count, from + atOnce); i++) {
                            body.accept(i);
                        }
                    }
                }));
            }
            for (Future<?> one : running) {
                one.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The simulation was interrupted", e);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }
}
