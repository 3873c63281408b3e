package shimwright.bench.store.log;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.LogEntry;

/** What one pass over a sound log finds in its entries. */
public final class LogScan {
    private final Set<String> pictures = new LinkedHashSet<>();
    private final Set<String> documents = new LinkedHashSet<>();
    private final List<LogEntry> handedBack = new ArrayList<>();
    private final List<LogEntry> clockSetBack = new ArrayList<>();
    private Instant last = Instant.MIN;

    private LogScan() {}

    /** Reads the whole log once and checks its chain. */
    public static LogScan of(Connection database) throws SQLException {
        LogScan scan = new LogScan();
        try (Statement ask = database.createStatement();
                ResultSet rows = ask.executeQuery("select " + EntryRow.COLUMNS + " from entry order by number")) {
            while (rows.next()) {
                scan.take(EntryRow.of(rows).kept());
            }
        }
        return scan;
    }

    private void take(LogEntry kept) {
        Entry body = kept.body();
        if (body instanceof Entry.PictureAdded picture) {
            pictures.add(picture.picture());
        } else if (body instanceof Entry.JobOpened opened) {
            addDocument(opened.unitFile());
        } else if (body instanceof Entry.UnitMoved moved) {
            addDocument(moved.unitFile());
        } else if (body instanceof Entry.UnitPictured pictured) {
            pictured.pictures().forEach(picture -> pictures.add(picture.picture()));
            addDocument(pictured.manifest());
        } else if (body instanceof Entry.HandedBack) {
            handedBack.add(kept);
        }
        if (kept.draft().at().isBefore(last)) {
            clockSetBack.add(kept);
        }
        last = kept.draft().at();
    }

    private void addDocument(String hash) {
        if (!hash.isEmpty()) {
            documents.add(hash);
        }
    }

    /** Hashes of the pictures that entries name. */
    public Set<String> pictures() {
        return pictures;
    }

    /** Hashes of the documents that entries name. */
    public Set<String> documents() {
        return documents;
    }

    /** The entries that hand a unit back, in order. */
    public List<LogEntry> handedBack() {
        return handedBack;
    }

    /** Entries that are dated before the one in front of them. */
    public List<LogEntry> clockSetBack() {
        return clockSetBack;
    }
}
