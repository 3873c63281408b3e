package shimwright.bench.walk;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jspecify.annotations.Nullable;
import shimwright.bench.ClockedBench;
import shimwright.bench.walk.BoxOnBench.Thing;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.plan.learn.PartsStillIn;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Step;
import tools.jackson.databind.JsonNode;

/**
 * Somebody with a box in hand who has never seen its file: begins a unit, opens a job, takes the box apart, and puts the order learned
 * into the unit. Knows what things are called, what was in their way, what held them and what is stamped on them.
 */
final class Newcomer {
    private final ClockedBench bench;
    private final HttpDoor door;
    private final BoxOnBench box;
    private final Tally tally = new Tally();
    private final String type;
    private final String job;
    private final List<String> entries = new ArrayList<>();
    private @Nullable JsonNode content;
    private final List<String> called = new ArrayList<>();
    private final Map<Integer, String> tapped = new HashMap<>();

    /**
     * Begins the unit from what can be seen, and opens a job on it.
     *
     * @param seen the form of a box without a file, by field
     */
    Newcomer(ClockedBench bench, BoxOnBench box, Map<String, String> seen) {
        this.bench = bench;
        this.door = new HttpDoor(bench);
        this.box = box;
        tally.at("begin and take in");
        tally.tap(2);
        seen.forEach((field, value) -> {
            boolean choice = value.matches("[A-Z_]+|yes");
            tally.tap(choice ? 1 : 0);
            tally.typed(choice ? "" : value);
            tally.asked(1);
        });
        door.form("/begin", seen);
        tally.tap(1);
        this.type = door.get("/units")
                .get("units")
                .valueStream()
                .map(one -> one.get("type").asString())
                .filter(one -> one.equals((seen.get("maker") + "-" + seen.get("model"))
                        .toLowerCase(Locale.ROOT)
                        .replace(' ', '-')))
                .findFirst()
                .orElseThrow();
        Map<String, String> taken = Map.of("number", "U-1", "owner", "a farm");
        taken.values().forEach(tally::typed);
        door.form("/new/" + type, taken);
        tally.tap(1);
        tally.asked(2);
        this.job = "job-u-1";
    }

    String type() {
        return type;
    }

    String job() {
        return job;
    }

    HttpDoor door() {
        return door;
    }

    Tally tally() {
        return tally;
    }

    BoxOnBench box() {
        return box;
    }

    /** The entry of the strip-down of a thing. */
    String entry(int thing) {
        return entries.get(thing);
    }

    /** What the file says now. */
    JsonNode content() {
        JsonNode now = content;
        if (now == null) {
            now = door.get("/units/" + type).get("content");
            content = now;
        }
        return now;
    }

    /** A form of a page that changes the file. */
    void form(String path, Map<String, ?> typed) {
        door.form(path, typed);
        content = null;
    }

    /** An entry of the file in its long form. */
    void entry(String section, String id, Map<String, ?> fields) {
        door.entry(type, section, id, fields);
        content = null;
    }

    /** A form of the unit's page, for the job. */
    void fact(String form, Map<String, String> typed) {
        Map<String, Object> all = new LinkedHashMap<>(typed);
        all.put("job", job);
        form("/units/type/" + type + "/" + form, all);
        tally.tap(1);
    }

    /** Plays and drags that the page asks for before anything is off. */
    void readAsFound() {
        tally.at("read as found");
        tally.tap(1);
        for (Element form : door.page("/job/" + job + "/strip").select(".readfirst form")) {
            String field = Stream.of("drag", "count", "play")
                    .filter(name -> !form.select("input[name=" + name + "]").isEmpty())
                    .findFirst()
                    .orElseThrow();
            String value = field.equals("play") ? "0.08" : field.equals("drag") ? "0.6" : "20";
            String what = form.select("input[name=what]").val();
            door.onJob(job, "read-as-found", Map.of("what", what, field, value));
            tally.typed(value);
            tally.tap(1);
            tally.asked(1);
        }
    }

    /** Everything comes off, the first first. */
    void strip() {
        tally.at("strip-down");
        List<Thing> things = box.things();
        for (int k = 0; k < things.size(); k++) {
            bench.later(Duration.ofSeconds(30));
            takeOff(k, things.get(k));
        }
    }

