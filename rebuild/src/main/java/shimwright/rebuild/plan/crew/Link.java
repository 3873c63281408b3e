package shimwright.rebuild.plan.crew;

/**
 * A time lag between starts: start(to) - start(from) &gt;= least. Less than 0 it is a longest wait: from starts no later than
 * -least after to.
 *
 * @param from id of an activity; empty for the beginning of everything, at 0
 * @param to id of an activity; empty for the beginning of everything
 * @param least whole units of time
 * @param words what the lag stands for, as refusals name it
 */
public record Link(String from, String to, int least, String words) {
    /** To starts no sooner than so long after the end of from. */
    public static Link after(Activity from, String to, int wait, String words) {
        return new Link(from.id(), to, from.duration() + wait, words);
    }

    /** Closes ends no later than so long after the end of opens. */
    public static Link within(Activity opens, Activity closes, int longest, String words) {
        return new Link(closes.id(), opens.id(), closes.duration() - opens.duration() - longest, words);
    }

    /** True where it says how long something may wait at most. */
    boolean limits() {
        return least < 0 || to.isEmpty();
    }
}
