package shimwright.rebuild.demo;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.clearance.Session;
import shimwright.rebuild.clearance.Sessions;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.rules.ClockRules;
import shimwright.rebuild.rules.Rules;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.workbench.PinnedUnit;

/** One job on the bench of the demo shop: what is kept goes through the rules, as it does in the program. */
public final class DemoWorkbench {
    public static final double MM = 0.001;

    private static final double MICROMETER = 0.002 * MM;

    private final Unit unit;
    private final EntryStream shop;
    private final EntryStream stream;

    public DemoWorkbench(Unit unit) {
        this(unit, DemoUnit.lines("gauges.txt"), DemoUnit.lines("drawer.txt"));
    }

    /** A bench in a shop with other gauges and pieces, written as in the demo's own lists. */
    public DemoWorkbench(Unit unit, List<String> gauges, List<String> pieces) {
        this(unit, new EntryStream(JobLog.SHOP), new EntryStream("job-v-0093"));
        gauges.forEach(line -> shop.add(gauge(line.split("\\s*\\|\\s*"))));
        pieces.forEach(line -> shop.add(piece(line.split("\\s+"))));
    }

    private DemoWorkbench(Unit unit, EntryStream shop, EntryStream stream) {
        this.unit = unit;
        this.shop = shop;
        this.stream = stream;
    }

    /** A bench of its own in this shop, as it was when the job had so many entries. */
    DemoWorkbench asAfter(int entries) {
        return new DemoWorkbench(unit, shop.beginning(shop.entries().size()), stream.beginning(entries));
    }

    /** A bench with the job of the demo scenario opened, and everything here that is always renewed. */
    public static DemoWorkbench open() {
        DemoWorkbench bench = empty();
        bench.lay(allHere(bench.unit()));
        return bench;
    }

    /** A bench with the job of the demo scenario opened, and no part here yet. */
    public static DemoWorkbench empty() {
        DemoWorkbench bench = new DemoWorkbench(DemoUnit.A);
        bench.keep(opening());
        return bench;
    }

    /** All that is always renewed lies here. */
    public static Entry.LiesHere allHere(Unit unit) {
        return new Entry.LiesHere(
                unit.type().items().stream().filter(Item::renew).map(Item::id).toList(),
                "the kit",
                "laid out and counted");
    }

    public static Entry.JobOpened opening() {
        return new Entry.JobOpened(
                "V-0093",
                "ambleholt-l5-74",
                "A",
                "fleet office of the island mail, van 7",
                List.of("sings like a kettle when I lift off between fifty and seventy"),
                tellTales(),
                "",
                "the tag beside the clutch lever is missing");
    }

    public static Map<String, String> tellTales() {
        Map<String, String> seen = new LinkedHashMap<>();
        seen.put("I2", "brass bush, square drive 2.8 mm");
        seen.put("I3", "25");
        seen.put("I4", "blind, cast skin");
        seen.put("I5", "19.8");
        seen.put("I6", "38/9");
        seen.put("I7", "B");
        return seen;
    }

    private static Entry.GaugeAdded gauge(String[] part) {
        return new Entry.GaugeAdded(
                part[0],
                part[1],
                Kind.LENGTH,
                millimetres(part[2]),
                millimetres(part[3]),
                millimetres(part[4]),
                0,
                millimetres(part[5]));
    }

    private static Entry.ShimAdded piece(String[] part) {
        List<Double> readings = new ArrayList<>();
        for (int i = 3; i < part.length; i++) {
            readings.add(millimetres(part[i]));
        }
        return new Entry.ShimAdded(part[0], part[1], part[2], readings, MICROMETER);
    }

    private static double millimetres(String text) {
        return Double.parseDouble(text) * MM;
    }

    public Unit unit() {
        return unit;
    }

    public List<LogEntry> entries() {
        return stream.entries();
    }

    public List<LogEntry> shopEntries() {
        return shop.entries();
    }

    public Job job() {
        return stream.job();
    }