    private void takeOff(int k, Thing thing) {
        Document page = door.page("/job/" + job + "/strip");
        Map<String, String> lines = new LinkedHashMap<>();
        page.select("button[name=tap]").forEach(line -> lines.put(line.ownText(), line.val()));
        Optional<String> line = PartNames.tapped(thing.name(), List.copyOf(lines.keySet()));
        Map<String, Object> typed = new LinkedHashMap<>();
        String own = line.map(lines::get).orElse("");
        if (own.isEmpty()) {
            typed.put("gone", thing.name());
            tally.typed(thing.name());
            tally.tap(1);
        } else {
            tapped.put(k, own);
            typed.put("gone", line.orElseThrow());
            typed.put("items", List.of(own));
            boolean held =
                    !page.select("details button[name=tap][value=" + own + "]").isEmpty();
            tally.tap(held ? 2 : 1);
        }
        typed.put("inTheWay", List.of(way(k, thing)));
        thing.on().ifPresent(on -> typed.put("asOneWith", List.of(entries.get(on))));
        if (k > 0 && !thing.on().equals(box.things().get(k - 1).on())) {
            tally.tap(2);
            tally.asked(1);
        }
        facts(thing, typed);
        called.add(typed.getOrDefault("gone", "").toString());
        entries.add(door.onJob(job, "take-off", typed)
                .get("entries")
                .get(0)
                .get("id")
                .asString());
    }

    /** Nothing is tapped where the last thing was in the way. */
    private String way(int k, Thing thing) {
        if (k == 0 || (thing.way().isPresent() && thing.way().getAsInt() == k - 1)) {
            return "last";
        }
        tally.tap(1);
        tally.asked(1);
        if (thing.way().isEmpty()) {
            return Entry.TakenOff.NOTHING;
        }
        tally.tap(thing.way().getAsInt() < k - PartsStillIn.LARGE ? 1 : 0);
        return entries.get(thing.way().getAsInt());
    }

    private void facts(Thing thing, Map<String, Object> typed) {
        Map<String, String> facts = new LinkedHashMap<>();
        if (!thing.bolts().isEmpty()) {
            facts.put("fasteners", thing.bolts().stream().map(Newcomer::counted).collect(Collectors.joining("; ")));
        }
        Step step = box.unit().step(thing.step());
        if (thing.item().renew() && step.undo() == Step.Undo.DESTROYS) {
            facts.put("destroyed", "itself");
        }
        typed.putAll(facts);
        facts.values().forEach(tally::typed);
        tally.asked(facts.size());
        Map<String, String> shims = shims(thing);
        if (!shims.isEmpty()) {
            typed.put("shims", shims);
            tally.typed(shims.getOrDefault("sizes", ""));
            tally.typed(shims.getOrDefault("place", ""));
            tally.tap(2);
            tally.asked(3);
        }
        tally.tap(facts.isEmpty() && shims.isEmpty() ? 0 : 1);
    }

    /** As it is counted and read off the head: the book alone tells lengths of threads in inches. */
    static String counted(Fastener bolt) {
        String thread = bolt.thread().replaceAll(" .*", "");
        return (bolt.quantity() + " x " + thread + " " + bolt.propertyClass()).strip();
    }

    private Map<String, String> shims(Thing thing) {
        for (Clearance clearance : box.unit().type().clearances()) {
            Clearance.Position place = clearance.positions().get(0);
            if (place.item().equals(thing.item().id())) {
                double size = clearance.loop().stream()
                        .filter(length -> length.item().equals(place.item()))
                        .mapToDouble(Clearance.Length::nominal)
                        .findFirst()
                        .orElse(1e-3);
                return Map.of(
                        "sizes", String.format(Locale.ROOT, "%.2f", size * 1e3),
                        "place", place.where(),
                        "acts", place.effect() < 0 ? "closes" : "opens");
            }
        }
        return Map.of();
    }

    /** Parts of the first unit that this box does not have go, then the order that was learned goes in. */
    void putIn() {
        tally.at("what it does not have");
        String order = "/job/" + job + "/strip/order";
        List<String> gone = door.page(order).select("input[name=gone]").eachAttr("value");
        tally.tap(4);
        form("/job/" + job + "/strip/without", Map.of("gone", gone));
        tally.at("order into the unit");
        form(order, Map.of());
        tally.tap(1);
    }

    /** What a thing was called when it came off. */
    String name(int thing) {
        return called.get(thing);
    }

    /** The item that a thing is in the file now. */
    String id(int thing) {
        String own = tapped.getOrDefault(thing, "");
        return own.isEmpty() ? id(box.things().get(thing).name()) : own;
    }

    private String id(String name) {
        return content()
                .get("items")
                .valueStream()
                .filter(item -> item.get("name").asString().equals(name))
                .map(item -> item.get("id").asString())
                .findFirst()
                .orElseThrow(() -> new AssertionError("no item " + name));
    }

    /** The last step that brings an item in, or builds it up. */
    String step(String item) {
        List<JsonNode> steps = content().get("steps").valueStream().toList();
        for (String key : List.of("installs", "builds")) {
            Optional<String> found = steps.stream()
                    .filter(step -> step.has(key)
                            && step.get(key)
                                    .valueStream()
                                    .anyMatch(one -> one.asString().equals(item)))
                    .map(step -> step.get("id").asString())
                    .reduce((one, later) -> later);
            if (found.isPresent()) {
                return found.get();
            }
        }
        throw new AssertionError("no step fits " + item);
    }
}
