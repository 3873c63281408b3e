package shimwright.bench.store.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shimwright.bench.store.content.FilePictureStore;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.log.LogScan;
import shimwright.bench.store.log.Schema;
import shimwright.bench.store.log.Sql;
import shimwright.bench.store.sign.RememberedHeads;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/** A data folder that a backup is taken of. */
final class FolderOrigin implements Backup.Origin {
    private final DataFolder from;

    FolderOrigin(DataFolder from) {
        this.from = from;
    }

    @Override
    public String name() {
        return RememberedHeads.name(from.root());
    }

    @Override
    public boolean isThere() {
        return Files.exists(from.database());
    }

    @Override
    public void copyLog(DataFolder to) throws SQLException {
        try (Connection database = Sql.toRead(from.database());
                PreparedStatement copy = database.prepareStatement("vacuum into ?")) {
            copy.setString(1, to.database().toAbsolutePath().toString());
            copy.execute();
        }
    }

    @Override
    public List<Refusal> copyRest(DataFolder to) throws IOException, SQLException {
        List<Refusal> missing = copyPictures(to);
        Backup.copyAll(from.documents(), to.documents());
        Backup.copyAll(from.units(), to.units());
        return missing;
    }

    private List<Refusal> copyPictures(DataFolder to) throws IOException, SQLException {
        Outcome<FilePictureStore> opened = FilePictureStore.open(to.pictures());
        if (!(opened instanceof Outcome.Ok<FilePictureStore> target)) {
            throw new IOException(opened.refusals().get(0).sentence());
        }
        FilePictureStore source = FilePictureStore.over(from.pictures());
        List<Refusal> missing = new ArrayList<>();
        for (String hash : named(to)) {
            Optional<byte[]> content = source.find(hash);
            if (content.isEmpty() || !target.value().keep(hash, content.get()).isOk()) {
                missing.add(Refusal.at(
                        "picture " + hash.substring(0, Math.min(12, hash.length())),
                        "an entry names it, but it is not there or not whole",
                        "Look for it in an older backup"));
            }
        }
        return missing;
    }

    private static Set<String> named(DataFolder copy) throws SQLException {
        try (Connection database = Sql.toRead(copy.database())) {
            return Schema.version(database) == 0
                    ? Set.of()
                    : LogScan.of(database).pictures();
        }
    }
}
