package shimwright.bench.web.guard;

import java.util.concurrent.atomic.AtomicLong;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.util.NanoTime;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import shimwright.bench.text.Characters;

/** Says on the console who was refused, one line in ten seconds at most, so that nobody can fill a disk with it. */
public final class RefusalLog {
    private static final Logger LOG = LoggerFactory.getLogger(RefusalLog.class);
    private static final long PAUSE_SECONDS = 10;
    private static final int LONGEST = 120;

    private final AtomicLong next = new AtomicLong(NanoTime.now());
    private final AtomicLong unsaid = new AtomicLong();

    void refused(Request request, String why) {
        refused(
                Request.getRemoteAddr(request),
                request.getMethod() + " " + request.getHttpURI().getPath(),
                why);
    }

    /**
     * Somebody was refused.
     *
     * @param from the address it came from
     * @param what was asked, without its query
     * @param why in a few words
     */
    public void refused(String from, String what, String why) {
        long now = NanoTime.now();
        long due = next.get();
        if (NanoTime.isBefore(now, due) || !next.compareAndSet(due, now + PAUSE_SECONDS * 1_000_000_000L)) {
            unsaid.incrementAndGet();
            return;
        }
        LOG.warn("refused: {} {} ({}); {} more since the last line", from, line(what), line(why), unsaid.getAndSet(0));
    }

    /** One line, whatever was sent. */
    private static String line(String text) {
        String one = Characters.harmless(text).replaceAll("[\\r\\n\\t]", " ");
        return one.length() > LONGEST ? one.substring(0, LONGEST) + "…" : one;
    }
}
