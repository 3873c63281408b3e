package shimwright.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.command.CalcCommand;
import shimwright.bench.command.Options;
import shimwright.bench.store.backup.Backup;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.disk.Disk;
import shimwright.bench.store.sign.OwnerFolder;
import shimwright.mechanics.outcome.Outcome;

/** The demo shop played once when the program is built, so that each demo need not play it again. */
final class PlayedDemo {
    private static final String HOST = "127.0.0.1";
    private static final List<String> PAGES = List.of(
            "",
            "job/job-v-0093/card",
            "job/job-v-0093/build",
            "job/job-v-0093/plan",
            "job/job-v-0093/inspect",
            "job/job-v-0093/clearances",
            "job/job-v-0093/clearance/c",
            "job/job-v-0093/orders",
            "sheets",
            "units",
            "job/job-v-0091/record",
            "job/job-v-0091/record.pdf");

    private PlayedDemo() {}

    /**
     * Copies the played shop into a folder; whoever opens it checks it. A folder that holds something, or a
     * program that was not started by its launcher, is left as it is: the shop is then played.
     */
    static void layInto(Path folder) throws IOException {
        Path played = Path.of(System.getProperty("shimwright.played", "none"));
        if (Files.isDirectory(played) && empty(folder)) {
            Backup.lay(played, folder);
        }
    }

    static boolean empty(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return !Files.exists(folder);
        }
        try (var files = Files.list(folder)) {
            return files.findAny().isEmpty();
        }
    }

    /**
     * Plays the demo shop into a new folder, serves its main pages to itself and keeps a few entries: what the launcher runs after a
     * build, to learn which classes a start and the first minutes need.
     *
     * @param args one folder that does not exist yet, where the played shop is laid as a backup
     */
    static int warm(List<String> args, PrintStream err) {
        try {
            Path folder = Files.createTempDirectory("shimwright-warm-");
            Outcome<Serving.Running> running =
                    Serving.open(folder, new Options(Map.of("port", "0")), true, Clock.systemUTC());
            if (!(running instanceof Outcome.Ok<Serving.Running> ok)) {
                return Serving.refused(running.refusals(), err);
            }
            try (Serving.Running served = ok.value()) {
                for (String page : PAGES) {
                    read(URI.create("http://" + HOST + ":" + served.server().port() + "/" + page));
                }
            }
            emptyShop();
            CalcCommand.run(List.of("involute", "angle=20"), new PrintStream(OutputStream.nullOutputStream()), err);
            int kept = args.isEmpty() ? 0 : keep(folder, Path.of(args.get(0)), err);
            evening(folder, err);
            return kept;
        } catch (IOException broken) {
            err.println("The program could not serve itself: " + broken.getMessage());
            return 2;
        }
    }

    /** What is kept first in an evening, once the shop was laid aside. */
    private static void evening(Path folder, PrintStream err) throws IOException {
        if (Serving.open(folder, new Options(Map.of("port", "0")), false, Clock.systemUTC())
                instanceof Outcome.Ok<Serving.Running> ok) {
            try (Serving.Running served = ok.value()) {
                List<String> refused = FirstEntries.keep(
                        "http://" + HOST + ":" + served.server().port() + "/");
                refused.forEach(err::println);
            }
        }
    }

    /** The way a new user goes: a folder that is not there yet, and a key that is made for it. */
    private static void emptyShop() throws IOException {
        Path folder = Files.createTempDirectory("shimwright-warm-empty-");
        Clock clock = Clock.systemUTC();
        Optional<OwnerFolder> owner = Optional.of(new OwnerFolder(folder.resolve("owner"), clock));
        Outcome<Serving.Running> running =
                Serving.open(folder.resolve("shop"), new Options(Map.of("port", "0")), false, clock, owner);
        if (running instanceof Outcome.Ok<Serving.Running> ok) {
            try (Serving.Running served = ok.value()) {
                read(URI.create("http://" + HOST + ":" + served.server().port() + "/"));
            }
        }
        Disk.deleteAll(folder);
    }

    /** A backup, and with it the lines of its jobs as this program works them out, so that a demo need not fold them first. */
    private static int keep(Path folder, Path to, PrintStream err) throws IOException {
        Outcome<Backup.Made> made = Backup.make(folder, to);
        if (!(made instanceof Outcome.Ok<Backup.Made>)) {
            return Serving.refused(made.refusals(), err);
        }
        Path lines = new DataFolder(folder).summaries();
        if (Files.exists(lines)) {
            Files.copy(lines, new DataFolder(to).summaries());
        }
        return 0;
    }

    private static void read(URI page) throws IOException {
        try (InputStream in = page.toURL().openStream()) {
            in.transferTo(OutputStream.nullOutputStream());
        }
    }
}
