package shimwright.rebuild.job;

import java.util.List;

/** What an act came to at the log. */
public sealed interface AppendResult {
    /** The act is kept, now or from an earlier post of the same; its entries in the order of the act. */
    record Entries(List<LogEntry> entries) implements AppendResult {
        public Entries {
            entries = List.copyOf(entries);
        }
    }

    /**
     * Nothing was written, because the log is not any more as the act supposes: look again and decide anew.
     *
     * @param streams those that went on, by name; empty when it is the log as a whole
     */
    record Moved(List<String> streams) implements AppendResult {
        public Moved {
            streams = List.copyOf(streams);
        }
    }
}
