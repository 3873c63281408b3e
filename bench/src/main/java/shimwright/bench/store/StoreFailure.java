package shimwright.bench.store;

import java.io.Serial;
import shimwright.mechanics.outcome.Refusal;

/** The log could not be read although it was sound when it was opened. */
public final class StoreFailure extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1L;

    private final transient Refusal refusal;

    StoreFailure(Refusal refusal, Throwable cause) {
        super(refusal.sentence(), cause);
        this.refusal = refusal;
    }

    StoreFailure(Refusal refusal) {
        super(refusal.sentence());
        this.refusal = refusal;
    }

    /** The same as a plain sentence with place and hint. */
    public Refusal refusal() {
        return refusal;
    }
}
