package shimwright.bench.desk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Jobs that a page wants to know something of: a few are read for it, more of them behind it, one list after another. A list that was
 * read through once is given whole from then on.
 *
 * @param <T> what is read of each
 */
final class ReadAhead<T> {
    /** So many are read in the page itself: a tenth of a second of a core. */
    private static final int IN_THE_PAGE = 6;

    /** So long the page that asks first waits for the others, ms. */
    private static final long PATIENCE = 250;

    private static final int HELD = 20;

    private final Predicate<JobSummary> atHand;
    private final Function<JobSummary, Optional<T>> read;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(ReadAhead::thread);
    private final Recent<FutureTask<Long>> begun = new Recent<>(HELD, one -> 1);

    /**
     * Nothing is read yet.
     *
     * @param atHand whether reading one costs nothing
     * @param read reads one; empty where it has nothing to say
     */
    ReadAhead(Predicate<JobSummary> atHand, Function<JobSummary, Optional<T>> read) {
        this.atHand = atHand;
        this.read = read;
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "reads earlier boxes");
        thread.setDaemon(true);
        return thread;
    }

    /** What is known of these jobs as they are now. */
    SoFar<T> of(List<JobSummary> wanted) {
        boolean few = wanted.stream().filter(atHand.negate()).count() <= IN_THE_PAGE;
        boolean all = few || done(wanted);
        Map<String, T> known = new LinkedHashMap<>();
        wanted.stream()
                .filter(line -> all || atHand.test(line))
                .forEach(line -> read.apply(line).ifPresent(one -> known.put(line.job(), one)));
        return new SoFar<>(known, all);
    }

    private boolean done(List<JobSummary> wanted) {
        String key = wanted.stream()
                .map(line -> line.job() + " " + line.head().hash())
                .reduce("", (all, line) -> all + line + "\n");
        FutureTask<Long> task = new FutureTask<>(() ->
                wanted.stream().filter(line -> read.apply(line).isPresent()).count());
        FutureTask<Long> before = begun.of(key, none -> task);
        if (before != task) {
            return before.isDone();
        }
        worker.execute(task);
        try {
            return task.get(PATIENCE, TimeUnit.MILLISECONDS) >= 0;
        } catch (TimeoutException goesOn) {
            return false;
        } catch (ExecutionException damaged) {
            // whoever reads that job for its page is told what is wrong with it
            return true;
        } catch (InterruptedException closing) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
