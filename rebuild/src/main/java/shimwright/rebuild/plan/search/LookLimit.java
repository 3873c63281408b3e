package shimwright.rebuild.plan.search;

import java.util.function.BooleanSupplier;

/** How much one call may still look at; asked to stop, nothing more. */
final class LookLimit {
    /** Looks after which is asked whether to stop. */
    private static final int ASKED = 256;

    private final BooleanSupplier stop;
    private long left;
    private boolean spent;
    /** Looks of all calls. */
    long made;

    LookLimit(BooleanSupplier stop) {
        this.stop = stop;
    }

    /** From now on so many looks. */
    void allow(long most) {
        left = most;
        spent = most <= 0;
    }

    /** True for one look more. */
    boolean take() {
        if (!spent && (--left < 0 || (++made % ASKED == 0 && stop.getAsBoolean()))) {
            spent = true;
        }
        return !spent;
    }

    /** From now on no look more. */
    void spend() {
        spent = true;
    }

    /** True once a look was refused. */
    boolean spent() {
        return spent;
    }
}
