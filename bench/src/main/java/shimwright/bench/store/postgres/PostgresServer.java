package shimwright.bench.store.postgres;

import java.net.URI;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.postgresql.ds.PGSimpleDataSource;
import shimwright.bench.store.log.Sql;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/** A PostgreSQL database as it is named on the command line, and connections to it. */
public final class PostgresServer {
    private static final int CONNECT_SECONDS = 10;

    private final PGSimpleDataSource source;
    private final String name;

    private PostgresServer(PGSimpleDataSource source, String name) {
        this.source = source;
        this.name = name;
    }

    /**
     * The database of an address such as {@code postgresql://user@host:5432/shop}.
     *
     * @param address a password may stand in it, but is better kept in the user's password file
     */
    public static Outcome<PostgresServer> of(String address) {
        try {
            URI uri = URI.create(address);
            String path = uri.getPath() == null ? "" : uri.getPath().replaceFirst("^/", "");
            if (!List.of("postgresql", "postgres").contains(String.valueOf(uri.getScheme()))
                    || uri.getHost() == null
                    || path.isEmpty()) {
                return notAnAddress(address);
            }
            PGSimpleDataSource source = new PGSimpleDataSource();
            source.setServerNames(new String[] {uri.getHost()});
            if (uri.getPort() > 0) {
                source.setPortNumbers(new int[] {uri.getPort()});
            }
            source.setDatabaseName(path);
            String[] user = (uri.getUserInfo() == null ? "" : uri.getUserInfo()).split(":", 2);
            if (!user[0].isEmpty()) {
                source.setUser(user[0]);
            }
            if (user.length > 1) {
                source.setPassword(user[1]);
            }
            // whatever the server's own settings are: a commit is synced, and sees what was kept before it
            source.setOptions("-c synchronous_commit=on -c default_transaction_isolation=read\\ committed");
            source.setConnectTimeout(CONNECT_SECONDS);
            source.setApplicationName("shimwright");
            return Outcome.ok(new PostgresServer(
                    source, "postgresql://" + uri.getHost() + ":" + source.getPortNumbers()[0] + "/" + path));
        } catch (IllegalArgumentException odd) {
            return notAnAddress(address);
        }
    }

    private static Outcome<PostgresServer> notAnAddress(String address) {
        return Outcome.refused(Refusal.of(
                "--store",
                "\"" + address.replaceAll(":[^:@/]*@", ":…@") + "\" is not the address of a database",
                "Type it like postgresql://user@host:5432/shop"));
    }

    /** The address without a password. */
    public String name() {
        return name;
    }

    /** A connection to the shop's database. */
    public Connection connect() throws SQLException {
        return source.getConnection();
    }

    /** Brings the tables to the newest version. */
    public Outcome<PostgresServer> migrate() {
        try {
            // first by itself: its error says more than that of the library
            connect().close();
            Flyway.configure(PostgresServer.class.getClassLoader())
                    .dataSource(source)
                    .locations("classpath:db/postgresql")
                    .load()
                    .migrate();
            return Outcome.ok(this);
        } catch (SQLException failed) {
            return Outcome.refused(List.of(Refusal.at(
                    name, "the database cannot be used: " + Sql.why(failed), "Look whether it runs and lets you in")));
        } catch (FlywayException failed) {
            return Outcome.refused(List.of(Refusal.at(
                    name,
                    "the tables are not as this program made them: "
                            + String.valueOf(failed.getMessage())
                                    .lines()
                                    .findFirst()
                                    .orElse(""),
                    "Use the newer program, or a database of its own for the shop")));
        }
    }
}
