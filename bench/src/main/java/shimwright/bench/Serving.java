package shimwright.bench;

import io.javalin.Javalin;
import io.javalin.util.JavalinBindException;
import java.awt.Desktop;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import shimwright.bench.command.Options;
import shimwright.bench.demo.DemoShop;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.UnitShelf;
import shimwright.bench.store.ShopStore;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.disk.Disk;
import shimwright.bench.store.log.OpenLog;
import shimwright.bench.store.sign.OwnerFolder;
import shimwright.bench.store.sqlite.SummaryFile;
import shimwright.bench.web.Server;
import shimwright.bench.web.guard.Entrance;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Signing;
import shimwright.rebuild.job.StoreFailure;

/** Opens a data folder and serves it. Clock and ids are born here. */
final class Serving {
    /** The exit code of a command that goes on running. */
    static final int GOES_ON = -1;

    private static final int REFUSED = 2;
    private static final String PORT = "8613";

    private Serving() {}

    /**
     * A running server.
     *
     * @param summaries of the job log; empty where each start works them out
     * @param shown done a second after the start, or at once when it is closed: what may wait for the first page waits so long
     * @param settled done when what may wait has been done
     */
    record Running(
            Javalin server,
            OpenLog log,
            Optional<SummaryFile> summaries,
            UnitFolder units,
            Entrance entrance,
            Desk desk,
            CompletableFuture<Void> shown,
            CompletableFuture<Void> settled)
            implements AutoCloseable {
        @Override
        public void close() {
            server.stop();
            desk.stopReading();
            shown.complete(null);
            settled.handle((nothing, broken) -> broken == null).join();
            summaries.ifPresent(SummaryFile::close);
            log.close();
        }
    }

    static int demo(List<String> args, PrintStream out, PrintStream err) {
        Outcome<Options> options = Options.read(args, Set.of("port", "host", "data"), Set.of("plain", "no-browser"));
        if (!(options instanceof Outcome.Ok<Options> ok)) {
            return refused(options.refusals(), err);
        }
        makeReady();
        try {
            Path folder = ok.value().has("data")
                    ? Path.of(ok.value().get("data", ""))
                    : Files.createTempDirectory("shimwright-demo-");
            PlayedDemo.layInto(folder);
            playAside(folder);
            return start(folder, ok.value(), true, out, err);
        } catch (IOException full) {
            err.println("No folder for the demo shop could be made: " + full.getMessage());
            return REFUSED;
        }
    }

    /** Plays the demo shop beside its folder and moves it there when it is whole, so that none stays half-made. */
    private static void playAside(Path folder) throws IOException {
        if (!PlayedDemo.empty(folder)) {
            return;
        }
        Path part = folder.toAbsolutePath().resolveSibling(folder.getFileName() + ".part");
        Disk.deleteAll(part);
        Outcome<Running> played =
                open(part, new Options(Map.of("port", "0")), true, Clock.system(ZoneId.systemDefault()));
        if (played instanceof Outcome.Ok<Running> ok) {
            ok.value().close();
            Files.deleteIfExists(folder);
            Files.move(part, folder, StandardCopyOption.ATOMIC_MOVE);
        }
    }

    static int serve(List<String> args, PrintStream out, PrintStream err) {
        Outcome<Options> options = Options.read(
                args, Set.of("port", "host", "data", "owner", "store"), Set.of("plain", "accept-log", "no-browser"));
        if (!(options instanceof Outcome.Ok<Options> ok)) {
            return refused(options.refusals(), err);
        }
        if (!ok.value().has("data")) {
            err.println("Say where the shop's data lies: ./shimwright serve --data DIR");
            return REFUSED;
        }
        makeReady();
        return start(Path.of(ok.value().get("data", "")), ok.value(), false, out, err);
    }

    /** Begins what every start needs beside the opening of the store, on the other core. */
    @SuppressWarnings("ReturnValueIgnored")
    private static void makeReady() {
        ForkJoinPool.commonPool().execute(() -> {
            // the rules of time zones are looked for in every library there is
            ZoneId.systemDefault();
            Server.makeReady();
        });
    }

    static int refused(List<Refusal> refusals, PrintStream err) {
        refusals.forEach(refusal -> err.println(refusal.sentence()));
        return REFUSED;
    }

    private static int start(Path folder, Options options, boolean demo, PrintStream out, PrintStream err) {
        Clock clock = Clock.system(ZoneId.systemDefault());
        Optional<OwnerFolder> owner = demo ? Optional.empty() : Optional.of(BackupCommands.owner(options, clock));
        Outcome<Running> running = open(folder, options, demo, clock, owner);
        if (!(running instanceof Outcome.Ok<Running> ok)) {
            return refused(running.refusals(), err);
        }
        int listening = ok.value().server().port();
        String url = "http://" + Addresses.HERE + ":" + listening + "/";
        Runtime.getRuntime().addShutdownHook(new Thread(ok.value()::close));
        out.println("Shimwright is at " + url);
        out.println("Data: " + folder.toAbsolutePath() + (demo ? " (demo, made anew)" : ""));
        Network.say(ok.value().entrance(), listening, out);
        out.println("Stop with Ctrl-C. What was kept stays kept.");
        LogWatch.begin(ok.value(), clock, err);
        if (!options.has("no-browser")) {
            browse(url);
        }
        return GOES_ON;
    }

