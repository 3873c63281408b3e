package shimwright.bench.web.shop;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.OnBench;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Shop;

/**
 * The overview of the shop, worked out once for each state of the log. It is also kept in a file of the data folder, so
 * that the first page need not wait for every job of the past to be read and planned. The file holds nothing of its own:
 * it counts only for the log head, the unit files and the program that it was worked out from, and may be deleted.
 */
public final class Overviews {
    private static final String TICKS = "A clock runs or something is awaited: open it to see what is next";
    private static final int SETTLE_MILLISECONDS = 250;

    private final Desk desk;
    private final Path file;
    private final String sources;
    private volatile @Nullable Known known;

    private record Known(String key, Overview overview) {}

    /** An overview, and the jobs of which it may say something else after a while without any entry. */
    private record Worked(Overview overview, Set<String> ticking) {
        /** What is true at any later time too. */
        Overview lasting() {
            List<Overview.Card> cards = overview.cards().stream()
                    .map(card -> ticking.contains(card.job()) ? card.saying(TICKS) : card)
                    .toList();
            return new Overview(cards, overview.loose(), overview.gauges());
        }
    }

    /**
     * The overviews of a desk.
     *
     * @param file where the last one is kept between two runs of the program
     * @param sources a hash of the unit files and of the program; empty where none is kept between two runs
     */
    public Overviews(Desk desk, Path file, String sources) {
        this.desk = desk;
        this.file = file;
        this.sources = sources;
    }

    /** Whether a file holds an overview of these sources; the log may have gone on since. */
    public static boolean isOf(Path file, String sources) {
        if (sources.isEmpty() || !Files.isRegularFile(file)) {
            return false;
        }
        try (DataInputStream in = open(file)) {
            return in.readUTF().startsWith(sources + " ");
        } catch (IOException torn) {
            return false;
        }
    }

    /** Takes the kept overview where it is one of the log as it stands, and gets the rest ready after the page is out. */
    public boolean recall() {
        String key = key();
        Optional<Overview> kept = isOf(file, sources) ? read(key) : Optional.empty();
        kept.ifPresent(overview -> {
            known = new Known(key, overview);
            CompletableFuture.delayedExecutor(SETTLE_MILLISECONDS, TimeUnit.MILLISECONDS)
                    .execute(() -> know(key, workedOut()));
        });
        return kept.isPresent();
    }

    /** The overview as it stands. */
    Overview now() {
        String key = key();
        Known before = known;
        if (before != null && before.key().equals(key)) {
            return before.overview();
        }
        Worked worked = workedOut();
        know(key, worked);
        return worked.overview();
    }

    private void know(String key, Worked worked) {
        known = worked.ticking().isEmpty() ? new Known(key, worked.overview()) : null;
    }

    /** Keeps the overview for the next start; where the file cannot be written, that start works it out. */
    public void keep() {
        if (sources.isEmpty()) {
            return;
        }
        Path part = file.resolveSibling(file.getFileName() + ".part");
        String key = key();
        Overview overview = workedOut().lasting();
        try {
            try (DataOutputStream out = new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(part)))) {
                out.writeUTF(key);
                overview.write(out);
            }
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException unwritable) {
            return;
        }
    }

    private String key() {
        return sources + " " + desk.head().hash();
    }

    private Optional<Overview> read(String key) {
        try (DataInputStream in = open(file)) {
            return in.readUTF().equals(key) ? Optional.of(Overview.read(in)) : Optional.empty();
        } catch (IOException | IllegalArgumentException torn) {
            return Optional.empty();
        }
    }

    private static DataInputStream open(Path file) throws IOException {
        return new DataInputStream(new BufferedInputStream(Files.newInputStream(file)));
    }

    private Worked workedOut() {
        Set<String> ticking = new HashSet<>();
        List<Overview.Card> cards = new ArrayList<>();
        for (Job job : desk.jobs()) {
            Optional<OnBench> found = desk.bench(job.id());
            boolean clock = found.filter(bench -> !bench.timers().isEmpty()).isPresent();
            if (!job.closed() && (clock || !job.awaited().isEmpty())) {
                ticking.add(job.id());
            }
            cards.add(found.map(bench -> card(
                            job,
                            bench.unit().type().maker() + " " + bench.unit().variantName(),
                            where(bench),
                            (int) bench.order().steps().keySet().stream()
                                    .filter(job.stepsDone()::contains)
                                    .count(),
                            bench.order().steps().size()))
                    .orElseGet(() -> card(
                            job,
                            job.opened().unitType(),
                            "its unit type is not on this shelf",
                            job.done().size(),
                            0)));
        }
        Shop shop = desk.shop();
        List<Overview.Gauge> gauges = shop.gauges().values().stream()
                .map(gauge -> new Overview.Gauge(gauge.name(), gauge.kind(), gauge.step(), gauge.errorLimit()))
                .toList();
        int loose = (int)
                shop.pieces().values().stream().filter(Shop.Piece::inDrawer).count();
        return new Worked(new Overview(cards, loose, gauges), ticking);
    }

    private static Overview.Card card(Job job, String unitName, String where, int done, int total) {
        return new Overview.Card(
                job.id(), job.opened().number(), job.opened().owner(), job.closed(), unitName, where, done, total);
    }

    private static String where(OnBench bench) {
        if (bench.job().closed()) {
            return "Handed back";
        }
        if (bench.built()) {
            return "Built; hand it back";
        }
        boolean begun =
                bench.order().steps().keySet().stream().anyMatch(bench.job().stepsDone()::contains);
        return begun
                ? bench.next().map(step -> "Next: " + step.todo()).orElse("The plan has a fault")
                : "Strip and inspect";
    }
}
