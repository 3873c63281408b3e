package shimwright.bench.store;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import shimwright.bench.store.disk.Manifest;
import shimwright.bench.store.log.OpenLog;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.PictureStore;

/** Starts children that keep entries, kills them at random moments and looks at what is left. */
final class KillTrials {
    private static final int KILLS_PER_FOLDER = 100;
    private static final int PATIENCE_MINUTES = 15;

    /** More of a core than a first answer ever takes. */
    private static final Duration HARD_WORK = Duration.ofSeconds(30);

    private static final Pattern ANSWER = Pattern.compile("(\\S+) ([0-9a-f]{64})");

    /** What was found wrong; all should stay empty. */
    final List<String> lost = new ArrayList<>();

    final List<String> changed = new ArrayList<>();
    final List<String> doubled = new ArrayList<>();
    final List<String> withoutPicture = new ArrayList<>();
    final List<String> notOpened = new ArrayList<>();
    final List<String> leftOver = new ArrayList<>();
    long acknowledged;
    long keptUnanswered;
    long pictures;

    private final Path work;
    private final String mode;
    private final Random random = new Random(20261125);
    private final Map<String, String> answered = new ConcurrentHashMap<>();

    private final String classes;
    private final IntFunction<String> places;
    private final Map<Integer, String> named = new ConcurrentHashMap<>();

    /** Kills over data folders. */
    KillTrials(Path work, String mode) throws IOException, InterruptedException {
        this(work, mode, folder -> work.resolve("data-" + folder).toString());
    }

    /**
     * Kills over places that are named one after the other.
     *
     * @param places a data folder or the address of a database by its number; each is asked for once
     */
    KillTrials(Path work, String mode, IntFunction<String> places) throws IOException, InterruptedException {
        this.work = work;
        this.mode = mode;
        this.places = places;
        this.classes = jars();
        // a child that ends by itself leaves its loaded classes to the others: half of a start would go into loading
        Process first = java(
                List.of("-XX:ArchiveClassesAtExit=" + work.resolve("classes.jsa")),
                work.resolve("data-none").toString(),
                "first");
        first.getOutputStream().close();
        first.waitFor();
    }

    /** The class path with every folder packed into a jar, because only jars can be shared that way. */
    private String jars() throws IOException {
        ToolProvider jar = ToolProvider.findFirst("jar").orElseThrow();
        List<String> packed = new ArrayList<>();
        String given = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        for (String element : given.split(Pattern.quote(File.pathSeparator))) {
            Path file = work.resolve("classes-" + packed.size() + ".jar");
            if (Files.isDirectory(Path.of(element))
                    && jar.run(System.out, System.err, "--create", "--file", file.toString(), "-C", element, ".")
                            == 0) {
                packed.add(file.toString());
            } else {
                packed.add(element);
            }
        }
        return String.join(File.pathSeparator, packed);
    }

    /** So many kills, over the same folder up to a hundred of them. */
    void run(int kills) throws IOException, InterruptedException {
        runUntil(kills, () -> false);
    }

    /** At most so many kills, and none after what is looked for was found. */
    void runUntil(int kills, BooleanSupplier found) throws IOException, InterruptedException {
        Process next = start(0);
        for (int kill = 0; kill < kills && !found.getAsBoolean(); kill++) {
            Process child = next;
            // the next one warms up while this one works
            next = start(kill + 1);
            workAndDie(child);
            boolean last = kill == kills - 1 || folder(kill + 1) != folder(kill);
            inspect(place(kill), last);
        }
        next.toHandle().destroyForcibly();
    }

    String sentence() {
        return ("%d entries acknowledged, %d lost, %d changed, %d doubled, %d of %d without their picture, %d logs did not"
                        + " open, %d entries kept without an answer")
                .formatted(
                        acknowledged,
                        lost.size(),
                        changed.size(),
                        doubled.size(),
                        withoutPicture.size(),
                        pictures,
                        notOpened.size(),
                        keptUnanswered);
    }

    private static int folder(int kill) {
        return kill / KILLS_PER_FOLDER;
    }

    private String place(int kill) {
        return named.computeIfAbsent(folder(kill), places::apply);
    }

    private Process start(int kill) throws IOException {
        return java(
                List.of("-XX:SharedArchiveFile=" + work.resolve("classes.jsa"), "-Xlog:disable"),
                place(kill),
                "run" + kill);
    }

