package shimwright.bench.demo;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.UnitShelf;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.ShopActs;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.PictureStore;

/** Fills a fresh log with the demo shop: gauges, a drawer, a job handed back and one in the middle of its build. */
public final class DemoShop {
    private static final double MM = 0.001;
    private static final String CALIBRATED = "2031-01-15";

    private DemoShop() {}

    /**
     * Plays the demo shop into a log; a log that has entries already is left as it is.
     *
     * @param log a log
     * @param pictures for the desk that plays
     * @param shelf must hold the shipped unit type first
     * @param clock now; the jobs happened in the weeks before
     */
    public static void fill(JobLog log, PictureStore pictures, UnitShelf shelf, Clock clock) {
        if (log.head().count() > 0) {
            return;
        }
        Instant now = clock.instant();
        PlayedClock first = new PlayedClock(now.minus(Duration.ofDays(70)));
        stock(new Desk(log, pictures, shelf, first), first);
        play(log, pictures, shelf, now.minus(Duration.ofDays(62)), "v-0091.txt", "");
        play(log, pictures, shelf, now.minus(Duration.ofDays(20)), "v-0093.txt", "E02");
    }

    private static void play(
            JobLog log, PictureStore pictures, UnitShelf shelf, Instant from, String script, String until) {
        PlayedClock clock = new PlayedClock(from);
        new Player(new Desk(log, pictures, shelf, clock), Script.of(script), clock).play(until);
    }

    private static void stock(Desk desk, PlayedClock clock) {
        List<Act.OfShop> acts = new ArrayList<>();
        acts.add(new ShopActs.DescribeShop(
                new TreeMap<>(Map.of("name", "the workshop", "evening", "3", "begins", "18:30"))));
        for (String line : Script.text("gauges.txt")) {
            String[] p = line.split("\\s*\\|\\s*");
            acts.add(new ShopActs.AddGauge(
                    p[0],
                    p[1],
                    Double.parseDouble(p[2]) * MM,
                    Double.parseDouble(p[3]) * MM,
                    Double.parseDouble(p[4]) * MM,
                    Double.parseDouble(p[5]) * MM,
                    CALIBRATED));
        }
        for (String line : Script.text("drawer.txt")) {
            String[] p = line.split("\\s+");
            acts.add(new ShopActs.AddShim(p[0], p[1], p[2], List.of(p).subList(3, p.length)));
        }
        int number = 0;
        for (Act.OfShop act : acts) {
            clock.pass(Duration.ofMinutes(2));
            desk.act(act, new Desk.Signed("demo-shop-" + ++number, "the workshop", UnitSystem.METRIC))
                    .orElseThrow();
        }
    }
}
