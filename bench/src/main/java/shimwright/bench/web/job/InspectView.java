package shimwright.bench.web.job;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.Drawings;
import shimwright.bench.web.kit.PartPhotos;
import shimwright.bench.web.kit.Show;
import shimwright.rebuild.inspect.DamageWords;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.inspect.TradeChecks;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.PartPhoto;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.record.Findings;
import shimwright.rebuild.record.Standings;
import shimwright.rebuild.record.Standings.Standing;
import shimwright.rebuild.record.Standings.State;
import shimwright.rebuild.reuse.Experience;
import shimwright.rebuild.reuse.RunTogether;
import shimwright.rebuild.reuse.Weighing;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.WearLimit;
import shimwright.rebuild.unit.model.WearLimit.Direction;

/**
 * The inspection as its page shows it.
 *
 * @param rows one a limit
 * @param open the limit that is open; empty for none
 * @param glance how many pieces stand how, with the first limit of each
 * @param fitted parts that went in before it was decided that they do not stay so
 * @param together parts to be decided on because what they run with is replaced
 * @param stakes what is said of the job as a whole for weighing
 * @param drawing the section by verdict
 */
public record InspectView(
        List<LimitRow> rows,
        String open,
        List<Glance> glance,
        List<Standings.FittedBefore> fitted,
        List<RunTogether.Asked> together,
        Map<String, Double> stakes,
        Drawings drawing) {

    /**
     * How many pieces stand so.
     *
     * @param limit the first limit that has one; empty where none has
     */
    public record Glance(State state, int pieces, String limit) {}

    /** One limit with the pieces that it judges. */
    public record LimitRow(WearLimit wear, List<PieceRow> pieces, List<Said<Entry.Found>> alike) {
        /** What it is when new, one size or from one to another. */
        public String asNew() {
            return wear.asNew().stream().map(Quantity::text).collect(Collectors.joining(" to "));
        }

        /** True where it is looked at and not measured. */
        public boolean attested() {
            return wear.direction() == Direction.ATTEST;
        }

        /** The limit in words; empty where it is looked at. */
        public String reject() {
            return attested()
                    ? ""
                    : (wear.direction() == Direction.MIN ? "reject below " : "reject above ")
                            + wear.limit().map(Quantity::text).orElse("");
        }

        /** The gauges of the shop that read such quantities. */
        public List<Shop.Gauge> gauges(Shop shop) {
            return shop.gauges().values().stream()
                    .filter(gauge -> gauge.kind() == wear.kind().quantity())
                    .toList();
        }

        /** How all of it stands where that is one word; else each state once with how many. */
        public String state() {
            Map<State, Integer> count =
                    count(pieces.stream().map(PieceRow::state).toList());
            if (count.size() == 1) {
                State only = count.keySet().iterator().next();
                return only == State.NOT_LOOKED_AT ? "" : only.words();
            }
            return count.entrySet().stream()
                    .map(e -> e.getKey().mark() + " " + e.getValue() + " "
                            + e.getKey().words())
                    .collect(Collectors.joining(" · "));
        }

        /** True where several pieces are read one by one. */
        public boolean several() {
            return pieces.size() > 1;
        }

        /** The first piece that nobody has looked at; empty where all were. */
        public String firstUnread() {
            return pieces.stream()
                    .filter(piece -> piece.state() == State.NOT_LOOKED_AT)
                    .map(PieceRow::key)
                    .findFirst()
                    .orElse("");
        }

        /** True where something waits for a verdict. */
        public boolean undecided() {
            return pieces.stream().anyMatch(piece -> piece.state() == State.OPEN);
        }

        /** The verdicts that stand, one for all pieces that were judged alike. */
        public List<Said<Entry.Judged>> verdicts() {
            return pieces.stream()
                    .flatMap(piece -> piece.standing().judged().stream())
                    .distinct()
                    .toList();
        }
    }

    /**
     * One piece of a limit.
     *
     * @param key under which a form names it
     * @param found what was found of it alone, in order
     * @param damage the list of words that such a part can have
     * @param weighing what stands beside its verdict; empty where the limit is not open or nothing is to be decided
     * @param said what was said of it for that
     * @param before what became of such decisions in earlier boxes
     */
    public record PieceRow(
            Standing standing,
            String key,
            List<Said<Entry.Found>> found,
            String damage,
            Optional<Weighing> weighing,
            Map<String, Double> said,
            List<Experience> before) {
        /** How it stands. */
        public State state() {
            return standing.state();
        }

        /** The single part to look at alone; empty where it is none of the unit. */
        public String part() {
            return standing.piece().parts().stream().findFirst().orElse("");
        }

        /** What pictures of it are about. */
        public String about() {
            return "part " + part();
        }
    }

    private static Map<State, Integer> count(List<State> states) {
        Map<State, Integer> count = new EnumMap<>(State.class);
        states.forEach(state -> count.merge(state, 1, Integer::sum));
        return count;
    }

    /** The inspection of a job with one limit open. */
    static InspectView of(JobOnBench bench, String open, Show show) {
        Unit unit = bench.unit();
        Job job = bench.job();
        List<LimitRow> rows = new ArrayList<>();
        for (WearLimit wear : unit.type().wearLimits()) {
            List<PieceRow> pieces = Standings.of(unit, job, wear).stream()
                    .map(standing -> piece(bench, standing, wear, wear.id().equals(open)))
                    .toList();
            List<Said<Entry.Found>> alike = pieces.size() > 1 ? of(job, wear.id(), "") : List.of();
            rows.add(new LimitRow(wear, pieces, alike));
        }
        return new InspectView(
                List.copyOf(rows),
                open,
                glance(rows),
                Standings.fittedBefore(unit, job),
                RunTogether.asked(unit, job),
                weighed(job, ""),
                Drawings.of(job.id(), unit, Drawings.verdicts(unit, job), "verdict", show));
    }

    private static PieceRow piece(JobOnBench bench, Standing standing, WearLimit wear, boolean open) {
        Unit unit = bench.unit();
        Job job = bench.job();
        boolean weighs = open && standing.state().compareTo(State.REUSE) >= 0;
        String id = standing.piece().id();
        String damage = standing.piece().items().stream()
                .map(unit::item)
                .map(item -> DamageWords.of(TradeChecks.sort(item)))
                .filter(of -> !of.isEmpty())
                .findFirst()
                .map(of -> "damage-" + of)
                .orElse("damage");
        return new PieceRow(
                standing,
                id.isEmpty() ? "all" : id,
                of(job, standing.limit(), id),
                damage,
                weighs
                        ? Optional.of(Weighing.of(bench.bench(), Optional.of(wear), wear.id(), standing.piece()))
                        : Optional.empty(),
                weighed(job, Weighing.key(wear.id(), id)),
                weighs ? Experience.of(bench.taught().outlooks(), wear.id(), standing.piece()) : List.of());
    }

    private static Map<String, Double> weighed(Job job, String key) {
        Said<Entry.Weighed> said = job.inspection().weighed().get(key);
        return said == null ? Map.of() : said.what().numbers();
    }

    private static List<Said<Entry.Found>> of(Job job, String limit, String piece) {
        return job.found().stream()
                .filter(said ->
                        said.what().limit().equals(limit) && said.what().piece().equals(piece))
                .toList();
    }

    private static List<Glance> glance(List<LimitRow> rows) {
        List<Glance> glance = new ArrayList<>();
        for (State state :
                List.of(State.OPEN, State.REPLACE, State.REWORK, State.REUSE, State.GOOD, State.NOT_LOOKED_AT)) {
            int pieces = 0;
            String limit = "";
            for (LimitRow row : rows) {
                int here = (int) row.pieces().stream()
                        .filter(piece -> piece.state() == state)
                        .count();
                limit = limit.isEmpty() && here > 0 ? row.wear().id() : limit;
                pieces += here;
            }
            if (pieces > 0) {
                glance.add(new Glance(state, pieces, limit));
            }
        }
        return List.copyOf(glance);
    }

    /** Where to go on once a limit was read: to what is left of it, else to the next that nobody has read. */
    static String next(Unit unit, Job job, String limit) {
        boolean behind = false;
        for (WearLimit wear : unit.type().wearLimits()) {
            boolean here = wear.id().equals(limit);
            behind |= here;
            Set<State> states = Standings.of(unit, job, wear).stream()
                    .map(Standing::state)
                    .collect(Collectors.toCollection(LinkedHashSet::new));
            boolean left = states.contains(State.NOT_LOOKED_AT);
            if (behind && (left || (here && states.contains(State.OPEN)))) {
                return wear.id();
            }
        }
        return limit;
    }

    /** Parts of the unit by sort, each with how it stands. */
    public record PartLine(String part, String name, State state) {}

    /** The parts, by what the trade looks at on them. */
    static Map<String, List<PartLine>> parts(JobOnBench bench) {
        Map<String, State> states = Standings.byPart(bench.unit(), bench.job());
        Map<String, List<PartLine>> parts = new LinkedHashMap<>();
        for (TradeChecks.Sort sort : TradeChecks.Sort.values()) {
            List<PartLine> lines = bench.unit().type().items().stream()
                    .filter(item -> !item.trial() && TradeChecks.sort(item) == sort)
                    .flatMap(item -> JudgedPiece.parts(item).stream())
                    .flatMap(part -> JudgedPiece.part(bench.unit(), part).stream())
                    .map(piece -> new PartLine(
                            piece.id(), piece.name(), states.getOrDefault(piece.id(), State.NOT_LOOKED_AT)))
                    .toList();
            if (!lines.isEmpty()) {
                parts.put(sort.heading(), lines);
            }
        }
        return parts;
    }

    /**
     * One part alone.
     *
     * @param photos of it, to be shown beside its drawing
     * @param limits its limits as they stand
     * @param checks what the trade looks at on it
     * @param itself the verdict on the part, whatever was found on it
     * @param runsWith what it ran in on and stays with; empty for nothing
     * @param weighing what stands beside its verdict
     * @param next the part after it; empty for none
     */
    public record PartView(
            JudgedPiece piece,
            Item item,
            List<PartPhoto> photos,
            List<Standing> limits,
            List<CheckRow> checks,
            Optional<Said<Entry.Judged>> itself,
            String damage,
            String runsWith,
            Optional<Weighing> weighing,
            Map<String, Double> said,
            List<Experience> before,
            String next) {}

    /** One look at a part. */
    public record CheckRow(TradeChecks.TradeCheck check, Standing standing, List<Said<Entry.Found>> found) {}

    /** One part of the unit; empty where it has none of that name. */
    static Optional<PartView> part(JobOnBench bench, String id) {
        Unit unit = bench.unit();
        Job job = bench.job();
        return JudgedPiece.part(unit, id).map(piece -> {
            Item item = unit.item(JudgedPiece.item(id));
            List<CheckRow> checks = new ArrayList<>();
            for (Standing standing : Standings.of(unit, job, id)) {
                TradeChecks.find(standing.limit())
                        .ifPresent(check -> checks.add(new CheckRow(check, standing, of(job, standing.limit(), id))));
            }
            List<Standing> limits = unit.type().wearLimits().stream()
                    .flatMap(wear -> Standings.of(unit, job, wear).stream())
                    .filter(standing -> standing.piece().parts().contains(id))
                    .toList();
            List<String> all = parts(bench).values().stream()
                    .flatMap(List::stream)
                    .map(PartLine::part)
                    .toList();
            int at = all.indexOf(id);
            return new PartView(
                    piece,
                    item,
                    PartPhotos.of(bench).ofPart(id),
                    limits,
                    List.copyOf(checks),
                    Findings.verdict(job, Entry.Judged.PART, piece),
                    DamageWords.of(TradeChecks.sort(item)).isEmpty()
                            ? "damage"
                            : "damage-" + DamageWords.of(TradeChecks.sort(item)),
                    RunTogether.with(unit, item.id()),
                    Optional.of(Weighing.of(bench.bench(), Optional.empty(), Entry.Judged.PART, piece)),
                    weighed(job, Weighing.key(Entry.Judged.PART, id)),
                    Experience.of(bench.taught().outlooks(), Entry.Judged.PART, piece),
                    at >= 0 && at + 1 < all.size() ? all.get(at + 1) : "");
        });
    }
}
