package shimwright.bench.store.log;

import java.util.concurrent.locks.LockSupport;

/** How much of a core long work may take: all of it, or, where nobody waits for it, a quarter. */
public final class Pace {
    private static final int REST = 3;

    private final int rest;
    private long since = System.nanoTime();

    private Pace(int rest) {
        this.rest = rest;
    }

    /** Work that somebody waits for. */
    public static Pace full() {
        return new Pace(0);
    }

    /** Work beside others: after each part of it three times as long nothing. For one thread. */
    public static Pace gentle() {
        return new Pace(REST);
    }

    /** A part of the work is done. */
    public void rest() {
        if (rest > 0) {
            LockSupport.parkNanos(rest * (System.nanoTime() - since));
            since = System.nanoTime();
        }
    }
}
