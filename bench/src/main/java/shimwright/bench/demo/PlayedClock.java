package shimwright.bench.demo;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that moves on a little each time it is asked, so that a played job has a plausible past. */
final class PlayedClock extends Clock {
    private Instant now;
    private final Duration each;

    PlayedClock(Instant from, Duration each) {
        this.now = from;
        this.each = each;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }

    @Override
    public Instant instant() {
        now = now.plus(each);
        return now;
    }
}
