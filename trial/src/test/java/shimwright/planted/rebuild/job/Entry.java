package shimwright.planted.rebuild.job;

/** Planted for others to make. */
public interface Entry {
    /** A note. */
    record Note(String text) implements Entry {}
}
