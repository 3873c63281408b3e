package shimwright.bench.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.registry.Topics;
import shimwright.mechanics.worksheet.SheetField;
import shimwright.mechanics.worksheet.Worksheet;

/** Finds worksheets by the words of the trade, in US and UK English. */
public final class SheetSearch {
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{Nd}.]+");
    private static final Pattern LITTLE = Pattern.compile(
            "a|an|and|are|at|big|by|can|do|for|from|how|i|in|is|it|long|many|much|my|need|of|on|or|the|to|what|which|with");

    /** Words that mean the same, or that people use for the same job; a line each. */
    private static final List<List<String>> SAME = List.of(
            List.of("end play", "end float", "endfloat", "axial play", "float"),
            List.of("countershaft", "layshaft", "cluster"),
            List.of("snap ring", "circlip"),
            List.of("blocker ring", "baulk ring", "synchro ring", "synchronizer", "synchroniser", "synchro"),
            List.of("wrench", "spanner"),
            List.of("crown wheel", "ring gear"),
            List.of("race", "cup", "outer ring"),
            List.of("tire", "tyre"),
            List.of("aluminum", "aluminium", "light alloy"),
            List.of("preload", "clamp load", "clamp force"),
            List.of("tightening", "torque", "torque up"),
            List.of("thread insert", "insert", "helical insert", "stripped thread", "strip"),
            List.of("over pins", "over balls", "over wires", "measurement over pins"),
            List.of("shim", "spacer", "washer"),
            List.of("bolt", "screw", "cap screw", "setscrew"),
            List.of("press fit", "interference", "shrink fit", "force fit"),
            List.of("backlash", "lash"),
            List.of("feeler", "gap", "clearance"),
            List.of("oil seal", "lip seal", "seal"),
            List.of("sealant", "sealer", "gasket maker", "jointing compound"),
            List.of("gearbox", "transmission", "transaxle"),
            List.of("oil", "fluid", "lubricant"),
            List.of("warm", "hot", "heat", "heated"),
            List.of("dial indicator", "dial gauge", "clock gauge", "indicator", "dti"),
            List.of("gauge", "gage"),
            List.of("bearing", "roller bearing", "ball bearing"),
            List.of("hoist", "lift", "lifting", "weight"),
            List.of("detent", "spring"),
            List.of("speedometer", "speedo", "road speed"),
            List.of("leak test", "pressure test", "air test", "leakdown"));

    private SheetSearch() {}

    /**
     * The worksheets in which every word asked for stands, whole or as the beginning of a word, itself or in another
     * way to say it; those with it in name or title first.
     *
     * @param asked as typed; nothing asked for finds all
     */
    public static List<Worksheet<?, ?>> find(String asked) {
        List<Set<String>> wanted = wanted(asked.toLowerCase(Locale.ROOT));
        record Hit(Worksheet<?, ?> sheet, int rank) {}
        List<Hit> hits = new ArrayList<>();
        for (Worksheet<?, ?> sheet : Registry.all()) {
            String head = words(sheet.name() + " " + sheet.title());
            String all = head + words(body(sheet));
            if (wanted.stream().allMatch(ways -> in(ways, all))) {
                hits.add(new Hit(sheet, -(int)
                        wanted.stream().filter(ways -> in(ways, head)).count()));
            }
        }
        hits.sort(Comparator.comparingInt(Hit::rank)
                .thenComparing(hit -> hit.sheet().name()));
        List<Worksheet<?, ?>> found = new ArrayList<>();
        hits.forEach(hit -> found.add(hit.sheet()));
        return found;
    }

    private static boolean in(Set<String> ways, String text) {
        return ways.stream().anyMatch(way -> text.contains(" " + way));
    }

    /** Each thing asked for with every way to say it; a phrase of the trade counts as one thing. */
    private static List<Set<String>> wanted(String asked) {
        String rest = words(asked);
        List<Set<String>> wanted = new ArrayList<>();
        for (List<String> same : SAME) {
            for (String way : same) {
                if (rest.contains(" " + way + " ") && (way.contains(" ") || same.size() > 1)) {
                    rest = rest.replace(" " + way + " ", " ");
                    wanted.add(new LinkedHashSet<>(same));
                    break;
                }
            }
        }
        for (String word : rest.strip().split(" ")) {
            if (!word.isEmpty() && !LITTLE.matcher(word).matches()) {
                wanted.add(Set.of(singular(word)));
            }
        }
        return wanted;
    }

    private static String singular(String word) {
        return word.length() > 3 && word.endsWith("s") && !word.endsWith("ss")
                ? word.substring(0, word.length() - 1)
                : word;
    }

    private static String words(String text) {
        return " "
                + BETWEEN_WORDS
                        .matcher(text.toLowerCase(Locale.ROOT))
                        .replaceAll(" ")
                        .strip() + " ";
    }

    private static String body(Worksheet<?, ?> sheet) {
        StringBuilder text = new StringBuilder(sheet.doc()).append(' ').append(Topics.title(sheet));
        meanings(sheet.inputs(), text);
        meanings(sheet.outputs(), text);
        return text.toString();
    }

    private static void meanings(List<SheetField> fields, StringBuilder text) {
        for (SheetField field : fields) {
            text.append(' ').append(field.meaning());
            meanings(field.children(), text);
        }
    }
}
