package shimwright.rebuild.record;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Mistakes;
import shimwright.rebuild.unit.model.Unit;

/**
 * Everything that was kept of a job, a line an entry, in order: what stands in no other part of the record is found here. The
 * words come from the entries, so that they never change; the file that the job stands on only names what they speak of.
 */
public final class History {
    private static final Map<Class<? extends Entry.OfJob>, Function<Entry.OfJob, String>> WORDS = words();
    private static final Map<Class<? extends Entry.OfJob>, BiFunction<Entry.OfJob, PlaceNames, String>> NAMED =
            SettingWords.all();

    private History() {}

    /** Parts of the work that a line can belong to, in the order of a rebuild. */
    public enum Part {
        COMING_IN,
        INSPECTION,
        BUILD,
        CLEARANCES,
        HANDING_BACK
    }

    /**
     * One line.
     *
     * @param number within the job
     * @param part of the work it belongs to
     * @param struck true where it does not count any more
     */
    public record Line(long number, Instant at, String by, Part part, String words, boolean struck) {}

    /** All lines of a job. */
    public static List<Line> of(Job job, Unit unit) {
        PlaceNames names = PlaceNames.of(unit);
        Set<String> mistakes = Mistakes.of(job);
        return job.entries().stream()
                .filter(kept -> kept.body() instanceof Entry.OfJob)
                .map(kept -> new Line(
                        kept.streamNumber(),
                        kept.draft().at(),
                        kept.draft().by(),
                        part((Entry.OfJob) kept.body()),
                        say((Entry.OfJob) kept.body(), names),
                        mistakes.contains(kept.draft().id())
                                || job.struck().containsKey(kept.draft().id())))
                .toList();
    }

    private static Part part(Entry.OfJob entry) {
        if (entry instanceof Entry.JobOpened
                || entry instanceof Entry.IntakeCorrected
                || entry instanceof Entry.UnitMoved
                || entry instanceof Entry.ComplaintSaid
                || entry instanceof Entry.TakenOff
                || entry instanceof Entry.TakenOffCorrected) {
            return Part.COMING_IN;
        }
        if (entry instanceof Entry.SuspectLooked
                || entry instanceof Entry.Found
                || entry instanceof Entry.Judged
                || entry instanceof Entry.Weighed
                || entry instanceof Entry.Sent
                || entry instanceof Entry.CameBack
                || entry instanceof Entry.SentBack
                || entry instanceof Entry.LiesHere
                || entry instanceof Entry.DueMoved
                || entry instanceof Entry.Quoted
                || entry instanceof Entry.OwnerAnswered
                || entry instanceof Entry.CostSaid) {
            return Part.INSPECTION;
        }
        if (entry instanceof Entry.PackIn
                || entry instanceof Entry.RoundRead
                || entry instanceof Entry.RoundStruck
                || entry instanceof Entry.PackChosen
                || entry instanceof Entry.ClearanceAccepted) {
            return Part.CLEARANCES;
        }
        return entry instanceof Entry.HandedBack
                        || entry instanceof Entry.FollowedUp
                        || entry instanceof Entry.FollowUpPlanned
                        || entry instanceof Entry.Returned
                        || entry instanceof Entry.ReturnExplained
                        || entry instanceof Entry.HoursSaid
                ? Part.HANDING_BACK
                : Part.BUILD;
    }

    /**
     * What was kept last and counts, remarks left aside: it can be struck whatever it is.
     *
     * @param id of the entry
     */
    public record Last(String id, String words) {}

    /** The entry that was kept last; empty where nothing but the intake is there. */
    public static Optional<Last> last(Job job, Unit unit) {
        Set<String> mistakes = Mistakes.of(job);
        return job.entries().stream()
                .filter(kept -> !mistakes.contains(kept.draft().id()))
                .filter(kept -> kept.body() instanceof Entry.OfJob
                        && !(kept.body() instanceof Entry.EntryStruck)
                        && !(kept.body() instanceof Entry.NoteMade)
                        && !(kept.body() instanceof Entry.PictureAdded)
                        && !(kept.body() instanceof Entry.PictureMarked))
                .reduce((earlier, later) -> later)
                .filter(kept -> !(kept.body() instanceof Entry.JobOpened))
                .map(kept -> new Last(kept.draft().id(), say((Entry.OfJob) kept.body(), PlaceNames.of(unit))));
    }

    /** An entry in words. */
    private static String say(Entry.OfJob entry, PlaceNames names) {
        BiFunction<Entry.OfJob, PlaceNames, String> named = NAMED.get(entry.getClass());
        if (named != null) {
            return named.apply(entry, names);
        }
        Function<Entry.OfJob, String> words = WORDS.get(entry.getClass());
        if (words == null) {
            throw new IllegalStateException("no words for " + entry.getClass().getSimpleName());
        }
        return words.apply(entry);
    }

