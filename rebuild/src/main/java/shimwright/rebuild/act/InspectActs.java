package shimwright.rebuild.act;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.inspect.FellowPieces;
import shimwright.rebuild.inspect.GaugeReadings;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.inspect.TradeChecks;
import shimwright.rebuild.inspect.TradeChecks.TradeCheck;
import shimwright.rebuild.inspect.WearJudgement;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.reuse.Weighing;
import shimwright.rebuild.unit.model.WearLimit;
import shimwright.rebuild.unit.model.WearLimit.Direction;
import shimwright.rebuild.workbench.Workbench;

/** Inspection: what was measured and seen, piece by piece, and what becomes of each. */
public final class InspectActs {
    /** Begins the sentence of what cannot be read. */
    private static final String UNREAD = "Could not be read: decide what becomes of it.";

    private InspectActs() {}

    /** A wear limit was measured or looked at, on one piece or on all of them alike. */
    @MakesEntries(Entry.Found.class)
    public record Inspect(
            @ActInput(value = "limit", missing = "Go back to the inspection")
            String limit,

            @ActInput("readings") String values,
            @ActInput("as it should be") String attest,
            @ActInput("gauge") String gauge,
            @ActInput("why an unlikely size is right") String confirmed,
            @ActInput("remark") String words,
            @ActInput("piece; empty for all alike") String piece)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return wearLimit(bench, limit)
                    .flatMap(wear -> found(bench, wear, around))
                    .flatMap(found -> IntakeActs.kept(bench, found, found.outcome()));
        }

        private Outcome<Entry.Found> found(Workbench bench, WearLimit wear, ActContext around) {
            return pieceOf(bench, wear, piece)
                    .flatMap(of -> wear.direction() == Direction.ATTEST
                            ? attested(wear.id(), wear.what(), of, attest, words)
                            : read(wear, around)
                                    .flatMap(readings ->
                                            measured(wear, of, readings.confirmedBecause(confirmed), words, around)));
        }

        private Outcome<GaugeReadings> read(WearLimit wear, ActContext around) {
            return TypedReadings.parse(values, wear.kind().quantity(), wear.bareUnit(), wear.id() + " " + wear.what())
                    .flatMap(read -> TypedReadings.read(read, gauge, wear.gauge(), around));
        }
    }

    /** A wear limit cannot be read, and why; nobody knows then that it is within, so what becomes of it is to be decided. */
    @MakesEntries(Entry.Found.class)
    public record CannotRead(
            @ActInput(value = "limit", missing = "Go back to the inspection")
            String limit,

            @ActInput(value = "why it cannot be read", missing = "Say why it cannot be read")
            String why,

            @ActInput("piece; empty for all alike") String piece)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return wearLimit(bench, limit)
                    .flatMap(wear -> pieceOf(bench, wear, piece)
                            .flatMap(of -> IntakeActs.kept(
                                    bench,
                                    notRead(wear.id(), wear.what(), of, why, wear.origin()),
                                    "Kept: it could not be read")));
        }
    }

    /**
     * The pieces of a wear limit, as many as were read or seen or cannot be; the others stay as they are. A piece without a name of
     * its own goes by {@code all}.
     */
    @MakesEntries(Entry.Found.class)
    public record InspectPieces(
            @ActInput(value = "limit", missing = "Go back to the inspection")
            String limit,

            @ActInput("readings, by piece") Map<String, String> values,
            @ActInput("as it should be, by piece") Map<String, String> attest,
            @ActInput("why it cannot be read, by piece") Map<String, String> unread,
            @ActInput("what you saw, by piece") Map<String, String> words,
            @ActInput("gauge") String gauge,
            @ActInput("why an unlikely size is right") String confirmed)
            implements Act.OfJob {
        private static final String ALL = "all";

        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return wearLimit(bench, limit).flatMap(wear -> all(bench, wear, around));
        }

        private Outcome<ActResult> all(Workbench bench, WearLimit wear, ActContext around) {
            List<Refusal> refusals = new ArrayList<>();
            List<Entry> entries = new ArrayList<>();
            Map<JudgedPiece, GaugeReadings> read = new LinkedHashMap<>();
            for (String key : typed()) {
                Outcome<JudgedPiece> piece = pieceOf(bench, wear, key.equals(ALL) ? "" : key);
                if (piece.isOk()) {
                    one(wear, key, piece.orElseThrow(), around, entries, read, refusals);
                } else {
                    refusals.addAll(piece.refusals());
                }
            }
            if (refusals.isEmpty() && confirmed.isBlank()) {
                FellowPieces.asked(wear, read)
                        .forEach((piece, asked) ->
                                refusals.add(asked.placed(field("values", key(piece)), asked.place())));
            }
            if (entries.isEmpty() && refusals.isEmpty()) {
                refusals.add(new Refusal(
                        "",
                        wear.id() + " " + wear.what(),
                        "nothing typed",
                        "Read a piece, or say why it cannot be read"));
            }
            return refusals.isEmpty()
                    ? Outcome.ok(new ActResult(bench.job().id(), entries, said(entries)))
                    : Outcome.refused(refusals);
        }

        /** The pieces of which something was typed. */
        private Set<String> typed() {
            Set<String> typed = new LinkedHashSet<>();
            Stream.of(values, attest, unread, words)
                    .forEach(by -> by.forEach((piece, text) -> {
                        if (!text.isBlank()) {
                            typed.add(piece);
                        }
                    }));
            return typed;
        }

        private void one(
                WearLimit wear,
                String key,
                JudgedPiece piece,
                ActContext around,
                List<Entry> entries,
                Map<JudgedPiece, GaugeReadings> read,
                List<Refusal> refusals) {
            String saw = words.getOrDefault(key, "");
            String why = unread.getOrDefault(key, "");
            String said =
                    wear.direction() == Direction.ATTEST ? attest.getOrDefault(key, "") : values.getOrDefault(key, "");
            String field = field(wear.direction() == Direction.ATTEST ? "attest" : "values", key);
            String place = place(wear, piece);
            if (!why.isBlank() && !said.isBlank()) {
                refusals.add(new Refusal(
                        field("unread", key), place, "it was read and cannot be read", "Leave one of the two empty"));
                return;
            }
            Outcome<Entry.Found> found;
            if (!why.isBlank()) {
                found = Outcome.ok(notRead(wear.id(), wear.what(), piece, (why + " " + saw).strip(), wear.origin()));
            } else if (wear.direction() == Direction.ATTEST) {
                found = attested(wear.id(), wear.what(), piece, said, saw);
            } else {
                found = TypedReadings.parse(said, wear.kind().quantity(), wear.bareUnit(), place)
                        .flatMap(typed -> TypedReadings.read(typed, gauge, wear.gauge(), around))
                        .map(readings -> readings.confirmedBecause(confirmed))
                        .flatMap(readings -> {
                            read.put(piece, readings);
                            return measured(wear, piece, readings, saw, around);
                        });
            }
            entries.addAll(found.isOk() ? List.of(found.orElseThrow()) : List.of());
            found.refusals().forEach(refusal -> refusals.add(refusal.placed(field, place)));
        }

        private static String key(JudgedPiece piece) {
            return piece.id().isEmpty() ? ALL : piece.id();
        }

        private static String field(String input, String key) {
            return input + "." + key;
        }

        private static String place(WearLimit wear, JudgedPiece piece) {
            return piece.id().isEmpty() ? wear.id() + " " + wear.what() : piece.name() + ", " + wear.what();
        }

        private static String said(List<Entry> entries) {
            return entries.size() == 1 && entries.get(0) instanceof Entry.Found found
                    ? found.outcome()
                    : "Kept: " + entries.size() + " pieces";
        }
    }

    /** What the trade looks at on a part: as many of its checks as were made. */
    @MakesEntries(Entry.Found.class)
    public record CheckPart(
            @ActInput(value = "part", missing = "Go back to the parts")
            String piece,

            @ActInput("as it should be, by check") Map<String, String> attest,
            @ActInput("why it cannot be seen, by check") Map<String, String> unread,
            @ActInput("what you saw, by check") Map<String, String> words)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            Optional<JudgedPiece> part = JudgedPiece.part(bench.unit(), piece);
            if (part.isEmpty()) {
                return Outcome.refused(noPart(piece));
            }
            List<Refusal> refusals = new ArrayList<>();
            List<Entry> entries = new ArrayList<>();
            for (TradeCheck check : TradeChecks.of(bench.unit().item(JudgedPiece.item(piece)))) {
                String said = attest.getOrDefault(check.id(), "");
                String why = unread.getOrDefault(check.id(), "");
                String saw = words.getOrDefault(check.id(), "");
                if (!why.isBlank() && said.isBlank()) {
                    entries.add(notRead(
                            check.limit(), check.look(), part.get(), (why + " " + saw).strip(), TradeChecks.ORIGIN));
                } else if (!said.isBlank() || !saw.isBlank() || !why.isBlank()) {
                    Outcome<Entry.Found> found = attested(check.limit(), check.look(), part.get(), said, saw);
                    entries.addAll(found.isOk() ? List.of(found.orElseThrow()) : List.of());
                    found.refusals()
                            .forEach(refusal -> refusals.add(refusal.placed("attest." + check.id(), check.look())));
                }
            }
            if (entries.isEmpty() && refusals.isEmpty()) {
                refusals.add(new Refusal("", part.get().name(), "nothing said", "Say what you looked at, as it is"));
            }
            return refusals.isEmpty()
                    ? Outcome.ok(new ActResult(
                            bench.job().id(),
                            entries,
                            "Kept: " + entries.size() + (entries.size() == 1 ? " look" : " looks")))
                    : Outcome.refused(refusals);
        }
    }

    /** What becomes of an item, or of single pieces, is decided. */
    @MakesEntries(Entry.Judged.class)
    public record Decide(
            @ActInput("limit") String limit,

            @ActInput(value = "item", missing = "Say which item")
            String what,

            @ActInput(value = "verdict", missing = "Choose reuse, rework or replace")
            Entry.Decision decision,

            @ActInput(value = "reason", missing = "Say why, so that the record can be stood behind")
            String reason,

            @ActInput("agreed with the owner") String consent,
            @ActInput("pieces; none for all alike") List<String> pieces)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            List<String> each =
                    pieces.isEmpty() ? List.of("") : pieces.stream().distinct().toList();
            return Outcome.ok(new ActResult(
                    bench.job().id(),
                    each.stream().<Entry>map(piece -> judged(bench, piece)).toList(),
                    "Kept: " + decision.name().toLowerCase(Locale.ROOT)));
        }

        /** The verdict on one piece, with what stood beside it. */
        private Entry.Judged judged(Workbench bench, String id) {
            Optional<Weighing> weighing = weighing(bench, id);
            return new Entry.Judged(
                    limit,
                    List.of(),
                    what,
                    decision,
                    reason,
                    consent,
                    id,
                    weighing.map(Weighing::kept).orElse(Map.of()),
                    weighing.map(Weighing::working).orElse(List.of()));
        }

        private Optional<Weighing> weighing(Workbench bench, String id) {
            Optional<WearLimit> wear = bench.unit().type().wearLimits().stream()
                    .filter(one -> one.id().equals(limit))
                    .findFirst();
            Optional<JudgedPiece> piece = wear.isPresent()
                    ? JudgedPiece.of(bench.unit(), wear.get()).stream()
                            .filter(one -> one.id().equals(id))
                            .findFirst()
                    : JudgedPiece.part(bench.unit(), id);
            return piece.map(of -> Weighing.of(bench, wear, limit, of));
        }
    }

    private static Outcome<WearLimit> wearLimit(Workbench bench, String id) {
        return bench.unit().type().wearLimits().stream()
                .filter(wear -> wear.id().equals(id))
                .findFirst()
                .map(Outcome::ok)
                .orElseGet(() -> Outcome.refused(new Refusal(
                        "limit", "limit " + id, "this unit has no such limit", "Go back to the inspection")));
    }

    /** The piece of that name; without a name all of them alike. */
    private static Outcome<JudgedPiece> pieceOf(Workbench bench, WearLimit wear, String id) {
        if (id.isEmpty()) {
            return Outcome.ok(new JudgedPiece("", wear.what(), List.of()));
        }
        return JudgedPiece.of(bench.unit(), wear).stream()
                .filter(piece -> piece.id().equals(id))
                .findFirst()
                .map(Outcome::ok)
                .orElseGet(() -> Outcome.refused(new Refusal(
                        "piece", wear.id() + " " + wear.what(), "it judges no piece " + id, "Load the page again")));
    }

    private static Refusal noPart(String part) {
        return new Refusal("piece", "part " + part, "this unit has no such part", "Go back to the parts");
    }

    private static Outcome<Entry.Found> attested(
            String limit, String what, JudgedPiece piece, String attest, String words) {
        if (!attest.equals("good") && !attest.equals("bad")) {
            return Outcome.refused(
                    new Refusal("attest", limit + " " + what, "nothing chosen", "Say whether it is as it should be"));
        }
        boolean good = attest.equals("good");
        return Outcome.ok(new Entry.Found(
                limit,
                piece.items(),
                what,
                List.of(),
                Kind.NUMBER,
                words,
                good ? "As it should be." : "Not as it should be: rework or replace.",
                List.of(),
                Map.of("verdict", good ? "IN" : "OUT"),
                piece.id()));
    }

    private static Outcome<Entry.Found> measured(
            WearLimit wear, JudgedPiece piece, GaugeReadings read, String words, ActContext around) {
        return WearJudgement.of(wear, read, around.units())
                .map(judged -> new Entry.Found(
                        wear.id(),
                        piece.items().isEmpty() ? wear.items() : piece.items(),
                        wear.what(),
                        read.values(),
                        wear.kind().quantity(),
                        TypedReadings.remark(words, read.confirmed()),
                        judged.say(),
                        judged.working(),
                        basis(wear, judged),
                        piece.id()));
    }

    private static Entry.Found notRead(String limit, String what, JudgedPiece piece, String why, String origin) {
        return new Entry.Found(
                limit,
                piece.items(),
                what,
                List.of(),
                Kind.NUMBER,
                why,
                UNREAD,
                List.of(),
                Map.of("verdict", "NOT_PROVEN", "origin", origin),
                piece.id());
    }

    private static Map<String, String> basis(WearLimit wear, WearJudgement judged) {
        Map<String, String> basis = new LinkedHashMap<>();
        basis.put("verdict", judged.verdict().name());
        wear.limit().ifPresent(limit -> basis.put("limit", limit.toString()));
        basis.put("origin", wear.origin());
        return basis;
    }
}
