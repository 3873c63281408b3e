package shimwright.bench.web.kit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;

/**
 * What may take longer than a page has: worked out behind it, one thing at a time, and held while the same is asked for again. Work
 * that goes on for too long is interrupted, and answers with what it has or throws a {@link CancellationException}.
 *
 * @param <Q> all that the answer depends on, compared by value
 * @param <A> the answer
 */
public final class Behind<Q, A> {
    /** After so many ms the script of the page asks again. */
    public static final String AGAIN = "2000";

    /** So long a page waits itself, ms. */
    private static final long PATIENCE = 250;

    /** Longer than this nothing goes on, ms. */
    private static final long LONGEST = 30_000;

    private static final int HELD = 20;

    private final ExecutorService worker;
    private final ScheduledExecutorService watch;
    private final Map<String, Asked<Q, A>> asked = new LinkedHashMap<>(16, 0.75f, true);

    private record Asked<Q, A>(Q question, FutureTask<A> work) {}

    /**
     * Nothing is under way yet.
     *
     * @param name of its threads: what they do
     */
    public Behind(String name) {
        this.worker = Executors.newSingleThreadExecutor(work -> thread(work, name));
        this.watch = Executors.newSingleThreadScheduledExecutor(work -> thread(work, name + ", watched"));
    }

    private static Thread thread(Runnable work, String name) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        return thread;
    }

    /**
     * The answer, begun if it is not under way; empty while it is still worked out.
     *
     * @param place where it is asked: another question there takes the place of the one before
     * @param question all that the answer depends on
     * @param work gives the answer; what it throws is thrown here
     */
    public Optional<A> of(String place, Q question, Supplier<A> work) {
        FutureTask<A> task = begun(place, question, work);
        try {
            return Optional.of(task.get(PATIENCE, TimeUnit.MILLISECONDS));
        } catch (TimeoutException | CancellationException goesOn) {
            // another question at the same place stopped this one: the page asks again
            return Optional.empty();
        } catch (InterruptedException closing) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        } catch (ExecutionException broken) {
            if (broken.getCause() instanceof RuntimeException bug) {
                throw bug;
            }
            throw new IllegalStateException(broken.getCause());
        }
    }

    private synchronized FutureTask<A> begun(String place, Q question, Supplier<A> work) {
        Asked<Q, A> before = asked.get(place);
        if (before != null && before.question().equals(question)) {
            return before.work();
        }
        if (before != null) {
            before.work().cancel(true);
        }
        FutureTask<A> task = new FutureTask<>(() -> watched(work));
        asked.put(place, new Asked<>(question, task));
        if (asked.size() > HELD) {
            var oldest = asked.entrySet().iterator();
            oldest.next().getValue().work().cancel(true);
            oldest.remove();
        }
        worker.execute(task);
        return task;
    }

    private A watched(Supplier<A> work) {
        Thread worked = Thread.currentThread();
        Future<?> end = watch.schedule(worked::interrupt, LONGEST, TimeUnit.MILLISECONDS);
        try {
            return work.get();
        } finally {
            end.cancel(false);
        }
    }
}
