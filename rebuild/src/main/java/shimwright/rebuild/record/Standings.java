package shimwright.rebuild.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.inspect.TradeChecks;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.Decision;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.LastAsked;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.WearLimit;

/** How each piece stands at an inspection, and what follows for its item: the worst that stands of any of its pieces. */
public final class Standings {
    private static final LastAsked<IdentityHashMap<WearLimit, List<Standing>>> OF = new LastAsked<>();
    private static final LastAsked<List<Standing>> ALL = new LastAsked<>();

    private Standings() {}

    /** How a piece stands, from best to worst. */
    public enum State {
        NOT_LOOKED_AT("not looked at", "○"),
        GOOD("good", "✓"),
        REUSE("reuse", "✓"),
        OPEN("to be decided", "?"),
        REWORK("rework", "✎"),
        REPLACE("replace", "✗");

        private final String words;
        private final String mark;

        State(String words, String mark) {
            this.words = words;
            this.mark = mark;
        }

        /** In words. */
        public String words() {
            return words;
        }

        /** A sign that tells it without colour. */
        public String mark() {
            return mark;
        }
    }

    /**
     * One piece at one limit or check.
     *
     * @param limit id under which it is kept
     * @param what is looked at
     * @param found the latest about it
     * @param judged the verdict that stands
     */
    public record Standing(
            String limit,
            String what,
            JudgedPiece piece,
            Optional<Said<Entry.Found>> found,
            Optional<Said<Entry.Judged>> judged) {
        /** How it stands; a verdict on the part itself says nothing of a limit that nobody looked at. */
        public State state() {
            boolean ofItsOwn = limit.equals(Entry.Judged.PART) || found.isPresent();
            if (judged.isPresent() && (ofItsOwn || !judged.get().what().limit().equals(Entry.Judged.PART))) {
                return State.valueOf(judged.get().what().decision().name());
            }
            return found.map(said -> Findings.needsVerdict(said.what()) ? State.OPEN : State.GOOD)
                    .orElse(State.NOT_LOOKED_AT);
        }
    }

    /** The pieces of one limit. */
    public static List<Standing> of(Unit unit, Job job, WearLimit wear) {
        List<Standing> known = byLimit(unit, job).get(wear);
        return known == null ? standings(unit, job, wear) : known;
    }

    private static IdentityHashMap<WearLimit, List<Standing>> byLimit(Unit unit, Job job) {
        return OF.of(unit, job, () -> {
            IdentityHashMap<WearLimit, List<Standing>> byLimit = new IdentityHashMap<>();
            unit.type().wearLimits().forEach(wear -> byLimit.put(wear, standings(unit, job, wear)));
            return byLimit;
        });
    }

    private static List<Standing> standings(Unit unit, Job job, WearLimit wear) {
        return JudgedPiece.of(unit, wear).stream()
                .map(piece -> standing(job, wear.id(), wear.what(), piece))
                .toList();
    }

    /** What the trade looks at on one single part. */
    public static List<Standing> of(Unit unit, Job job, String part) {
        return JudgedPiece.part(unit, part).stream()
                .flatMap(piece -> TradeChecks.of(unit.item(JudgedPiece.item(part))).stream()
                        .map(check -> standing(job, check.limit(), check.look(), piece)))
                .toList();
    }

    private static Standing standing(Job job, String limit, String what, JudgedPiece piece) {
        return new Standing(
                limit, what, piece, Findings.latest(job, limit, piece), Findings.verdict(job, limit, piece));
    }

    /** Every piece at every limit, and what was looked at beside them, in the order of the unit file. */
    public static List<Standing> all(Unit unit, Job job) {
        return ALL.of(unit, job, () -> together(unit, job));
    }

    private static List<Standing> together(Unit unit, Job job) {
        List<Standing> all = new ArrayList<>();
        unit.type().wearLimits().forEach(wear -> all.addAll(of(unit, job, wear)));
        job.found().stream()
                .map(Said::what)
                .filter(found -> found.limit().startsWith(Entry.Found.TRADE))
                .map(Findings::key)
                .distinct()
                .forEach(key -> all.addAll(looked(unit, job, key)));
        unit.type().items().stream()
                .flatMap(item -> JudgedPiece.parts(item).stream())
                .forEach(part -> itself(unit, job, part).ifPresent(all::add));
        return List.copyOf(all);
    }

