package shimwright.rebuild.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Shop;

/** What forbids an entry of the shop. Every type has its rule; one without is refused. */
public final class ShopRules {
    private static final Map<Class<? extends Entry.OfShop>, Rule<Entry.OfShop>> RULES = rules();

    /** Pictures that go with one unit type. */
    private static final int MOST_PICTURES = 300;

    private ShopRules() {}

    private interface Rule<E> {
        List<Refusal> against(Shop shop, E entry);
    }

    private static Map<Class<? extends Entry.OfShop>, Rule<Entry.OfShop>> rules() {
        Map<Class<? extends Entry.OfShop>, Rule<Entry.OfShop>> rules = new LinkedHashMap<>();
        put(rules, Entry.ShimAdded.class, ShopRules::shimAdded);
        put(rules, Entry.ShimMeasured.class, ShopRules::measured);
        put(rules, Entry.ShimRemoved.class, ShopRules::removed);
        put(rules, Entry.ShimReturned.class, ShopRules::returned);
        put(rules, Entry.GaugeAdded.class, ShopRules::gaugeAdded);
        put(rules, Entry.GaugeRetired.class, ShopRules::retired);
        put(rules, Entry.UnitChanged.class, ShopRules::unitChanged);
        put(rules, Entry.UnitPictured.class, ShopRules::unitPictured);
        put(rules, Entry.NumberReplaced.class, ShopRules::replaced);
        put(rules, Entry.NumberStands.class, ShopRules::stands);
        put(rules, Entry.ShopDescribed.class, ShopRules::described);
        return Map.copyOf(rules);
    }

    private static <E extends Entry.OfShop> void put(
            Map<Class<? extends Entry.OfShop>, Rule<Entry.OfShop>> rules, Class<E> type, Rule<E> rule) {
        rules.put(type, (shop, entry) -> rule.against(shop, type.cast(entry)));
    }

    /** The types of entries that have a rule. */
    public static Set<Class<? extends Entry.OfShop>> covered() {
        return RULES.keySet();
    }

    /** Every reason why the entry cannot be kept now. */
    public static List<Refusal> check(Shop shop, Entry.OfShop entry) {
        Rule<Entry.OfShop> rule = RULES.get(entry.getClass());
        return rule == null
                ? Rules.one("", "entry", "nothing says when this may be kept", "Use a newer program")
                : rule.against(shop, entry);
    }

    private static List<Refusal> shimAdded(Shop shop, Entry.ShimAdded e) {
        List<Refusal> refusals = new ArrayList<>(Rules.needed(e.piece(), "piece", "tag", "Give the piece a tag"));
        refusals.addAll(Rules.needed(e.family(), "family", "family", "Say which shims it goes with"));
        refusals.addAll(readings(e.readings(), e.u()));
        if (shop.pieces().containsKey(e.piece())) {
            refusals.add(new Refusal(
                    "piece", "tag", "a piece " + e.piece() + " is already in the drawer", "Give it another tag"));
        }
        return refusals;
    }

    private static List<Refusal> readings(List<Double> readings, double u) {
        boolean sound = !readings.isEmpty()
                && readings.stream().allMatch(t -> Double.isFinite(t) && t > 0)
                && Double.isFinite(u)
                && u >= 0;
        return sound
                ? List.of()
                : Rules.one("t", "thickness", "it is not measured", "Measure the piece at three places round it");
    }

    private static List<Refusal> measured(Shop shop, Entry.ShimMeasured e) {
        List<Refusal> refusals = new ArrayList<>(known(shop, e.piece()));
        refusals.addAll(readings(e.readings(), e.u()));
        return refusals;
    }

    private static List<Refusal> known(Shop shop, String piece) {
        return shop.pieces().containsKey(piece)
                ? List.of()
                : Rules.one("piece", "piece " + piece, "there is no such piece", "Look at its tag");
    }

    private static List<Refusal> removed(Shop shop, Entry.ShimRemoved e) {
        List<Refusal> refusals = new ArrayList<>(known(shop, e.piece()));
        refusals.addAll(Rules.reason(e.reason(), "Say why it leaves the drawer"));
        Shop.@Nullable Piece piece = shop.pieces().get(e.piece());
        if (piece != null && piece.goneBecause() != null) {
            refusals.add(new Refusal("piece", "piece " + e.piece(), "it left the drawer already", ""));
        }
        if (piece != null && piece.takenBy() != null) {
            refusals.add(new Refusal(
                    "piece",
                    "piece " + e.piece(),
                    "it is in unit " + piece.takenBy(),
                    "Choose another piece for that place first"));
        }
        return refusals;
    }

    private static List<Refusal> returned(Shop shop, Entry.ShimReturned e) {
        List<Refusal> refusals = new ArrayList<>(known(shop, e.piece()));
        refusals.addAll(Rules.reason(e.reason(), "Say why it lies in the drawer again"));
        Shop.@Nullable Piece piece = shop.pieces().get(e.piece());
        if (piece != null && piece.goneBecause() == null) {
            refusals.add(new Refusal("piece", "piece " + e.piece(), "it has not left the drawer", ""));
        }
        return refusals;
    }

