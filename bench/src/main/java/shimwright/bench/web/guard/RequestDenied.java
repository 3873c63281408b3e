package shimwright.bench.web.guard;

import java.util.List;
import shimwright.mechanics.outcome.Refusal;

/**
 * Why a request is not answered as it was asked, thrown where no value can be handed back.
 *
 * @see Guard for what becomes of it
 */
public final class RequestDenied extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int status;
    private final transient List<Refusal> refusals;

    public RequestDenied(int status, List<Refusal> refusals) {
        super(refusals.isEmpty() ? "" : refusals.get(0).sentence(), null, false, false);
        this.status = status;
        this.refusals = List.copyOf(refusals);
    }

    public RequestDenied(int status, String place, String fact, String hint) {
        this(status, List.of(Refusal.at(place, fact, hint)));
    }

    /** The HTTP status, 400 to 499. */
    public int status() {
        return status;
    }

    /** Why the request was not let in. */
    public List<Refusal> refusals() {
        return refusals;
    }
}
