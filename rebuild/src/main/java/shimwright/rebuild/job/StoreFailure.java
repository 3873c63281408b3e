package shimwright.rebuild.job;

import java.io.Serial;
import shimwright.mechanics.outcome.Refusal;

/**
 * The log or another part of the store did not answer although it was sound when it was opened: a disk that broke or is
 * full, a file damaged while the program ran. Its sentence is for the person, who can do something about it.
 */
public final class StoreFailure extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1L;

    private final transient Refusal refusal;

    public StoreFailure(Refusal refusal, Throwable cause) {
        super(refusal.sentence(), cause);
        this.refusal = refusal;
    }

    public StoreFailure(Refusal refusal) {
        super(refusal.sentence());
        this.refusal = refusal;
    }

    /** The same as a plain sentence with place and hint. */
    public Refusal refusal() {
        return refusal;
    }
}
