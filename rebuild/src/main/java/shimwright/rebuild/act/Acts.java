package shimwright.rebuild.act;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.rules.Rules;
import shimwright.rebuild.rules.ShopRules;
import shimwright.rebuild.workbench.Workbench;

/** Every act there is, by name, and the one way from an act to its entries. */
public final class Acts {
    private static final Map<String, Class<? extends Act>> ALL = all();

    private Acts() {}

    private static Map<String, Class<? extends Act>> all() {
        Map<String, Class<? extends Act>> all = new LinkedHashMap<>();
        for (Class<?> room : List.of(
                IntakeActs.class,
                InspectActs.class,
                ReuseActs.class,
                ComplaintActs.class,
                StripActs.class,
                PictureActs.class,
                OrderActs.class,
                MoneyActs.class,
                SendOutActs.class,
                StepActs.class,
                HoldActs.class,
                ClearanceActs.class,
                SheetActs.class,
                HandBackActs.class,
                ShopActs.class,
                UnitActs.class)) {
            Arrays.stream(room.getDeclaredClasses())
                    .filter(type -> Act.class.isAssignableFrom(type) && !type.isInterface())
                    .map(type -> type.<Act>asSubclass(Act.class))
                    .sorted((a, b) -> a.getSimpleName().compareTo(b.getSimpleName()))
                    .forEach(type -> all.put(name(type), type));
        }
        return java.util.Collections.unmodifiableMap(all);
    }

    /** The name of an act in addresses: small letters with hyphens. */
    public static String name(Class<? extends Act> act) {
        return act.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }

    /** Every act by its name. */
    public static Map<String, Class<? extends Act>> byName() {
        return ALL;
    }

    /** The act of that name. */
    public static Optional<Class<? extends Act>> find(String name) {
        return Optional.ofNullable(ALL.get(name));
    }

    /**
     * What an act on a job comes to: its entries, each asked of the rules as the bench would lie after those before it.
     *
     * @return refused with every reason
     */
    public static Outcome<ActResult> decide(Workbench bench, Act.OfJob act, ActContext around) {
        Outcome<ActResult> outcome = act.on(bench, around).flatMap(decided -> {
            List<Entry.OfJob> entries = new ArrayList<>();
            decided.entries().forEach(entry -> entries.add(made(act, entry, Entry.OfJob.class)));
            List<Refusal> refusals = Rules.check(bench, entries);
            return refusals.isEmpty() ? Outcome.ok(decided) : Outcome.refused(refusals);
        });
        return outcome.reworded(refusal -> atInput(act, refusal));
    }

    /** What an act on the shop comes to. */
    public static Outcome<ActResult> decide(Act.OfShop act, ActContext around) {
        Outcome<ActResult> outcome = act.on(around).flatMap(decided -> {
            List<Refusal> refusals = new ArrayList<>();
            for (Entry entry : decided.entries()) {
                if (entry instanceof Entry.JobOpened opened) {
                    made(act, opened, Entry.JobOpened.class);
                } else {
                    refusals.addAll(ShopRules.check(around.floor().shop(), made(act, entry, Entry.OfShop.class)));
                }
            }
            return refusals.isEmpty() ? Outcome.ok(decided) : Outcome.refused(refusals);
        });
        return outcome.reworded(refusal -> atInput(act, refusal));
    }

    /**
     * A refusal at the input of the act that it speaks of, in the words of that input where it has none of its own; at none
     * where the act has no such input.
     */
    private static Refusal atInput(Act act, Refusal refusal) {
        String key = act.input(refusal.key());
        for (RecordComponent input : act.getClass().getRecordComponents()) {
            if (new Refusal(key, "", refusal.fact(), "").within(input.getName())) {
                boolean own = !refusal.place().equals(Refusal.words(refusal.key()));
                return refusal.placed(
                        key,
                        own
                                ? refusal.place()
                                : input.getAnnotation(ActInput.class).value());
            }
        }
        return refusal.placed("", refusal.place());
    }

    private static <E extends Entry> E made(Act act, Entry entry, Class<E> type) {
        MakesEntries makes = act.getClass().getAnnotation(MakesEntries.class);
        if (makes == null || Arrays.stream(makes.value()).noneMatch(made -> made.isInstance(entry))) {
            throw new IllegalStateException(act.getClass().getSimpleName() + " does not say that it makes "
                    + entry.getClass().getSimpleName());
        }
        return type.cast(entry);
    }
}
