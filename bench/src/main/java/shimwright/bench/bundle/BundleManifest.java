package shimwright.bench.bundle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import shimwright.bench.bundle.UnitBundle.PastChange;
import shimwright.bench.sheet.SheetJson;
import shimwright.bench.text.Characters;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a bundle says of itself, as JSON.
 *
 * @param type id of the unit type
 * @param name maker and model
 * @param file SHA-256 of the unit file
 * @param from what the shop calls itself; empty where it does not say
 * @param pictures in order
 * @param history the latest first
 */
public record BundleManifest(
        String type, String name, String file, String from, List<Row> pictures, List<PastChange> history) {
    /** The form of this manifest; one with a higher number is of a newer program. */
    private static final int FORM = 1;

    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** One picture: the SHA-256 of its content, what it shows, and its caption. */
    public record Row(String sha256, String about, String caption) {}

    /** As a file for others. */
    byte[] json() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("bundle", FORM);
        all.put("type", type);
        all.put("name", name);
        all.put("file", file);
        all.put("from", from);
        all.put("pictures", pictures);
        all.put("history", history);
        return SheetJson.pretty(all).getBytes(java.nio.charset.StandardCharsets.UTF_8);
    }

    /** Reads a manifest; refused with every fault of it. */
    public static Outcome<BundleManifest> read(byte[] json) {
        try {
            JsonNode tree = JSON.readTree(json);
            return new Reader().manifest(tree);
        } catch (JacksonException broken) {
            return Outcome.refused(fault("manifest", "it is not JSON", "Have the bundle saved again"));
        }
    }

    private static Refusal fault(String place, String fact, String hint) {
        return new Refusal("file", place, fact, hint);
    }

    /** Takes what is there, and gathers what is not. */
    private static final class Reader {
        private final List<Refusal> faults = new ArrayList<>();

        Outcome<BundleManifest> manifest(JsonNode tree) {
            JsonNode form = tree.path("bundle");
            if (!form.isInt() || form.asInt() < 1) {
                return Outcome.refused(
                        fault("manifest", "it does not say that it is a bundle", "Choose the file that was saved"));
            }
            if (form.asInt() > FORM) {
                return Outcome.refused(
                        fault("manifest", "a newer program wrote it", "Use a newer program here as well"));
            }
            BundleManifest read = new BundleManifest(
                    needed(tree, "type", "manifest", UnitBundle.LONGEST_WORDS),
                    text(tree, "name", "manifest", UnitBundle.LONGEST_WORDS),
                    needed(tree, "file", "manifest", UnitBundle.LONGEST_WORDS),
                    text(tree, "from", "manifest", UnitBundle.LONGEST_WORDS),
                    rows(tree.path("pictures")),
                    past(tree.path("history")));
            return faults.isEmpty() ? Outcome.ok(read) : Outcome.refused(faults);
        }

        private String needed(JsonNode of, String key, String place, int longest) {
            String text = text(of, key, place, longest);
            if (text.isEmpty()
                    && faults.stream().noneMatch(known -> known.fact().contains("\"" + key + "\""))) {
                faults.add(fault(place, "\"" + key + "\" is missing", "Have the bundle saved again"));
            }
            return text;
        }

        private String text(JsonNode of, String key, String place, int longest) {
            JsonNode value = of.path(key);
            if (value.isMissingNode()) {
                return "";
            }
            if (!value.isString()) {
                faults.add(fault(place, "\"" + key + "\" is no text", "Have the bundle saved again"));
                return "";
            }
            return sound(value.asString(), key, place, longest);
        }

        private String sound(String text, String key, String place, int longest) {
            OptionalInt unfit = Characters.unfit(text);
            if (unfit.isPresent()) {
                faults.add(fault(
                        place,
                        "\"" + key + "\" holds the character " + Characters.name(unfit.getAsInt())
                                + ", which no page or paper can show",
                        "Have it taken out in the other shop"));
                return "";
            }
            if (text.length() > longest) {
                faults.add(fault(
                        place,
                        "\"" + key + "\" has " + text.length() + " characters",
                        "Have it kept under " + longest));
                return "";
            }
            return text;
        }

        private List<Row> rows(JsonNode list) {
            List<Row> rows = new ArrayList<>();
            if (tooMany(list, "pictures", UnitBundle.MOST_PICTURES)) {
                return rows;
            }
            list.forEach(one -> {
                String place = "picture " + (rows.size() + 1);
                rows.add(new Row(
                        needed(one, "sha256", place, UnitBundle.LONGEST_WORDS),
                        needed(one, "about", place, UnitBundle.LONGEST_WORDS),
                        text(one, "caption", place, UnitBundle.LONGEST_WORDS)));
            });
            return rows;
        }

        private List<PastChange> past(JsonNode list) {
            List<PastChange> past = new ArrayList<>();
            if (tooMany(list, "history", UnitBundle.MOST_CHANGES)) {
                return past;
            }
            list.forEach(one -> {
                String place = "change " + (past.size() + 1) + " of the history";
                List<String> changes = new ArrayList<>();
                one.path("changes")
                        .forEach(line -> changes.add(sound(
                                line.isString() ? line.asString() : "", "changes", place, UnitBundle.LONGEST_LINE)));
                past.add(new PastChange(
                        text(one, "at", place, UnitBundle.LONGEST_WORDS),
                        text(one, "by", place, UnitBundle.LONGEST_WORDS),
                        text(one, "what", place, UnitBundle.LONGEST_LINE),
                        text(one, "why", place, UnitBundle.LONGEST_LINE),
                        changes));
            });
            return past;
        }

        private boolean tooMany(JsonNode list, String key, int most) {
            if (!list.isMissingNode() && !list.isArray()) {
                faults.add(fault("manifest", "\"" + key + "\" is no list", "Have the bundle saved again"));
                return true;
            }
            if (list.size() > most) {
                faults.add(fault("manifest", "\"" + key + "\" has more than " + most, "Have fewer sent"));
                return true;
            }
            return false;
        }
    }
}