    private static List<Refusal> gaugeAdded(Shop shop, Entry.GaugeAdded e) {
        List<Refusal> refusals =
                new ArrayList<>(Rules.needed(e.gauge(), "gauge", "gauge", "Give the gauge a short mark"));
        refusals.addAll(Rules.needed(e.name(), "name", "name", "Say what gauge it is"));
        if (!(e.step() > 0) || !Double.isFinite(e.step())) {
            refusals.add(Refusal.of("step", "it is not known", "Say what one step of its scale is"));
        }
        if (!(e.errorLimit() >= 0) || !(e.retrace() >= 0) || !(e.repeatability() >= 0)) {
            refusals.add(new Refusal(
                    "errorLimit", "error limit", "it is not known", "It stands on the gauge's sheet or certificate"));
        }
        if (!(e.range() > 0)) {
            refusals.add(Refusal.of("range", "it is not known", "Say how far it reaches"));
        } else if (e.step() >= e.range() || e.errorLimit() >= e.range()) {
            refusals.add(Refusal.of(
                    "step",
                    "one step or the error limit is as large as all it reaches",
                    "Look at the units: a step is such as 0.01 mm, or 0.001 in"));
        }
        return refusals;
    }

    private static List<Refusal> retired(Shop shop, Entry.GaugeRetired e) {
        List<Refusal> refusals = new ArrayList<>(Rules.reason(e.reason(), "Say why it is no longer used"));
        if (!shop.gauges().containsKey(e.gauge())) {
            refusals.add(new Refusal(
                    "gauge", "gauge " + e.gauge(), "this shop has no such gauge in use", "Look at the list"));
        }
        return refusals;
    }

    private static List<Refusal> unitChanged(Shop shop, Entry.UnitChanged e) {
        List<Refusal> refusals = new ArrayList<>(Rules.needed(e.what(), "what", "change", "Say what is changed"));
        refusals.addAll(Rules.needed(e.unitType(), "type", "unit type", "Say of which unit"));
        if (e.after().isBlank() || e.after().equals(e.before())) {
            refusals.addAll(Rules.one("text", "unit file", "nothing in it is changed", "Change something in it"));
        }
        if (shop.leftBehind(e.unitType(), e.before())) {
            refusals.addAll(Rules.one(
                    "before",
                    "unit file",
                    "it was changed meanwhile",
                    "Load the page again, and look what was changed"));
        }
        return refusals;
    }

    private static List<Refusal> unitPictured(Shop shop, Entry.UnitPictured e) {
        List<Refusal> refusals = new ArrayList<>(Rules.needed(e.unitType(), "type", "unit type", "Say of which unit"));
        if (e.pictures().equals(shop.unitPictures(e.unitType()))) {
            refusals.addAll(Rules.one("pictures", "pictures", "nothing in them is changed", "Choose others"));
        }
        if (e.pictures().size() > MOST_PICTURES) {
            refusals.addAll(Rules.one(
                    "pictures",
                    "pictures",
                    "the unit would have " + e.pictures().size() + " pictures",
                    "Keep them to " + MOST_PICTURES + " at most"));
        }
        boolean known = e.pictures().stream()
                .allMatch(picture -> IntakeRules.HASH.matcher(picture.picture()).matches());
        if (!known) {
            refusals.addAll(Rules.one("pictures", "pictures", "one is not kept", "Take or choose it again"));
        }
        return refusals;
    }

    private static List<Refusal> replaced(Shop shop, Entry.NumberReplaced e) {
        List<Refusal> refusals =
                new ArrayList<>(Rules.needed(e.part(), "part", "old number", "Write the number that was replaced"));
        refusals.addAll(Rules.needed(e.by(), "by", "new number", "Write the number that takes its place"));
        refusals.addAll(Rules.needed(e.who(), "who", "who says so", "Say the supplier, the list or the person"));
        boolean round = e.part().equals(e.by())
                || shop.inPlaceOf(e.by()).stream().anyMatch(one -> one.by().equals(e.part()));
        if (round && !e.part().isBlank()) {
            refusals.add(new Refusal(
                    "by",
                    "new number",
                    e.part() + " would take its own place",
                    "Look at both numbers, or say first that the other stands"));
        }
        return refusals;
    }

    private static List<Refusal> stands(Shop shop, Entry.NumberStands e) {
        List<Refusal> refusals = new ArrayList<>(Rules.reason(e.reason(), "Say why it stands after all"));
        if (!shop.replaced().containsKey(e.part())) {
            refusals.add(
                    new Refusal("part", "number " + e.part(), "nothing has taken its place", "Load the page again"));
        }
        return refusals;
    }

    private static List<Refusal> described(Shop shop, Entry.ShopDescribed e) {
        return e.facts().isEmpty()
                ? Rules.one("fact", "shop", "nothing is said", "Type what is to be kept")
                : List.of();
    }
}
