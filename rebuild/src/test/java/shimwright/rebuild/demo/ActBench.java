package shimwright.rebuild.demo;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.ActContext;
import shimwright.rebuild.act.ActResult;
import shimwright.rebuild.act.Acts;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Fold;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.workbench.PinnedUnit;
import shimwright.rebuild.workbench.ShopFloor;
import shimwright.rebuild.workbench.Workbench;

/** One job as the acts make it: the same decisions as behind every door, without a disk, and with a clock of its own. */
final class ActBench {
    private static final String HASH = "a".repeat(64);

    private final PinnedUnit file;
    private final List<LogEntry> shopEntries;
    private final List<LogEntry> entries = new ArrayList<>();
    private Instant now = EntryStream.BEGIN;
    private @Nullable Workbench lying;
    private @Nullable Job job;

    /**
     * A job that is open.
     *
     * @param unit resolved
     * @param shop entries of the shop's drawer and gauges
     * @param opened with the unit file of {@link #hash()}
     */
    ActBench(Unit unit, shimwright.rebuild.unit.model.UnitType type, List<LogEntry> shop, Entry.JobOpened opened) {
        this.file = new PinnedUnit(HASH, type);
        this.shopEntries = shop;
        lay(List.of(new Entry.JobOpened(
                opened.number(),
                type.id(),
                unit.variant(),
                opened.owner(),
                opened.said(),
                opened.tellTales(),
                "",
                "",
                HASH)));
    }

    static String hash() {
        return HASH;
    }

    List<LogEntry> entries() {
        return List.copyOf(entries);
    }

    Job job() {
        return bench().job();
    }

    void later(double seconds) {
        now = now.plusMillis(Math.round(seconds * 1000));
        lying = null;
    }

    Workbench bench() {
        Workbench known = lying;
        if (known == null) {
            Job folded = job != null ? job : Fold.job(entries).orElseThrow();
            job = folded;
            known = new Workbench(folded, file, Shop.of(shopEntries, List.of(folded)), now, ZoneOffset.UTC);
            lying = known;
        }
        return known;
    }

    /** The act on the bench as it lies: kept where it is allowed. */
    Outcome<List<LogEntry>> perform(Act.OfJob act) {
        later(1);
        Workbench bench = bench();
        ShopFloor floor = new ShopFloor(
                bench.shop(), Map.of(file.type().id(), file), Set.of(bench.job().id()));
        Outcome<ActResult> decided = Acts.decide(bench, act, new ActContext(floor, UnitSystem.METRIC, now));
        return decided.map(d -> lay(d.entries()));
    }

    private List<LogEntry> lay(List<? extends Entry> bodies) {
        List<LogEntry> laid = new ArrayList<>();
        for (Entry body : bodies) {
            long number = entries.size() + 1L;
            String hash = "%064x".formatted(number);
            LogEntry kept = new LogEntry(
                    number, number, new Draft("job-w-1", "e" + number, now, "the workshop", body), hash, hash);
            entries.add(kept);
            laid.add(kept);
        }
        lying = null;
        job = null;
        return laid;
    }
}