    private Process java(List<String> options, String place, String run) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xmx128m"));
        command.add("-Dorg.sqlite.tmpdir=" + Files.createDirectories(work.resolve("native")));
        command.addAll(List.of("-cp", classes, KillChild.class.getName()));
        command.addAll(List.of(place, run, mode, work.toString()));
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.appendTo(
                        work.resolve("child-errors").toFile()))
                .start();
    }

    private void workAndDie(Process child) throws IOException, InterruptedException {
        CountDownLatch begun = new CountDownLatch(1);
        Thread listener = new Thread(() -> listen(child, begun));
        listener.start();
        child.getOutputStream().write('g');
        child.getOutputStream().flush();
        awaitAnswer(child, begun);
        child.waitFor(50 + random.nextInt(350), TimeUnit.MILLISECONDS);
        // through the handle: Process.destroyForcibly would close the pipe with answers still in it
        child.toHandle().destroyForcibly();
        child.waitFor();
        listener.join();
    }

    /** Waits for the first answer; where none comes, says whether the machine had no time for the child or the child hangs. */
    private void awaitAnswer(Process child, CountDownLatch begun) throws IOException, InterruptedException {
        for (int minute = 1; !begun.await(60, TimeUnit.SECONDS); minute++) {
            Duration used = child.info().totalCpuDuration().orElse(Duration.ZERO);
            double load = ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
            boolean starved = load > Runtime.getRuntime().availableProcessors() && used.compareTo(HARD_WORK) < 0;
            if (!child.isAlive() || !starved || minute == PATIENCE_MINUTES) {
                throw new IllegalStateException(
                        "no answer in %d min of a child that %s and used %s of a core; load %.1f%n%s%n%s"
                                .formatted(
                                        minute,
                                        child.isAlive() ? "lives" : "ended",
                                        used,
                                        load,
                                        Files.readString(work.resolve("child-errors")),
                                        stacks(child)));
            }
        }
    }

    /** What the child's threads are doing. */
    private String stacks(Process child) throws IOException, InterruptedException {
        Path said = work.resolve("child-stacks");
        new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "jcmd").toString(),
                        String.valueOf(child.pid()),
                        "Thread.print")
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start()
                .waitFor(60, TimeUnit.SECONDS);
        return Files.readString(said);
    }

    private void listen(Process child, CountDownLatch begun) {
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.US_ASCII))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                Matcher answer = ANSWER.matcher(line);
                if (answer.matches()) {
                    answered.put(answer.group(1), answer.group(2));
                    begun.countDown();
                }
            }
        } catch (IOException torn) {
            throw new IllegalStateException(torn);
        }
    }

    private void inspect(String place, boolean last) throws IOException {
        Outcome<ShopStore> opened = place.startsWith("postgresql:")
                ? ShopStore.at(place, OpenLog.Opening.WRITE, Optional.empty())
                : ShopStore.in(Path.of(place), OpenLog.Opening.WRITE, Optional.empty());
        if (!(opened instanceof Outcome.Ok<ShopStore> ok)) {
            notOpened.add(opened.refusals().get(0).sentence());
            return;
        }
        try (OpenLog log = ok.value().log()) {
            List<LogEntry> all = Logs.all(log);
            Path parts = Path.of(place, "pictures", "part");
            if (Files.isDirectory(parts) && !Manifest.files(parts).isEmpty()) {
                leftOver.add(parts.toString());
            }
            Map<String, String> found = new ConcurrentHashMap<>();
            all.forEach(kept -> found.put(kept.draft().id(), kept.hash()));
            answered.forEach((id, hash) -> {
                if (!found.containsKey(id)) {
                    lost.add(id);
                } else if (!hash.equals(found.get(id))) {
                    changed.add(id);
                }
            });
            // the client that got no answer posts again
            for (LogEntry kept : all.subList(Math.max(0, all.size() - 5), all.size())) {
                if (!log.append(kept.draft(), stream -> List.of()).orElseThrow().equals(kept)) {
                    doubled.add(kept.draft().id());
                }
            }
            if (log.head().count() != found.size()) {
                doubled.add(log.head() + " for " + found.size() + " ids");
            }
            if (last) {
                close(ok.value().pictures(), all);
            }
        }
    }

    /** The sums over a folder that is done with. */
    private void close(PictureStore store, List<LogEntry> all) {
        for (LogEntry kept : all) {
            if (kept.body() instanceof Entry.PictureAdded picture
                    && picture.caption().equals("noise")) {
                pictures++;
                if (store.find(picture.picture()).isEmpty()) {
                    withoutPicture.add(kept.draft().id());
                }
            }
        }
        acknowledged += answered.size();
        keptUnanswered += all.stream()
                .filter(kept -> !answered.containsKey(kept.draft().id()))
                .count();
        answered.clear();
    }
}
