package shimwright.rebuild.act;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.MeasureUnit;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Range;
import shimwright.mechanics.quantity.Units;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.plan.learn.AsFound;
import shimwright.rebuild.plan.learn.FoundLimits;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.workbench.Workbench;

/** The strip-down: what comes off, what was in its way, and the putting right of what was said of it. */
public final class StripActs {
    /** In {@code inTheWay}: what came off last, where nothing else is named; nothing where it is the first. */
    public static final String LAST = "last";

    /** More than such a box can have, m; N·m; turns. */
    private static final double MOST_PLAY = 20e-3;

    private static final double MOST_DRAG = 200;

    private static final double MOST_TURNS = 1000;

    private StripActs() {}

    /** Something came off. */
    @MakesEntries(Entry.TakenOff.class)
    public record TakeOff(
            @ActInput(value = "what came off", missing = "Name the part, as you would on a tag")
            String gone,

            @ActInput("items of the unit") List<String> items,
            @ActInput("note") String note,
            @ActInput("what was in its way") List<String> inTheWay,
            @ActInput("what it came out with") List<String> asOneWith,
            @ActInput("force it took") String byForce,
            @ActInput("what was destroyed") String destroyed,
            @ActInput("side up") String sideUp,
            @ActInput("what held it") String fasteners,
            @ActInput("shims found") Map<String, String> shims,
            @ActInput("sealant or locker on it") String sealedWith)
            implements Act.OfJob {
        /** Something came off, and nothing was asked of it. */
        public TakeOff(String gone, List<String> items, String note) {
            this(gone, items, note, List.of(), List.of(), "", "", "", "", Map.of(), "");
        }

        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            List<String> way = named(inTheWay, bench.job().takenOff());
            return said(shims, around)
                    .map(found -> new Entry.TakenOff(
                            gone,
                            items,
                            note,
                            way,
                            asOneWith,
                            byForce,
                            destroyed,
                            sideUp,
                            fasteners,
                            found,
                            sealedWith))
                    .flatMap(off -> IntakeActs.kept(bench, off, "Kept: " + gone));
        }
    }

    /**
     * What was said of something that came off is put right; what was in its way may be another, and so may the part: another name with
     * the same items means the item that is called so.
     */
    @MakesEntries(Entry.TakenOffCorrected.class)
    public record CorrectTakenOff(
            @ActInput(value = "what came off before", missing = "Load the page again")
            String takenOff,

            @ActInput(value = "what came off", missing = "Name the part, as you would on a tag")
            String gone,

            @ActInput("items of the unit") List<String> items,
            @ActInput("note") String note,
            @ActInput("what was in its way") List<String> inTheWay,
            @ActInput("what it came out with") List<String> asOneWith,
            @ActInput("force it took") String byForce,
            @ActInput("what was destroyed") String destroyed,
            @ActInput("side up") String sideUp,
            @ActInput("what held it") String fasteners,
            @ActInput("shims found") Map<String, String> shims,
            @ActInput("sealant or locker on it") String sealedWith,

            @ActInput(value = "reason", missing = "Say what was wrong before")
            String reason)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            List<Said<Entry.TakenOff>> before = bench.job().takenOff().stream()
                    .takeWhile(said -> !said.id().equals(takenOff))
                    .toList();
            List<String> way = named(inTheWay, before);
            List<String> meant = meant(bench);
            return said(shims, around)
                    .map(found -> new Entry.TakenOff(
                            gone,
                            meant,
                            note,
                            way,
                            asOneWith,
                            byForce,
                            destroyed,
                            sideUp,
                            fasteners,
                            found,
                            sealedWith))
                    .flatMap(now -> IntakeActs.kept(
                            bench,
                            new Entry.TakenOffCorrected(takenOff, now, reason),
                            "Put right; what was said before stays in the log"));
        }

        /** The items as said; where the name alone is another, those of the unit that are called so. */
        private List<String> meant(Workbench bench) {
            boolean renamed = bench.job().takenOff().stream()
                    .filter(said -> said.id().equals(takenOff))
                    .anyMatch(said -> said.what().items().equals(items)
                            && !said.what().gone().strip().equalsIgnoreCase(gone.strip()));
            if (!renamed) {
                return items;
            }
            return bench.unit().type().items().stream()
                    .filter(item -> item.name().equalsIgnoreCase(gone.strip()))
                    .map(Item::id)
                    .toList();
        }
    }

    /**
     * A play or a drag read as found, before anything comes off that ends it. What was not read is a remark without a value and
     * never a reading of nothing; a play of 0 that was read is one.
     */
    @MakesEntries(Entry.Found.class)
    public record ReadAsFound(
            @ActInput(value = "what was read", missing = "Name the play or drag")
            String what,

            @ActInput("play") String play,
            @ActInput("drag") String drag,
            @ActInput("turns counted") String count,
            @ActInput("remark") String words)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            List<String> typed =
                    Stream.of(play, drag, count).filter(text -> !text.isBlank()).toList();
            if (typed.isEmpty() && words.isBlank()) {
                return Outcome.refused(new Refusal(
                        "play", what, "nothing was read", "Type the reading; for none at all write so in the remark"));
            }
            if (typed.size() > 1) {
                return Outcome.refused(new Refusal(
                        drag.isBlank() ? "count" : "drag",
                        what,
                        "a play, a drag and a count of turns are readings of their own",
                        "Keep one, then the other"));
            }
            Kind kind = !drag.isBlank() ? Kind.TORQUE : !count.isBlank() ? Kind.NUMBER : Kind.LENGTH;
            return values(kind, String.join("", typed), around)
                    .flatMap(values ->
                            IntakeActs.kept(bench, found(bench, kind, values, around), "Kept as found: " + what));
        }

        private Entry.Found found(Workbench bench, Kind kind, List<Double> values, ActContext around) {
            Optional<AsFound> reading = AsFound.of(bench.unit(), bench.job()).stream()
                    .filter(one -> one.name().equals(what) && one.kind() == kind)
                    .findFirst();
            double mean = values.stream().mapToDouble(value -> value).average().orElse(0);
            String outcome = values.isEmpty()
                    ? ""
                    : reading.flatMap(one -> FoundLimits.of(bench.unit(), one))
                            .map(limits -> limits.says(mean, kind, around.units()))
                            .orElse("");
            Map<String, String> basis = new LinkedHashMap<>();
            basis.put("phase", "as found");
            reading.filter(one -> !one.again().isEmpty()).ifPresent(one -> basis.put("again", one.again()));
            return new Entry.Found("", List.of(), AsFound.LEAD + what, values, kind, words, outcome, List.of(), basis);
        }

        /** One reading or several, apart by a blank or a semicolon. */
        private static Outcome<List<Double>> values(Kind kind, String text, ActContext around) {
            String key = kind == Kind.TORQUE ? "drag" : kind == Kind.NUMBER ? "count" : "play";
            double most = kind == Kind.TORQUE ? MOST_DRAG : kind == Kind.NUMBER ? MOST_TURNS : MOST_PLAY;
            MeasureUnit bare = around.units().display(kind).unit();
            List<Outcome<Double>> values = TypedReadings.parts(text).stream()
                    .map(part -> Quantities.parse(part, kind, bare, key, new Range(0, most))
                            .placed(key, key)
                            .map(read -> read.si()))
                    .toList();
            return Outcome.all(values);
        }
    }

    private static List<String> named(List<String> inTheWay, List<Said<Entry.TakenOff>> before) {
        List<String> named =
                inTheWay.stream().filter(one -> !one.equals(LAST)).distinct().toList();
        if (!named.isEmpty() || inTheWay.isEmpty()) {
            return named;
        }
        return List.of(
                before.isEmpty()
                        ? Entry.TakenOff.NOTHING
                        : before.get(before.size() - 1).id());
    }

    /** What was really said of the shims, each size with its unit: fields that were left empty say nothing. */
    private static Outcome<Map<String, String>> said(Map<String, String> shims, ActContext around) {
        Map<String, String> said = new TreeMap<>();
        shims.forEach((field, text) -> {
            if (!text.isBlank()) {
                said.put(field, text.strip());
            }
        });
        String sizes = said.getOrDefault("sizes", "");
        if (sizes.isEmpty()) {
            return Outcome.ok(said);
        }
        MeasureUnit bare = around.units().display(Kind.LENGTH).unit();
        return TypedReadings.parse(sizes, Kind.LENGTH, bare, "shims found")
                .reworded(refusal -> refusal.placed("shims.sizes", "shims found"))
                .map(read -> {
                    said.put(
                            "sizes",
                            read.stream()
                                    .map(size -> Quantities.brief(size, Units.MM))
                                    .collect(Collectors.joining("; ")));
                    return said;
                });
    }
}
