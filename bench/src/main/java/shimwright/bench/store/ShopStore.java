package shimwright.bench.store;

import java.nio.file.Path;
import java.util.Optional;
import shimwright.bench.store.content.FileDocumentStore;
import shimwright.bench.store.content.FilePictureStore;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.log.OpenLog;
import shimwright.bench.store.postgres.PostgresContents;
import shimwright.bench.store.postgres.PostgresJobLog;
import shimwright.bench.store.postgres.PostgresServer;
import shimwright.bench.store.sign.OwnerFolder;
import shimwright.bench.store.sqlite.SqliteJobLog;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.job.DocumentStore;
import shimwright.rebuild.job.PictureStore;

/** All that a shop keeps, open: in a data folder, or in a database that several benches share. */
public record ShopStore(OpenLog log, PictureStore pictures, DocumentStore documents) implements AutoCloseable {
    /** What a data folder keeps. */
    public static Outcome<ShopStore> in(Path folder, OpenLog.Opening how, Optional<OwnerFolder> owner) {
        DataFolder files = new DataFolder(folder);
        return SqliteJobLog.open(folder, how, owner).flatMap(log -> {
            Outcome<ShopStore> opened = FilePictureStore.open(files.pictures())
                    .flatMap(pictures -> FileDocumentStore.open(files.documents())
                            .map(documents -> new ShopStore(log, pictures, documents)));
            if (!opened.isOk()) {
                log.close();
            }
            return opened;
        });
    }

    /** What a database keeps. */
    public static Outcome<ShopStore> at(String address, OpenLog.Opening how, Optional<OwnerFolder> owner) {
        return PostgresServer.of(address)
                .flatMap(server -> PostgresJobLog.open(server, how, owner))
                .map(log -> {
                    PostgresContents contents = new PostgresContents(log.connections());
                    return new ShopStore(log, contents.pictures(), contents.documents());
                });
    }

    @Override
    public void close() {
        log.close();
    }
}
