package shimwright.rebuild.plan.learn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.part.Match;
import shimwright.rebuild.part.StandardParts;
import shimwright.rebuild.unit.edit.BoltText;
import shimwright.rebuild.unit.edit.FileSection;
import shimwright.rebuild.unit.edit.PutEntry;
import shimwright.rebuild.unit.edit.UnitEdit;
import shimwright.rebuild.unit.file.UnitTree;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.GearPair;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/** What came off a box, held against its unit file in the variant of the job. */
final class BoxComparison {
    private static final Pattern DIAMETER = Pattern.compile("^(m[0-9.]+|[0-9]+/[0-9]+|[0-9]+(?=\"?-)).*");
    private static final Pattern TEETH =
            Pattern.compile("\\b([1-9][0-9]{0,2})\\s*(?:teeth|tooth)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern STAMP =
            Pattern.compile("\\bstamp(?:ed)?\\s*:?\\s*([^,;.]{2,40})", Pattern.CASE_INSENSITIVE);

    private final Unit unit;
    private final Job job;
    private final List<Step> steps;
    private final List<BoxDifference> all = new ArrayList<>();
    /** The last step that fits or builds in an item, by its place in the file. */
    private final Map<String, Integer> lastStep = new HashMap<>();

    private final IdentityHashMap<Entry.TakenOff, List<Item>> meant = new IdentityHashMap<>();

    BoxComparison(Unit unit, Job job) {
        this.unit = unit;
        this.job = job;
        this.steps = unit.type().steps();
        for (int i = 0; i < steps.size(); i++) {
            for (String item : fitted(steps.get(i))) {
                lastStep.put(item, i);
            }
        }
    }

    List<BoxDifference> all() {
        List<Said<Entry.TakenOff>> strip = job.takenOff();
        for (int k = 0; k < strip.size(); k++) {
            Said<Entry.TakenOff> said = strip.get(k);
            List<Item> items = items(said.what());
            if (items.isEmpty()) {
                unknown(said, strip.subList(k + 1, strip.size()));
            } else {
                bolts(said, items);
                shims(said, items);
                spoken("off " + said.id(), said.what().note(), items);
            }
        }
        neverOff(strip);
        for (Said<Entry.Found> said : job.found()) {
            readAsFound(said);
            spoken(
                    "found " + said.id(),
                    said.what().what() + ". " + said.what().words(),
                    unit.type().items().stream()
                            .filter(item -> said.what().items().contains(item.id()))
                            .toList());
        }
        return List.copyOf(all);
    }

    /** The items of the file that it is, by id, else by name. */
    private List<Item> items(Entry.TakenOff off) {
        return meant.computeIfAbsent(off, this::lookedUp);
    }

    private List<Item> lookedUp(Entry.TakenOff off) {
        List<Item> named = unit.type().items().stream()
                .filter(item -> off.items().contains(item.id()))
                .toList();
        return named.isEmpty()
                ? unit.type().items().stream()
                        .filter(item -> item.name().equalsIgnoreCase(off.gone().strip()))
                        .toList()
                : named;
    }

    private static List<String> fitted(Step step) {
        return Stream.concat(step.installs().stream(), step.builds().stream()).toList();
    }

    private Optional<Step> fitting(List<Item> items) {
        return items.stream()
                .flatMap(item -> Optional.ofNullable(lastStep.get(item.id())).stream())
                .max(Comparator.naturalOrder())
                .map(steps::get);
    }

    /** A part that the file does not know goes in after what came off next. */
    private void unknown(Said<Entry.TakenOff> said, List<Said<Entry.TakenOff>> later) {
        String name = said.what().gone();
        Optional<UnitEdit> change = later.stream()
                .flatMap(next -> fitting(items(next.what())).stream())
                .findFirst()
                .or(() -> steps.stream().reduce((one, last) -> last))
                .map(after -> new UnitEdit.AddItem(name, "", 1, after.id()));
        all.add(new BoxDifference(
                "part-" + said.id(),
                name + " came off, and the file does not know it.",
                name,
                "none",
                "there is one",
                change,
                ""));
    }

    /** Bolts of the step that fits the part and of those right after it, which may tighten it. */
    private void bolts(Said<Entry.TakenOff> said, List<Item> items) {
        Optional<Step> fits = fitting(items);
        if (fits.isEmpty()) {
            return;
        }
        Set<String> ids = steps.stream()
                .filter(step -> step.equals(fits.get())
                        || (step.after().containsKey(fits.get().id())
                                && fitted(step).isEmpty()))
                .flatMap(step -> step.fasteners().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        List<Fastener> there = unit.type().fasteners().stream()
                .filter(one -> ids.contains(one.id()))
                .toList();
        for (BoltText bolt : BoltText.of(said.what().fasteners())) {
            List<Fastener> alike = there.stream()
                    .filter(one -> diameter(one.thread()).equals(diameter(bolt.thread())))
                    .toList();
            int together = alike.stream().mapToInt(Fastener::quantity).sum();
            boolean known = there.isEmpty()
                    || together == bolt.quantity()
                    || alike.stream().anyMatch(one -> one.quantity() == bolt.quantity());
            if (!known) {
                Fastener nearest = alike.isEmpty() ? there.get(0) : alike.get(0);
                bolt(said, bolt, nearest);
            }
        }
    }

    private static String diameter(String thread) {
        String plain = thread.toLowerCase(Locale.ROOT).replace('×', 'x').replaceAll("\\s", "");
        Matcher begins = DIAMETER.matcher(plain);
        return begins.matches() ? begins.group(1).replaceAll("\\.0+$", "") : plain;
    }

    private void bolt(Said<Entry.TakenOff> said, BoltText bolt, Fastener file) {
        Map<String, Object> fields = new LinkedHashMap<>();
        FileSection section = FileSection.find("fasteners").orElseThrow();
        section.entries(UnitTree.seen(unit.type())).stream()
                .filter(entry -> section.named(entry).equals(file.id()))
                .forEach(fields::putAll);
        fields.put("quantity", Integer.toString(bolt.quantity()));
        boolean other = !diameter(file.thread()).equals(diameter(bolt.thread()));
        if (other) {
            fields.put("thread", bolt.thread());
        }
        String is = bolt.quantity() + " × " + bolt.thread();
        String was = file.quantity() + " × " + file.thread();
        all.add(new BoxDifference(
                "bolts-" + said.id() + "-" + file.id(),
                said.what().gone() + " was held by " + is + "; the file has " + was + " (" + file.where() + ").",
                "bolts of " + file.where(),
                was,
                is,
                // of another thread nobody knows the torque
                other ? Optional.empty() : Optional.of(new PutEntry("fasteners", file.id(), fields)),
                ""));
    }

    /** Shims where the file has none. */
    private void shims(Said<Entry.TakenOff> said, List<Item> items) {
        String sizes = said.what().shims().getOrDefault("sizes", "");
        Set<String> near = new LinkedHashSet<>();
        items.forEach(item -> near.add(item.id()));
        fitting(items).ifPresent(step -> near.addAll(fitted(step)));
        boolean known = unit.type().clearances().stream()
                .flatMap(clearance -> clearance.positions().stream())
                .anyMatch(position ->
                        near.contains(position.item()) || position.item().isEmpty());
        if (!sizes.isBlank() && !known && !unit.type().clearances().isEmpty()) {
            String place = said.what().shims().getOrDefault("place", "");
            all.add(new BoxDifference(
                    "shims-" + said.id(),
                    "Shims lay with " + said.what().gone() + " (" + sizes + (place.isEmpty() ? "" : ", " + place)
                            + "); the file sets nothing there.",
                    "shims at " + said.what().gone(),
                    "none",
                    sizes,
                    Optional.empty(),
                    "/strip/clearance?of=" + said.id()));
        }
    }

    /** Covers that must be off before something came off, and did not come off. */
    private void neverOff(List<Said<Entry.TakenOff>> strip) {
        Set<String> off = strip.stream()
                .flatMap(said -> items(said.what()).stream())
                .map(Item::id)
                .collect(Collectors.toSet());
        Set<String> told = new LinkedHashSet<>();
        for (Said<Entry.TakenOff> said : strip) {
            Optional<Step> fits = fitting(items(said.what()));
            if (fits.isEmpty()) {
                continue;
            }
            for (Step over : steps) {
                boolean covers = over.after().get(fits.get().id()) == Step.Why.BLOCKED;
                List<Item> still = unit.type().items().stream()
                        .filter(item -> covers && over.installs().contains(item.id()) && !item.trial())
                        .toList();
                if (still.stream().noneMatch(item -> off.contains(item.id()))) {
                    still.stream().filter(item -> told.add(item.id())).forEach(item -> missing(said, item));
                }
            }
        }
    }

    private void missing(Said<Entry.TakenOff> said, Item item) {
        all.add(new BoxDifference(
                "without-" + item.id(),
                said.what().gone() + " came off, and " + item.name() + ", which the file has over it, did not.",
                item.name(),
                "there is one",
                "none",
                Optional.of(new UnitEdit.RemoveItem(item.id())),
                ""));
    }

    /** A play as found far from the limits: worn, or another box. */
    private void readAsFound(Said<Entry.Found> said) {
        String what = said.what().what();
        if (!what.startsWith(AsFound.LEAD) || said.what().values().isEmpty()) {
            return;
        }
        String name = what.substring(AsFound.LEAD.length());
        double value = said.what().values().get(0);
        for (Clearance clearance : unit.type().clearances()) {
            boolean length = said.what().kind() == Kind.LENGTH
                    && clearance.name().equals(name)
                    && clearance.sense() != Clearance.Sense.PRELOAD;
            if (length && (value < clearance.lower() || value > clearance.upper())) {
                String limits = length(clearance.lower()) + " to " + length(clearance.upper());
                all.add(new BoxDifference(
                        "play-" + said.id(),
                        "As found, " + name + " was " + length(value) + "; the file sets " + limits
                                + ". It may be worn, or set otherwise in such a box.",
                        name,
                        limits,
                        length(value),
                        Optional.empty(),
                        ""));
            }
        }
    }

    private static String length(double metres) {
        return Quantities.print(metres, Kind.LENGTH, UnitSystem.METRIC);
    }

    /** Teeth that were counted and stamps that were read, in the words of a note or finding. */
    private void spoken(String entry, String words, List<Item> items) {
        if (items.size() != 1) {
            return;
        }
        Item item = items.get(0);
        Matcher teeth = TEETH.matcher(words);
        if (teeth.find()) {
            unit.type().gears().forEach(pair -> teeth(entry, Integer.parseInt(teeth.group(1)), item, pair));
        }
        Matcher stamp = STAMP.matcher(words);
        if (stamp.find()) {
            stamp(entry, stamp.group(1).strip(), item);
        }
    }

    private void teeth(String entry, int counted, Item item, GearPair pair) {
        boolean driver = pair.driverItem().equals(item.id());
        int file = driver ? pair.driver() : pair.driven();
        if (file == 0 || file == counted || (!driver && !pair.drivenItem().equals(item.id()))) {
            return;
        }
        Map<String, Object> fields = new LinkedHashMap<>();
        FileSection section = FileSection.find("gears").orElseThrow();
        section.entries(UnitTree.seen(unit.type())).stream()
                .filter(one -> section.named(one).equals(pair.id()))
                .forEach(fields::putAll);
        fields.put(driver ? "driver" : "driven", Integer.toString(counted));
        all.add(new BoxDifference(
                "teeth-" + entry + "-" + pair.id(),
                item.name() + " has " + counted + " teeth; the file says " + file + ".",
                "teeth of " + item.name(),
                Integer.toString(file),
                Integer.toString(counted),
                Optional.of(new PutEntry("gears", pair.id(), fields)),
                ""));
    }

    private void stamp(String entry, String stamp, Item item) {
        if (item.part().isBlank() || plain(item.part()).startsWith(plain(stamp)) || same(stamp, item.part())) {
            return;
        }
        all.add(new BoxDifference(
                "stamp-" + entry,
                item.name() + " is stamped " + stamp + "; the file says " + item.part() + ".",
                "stamp of " + item.name(),
                item.part(),
                stamp,
                Optional.of(new UnitEdit.NameItem(item.id(), item.name(), stamp, item.renew())),
                ""));
    }

    private static String plain(String stamp) {
        return stamp.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "");
    }

    /** True where both are the same standard part, whatever suffix each bears. */
    private static boolean same(String stamp, String part) {
        Set<String> one = designations(stamp);
        return one.size() == 1 && one.equals(designations(part));
    }

    private static Set<String> designations(String stamp) {
        Outcome<StandardParts.Found> found = StandardParts.shipped().byStamp(stamp);
        return found instanceof Outcome.Ok<StandardParts.Found> ok
                ? ok.value().matches().stream()
                        .filter(match -> match.certainty() == Match.Certainty.STAMPED)
                        .map(match -> match.part().designation())
                        .collect(Collectors.toSet())
                : Set.of();
    }
}
