package shimwright.rebuild.reuse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Line;
import shimwright.mechanics.working.Working;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.Decision;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.plan.backout.BackOut;
import shimwright.rebuild.plan.backout.Target;
import shimwright.rebuild.record.Findings;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.WearLimit;
import shimwright.rebuild.unit.model.WearLimit.Direction;
import shimwright.rebuild.workbench.Workbench;

/**
 * What stands beside a verdict: of each decision what it costs now, and what it costs if the piece fails within the promised life,
 * by its chance. Nothing is made up: what is not known is named, and what hangs on it is not worked out. It decides nothing.
 *
 * @param options the three decisions, each as far as it can be worked out
 * @param back what it takes to come back
 * @param comingBack in money, with the least that is sure; empty where it is not known
 * @param evens more than this chance of failing makes replacing pay; empty where it is not known
 * @param working each number as it was got
 */
public record Weighing(
        JudgedPiece piece,
        List<Option> options,
        ComeBack back,
        OptionalDouble comingBack,
        OptionalDouble evens,
        List<String> unknown,
        List<Line> working) {
    private static final double PER = 100_000;

    /** Names of what is said of one decision, before the decision itself. */
    public static final List<String> SAID = List.of("chance", "price", "days", "minutes");

    /**
     * One decision.
     *
     * @param chance of failing within the promised life; empty where nobody knows
     * @param from where that chance comes from
     * @param now money now: price, labour and delay
     * @param total now and chance × coming back
     * @param unknown what is not known of it
     */
    public record Option(
            Decision decision,
            OptionalDouble chance,
            String from,
            OptionalDouble now,
            OptionalDouble total,
            List<String> unknown) {}

    /** The name under which a number of a decision is said. */
    public static String name(String what, Decision decision) {
        return what + "." + decision.name().toLowerCase(Locale.ROOT);
    }

    /** The key under which a piece is weighed in the job. */
    public static String key(String limit, String piece) {
        return piece.isEmpty() ? limit : limit + "/" + piece;
    }

    /**
     * Weighs a piece.
     *
     * @param wear the limit that it was read against; empty for a part by itself
     */
    public static Weighing of(Workbench bench, Optional<WearLimit> wear, String limit, JudgedPiece piece) {
        Unit unit = bench.unit();
        Stakes stakes = Stakes.of(bench.job(), bench.shop());
        Map<String, Double> said = said(bench.job(), limit, piece);
        Working working = new Working();
        List<String> unknown = new ArrayList<>();
        ComeBack back = ComeBack.toAny(unit, bench.order(), piece);
        OptionalDouble comingBack = back.money(stakes, working, unknown);
        OptionalDouble minutes = minutesNow(bench, piece);
        List<Option> options = new ArrayList<>();
        for (Decision decision : Decision.values()) {
            List<String> missing = new ArrayList<>();
            Chance chance = decision == Decision.REUSE && !said.containsKey(name("chance", decision))
                    ? worn(bench.job(), stakes, wear, limit, piece, working)
                    : new Chance(Stakes.number(said, name("chance", decision)), "as said");
            if (chance.value().isEmpty()) {
                missing.add("chance that it fails within the promised life"
                        + (chance.from().equals("as said") ? "" : ": " + chance.from()));
            }
            OptionalDouble now = now(unit, stakes, said, piece, decision, minutes, working, missing);
            options.add(new Option(
                    decision,
                    chance.value(),
                    chance.value().isEmpty() ? "" : chance.from(),
                    now,
                    total(decision, chance.value(), now, comingBack, working),
                    List.copyOf(missing)));
        }
        return new Weighing(
                piece,
                List.copyOf(options),
                back,
                comingBack,
                evens(options, comingBack, working),
                List.copyOf(unknown),
                List.copyOf(working.worked("").working()));
    }

    private static Map<String, Double> said(Job job, String limit, JudgedPiece piece) {
        Map<String, Double> said = new LinkedHashMap<>();
        for (String key : List.of(limit, key(limit, piece.id()))) {
            Job.Said<Entry.Weighed> one = job.inspection().weighed().get(key);
            if (one != null) {
                said.putAll(one.what().numbers());
            }
        }
        return said;
    }

    private record Chance(OptionalDouble value, String from) {}

    /** The chance that a piece is worn past its limit before the promised distance, by the usual rate and how far that may be off. */
    private static Chance worn(
            Job job, Stakes stakes, Optional<WearLimit> of, String limit, JudgedPiece piece, Working working) {
        Optional<Entry.Found> found = Findings.latest(job, limit, piece).map(Job.Said::what);
        if (of.isEmpty() || found.isEmpty() || found.get().values().isEmpty()) {
            return new Chance(OptionalDouble.empty(), "nothing was measured on it");
        }
        WearLimit wear = of.get();
        if (wear.rate().isEmpty() || wear.limit().isEmpty()) {
            return new Chance(OptionalDouble.empty(), "the unit file knows no rate of wear");
        }
        if (stakes.distance().isEmpty() || stakes.scatter().isEmpty()) {
            return new Chance(
                    OptionalDouble.empty(), "say how far it is to last and by how much the usual wear may be off");
        }
        OptionalDouble value = kept(found.get(), "deciding reading");
        OptionalDouble u = kept(found.get(), "standard uncertainty");
        if (value.isEmpty() || u.isEmpty()) {
            return new Chance(
                    OptionalDouble.empty(), "no gauge is named, so the uncertainty of its reading is not known");
        }
        double wears =
                wear.rate().map(Quantity::si).orElse(0.0) * stakes.distance().getAsDouble() / PER;
        double then = working.line(
                "size at the end of the promised life",
                "reading + usual wear × distance / 100 000 km",
                value.getAsDouble() + wears,
                wear.kind().quantity(),
                wear.origin());
        double doubt = working.line(
                "its standard uncertainty",
                "√(reading² + (wear × how far it may be off)²)",
                Math.hypot(u.getAsDouble(), wears * stakes.scatter().getAsDouble()),
                wear.kind().quantity());
        double service = wear.limit().map(Quantity::si).orElseThrow();
        Limits limits = wear.direction() == Direction.MIN ? new Limits(service, null) : new Limits(null, service);
        double lasts = Conformity.probability(then, doubt, Double.POSITIVE_INFINITY, limits);
        return new Chance(
                OptionalDouble.of(working.line(
                        "chance of wearing past its limit",
                        "1 − P(within the limit then)",
                        1 - lasts,
                        Kind.NUMBER,
                        "JCGM 106:2012 7.3.1")),
                "by its wear; that it fails for another reason is not in it");
    }

    private static OptionalDouble kept(Entry.Found found, String symbol) {
        return found.working().stream()
                .filter(line -> line.symbol().equals(symbol))
                .mapToDouble(Line::value)
                .findFirst();
    }

    /** Minutes to get at it as the unit stands now: none where it lies loose on the bench. */
    private static OptionalDouble minutesNow(Workbench bench, JudgedPiece piece) {
        double most = 0;
        for (String item : piece.items()) {
            Outcome<BackOut> way = BackOut.to(
                    bench.unit(),
                    bench.job().sides(),
                    List.copyOf(bench.job().stepsDone()),
                    new Target.OfItem(item, Target.Want.RENEW));
            if (!way.isOk()) {
                return OptionalDouble.empty();
            }
            most = Math.max(most, way.orElseThrow().minutes());
        }
        return OptionalDouble.of(most);
    }

    private static OptionalDouble now(
            Unit unit,
            Stakes stakes,
            Map<String, Double> said,
            JudgedPiece piece,
            Decision decision,
            OptionalDouble reach,
            Working working,
            List<String> missing) {
        if (decision == Decision.REUSE) {
            return OptionalDouble.of(0);
        }
        OptionalDouble price = Stakes.number(said, name("price", decision));
        if (price.isEmpty() && decision == Decision.REPLACE) {
            price = prices(unit, piece);
        }
        OptionalDouble days = Stakes.number(said, name("days", decision));
        OptionalDouble minutes = Stakes.number(said, name("minutes", decision));
        if (price.isEmpty()) {
            missing.add("price");
        }
        if (days.isEmpty()) {
            missing.add("days of delay");
        } else if (days.getAsDouble() > 0 && stakes.day().isEmpty()) {
            missing.add("what a day's delay costs");
        }
        if (minutes.isEmpty() || reach.isEmpty()) {
            missing.add("minutes of work now");
        } else if (minutes.getAsDouble() + reach.getAsDouble() > 0
                && stakes.rate().isEmpty()) {
            missing.add("the shop's rate an hour");
        }
        if (!missing.stream().allMatch(one -> one.startsWith("chance"))) {
            return OptionalDouble.empty();
        }
        double labour =
                (minutes.orElse(0) / 60 + reach.orElse(0)) / 60 * stakes.rate().orElse(0);
        double delay = days.orElse(0) * stakes.day().orElse(0);
        return OptionalDouble.of(working.line(
                decision.name().toLowerCase(Locale.ROOT) + " now",
                "price + labour + days × what a day costs",
                price.getAsDouble() + labour + delay,
                Kind.NUMBER));
    }

    /** The prices of all items of a piece, each part number once; empty where one is not known. */
    private static OptionalDouble prices(Unit unit, JudgedPiece piece) {
        Map<String, OptionalDouble> prices = new LinkedHashMap<>();
        for (String id : piece.items()) {
            Item item = unit.item(id);
            prices.put(item.part().isBlank() ? id : item.part(), ComeBack.price(unit, item));
        }
        return prices.isEmpty() || prices.values().stream().anyMatch(OptionalDouble::isEmpty)
                ? OptionalDouble.empty()
                : OptionalDouble.of(prices.values().stream()
                        .mapToDouble(OptionalDouble::getAsDouble)
                        .sum());
    }

    private static OptionalDouble total(
            Decision decision, OptionalDouble chance, OptionalDouble now, OptionalDouble comingBack, Working working) {
        return chance.isEmpty() || now.isEmpty() || comingBack.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(working.line(
                        decision.name().toLowerCase(Locale.ROOT) + " in all",
                        "now + chance × coming back",
                        now.getAsDouble() + chance.getAsDouble() * comingBack.getAsDouble(),
                        Kind.NUMBER));
    }

    private static OptionalDouble evens(List<Option> options, OptionalDouble comingBack, Working working) {
        OptionalDouble replacing = options.stream()
                .filter(option -> option.decision() == Decision.REPLACE)
                .findFirst()
                .map(Option::now)
                .orElse(OptionalDouble.empty());
        return replacing.isEmpty() || comingBack.isEmpty() || comingBack.getAsDouble() <= 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(working.line(
                        "replacing pays above",
                        "what replacing costs now / what coming back costs",
                        replacing.getAsDouble() / comingBack.getAsDouble(),
                        Kind.NUMBER));
    }

    /** The decision that costs least in all; empty until all three are known, or those two that somebody thinks of. */
    public Optional<Option> cheapest() {
        List<Option> known =
                options.stream().filter(option -> option.total().isPresent()).toList();
        return known.size() < 2
                ? Optional.empty()
                : known.stream().min(Comparator.comparingDouble(o -> o.total().getAsDouble()));
    }

    /** One sentence, the same on page and paper. */
    public String say() {
        Optional<Option> least = cheapest();
        String back = comingBack.isPresent()
                ? "Coming back costs " + money(comingBack.getAsDouble()) + " or more. "
                : "What coming back costs is not known. ";
        String even = evens.isPresent() && evens.getAsDouble() < 1
                ? "Replacing pays where it is likelier than " + percent(evens.getAsDouble())
                        + " to fail, new parts taken not to. "
                : evens.isPresent() ? "Replacing costs more now than coming back once. " : "";
        String sum = least.map(option -> "By these numbers " + word(option.decision()) + " costs least, "
                        + money(option.total().getAsDouble()) + ".")
                .orElse("Not weighed to the end: " + String.join("; ", missing()) + ".");
        return back + even + sum;
    }

    private List<String> missing() {
        List<String> missing = new ArrayList<>(unknown);
        for (Option option : options) {
            if (!option.unknown().isEmpty() && option.decision() != Decision.REWORK) {
                missing.add(word(option.decision()) + ": " + String.join(", ", option.unknown()));
            }
        }
        return missing.isEmpty() ? List.of("fewer than two decisions are known") : missing;
    }

    private static String word(Decision decision) {
        return decision.name().toLowerCase(Locale.ROOT);
    }

    private static String money(double amount) {
        return String.format(Locale.ENGLISH, "%.2f", amount);
    }

    private static String percent(double share) {
        return String.format(Locale.ENGLISH, "%.1f %%", 100 * share);
    }

    /** What an entry keeps of it. */
    public Map<String, String> kept() {
        Map<String, String> kept = new LinkedHashMap<>();
        kept.put("said", say());
        cheapest().ifPresent(option -> kept.put("least", option.decision().name()));
        return kept;
    }
}
