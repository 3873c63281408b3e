package shimwright.bench.walk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import shimwright.bench.walk.BoxOnBench.Thing;
import shimwright.bench.walk.BoxOnBench.Tightened;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Sense;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.ShimFamily;
import shimwright.rebuild.unit.model.Unit;
import tools.jackson.databind.JsonNode;

/** What the newcomer says of parts and settings once the box is apart: names, stamps, torques and limits of the book, lengths. */
final class NewcomerFacts {
    private static final String BOOK = "printed: the book, page 1";
    private static final String GAUGE = "dial indicator 0.01 mm";

    private final Newcomer person;
    private final BoxOnBench box;
    private final Unit unit;
    private final Set<String> unknown = new HashSet<>();

    NewcomerFacts(Newcomer person) {
        this.person = person;
        this.box = person.box();
        this.unit = box.unit();
    }

    /** Stamps of standard parts that no table has. */
    Set<String> unknownStamps() {
        return unknown;
    }

    /** What is called otherwise than in the first unit, and what is stamped on it. */
    void names() {
        Map<String, JsonNode> items = new LinkedHashMap<>();
        person.content().get("items").forEach(item -> items.put(item.get("id").asString(), item));
        for (int k = 0; k < box.things().size(); k++) {
            Thing thing = box.things().get(k);
            JsonNode now = Objects.requireNonNull(items.get(person.id(k)));
            boolean other = !PartNames.same(now.get("name").asString(), thing.name());
            String stamp = stamp(thing.item());
            if (!other && stamp.isEmpty()) {
                continue;
            }
            person.tally().at("names and stamps");
            person.tally().tap(1);
            Map<String, String> typed = new LinkedHashMap<>();
            typed.put("id", person.id(k));
            typed.put("name", other ? thing.name() : now.get("name").asString());
            typed.put("part", stamp);
            person.tally().typed(other ? thing.name() : "");
            person.tally().typed(stamp);
            boolean renewed = now.has("renew");
            if (thing.item().renew()) {
                typed.put("renew", "yes");
            }
            person.tally().tap(renewed == thing.item().renew() ? 0 : 1);
            person.tally().asked(stamp.isEmpty() ? 0 : 1);
            person.fact("item", typed);
        }
    }

    /** The designation of a bearing, the size on a seal, else the number on the part; looked up where it is a standard part. */
    private String stamp(Item item) {
        Optional<String> standard = unit.type().bearings().stream()
                .filter(bearing -> bearing.items().contains(item.id()))
                .map(bearing -> bearing.size().replaceAll(" .*", ""))
                .findFirst();
        String sizes = item.name().replaceAll(".*?([0-9]+x[0-9]+x[0-9]+).*|.*", "$1");
        String stamped = standard.orElse(item.name().contains("seal") ? sizes : "");
        if (stamped.isEmpty()) {
            return item.part();
        }
        if (person.door().get("/parts?stamp=" + stamped).get("count").asInt() == 0) {
            unknown.add(stamped);
        }
        return stamped;
    }

    /** Torques of the book take the place of the computed ones; bolts whose mark said nothing are written down with theirs. */
    void torques() {
        person.tally().at("torques of the book");
        Set<String> told = new HashSet<>();
        for (Tightened one : box.tightened()) {
            Fastener bolt = one.bolt();
            String torque = String.format(Locale.ROOT, "%.1f N.m", bolt.torque());
            String thread = bolt.thread().replaceAll(" .*", "");
            Optional<JsonNode> there = person.content()
                    .get("fasteners")
                    .valueStream()
                    .filter(known -> known.get("thread").asString().equals(thread)
                            && known.get("quantity").asInt() == bolt.quantity())
                    .filter(known -> PartNames.same(known.get("where").asString(), person.name(one.holds())))
                    .filter(known -> !told.contains(known.get("id").asString()))
                    .findFirst();
            person.tally().typed(torque.replace(" N.m", ""));
            person.tally().typed(BOOK);
            person.tally().tap(2);
            person.tally().asked(1);
            if (there.isPresent()) {
                Map<String, Object> entry = HttpDoor.map(there.get());
                String id = Objects.requireNonNull(entry.get("id")).toString();
                entry.put("torque", torque);
                entry.put("origin", BOOK);
                entry.remove("note");
                told.add(id);
                person.entry("fasteners", id, entry);
                continue;
            }
            Map<String, String> typed = new LinkedHashMap<>(Map.of(
                    "where",
                    bolt.where(),
                    "thread",
                    thread,
                    "class",
                    bolt.propertyClass(),
                    "quantity",
                    Integer.toString(bolt.quantity()),
                    "torque",
                    torque,
                    "origin",
                    BOOK));
            List.of("where", "thread", "class", "quantity")
                    .forEach(field -> person.tally().typed(typed.getOrDefault(field, "")));
            typed.put("step", person.step(person.id(one.holds())));
            person.tally().tap(2);
            person.fact("fastener", typed);
        }
    }

