package shimwright.bench.store.postgres;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import shimwright.bench.store.content.CheckedPicture;
import shimwright.bench.store.content.FileDocumentStore;
import shimwright.bench.store.disk.Disk;
import shimwright.bench.store.log.Connections;
import shimwright.bench.store.log.Sql;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.DocumentStore;
import shimwright.rebuild.job.PictureStore;

/** Pictures and documents as rows of the shop's database, by the hash of their content. */
public final class PostgresContents {
    public static final String PICTURE = "picture";
    public static final String DOCUMENT = "document";

    private final Connections connections;

    public PostgresContents(Connections connections) {
        this.connections = connections;
    }

    /** The pictures of the shop. */
    public PictureStore pictures() {
        return new PictureStore() {
            @Override
            public Outcome<Picture> keep(String name, byte[] content) {
                return CheckedPicture.of(name, content)
                        .flatMap(checked -> kept(name, checked.picture().hash(), PICTURE, content)
                                .map(hash -> checked.picture()));
            }

            @Override
            public Outcome<Picture> check(String name, byte[] content) {
                return CheckedPicture.of(name, content).map(CheckedPicture::picture);
            }

            @Override
            public Optional<byte[]> find(String hash) {
                return found(hash, PICTURE);
            }
        };
    }

    /** The unit files and other documents of the shop. */
    public DocumentStore documents() {
        return new DocumentStore() {
            @Override
            public Outcome<String> keep(String name, byte[] content) {
                return FileDocumentStore.checked(name, content).flatMap(hash -> kept(name, hash, DOCUMENT, content));
            }

            @Override
            public Optional<byte[]> find(String hash) {
                return found(hash, DOCUMENT);
            }
        };
    }

    private Outcome<String> kept(String name, String hash, String kind, byte[] content) {
        try {
            return connections.ask(database -> {
                put(database, hash, kind, content);
                return Outcome.ok(hash);
            });
        } catch (SQLException failed) {
            return Outcome.refused(
                    List.of(Refusal.at(name, "not kept: " + Sql.why(failed), "Put that right and send it again")));
        }
    }

    /** Writes a content, also over one of this hash that is not as it should be. */
    public static void put(Connection database, String hash, String kind, byte[] content) throws SQLException {
        try (PreparedStatement put =
                database.prepareStatement("insert into content (hash, kind, bytes) values (?, ?, ?)"
                        + " on conflict (hash, kind) do update set bytes = excluded.bytes"
                        + " where content.bytes is distinct from excluded.bytes")) {
            put.setString(1, hash);
            put.setString(2, kind);
            put.setBytes(3, content);
            put.executeUpdate();
        }
    }

    private Optional<byte[]> found(String hash, String kind) {
        try {
            return connections.ask(database -> get(database, hash, kind));
        } catch (SQLException unreadable) {
            return Optional.empty();
        }
    }

    /** A content, if it is there and still matches its hash. */
    public static Optional<byte[]> get(Connection database, String hash, String kind) throws SQLException {
        try (PreparedStatement ask =
                database.prepareStatement("select bytes from content where hash = ? and kind = ?")) {
            ask.setString(1, hash);
            ask.setString(2, kind);
            try (ResultSet rows = ask.executeQuery()) {
                return rows.next()
                        ? Optional.of(rows.getBytes(1)).filter(bytes -> hash.equals(Disk.hash(bytes)))
                        : Optional.empty();
            }
        }
    }
}