    /** Opens the data folder, fills it for a demo, and serves it; signs and remembers nothing. */
    static Outcome<Running> open(Path folder, Options options, boolean demo, Clock clock) {
        return open(folder, options, demo, clock, Optional.empty());
    }

    /**
     * The same for a shop that is kept.
     *
     * @param owner whose key signs
     */
    static Outcome<Running> open(Path folder, Options options, boolean demo, Clock clock, Optional<OwnerFolder> owner) {
        Outcome<Integer> port = port(options.get("port", PORT));
        if (!(port instanceof Outcome.Ok<Integer> number)) {
            return Outcome.refused(port.refusals());
        }
        OpenLog.Opening how = options.has("accept-log") ? OpenLog.Opening.ACCEPT : OpenLog.Opening.WRITE;
        DataFolder files = new DataFolder(folder);
        UnitFolder units = UnitFolder.in(files.units());
        Outcome<ShopStore> store = options.has("store")
                ? ShopStore.at(options.get("store", ""), how, owner)
                : ShopStore.in(folder, how, owner);
        return store.flatMap(kept -> {
            Runnable paired = () -> kept.log()
                    .signing()
                    .remember(Signing.Occasion.PAIRED, "", kept.log().head());
            Outcome<Running> running = Network.entrance(options, number.value(), files.network(), clock, paired)
                    .flatMap(entrance -> {
                        UnitShelf shelf = new UnitShelf(units, kept.documents());
                        if (demo) {
                            DemoShop.fill(kept.log(), kept.pictures(), shelf, clock);
                        }
                        Optional<SummaryFile> summaries = summaries(folder);
                        Desk desk = new Desk(kept.log(), kept.pictures(), shelf, clock, summaries.map(file -> file));
                        if (desk.readingAnew().isEmpty()) {
                            // what the first page shows is read while the port is opened
                            ForkJoinPool.commonPool().execute(() -> readShop(desk));
                        }
                        Javalin server = Server.of(
                                desk,
                                new SignedPaper(kept.log().signing()),
                                () -> UUID.randomUUID().toString(),
                                ZoneId.systemDefault(),
                                entrance);
                        Outcome<Javalin> listening = listen(server, entrance.port());
                        if (!listening.isOk()) {
                            summaries.ifPresent(SummaryFile::close);
                        }
                        return listening.map(open -> {
                            CompletableFuture<Void> shown = new CompletableFuture<>();
                            return new Running(
                                    open, kept.log(), summaries, units, entrance, desk, shown, settle(desk, shown));
                        });
                    });
            if (!(running instanceof Outcome.Ok<Running>)) {
                kept.close();
            }
            return running;
        });
    }

    /** Does at once what a page has to wait for, the rest when the first page is shown or a second is over. */
    private static CompletableFuture<Void> settle(Desk desk, CompletableFuture<Void> shown) {
        CompletableFuture<Void> read =
                CompletableFuture.runAsync(() -> desk.readingAnew().ifPresent(jobs -> desk.lines()));
        return read.thenCombineAsync(shown.completeOnTimeout(null, 1, TimeUnit.SECONDS), (lines, page) -> {
            desk.versions().makeUp();
            desk.versions().pinOlderJobs("the program");
            return null;
        });
    }

    private static void readShop(Desk desk) {
        try {
            desk.shopSummary();
            desk.lines();
        } catch (StoreFailure broken) {
            // the page says what is wrong with the log
        }
    }

    /** Summaries hold for one build only; a program that was not started by its launcher does not know which it is. */
    private static Optional<SummaryFile> summaries(Path folder) {
        String build = System.getProperty("shimwright.build", "");
        return build.isEmpty() ? Optional.empty() : Optional.of(SummaryFile.in(folder, build));
    }

    private static Outcome<Javalin> listen(Javalin server, int port) {
        try {
            return Outcome.ok(server.start());
        } catch (JavalinBindException taken) {
            return Outcome.refused(Refusal.at(
                    "port " + port, "another program listens there", "Stop it, or take another with --port N"));
        }
    }

    private static Outcome<Integer> port(String text) {
        try {
            int port = Integer.parseInt(text);
            if (port >= 0 && port < 65536) {
                return Outcome.ok(port);
            }
        } catch (NumberFormatException letters) {
            return Outcome.refused(
                    Refusal.of("--port", "\"" + text + "\" is not a number", "Type a number such as " + PORT));
        }
        return Outcome.refused(Refusal.of("--port", text + " is not a port", "Type a number from 0 to 65535"));
    }

    private static void browse(String url) {
        if (GraphicsEnvironment.isHeadless() || !Desktop.isDesktopSupported()) {
            return;
        }
        try {
            Desktop.getDesktop().browse(URI.create(url));
        } catch (IOException | UnsupportedOperationException none) {
            // no browser here: the address is printed
        }
    }
}
