package evenwater.chemistry.uncertainty;

import evenwater.chemistry.quantity.NoAnswerException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.FutureTask;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Function;
import javax.measure.Quantity;

/**
 * Runs a computation for many draws, in chunks that have a generator of their own, so that who runs which chunk makes no difference.
 *
 * <p>The calling thread takes chunks from the front that nobody has begun, and waits for those that are running elsewhere only: it never
 * waits for a thread that an executor may not have.
 */
record Trials(Inputs inputs, long seed, int draws, Executor executor) {

    private static final int CHUNK = 250;

    /** Takes the result of the draw at a place; places come in any order, each once, from several threads. */
    @FunctionalInterface
    interface Sink<R> {
        void accept(int place, R result);
    }

    /** Draws without an answer: how many, and the first of them. */
    private record Failures(int count, int first, RuntimeException reason) {

        private Failures plus(Failures later) {
            return new Failures(count + later.count, first, reason);
        }
    }

    /** The result of the first draw, computed beforehand; empty if it has none. */
    <R> Optional<R> first(Function<Draw, R> computation) {
        try {
            return Optional.of(computation.apply(inputs.draw(generators().get(0))));
        } catch (NoAnswerException | ArithmeticException | IllegalArgumentException e) {
            return Optional.empty(); // the run finds it again, and counts
        }
    }

    private List<SplittableRandom> generators() {
        SplittableRandom root = new SplittableRandom(seed);
        List<SplittableRandom> generators = new ArrayList<>();
        for (int start = 0; start < draws; start += CHUNK) {
            generators.add(root.split());
        }
        return generators;
    }

    /**
     * Runs all draws.
     *
     * @throws NoAnswerException if draws have no answer
     */
    <R> void run(Function<Draw, R> computation, Sink<R> sink) {
        List<FutureTask<Optional<Failures>>> tasks = new ArrayList<>();
        for (SplittableRandom generator : generators()) {
            int start = CHUNK * tasks.size();
            tasks.add(new FutureTask<>(() -> chunk(start, generator, computation, sink)));
        }
        try {
            hand(tasks);
            Optional<Failures> failures = Optional.empty();
            for (FutureTask<Optional<Failures>> task : tasks) {
                task.run(); // does nothing if another thread has begun it
                Optional<Failures> more = result(task);
                failures = failures.isPresent() && more.isPresent()
                        ? Optional.of(failures.get().plus(more.get()))
                        : failures.or(() -> more);
            }
            failures.ifPresent(this::refuse);
        } finally {
            tasks.forEach(task -> task.cancel(false));
        }
    }

    private void hand(List<? extends Runnable> tasks) {
        try {
            tasks.forEach(executor::execute);
        } catch (RejectedExecutionException e) {
            return; // the calling thread does what is left
        }
    }

    private <R> Optional<Failures> chunk(
            int start, SplittableRandom generator, Function<Draw, R> computation, Sink<R> sink) {
        Optional<Failures> failures = Optional.empty();
        for (int place = start; place < Math.min(start + CHUNK, draws); place++) {
            Draw draw = inputs.draw(generator);
            try {
                sink.accept(place, computation.apply(draw));
            } catch (Inputs.UndeclaredInputException e) {
                throw e;
            } catch (NoAnswerException | ArithmeticException | IllegalArgumentException e) {
                Failures one = new Failures(1, place, e);
                failures = Optional.of(failures.map(before -> before.plus(one)).orElse(one));
            }
        }
        return failures;
    }

    private static <T> T result(FutureTask<T> task) {
        boolean isInterrupted = false;
        try {
            while (true) {
                try {
                    return task.get();
                } catch (InterruptedException e) {
                    isInterrupted = true; // a chunk is soon over; whoever interrupted is answered then
                } catch (ExecutionException e) {
                    throw rethrown(e);
                }
            }
        } finally {
            if (isInterrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private static RuntimeException rethrown(ExecutionException e) {
        Throwable cause = e.getCause();
        if (cause instanceof Error error) {
            throw error;
        }
        return cause instanceof RuntimeException exception ? exception : new IllegalStateException(e);
    }

    private void refuse(Failures failures) {
        RuntimeException reason = failures.reason();
        Quantity<?>[] numbers = reason instanceof NoAnswerException known
                ? known.numbers().toArray(Quantity<?>[]::new)
                : new Quantity<?>[0];
        NoAnswerException refusal = new NoAnswerException(
                "no answer for " + failures.count() + " of " + draws + " draws; for the first of them, draw "
                        + (failures.first() + 1) + ": " + reason.getMessage(),
                numbers);
        refusal.initCause(reason);
        throw refusal;
    }
}
