package shimwright.rebuild.plan.learn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.ParsedQuantity;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;

/**
 * Shims that came off with something, and what they say of a clearance.
 *
 * @param entry what came off, by its entry
 * @param gone in the words of the person
 * @param place where they lay
 * @param sizes thickness of each, m
 * @param acts {@code closes}, {@code opens} or empty
 * @param after the step after which the play can be read: the one that fits what they came off with; empty where none does
 * @param reading what was read as found and speaks of the same shaft; empty where nothing was
 * @param play as found, m; absent with the reading
 * @param usual limits that are common for such a bearing
 */
public record ShimsFound(
        String entry,
        String gone,
        String place,
        List<Double> sizes,
        String acts,
        String after,
        String reading,
        OptionalDouble play,
        CommonPlay usual) {
    public ShimsFound {
        sizes = List.copyOf(sizes);
    }

    /**
     * Limits that are common; common practice, no source, and a guess for any one box.
     *
     * @param lower m
     * @param upper m
     * @param bearing in words
     * @param warm what the play gains for each metre between the bearings when case and shaft are warm, by the materials of the
     *     file, m/m
     */
    public record CommonPlay(double lower, double upper, String bearing, double warm) {
        /** The middle of the limits, m. */
        public double middle() {
            return (lower + upper) / 2;
        }

        /** What the play gains for each 100 mm between the bearings, to a micrometre, m. */
        public double warmPerDecimetre() {
            return Math.round(warm * 0.1 * 1e6) / 1e6;
        }
    }

    /** The item of the file that the shims themselves are, where they came off as a thing of their own and not with another. */
    public Optional<Item> shims(UnitType type) {
        return gone.toLowerCase(Locale.ROOT).matches(".*(shim|spacer|washer|snap ring|selective).*")
                ? type.items().stream()
                        .filter(item -> item.name().equalsIgnoreCase(gone.strip()))
                        .findFirst()
                : Optional.empty();
    }

    /** All the shims together, m. */
    public double total() {
        return sizes.stream().mapToDouble(size -> size).sum();
    }

    /**
     * The pack that would have brought the play found to a wanted one, m; empty where nobody read the play or knows how shims act.
     *
     * @param wanted play, m
     */
    public OptionalDouble pack(double wanted) {
        if (play.isEmpty() || acts.isEmpty()) {
            return OptionalDouble.empty();
        }
        double more = play.getAsDouble() - wanted;
        double pack = total() + (acts.equals("closes") ? more : -more);
        return pack > 0 ? OptionalDouble.of(pack) : OptionalDouble.empty();
    }

    /** The shims of a job's strip-down, those without a size left out. */
    public static List<ShimsFound> of(Unit unit, Job job) {
        List<ShimsFound> all = new ArrayList<>();
        for (Said<Entry.TakenOff> said : job.takenOff()) {
            List<Double> sizes = sizes(said.what().shims().getOrDefault("sizes", ""));
            if (!sizes.isEmpty()) {
                all.add(found(unit, job, said, sizes));
            }
        }
        return List.copyOf(all);
    }

    private static ShimsFound found(Unit unit, Job job, Said<Entry.TakenOff> said, List<Double> sizes) {
        Entry.TakenOff one = said.what();
        String about = (one.gone() + " " + one.shims().getOrDefault("place", "")).toLowerCase(Locale.ROOT);
        Optional<Entry.Found> read = job.found().stream()
                .map(Said::what)
                .filter(found -> found.what().startsWith(AsFound.LEAD) && found.kind() == Kind.LENGTH)
                .max(Comparator.comparingInt(found -> shared(found.what(), about)))
                .filter(found -> shared(found.what(), about) > 0);
        String step = one.items().stream()
                .flatMap(item -> unit.type().steps().stream()
                        .filter(fits -> fits.installs().contains(item))
                        .map(Step::id))
                .reduce((first, later) -> later)
                .orElse("");
        return new ShimsFound(
                said.id(),
                one.gone(),
                one.shims().getOrDefault("place", ""),
                sizes,
                one.shims().getOrDefault("acts", ""),
                step,
                read.map(found -> found.what().substring(AsFound.LEAD.length())).orElse(""),
                read.filter(found -> !found.values().isEmpty())
                        .map(found -> OptionalDouble.of(found.values().get(0)))
                        .orElse(OptionalDouble.empty()),
                usual(unit.type(), about));
    }

    /** How many words of a name speak of the same part. */
    private static int shared(String name, String about) {
        int shared = 0;
        for (String word : List.of("input", "output", "counter", "differential", "left", "right", "final drive")) {
            shared += name.contains(word) && about.contains(word) ? 1 : 0;
        }
        return shared;
    }

    private static CommonPlay usual(UnitType type, String about) {
        boolean tapered = about.contains("differential")
                || about.contains("taper")
                || type.items().stream()
                        .anyMatch(item -> item.shape() == Item.Shape.TAPER_CONE
                                && !item.shaft().isEmpty()
                                && about.contains(item.shaft().replaceAll("_line|_shaft", "")));
        double warm = rise(type, "casting") - rise(type, "steel");
        return tapered
                ? new CommonPlay(0.02e-3, 0.08e-3, "tapered rollers that run with play", warm)
                : new CommonPlay(0.05e-3, 0.15e-3, "ball bearings", warm);
    }

    private static double rise(UnitType type, String material) {
        UnitType.Material known = type.materials().get(material);
        return known == null ? 0 : known.expansion() * known.hotRise();
    }

    private static List<Double> sizes(String text) {
        List<Double> sizes = new ArrayList<>();
        for (String part : text.split(";")) {
            if (Quantities.parse(part.strip(), Kind.LENGTH, Units.MM, "shim") instanceof Outcome.Ok<ParsedQuantity> ok
                    && ok.value().si() > 0) {
                sizes.add(ok.value().si());
            }
        }
        return sizes;
    }
}