    /** The types of entries that have a line. */
    public static Set<Class<? extends Entry.OfJob>> covered() {
        Set<Class<? extends Entry.OfJob>> all = new LinkedHashSet<>(WORDS.keySet());
        all.addAll(NAMED.keySet());
        return Set.copyOf(all);
    }

    private static <E extends Entry.OfJob> void put(
            Map<Class<? extends Entry.OfJob>, Function<Entry.OfJob, String>> words,
            Class<E> type,
            Function<E, String> say) {
        words.put(type, entry -> say.apply(type.cast(entry)));
    }

    private static Map<Class<? extends Entry.OfJob>, Function<Entry.OfJob, String>> words() {
        Map<Class<? extends Entry.OfJob>, Function<Entry.OfJob, String>> words = new LinkedHashMap<>();
        put(words, Entry.JobOpened.class, e -> "Came in as " + e.unitType() + ", variant " + e.variant());
        put(words, Entry.IntakeCorrected.class, e -> "Intake put right: " + e.facts() + because(e.reason()));
        put(
                words,
                Entry.UnitMoved.class,
                e -> "Moved to unit file " + brief(e.unitFile()) + ", variant " + e.variant() + because(e.reason()));
        put(words, Entry.ComplaintSaid.class, e -> "Complaint: " + String.join(", ", e.words()));
        put(
                words,
                Entry.SuspectLooked.class,
                e -> "Looked for " + e.name() + ": "
                        + e.seen().name().toLowerCase(Locale.ROOT).replace('_', ' ') + tail(e.words()));
        put(words, Entry.EntryStruck.class, e -> "An entry struck" + because(e.reason()));
        put(words, Entry.TakenOff.class, e -> "Off: " + off(e));
        put(words, Entry.TakenOffCorrected.class, e -> "Off, put right: " + off(e.now()) + because(e.reason()));
        put(
                words,
                Entry.Weighed.class,
                e -> "At stake" + tail(e.limit()) + tail(e.piece()) + ": " + numbers(e.numbers()) + tail(e.words()));
        put(words, Entry.Sent.class, e -> "Ordered or sent out: " + e.what() + tail(e.to()) + ", due " + e.due());
        put(words, Entry.CameBack.class, e -> "Came: " + e.measured() + (e.good() ? ", may go in" : ", not right"));
        put(words, Entry.SentBack.class, e -> "Went back" + because(e.reason()));
        put(words, Entry.LiesHere.class, e -> "Lay here: " + e.what() + tail(e.measured()));
        put(words, Entry.DueMoved.class, e -> "Comes later or sooner: due " + e.due() + because(e.reason()));
        put(
                words,
                Entry.SheetWorked.class,
                e -> "Worked out, " + e.name() + ": " + e.sheet().replace('-', ' ')
                        + tail(e.results().entrySet().stream()
                                .limit(3)
                                .map(result -> result.getKey() + " " + result.getValue())
                                .collect(Collectors.joining(", "))));
        put(words, Entry.NoteMade.class, e -> "Note, " + e.about() + ": " + e.text());
        put(words, Entry.PictureAdded.class, e -> "Picture, " + e.about() + tail(e.caption()));
        pictures(words);
        after(words);
        money(words);
        steps(words);
        return Map.copyOf(words);
    }

    private static void pictures(Map<Class<? extends Entry.OfJob>, Function<Entry.OfJob, String>> words) {
        put(
                words,
                Entry.PictureMarked.class,
                e -> "Drawn on a picture: "
                        + e.marks().stream()
                                .map(mark ->
                                        plain(mark.shape()) + (mark.text().isEmpty() ? "" : " “" + mark.text() + "”"))
                                .collect(Collectors.joining(", "))
                        + tail(e.words()));
    }

    private static void after(Map<Class<? extends Entry.OfJob>, Function<Entry.OfJob, String>> words) {
        put(words, Entry.HandedBack.class, e -> "Handed back. Warranty: " + e.warranty());
        put(words, Entry.FollowedUp.class, e -> "Afterwards: " + e.said() + tail(e.remark()));
        put(words, Entry.FollowUpPlanned.class, e -> "The owner is to be asked on " + e.day() + tail(e.about()));
        put(
                words,
                Entry.Returned.class,
                e -> "Came back on " + e.day() + ": " + e.said() + tail(labelled("worked on as", e.job())));
        put(
                words,
                Entry.ReturnExplained.class,
                e -> "Why it came back: " + e.name() + ", " + plain(e.lies()) + tail(e.words())
                        + tail(labelled("fitted were", String.join("; ", e.fitted()))));
    }