    /** What is judged or drawn as a part and is one piece with another, and what stands in for a trial. */
    void onePiece() {
        person.tally().at("one piece, trial parts");
        for (Item item : box.integral()) {
            added(item.name(), Map.of("step", person.step(person.id(box.carrier(item)))));
        }
        String trial = person.content()
                .get("steps")
                .valueStream()
                .filter(step ->
                        step.has("phase") && step.get("phase").asString().equals("trial"))
                .map(step -> step.get("id").asString())
                .findFirst()
                .orElseThrow();
        for (Item item : unit.type().items()) {
            if (item.trial()) {
                person.tally().tap(1);
                added(item.name(), Map.of("trial", "true", "step", trial));
            }
        }
    }

    private void added(String name, Map<String, String> more) {
        Map<String, String> entry = new LinkedHashMap<>(more);
        entry.put("name", name);
        person.tally().tap(4);
        person.tally().typed(name);
        person.tally().asked(1);
        person.entry("items", "", entry);
    }

    /** Shims that came off become clearances by the short form, which holds what was said of them. */
    void clearances() {
        person.tally().at("clearances, short form");
        for (Clearance book : unit.type().clearances()) {
            int shims = box.place(book.positions().get(0).item()).orElseThrow();
            String page = "/job/" + person.job() + "/strip/clearance";
            Map<String, String> typed = new LinkedHashMap<>();
            Document form = person.door().page(page + "?of=" + person.entry(shims));
            form.select("form.card input, form.card select")
                    .forEach(field -> typed.put(field.attr("name"), stands(field)));
            said(book).forEach((field, value) -> {
                if (!value.equals(typed.put(field, value))) {
                    person.tally().asked(1);
                    if (Set.of("sense", "acts", "after").contains(field)) {
                        person.tally().tap(2);
                    } else {
                        person.tally().typed(value);
                    }
                }
            });
            typed.remove("entry");
            person.tally().tap(2);
            person.form(page, typed);
        }
    }

    /** What a field holds before anybody touched it. */
    private static String stands(Element field) {
        Element chosen = field.selectFirst("option[selected]");
        Element first = chosen == null ? field.selectFirst("option") : chosen;
        return first == null ? field.val() : first.val();
    }

    private Map<String, String> said(Clearance book) {
        Clearance.Position place = book.positions().get(0);
        ShimFamily made = unit.shimFamily(place.family());
        boolean preload = book.sense() == Sense.PRELOAD;
        Map<String, String> said = new LinkedHashMap<>();
        said.put("name", book.name());
        said.put("sense", book.sense().name());
        said.put("lower", mm(preload ? -book.upper() : book.lower()));
        said.put("upper", mm(preload ? -book.lower() : book.upper()));
        said.put("origin", BOOK);
        said.put("gauge", GAUGE);
        said.put("inner", mm(made.inner()));
        said.put("outer", mm(made.outer()));
        said.put("thinnest", mm(made.thinnest()));
        said.put("thickest", mm(made.thickest()));
        said.put("after", person.step(person.id(box.readAfter(book))));
        if (preload && !book.drag().isEmpty()) {
            said.put(
                    "dragLeast",
                    String.format(Locale.ROOT, "%.2f", book.drag().get(0).lower()));
            said.put(
                    "dragMost",
                    String.format(Locale.ROOT, "%.2f", book.drag().get(0).upper()));
        }
        if (book.sense() == Sense.DISTANCE) {
            said.put("offset", mm(book.readingOffset()));
        }
        return said;
    }

