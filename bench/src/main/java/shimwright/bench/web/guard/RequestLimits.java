package shimwright.bench.web.guard;

import java.lang.management.ManagementFactory;
import java.lang.management.OperatingSystemMXBean;
import java.time.Duration;

/** Every limit of what comes in over the network, in one place. Bytes unless a name says otherwise. */
public final class RequestLimits {
    private static final int MB = 1024 * 1024;

    /** Request line and headers together, cookies among them; more is answered 431 or 414. */
    public static final int HEADERS = 32 * 1024;

    /** The address alone, in characters. */
    public static final int ADDRESS = 24_000;

    /** A form without files. */
    public static final int FORM = MB;

    /** A form with files, or a bundle; the largest picture, or bundle, is 12 MB by its own limit. */
    public static final int UPLOAD = 13 * MB;

    /** What a program may send at a time. */
    public static final int API = 4 * MB;

    /** A body of somebody who has not been let in. */
    public static final int STRANGER = 4 * 1024;

    /** What is taken in and thrown away, so that the sender of too much gets to read why. */
    public static final long DRAINED = 64L * MB;

    /** Fields of a form. */
    public static final int FIELDS = 500;

    /** The name of a field, in characters. */
    public static final int FIELD_NAME = 100;

    /** One field, in characters; each text has its own lower limit, the largest is a unit file pasted as text. */
    public static final int FIELD = 200_000;

    /** A cookie of ours, in characters; a longer one is none of ours. */
    public static final int COOKIE = 600;

    /** Bytes of a body that count against nobody's share. */
    static final int SMALL = 64 * 1024;

    /** How long a connection may say nothing. */
    public static final Duration IDLE = Duration.ofSeconds(20);

    /** The same while there are as many connections as there may be. */
    public static final Duration IDLE_WHEN_FULL = Duration.ofMillis(600);

    /** How long a body may take before its speed counts. */
    static final Duration GRACE = Duration.ofSeconds(10);

    /** The least speed of a body after that, bytes a second over its whole time. */
    static final int SPEED = 2_000;

    private static final int CONNECTIONS = 400;
    private static final int FEWEST_CONNECTIONS = 32;
    private static final int OWN_HANDLES = 110;
    private static final int STILL_TO_OPEN = 90;

    private RequestLimits() {}

    /** Connections at a time: what the program's file handles leave, at most 400. */
    public static int connections() {
        OperatingSystemMXBean system = ManagementFactory.getOperatingSystemMXBean();
        if (!(system instanceof com.sun.management.UnixOperatingSystemMXBean unix)) {
            return CONNECTIONS;
        }
        long own = Math.max(OWN_HANDLES, unix.getOpenFileDescriptorCount() + STILL_TO_OPEN);
        return (int) Math.max(FEWEST_CONNECTIONS, Math.min(CONNECTIONS, unix.getMaxFileDescriptorCount() - own));
    }

    /** Bytes of all bodies that are under way at a time: an eighth of the memory that the program may take. */
    static long underWay() {
        return Runtime.getRuntime().maxMemory() / 8;
    }
}
