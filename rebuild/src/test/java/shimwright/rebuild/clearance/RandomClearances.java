package shimwright.rebuild.clearance;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Unit;

/**
 * A unit by chance with two to five clearances that share shim places, and its hidden truth: what each clearance is with no
 * shim in, so laid that one way of laying the drawer brings all of them well within. Either all are read on trials before any
 * is set, or each is set before the next is read. The last may be a ring: no trial, one place of its own.
 */
final class RandomClearances {
    static final double MM = 0.001;
    private static final String STARTER = text();

    private final Random random;
    /** Thickness of every loose piece, mm, by tag; the tag begins with its family. */
    final Map<String, Double> drawer = new LinkedHashMap<>();
    /** What each clearance is with no shim in, mm. */
    final Map<String, Double> bare = new LinkedHashMap<>();

    final boolean interleaved;
    final boolean ring;
    final int count;
    final Unit unit;

    private record Place(int clearance, double effect) {}

    RandomClearances(long seed) {
        this.random = new Random(seed);
        this.count = 2 + random.nextInt(4);
        this.interleaved = random.nextInt(3) == 0;
        this.ring = random.nextInt(3) == 0;
        boolean[] bareAllowed = new boolean[count];
        List<List<Place>> places = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            bareAllowed[i] = random.nextInt(4) == 0;
            places.add(places(i));
        }
        pieces();
        this.unit = UnitFiles.read("random.yaml", yaml(places, bareAllowed))
                .outcome()
                .orElseThrow()
                .resolve("A");
        truth();
    }

    private boolean isRing(int i) {
        return ring && i == count - 1;
    }

    /** Its own place first; earlier ones by chance, with a slope or whole; where all are read first, later ones a little. */
    private List<Place> places(int i) {
        List<Place> places = new ArrayList<>();
        places.add(new Place(i, random.nextBoolean() ? -1 : 1));
        for (int j = 0; j < count && !isRing(i); j++) {
            boolean earlier = j < i && random.nextInt(2) == 0;
            boolean later = !interleaved && j > i && !isRing(j) && random.nextInt(5) == 0;
            if (earlier || later) {
                double whole = random.nextInt(3) == 0 && earlier ? 1 : 0.2 + 0.3 * random.nextDouble();
                places.add(new Place(j, (random.nextBoolean() ? -1 : 1) * Math.round(whole * 1000) / 1000.0));
            }
        }
        return places;
    }

    private void pieces() {
        for (int family = 0; family < 2; family++) {
            for (int k = 0; k < 34; k++) {
                drawer.put("F" + family + "-" + k, Math.round(900 + 10.0 * k + random.nextInt(5)) / 1000.0);
            }
        }
    }

    private void truth() {
        List<String> free = new ArrayList<>(drawer.keySet());
        Map<String, Double> laid = new LinkedHashMap<>();
        for (String place : unit.positions()) {
            String family = unit.position(place).family();
            String tag = free.stream()
                    .filter(t -> t.startsWith(family))
                    .skip(5 + random.nextInt(20))
                    .findFirst()
                    .orElseThrow();
            free.remove(tag);
            laid.put(place, Objects.requireNonNull(drawer.get(tag)));
        }
        for (Clearance c : unit.type().clearances()) {
            double middle = (c.lower() + c.upper()) / 2 / MM;
            double target = middle + (random.nextDouble() - 0.5) * 0.02;
            double shims = c.positions().stream()
                    .mapToDouble(p -> p.effect() * Objects.requireNonNull(laid.get(p.id())))
                    .sum();
            bare.put(c.id(), target - shims);
        }
    }

    /** What a clearance is with these pieces in, mm. */
    double truth(String clearance, Map<String, List<String>> in) {
        double value = Objects.requireNonNull(bare.get(clearance));
        for (Position p : unit.clearance(clearance).positions()) {
            for (String tag : in.getOrDefault(p.id(), List.of())) {
                value += p.effect() * Objects.requireNonNull(drawer.get(tag));
            }
        }
        return value;
    }

    private String yaml(List<List<Place>> places, boolean[] bareAllowed) {
        StringBuilder clearances = new StringBuilder("clearances:\n");
        StringBuilder items = new StringBuilder();
        StringBuilder order = new StringBuilder();
        for (int i = 0; i < count; i++) {
            double room = 0.06 + 0.02 * random.nextInt(2);
            double aim = 1 + room / 2 + (random.nextInt(3) - 1) * 0.01;
            clearances.append(String.format(Locale.ENGLISH, """
                      - id: c%d
                        name: clearance %d
                        sense: distance
                        lower: 1 mm
                        upper: %.3f mm
                        aim: %.3f mm
                        method: series
                        gauge: DI
                        settle_within: 0.02 mm
                        how:
                          - Read it.
                        positions:
                    """, i, i, 1 + room, aim));
            for (Place p : places.get(i)) {
                clearances.append(String.format(
                        Locale.ENGLISH,
                        "      - {id: p%d, where: place %d, family: F%d, fewest: %d, most: 1, effect: %s, item: s%d}\n",
                        p.clearance(),
                        p.clearance(),
                        p.clearance() % 2,
                        bareAllowed[p.clearance()] ? 0 : 1,
                        p.effect(),
                        p.clearance()));
            }
            if (i > 0 && !isRing(i)) {
                clearances.append("    depends_on: [c" + (i - 1) + "]\n");
            }
            items.append("  - {id: s" + i + ", name: shim " + i
                    + ", shape: shim, shaft: input, along: 216 217 mm, diameters: 44 51.6 mm}\n");
            order.append(i == 0 ? "" : ", ").append("c").append(i);
        }
        String families = "shim_families:\n";
        for (int f = 0; f < 2; f++) {
            families +=
                    "  F" + f + ": {name: shims, outer: 51.6 mm, inner: 44 mm, thinnest: 0.25 mm, thickest: 2.00 mm, "
                            + "spread: 0.010 mm}\n";
        }
        String text = STARTER.replaceAll("(?s)shim_families:.*?\n\n", families + "\n")
                .replaceAll(
                        "(?s)clearances:\n.*?\nwear_limits",
                        clearances + "setting_order: [" + order + "]\n\nwear_limits")
                .replace("section:\n", items + "section:\n")
                .replaceAll("(?s)hold_points:.*?\n\n", "hold_points: []\n\n")
                .replaceAll("(?s)\nsteps:.*", "\n" + steps());
        return text;
    }

    private String steps() {
        StringBuilder steps = new StringBuilder("steps:\n");
        steps.append("  - {id: S, todo: Stand it up., at: UP, duration: 5 min, installs: [case, input]}\n");
        String before = "S";
        if (!interleaved) {
            for (int i = 0; i < count; i++) {
                before = isRing(i) ? before : step(steps, "T" + i, before, i, "trial");
            }
        }
        for (int i = 0; i < count; i++) {
            before = !interleaved || isRing(i) ? before : step(steps, "T" + i, before, i, "trial");
            before = step(steps, "F" + i, before, i, "final");
        }
        return steps.toString();
    }

    private static String step(StringBuilder steps, String id, String before, int i, String phase) {
        boolean last = phase.equals("final");
        steps.append("  - {id: " + id + ", todo: Read it., at: UP, after: {" + before
                + ": same_part}, duration: 5 min, tools: [DI], undo: slow, installs: [s" + i + "]"
                + (last ? ", removes: [s" + i + "]" : "") + ", clearance: c" + i + ", phase: " + phase + "}\n");
        return id;
    }

    private static String text() {
        String name = "/shimwright/rebuild/unit/starter.yaml";
        try (InputStream in = Objects.requireNonNull(RandomClearances.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