    private static String mm(double metres) {
        return String.format(Locale.ROOT, "%.4f", metres * 1e3)
                .replaceAll("0+$", "")
                .replaceAll("\\.$", "");
    }

    /**
     * How it is read, the other shims that act on it, and the lengths that were measured for its loop.
     *
     * @param whole true where it is also said of which part each length is, and how many shims may lie at a place
     */
    void loops(boolean whole) {
        person.tally().at("loops and couplings");
        for (Clearance book : unit.type().clearances()) {
            JsonNode content = person.content();
            Map<String, Object> entry = HttpDoor.map(content.get("clearances")
                    .valueStream()
                    .filter(one -> one.get("name").asString().equals(book.name()))
                    .findFirst()
                    .orElseThrow());
            person.tally().tap(2);
            entry.put("positions", places(book, content, whole));
            List<Map<String, String>> loop = new ArrayList<>();
            for (Clearance.Length length : book.loop()) {
                Map<String, String> one = new LinkedHashMap<>();
                one.put("name", length.name());
                one.put("nominal", mm(length.nominal()) + " mm");
                one.put("sign", Integer.toString(length.sign()));
                one.put("material", length.material().equals("casting") ? "casting" : "steel");
                person.tally().typed(length.name());
                person.tally().typed(mm(length.nominal()));
                person.tally().tap(4);
                person.tally().asked(1);
                (whole ? box.place(length.item()) : OptionalInt.empty()).ifPresent(thing -> {
                    one.put("item", person.id(thing));
                    person.tally().tap(2);
                });
                loop.add(one);
            }
            entry.put("loop", loop);
            method(book, entry);
            person.entry("clearances", Objects.requireNonNull(entry.get("id")).toString(), entry);
        }
    }

    private void method(Clearance book, Map<String, Object> entry) {
        String method = book.method().name().toLowerCase(Locale.ROOT);
        if (!method.equals(entry.get("method"))) {
            entry.put("method", method);
            person.tally().tap(2);
            person.tally().asked(1);
        }
        if (book.method() == Clearance.Method.PLACES) {
            entry.put("indicators", Integer.toString(book.indicators()));
            person.tally().typed(Integer.toString(book.indicators()));
        }
        if (!book.difference().isEmpty()) {
            List<Map<String, String>> both = new ArrayList<>();
            book.difference().forEach(length -> {
                both.add(Map.of("name", length.name()));
                person.tally().typed(length.name());
            });
            entry.put("difference", both);
        }
    }

    /** Its own shims first, then those of other clearances by how much they act on it. */
    private List<Map<String, Object>> places(Clearance book, JsonNode content, boolean whole) {
        List<Map<String, Object>> places = new ArrayList<>();
        for (Clearance.Position place : book.positions()) {
            String item = person.id(box.place(place.item()).orElseThrow());
            Map<String, Object> one = HttpDoor.map(content.get("clearances")
                    .valueStream()
                    .flatMap(known -> known.get("positions").valueStream())
                    .filter(known -> known.get("item").asString().equals(item))
                    .findFirst()
                    .orElseThrow());
            String effect = Double.toString(place.effect()).replaceAll("\\.0$", "");
            if (!places.isEmpty() || Math.abs(place.effect()) != 1) {
                person.tally().typed(effect);
                person.tally().tap(places.isEmpty() ? 0 : 4);
                person.tally().asked(1);
            }
            one.put("effect", effect);
            if (whole) {
                one.put("most", Integer.toString(place.most()));
                person.tally().typed(Integer.toString(place.most()));
            }
            places.add(one);
        }
        return places;
    }

    /** What it weighs, and its oil. */
    void weightAndOil() {
        person.tally().at("weight and oil");
        String mass = mm(unit.type().mass() / 1e3);
        person.tally().typed(mass);
        person.fact("weigh", Map.of("mass", mass));
        Map<String, String> oil = new LinkedHashMap<>();
        oil.put("spec", unit.type().fluid().spec());
        oil.put("volume", mm(unit.type().fluid().volume()));
        oil.put("level", unit.type().fluid().level());
        oil.values().forEach(person.tally()::typed);
        person.tally().asked(4);
        person.fact("fill", oil);
    }
}
