package shimwright.bench.demo;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands until the player lets time pass, so that a played job has a plausible past. */
final class PlayedClock extends Clock {
    private Instant now;

    PlayedClock(Instant from) {
        this.now = from;
    }

    /** Lets time pass. */
    void pass(Duration time) {
        now = now.plus(time);
    }

    /** Lets time pass until a moment; one that has passed changes nothing. */
    void passUntil(Instant moment) {
        now = moment.isAfter(now) ? moment : now;
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
        return now;
    }
}