    private static void money(Map<Class<? extends Entry.OfJob>, Function<Entry.OfJob, String>> words) {
        put(
                words,
                Entry.Quoted.class,
                e -> "The owner was told: " + amount(e.low()) + " to " + amount(e.high())
                        + (e.currency().isBlank() ? "" : " " + e.currency())
                        + (e.unknown().isEmpty() ? "" : ", not in it: " + String.join("; ", e.unknown())));
        put(
                words,
                Entry.OwnerAnswered.class,
                e -> "The owner (" + e.who() + ", " + plain(e.by()) + " on " + e.day() + "): "
                        + switch (e.says()) {
                            case AGREED -> "go on, up to " + amount(e.upTo());
                            case LESS -> "go on with less, up to " + amount(e.upTo());
                            case DECLINED -> "give it back as it is";
                        }
                        + tail(e.words()));
        put(words, Entry.CostSaid.class, e -> "Costs: " + e.what() + ", " + amount(e.cents()) + tail(e.words()));
        put(
                words,
                Entry.HoursSaid.class,
                e -> "Hours to be paid for: " + String.format(Locale.ROOT, "%.1f", e.hours()) + because(e.reason()));
    }

    private static String plain(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static String amount(long cents) {
        return String.format(Locale.ROOT, "%d.%02d", cents / 100, cents % 100);
    }

    private static String off(Entry.TakenOff e) {
        return e.gone()
                + tail(e.note())
                + tail(labelled("held by", e.fasteners()))
                + tail(labelled("took", e.byForce()))
                + tail(labelled("destroyed", e.destroyed()))
                + tail(labelled("side up", e.sideUp()))
                + tail(labelled("sealed or locked with", e.sealedWith()))
                + tail(labelled("shims", String.join(", ", e.shims().values())));
    }

    private static String labelled(String label, String text) {
        return text.isBlank() ? "" : label + " " + text;
    }

    private static void steps(Map<Class<? extends Entry.OfJob>, Function<Entry.OfJob, String>> words) {
        put(words, Entry.ChoiceTaken.class, e -> "Of " + e.choice() + " taken: " + e.side() + because(e.reason()));
        put(words, Entry.StepDone.class, e -> "Step " + e.step() + " done" + tail(e.todo()) + tail(e.note()));
        put(
                words,
                Entry.StepsStood.class,
                e -> "Said to be done already: "
                        + e.steps().stream().map(Entry.StepDone::step).collect(Collectors.joining(", "))
                        + tail(e.note()));
        put(words, Entry.StepJumped.class, e -> "Step " + e.step() + " done out of order" + because(e.reason()));
        put(words, Entry.StepUndone.class, e -> "Step " + e.step() + " undone" + because(e.reason()));
        put(words, Entry.StepLeftOut.class, e -> "Step " + e.step() + " left out" + because(e.reason()));
        put(words, Entry.StepTakenUp.class, e -> "Step " + e.step() + " taken up again" + because(e.reason()));
        put(words, Entry.StepAdded.class, e -> "Step " + e.step() + " added: " + e.todo() + because(e.reason()));
        put(
                words,
                Entry.ClockStarted.class,
                e -> "Clock started at step " + e.step() + ": " + e.name() + ", " + Math.round(e.seconds() / 60)
                        + " min" + (e.mustEnd() ? " at most" : ""));
        put(words, Entry.StepCannot.class, e -> "Step " + e.step() + " could not be done" + because(e.reason()));
        put(
                words,
                Entry.TimeOverruled.class,
                e -> "Step " + e.step() + " done too " + e.what() + " (" + e.clock() + ")" + because(e.reason()));
        put(
                words,
                Entry.CheckRead.class,
                e -> "Hold point " + e.hold() + " at " + e.step()
                        + tail(e.basis().getOrDefault("what", e.check()))
                        + tail(e.values().isEmpty() ? (e.attested() ? "yes" : "no") : values(e.values(), e.kind())));
        put(
                words,
                Entry.HoldOverruled.class,
                e -> "Hold point " + e.hold() + " at " + e.step() + " passed by decision" + because(e.reason()));
    }

    static String values(List<Double> values, Kind kind) {
        return values.stream()
                .map(value -> Quantities.print(value, kind, UnitSystem.METRIC))
                .collect(Collectors.joining(", "));
    }

    private static String numbers(Map<String, Double> numbers) {
        return numbers.entrySet().stream()
                .map(e -> e.getKey().replace('.', ' ') + " "
                        + Quantities.print(e.getValue(), Kind.NUMBER, UnitSystem.METRIC))
                .collect(Collectors.joining(", "));
    }

    private static String brief(String hash) {
        return hash.length() > 12 ? hash.substring(0, 12) : hash;
    }

    static String tail(String text) {
        return text.isBlank() ? "" : ", " + text;
    }

    static String because(String reason) {
        return reason.isBlank() ? "" : ", because " + reason;
    }
}