    private static List<Standing> looked(Unit unit, Job job, String key) {
        String limit = key.substring(0, key.indexOf('/') < 0 ? key.length() : key.indexOf('/'));
        String part = key.substring(Math.min(key.length(), limit.length() + 1));
        return TradeChecks.find(limit)
                .flatMap(check -> JudgedPiece.part(unit, part).map(piece -> standing(job, limit, check.look(), piece)))
                .stream()
                .toList();
    }

    /** The verdict on a part itself, whatever was found on it. */
    private static Optional<Standing> itself(Unit unit, Job job, String part) {
        return Optional.ofNullable(job.judged().get(Entry.Judged.PART + "/" + part))
                .flatMap(said -> JudgedPiece.part(unit, part)
                        .map(piece -> new Standing(
                                Entry.Judged.PART, piece.name(), piece, Optional.empty(), Optional.of(said))));
    }

    /** The worst state of any piece that a single part belongs to, by part; what nobody looked at is not there. */
    public static Map<String, State> byPart(Unit unit, Job job) {
        Map<String, State> worst = new LinkedHashMap<>();
        for (Standing standing : all(unit, job)) {
            if (standing.state() != State.NOT_LOOKED_AT) {
                standing.piece().parts().forEach(part -> worst.merge(part, standing.state(), Standings::worse));
            }
        }
        return worst;
    }

    /** The worst state of each item, by its id. */
    public static Map<String, State> byItem(Unit unit, Job job) {
        Map<String, State> worst = new LinkedHashMap<>();
        byPart(unit, job).forEach((part, state) -> worst.merge(JudgedPiece.item(part), state, Standings::worse));
        return worst;
    }

    private static State worse(State one, State other) {
        return one.compareTo(other) >= 0 ? one : other;
    }

    /** The worst verdict that stands on any piece of a limit; empty where none does. */
    public static Optional<Decision> worst(Unit unit, Job job, WearLimit wear) {
        return of(unit, job, wear).stream()
                .flatMap(standing -> standing.judged().stream())
                .map(said -> said.what().decision())
                .max(Comparator.naturalOrder());
    }

    /**
     * What was found and needs a verdict that is not there, or no longer stands. A part that is replaced for another reason needs
     * none; how two run together is found anew.
     */
    public static List<Standing> undecided(Unit unit, Job job) {
        List<Standing> all = all(unit, job);
        Set<String> gone = all.stream()
                .filter(standing -> standing.state() == State.REPLACE)
                .flatMap(standing -> standing.piece().parts().stream())
                .collect(Collectors.toSet());
        return all.stream()
                .filter(standing -> standing.state() == State.OPEN)
                .filter(standing -> standing.piece().parts().size() != 1
                        || !gone.containsAll(standing.piece().parts()))
                .toList();
    }

    /**
     * A part that was fitted before it was decided that it does not stay as it is.
     *
     * @param step that fitted it
     * @param judged the verdict
     */
    public record FittedBefore(Item item, Step step, Said<Entry.Judged> judged) {
        /** What is to be done about it. */
        public String sentence() {
            return item.name() + " went in at step " + step.id() + " before it was decided to "
                    + judged.what().decision().name().toLowerCase(Locale.ROOT) + " it";
        }
    }

    /** Parts in the unit that stand on a verdict which was changed after they were fitted. */
    public static List<FittedBefore> fittedBefore(Unit unit, Job job) {
        Map<String, FittedBefore> fitted = new LinkedHashMap<>();
        List<Step> done = job.stepsDone().stream()
                .flatMap(id -> unit.findStep(id).stream())
                .toList();
        Set<String> in = unit.itemsIn(done.stream().map(Step::id).toList());
        for (Standing standing : all(unit, job)) {
            standing.judged()
                    .filter(said -> said.what().decision() != Decision.REUSE)
                    .ifPresent(said -> standing.piece().items().stream()
                            .filter(in::contains)
                            .forEach(item -> fitting(job, done, item)
                                    .filter(step -> number(job, step) < said.number())
                                    .ifPresent(step ->
                                            fitted.putIfAbsent(item, new FittedBefore(unit.item(item), step, said)))));
        }
        return List.copyOf(fitted.values());
    }

    /** The step done last that fitted an item. */
    private static Optional<Step> fitting(Job job, List<Step> done, String item) {
        return done.stream()
                .filter(step -> step.installs().contains(item))
                .max(Comparator.comparingLong(step -> number(job, step)));
    }

    private static long number(Job job, Step step) {
        Said<Entry.StepDone> done = job.done().get(step.id());
        return done == null ? 0 : done.number();
    }
}
