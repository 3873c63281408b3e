package shimwright.bench.store;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shimwright.bench.store.disk.Disk;

/**
 * A PostgreSQL server of this test run's own, on a port of the loopback, thrown away at its end. It is installed where it is
 * missing and this user may install; where it cannot be had, whoever asks is skipped and says why.
 */
public final class TestPostgres {
    private static final AtomicInteger NUMBER = new AtomicInteger();
    private static @Nullable TestPostgres running;
    private static String missing = "";

    private final Path bin;
    private final Path data;
    private final int port;

    private TestPostgres(Path bin, Path data, int port) {
        this.bin = bin;
        this.data = data;
        this.port = port;
    }

    /** The server, started when first asked for. */
    public static synchronized TestPostgres get() {
        if (running == null && missing.isEmpty()) {
            try {
                running = started();
            } catch (IOException | InterruptedException cannot) {
                missing = "No PostgreSQL server could be started here: " + cannot.getMessage();
            }
        }
        TestPostgres server = running;
        assumeTrue(server != null, missing);
        return java.util.Objects.requireNonNull(server);
    }

    /** The address of a new, empty database. */
    public String database() {
        String name = "shop" + NUMBER.incrementAndGet() + "_"
                + ProcessHandle.current().pid();
        sql("postgres", "create database " + name);
        return "postgresql://shimwright@127.0.0.1:" + port + "/" + name;
    }

    /** Runs statements on a database as a person with a client could. */
    void sql(String database, String... statements) {
        String url = "jdbc:postgresql://127.0.0.1:" + port + "/" + database + "?user=shimwright";
        try (Connection raw = DriverManager.getConnection(url);
                Statement run = raw.createStatement()) {
            for (String statement : statements) {
                run.execute(statement);
            }
        } catch (SQLException failed) {
            throw new IllegalStateException(failed);
        }
    }

    static String nameIn(String address) {
        return address.substring(address.lastIndexOf('/') + 1);
    }

    /** Stops and starts the server at once, as a power cut would: whoever is connected is cut off. */
    void restart() {
        try {
            run(asOther(List.of(
                    bin.resolve("pg_ctl").toString(),
                    "-D",
                    data.toString(),
                    "-w",
                    "-m",
                    "immediate",
                    "restart",
                    "-l",
                    data.resolve("log").toString())));
        } catch (IOException | InterruptedException failed) {
            throw new IllegalStateException(failed);
        }
    }

    private static TestPostgres started() throws IOException, InterruptedException {
        Path bin = bin();
        Path data = Files.createTempDirectory("shimwright-postgres-");
        if (isRoot()) {
            run(List.of("chown", "postgres", data.toString()));
        }
        int port;
        try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            port = free.getLocalPort();
        }
        Path cluster = data.resolve("cluster");
        run(asOther(List.of(
                bin.resolve("initdb").toString(),
                "-D",
                cluster.toString(),
                "-U",
                "shimwright",
                "-E",
                "UTF8",
                "-A",
                "trust",
                "--no-sync")));
        String options =
                "-p " + port + " -k " + data + " -c listen_addresses=127.0.0.1 -c max_connections=100 -c fsync=off";
        run(asOther(List.of(
                bin.resolve("pg_ctl").toString(),
                "-D",
                cluster.toString(),
                "-w",
                "-o",
                options,
                "-l",
                cluster.resolve("log").toString(),
                "start")));
        TestPostgres server = new TestPostgres(bin, cluster, port);
        Runtime.getRuntime().addShutdownHook(new Thread(server::stop));
        return server;
    }

    private void stop() {
        try {
            run(asOther(List.of(bin.resolve("pg_ctl").toString(), "-D", data.toString(), "-m", "immediate", "stop")));
            Disk.deleteAll(Disk.parent(data));
        } catch (IOException | InterruptedException left) {
            return;
        }
    }

    private static Path bin() throws IOException, InterruptedException {
        Path found = newest();
        if (found == null && isRoot() && Files.exists(Path.of("/usr/bin/apt-get"))) {
            run(List.of("apt-get", "install", "-y", "-q", "postgresql"));
            found = newest();
        }
        if (found == null) {
            throw new IOException("it is not installed (Debian: apt-get install postgresql)");
        }
        return found;
    }

    private static @Nullable Path newest() throws IOException {
        Path all = Path.of("/usr/lib/postgresql");
        if (!Files.isDirectory(all)) {
            return null;
        }
        try (Stream<Path> versions = Files.list(all)) {
            return versions.map(version -> version.resolve("bin"))
                    .filter(bin -> Files.isExecutable(bin.resolve("initdb")))
                    .max(java.util.Comparator.naturalOrder())
                    .orElse(null);
        }
    }

    private static boolean isRoot() {
        return System.getProperty("user.name").equals("root");
    }

    /** The server refuses to run as root. */
    private static List<String> asOther(List<String> command) {
        List<String> whole = new ArrayList<>();
        if (isRoot()) {
            whole.addAll(List.of("runuser", "-u", "postgres", "--"));
        }
        whole.addAll(command);
        return whole;
    }

    private static void run(List<String> command) throws IOException, InterruptedException {
        Path said = Files.createTempFile("shimwright-run-", ".txt");
        try {
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(said.toFile())
                    .directory(Path.of("/tmp").toFile())
                    .start();
            if (!process.waitFor(180, TimeUnit.SECONDS) || process.exitValue() != 0) {
                process.destroyForcibly();
                throw new IOException(command + ": " + Files.readString(said));
            }
        } finally {
            Files.delete(said);
        }
    }
}