    public Shop shop() {
        return Shop.of(shop.entries(), stream.entries().isEmpty() ? List.of() : List.of(job()));
    }

    public Session session(String clearance) {
        return Sessions.of(unit, job(), shop(), clearance);
    }

    /** The job as it lies there, a moment after its last entry. */
    public shimwright.rebuild.workbench.Workbench lying() {
        List<LogEntry> entries = stream.entries();
        return new shimwright.rebuild.workbench.Workbench(
                job(),
                new PinnedUnit("", unit.type()),
                shop(),
                entries.get(entries.size() - 1).draft().at(),
                ZoneOffset.UTC);
    }

    /** What the rules say against an entry; it is not kept. Waits and windows are overruled: here every entry takes a quarter of an hour. */
    public List<Refusal> against(Entry.OfJob entry) {
        if (stream.entries().isEmpty()) {
            return List.of();
        }
        shimwright.rebuild.workbench.Workbench bench = lying();
        if (entry instanceof Entry.StepDone done) {
            for (ClockRules.Broken broken : ClockRules.broken(bench, done.step())) {
                bench = bench.after(new Entry.TimeOverruled(
                        done.step(),
                        broken.what(),
                        broken.timer().name(),
                        Map.of(),
                        "entries a quarter of an hour apart"));
            }
        }
        return Rules.check(bench, entry);
    }

    /** Keeps an entry that the rules allow. */
    public LogEntry keep(Entry.OfJob entry) {
        List<Refusal> refusals = against(entry);
        if (!refusals.isEmpty()) {
            throw new IllegalStateException(refusals.toString());
        }
        return stream.add(entry);
    }

    /** Keeps an entry without asking the rules, for a job that stands somewhere in the middle. */
    public LogEntry lay(Entry.OfJob entry) {
        return stream.add(entry);
    }

    public void keepInShop(Entry.OfShop entry) {
        shop.add(entry);
    }

    /** Marks steps done without asking the rules. */
    public void layDone(String... steps) {
        for (String step : steps) {
            lay(new Entry.StepDone(step, ""));
        }
    }

    /** A piece of the drawer as it goes in. */
    public PieceIn piece(String tag) {
        Shop.Piece piece = Objects.requireNonNull(shop().pieces().get(tag), tag);
        return new PieceIn(tag, piece.thickness(), piece.u());
    }

    public List<PieceIn> pieces(String... tags) {
        return java.util.Arrays.stream(tags).map(this::piece).toList();
    }

    /** Pieces by position, typed as {@code sL=d80-08+d80-01 sR=d80-15}. */
    public Map<String, List<PieceIn>> pack(String text) {
        Map<String, List<PieceIn>> pack = new LinkedHashMap<>();
        for (String place : text.split("\\s+")) {
            String[] sides = place.split("=");
            pack.put(sides[0], pieces(sides[1].split("\\+")));
        }
        return pack;
    }

    public void packIn(String clearance, Phase phase, String text) {
        keep(new Entry.PackIn(clearance, phase, pack(text)));
    }

    /** One round, in mm as read, without asking the rules. */
    public LogEntry round(String clearance, Phase phase, double... millimetres) {
        return lay(read(clearance, phase, millimetres));
    }

    /** One round, in mm as read. */
    public Entry.RoundRead read(String clearance, Phase phase, double... millimetres) {
        List<Double> values =
                java.util.Arrays.stream(millimetres).map(v -> v * MM).boxed().toList();
        return new Entry.RoundRead(clearance, phase, unit.clearance(clearance).gauge(), values, "");
    }

    /** Says yes to the check, or reads it as in. */
    public void in(String step, String check) {
        Check found = unit.holdPoint(unit.step(step).hold()).checks().stream()
                .filter(c -> c.id().equals(check))
                .findFirst()
                .orElseThrow();
        keep(new Entry.CheckRead(
                step, unit.step(step).hold(), found.id(), List.of(), Kind.NUMBER, true, Verdict.IN, "", List.of()));
    }
}
