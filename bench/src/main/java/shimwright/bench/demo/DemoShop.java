package shimwright.bench.demo;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import shimwright.bench.web.Desk;
import shimwright.bench.web.Shelf;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.PictureStore;

/** Fills a fresh log with the demo shop: gauges, a drawer, a job handed back and one in the middle of its build. */
public final class DemoShop {
    private static final double MM = 0.001;
    private static final double MICROMETER = 0.002 * MM;

    private DemoShop() {}

    /**
     * Plays the demo shop into a log; a log that has entries already is left as it is.
     *
     * @param log a log
     * @param pictures for the desk that plays
     * @param shelf must hold the shipped unit type
     * @param clock now; the jobs happened in the weeks before
     */
    public static void fill(JobLog log, PictureStore pictures, Shelf shelf, Clock clock) {
        if (log.head().count() > 0) {
            return;
        }
        Instant now = clock.instant();
        Desk shop =
                new Desk(log, pictures, shelf, new PlayedClock(now.minus(Duration.ofDays(70)), Duration.ofMinutes(2)));
        stock(shop);
        play(log, pictures, shelf, now.minus(Duration.ofDays(62)), Duration.ofMinutes(21), "v-0091.txt", "");
        play(log, pictures, shelf, now.minus(Duration.ofDays(20)), Duration.ofMinutes(19), "v-0093.txt", "E02");
    }

    private static void play(
            JobLog log, PictureStore pictures, Shelf shelf, Instant from, Duration each, String script, String until) {
        Desk desk = new Desk(log, pictures, shelf, new PlayedClock(from, each));
        new Player(desk, Script.of(script)).play(until);
    }

    private static void stock(Desk desk) {
        int number = 0;
        for (String line : Script.text("gauges.txt")) {
            String[] p = line.split("\\s*\\|\\s*");
            desk.keepInShop(
                            "demo-gauge-" + ++number,
                            "the workshop",
                            new Entry.GaugeAdded(
                                    p[0],
                                    p[1],
                                    Kind.LENGTH,
                                    Double.parseDouble(p[2]) * MM,
                                    Double.parseDouble(p[3]) * MM,
                                    Double.parseDouble(p[4]) * MM,
                                    0,
                                    Double.parseDouble(p[5]) * MM))
                    .orElseThrow();
        }
        for (String line : Script.text("drawer.txt")) {
            String[] p = line.split("\\s+");
            List<Double> readings = new ArrayList<>();
            for (int i = 3; i < p.length; i++) {
                readings.add(Double.parseDouble(p[i]) * MM);
            }
            desk.keepInShop(
                            "demo-piece-" + p[0],
                            "the workshop",
                            new Entry.ShimAdded(p[0], p[1], p[2], readings, MICROMETER))
                    .orElseThrow();
        }
    }
}
