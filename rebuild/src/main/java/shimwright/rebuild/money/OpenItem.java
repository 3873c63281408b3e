package shimwright.rebuild.money;

/**
 * Something that a job may need and nobody knows yet, as a line of a quote.
 *
 * @param key by which chance and price are typed
 * @param what in words
 * @param cents what it costs, hundredths of the currency; -1 where no list says
 * @param chance that it is needed, 0 to 1; -1 where nobody can say
 * @param why where chance and price come from
 */
public record OpenItem(String key, String what, long cents, double chance, String why) {
    /** Neither price nor chance is known. */
    public static final int UNKNOWN = -1;
}
