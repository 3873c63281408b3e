package shimwright.mechanics.registry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets by topic. A topic is the room of the sheet below mechanics; one without a title here goes by its own name. */
public final class Topics {
    private static final String MECHANICS = "shimwright.mechanics.";
    private static final String MEASURING = "decision";
    /** The sheet of measuring that lives with the clearances it was made for. */
    private static final Set<String> OF_MEASURING = Set.of("readings");

    private static final Map<String, String> TITLES = titles();

    private Topics() {}

    /**
     * One topic.
     *
     * @param key the first part of its package below mechanics
     * @param title as a heading
     * @param sheets its worksheets, by name
     */
    public record Topic(String key, String title, List<Worksheet<?, ?>> sheets) {
        public Topic {
            sheets = List.copyOf(sheets);
        }
    }

    private static Map<String, String> titles() {
        Map<String, String> titles = new LinkedHashMap<>();
        titles.put(MEASURING, "Measuring");
        titles.put("study", "Gauge studies and tolerance loops");
        titles.put("chart", "Charts over many jobs");
        titles.put("history", "Past jobs, lives and stock");
        titles.put("axial", "Clearances and shims");
        titles.put("fit", "Fits, heat and press");
        titles.put("tooth", "Teeth, splines and ratios");
        titles.put("thread", "Threads and bolts");
        titles.put("bearing", "Bearings and shafts");
        titles.put("shaft", "Keys, pins, splines, snap rings, clutch and shaft bending");
        titles.put("synchro", "Synchronizers");
        titles.put("spring", "Springs");
        titles.put("seal", "Sealing");
        titles.put("oil", "Oil");
        titles.put("gauging", "Alignment, tapers and hardness");
        titles.put("lifting", "Lifting");
        return titles;
    }

    /** All topics in the order of the titles, then any others; each worksheet stands in one. */
    public static List<Topic> all() {
        Map<String, List<Worksheet<?, ?>>> sheets = new LinkedHashMap<>();
        TITLES.keySet().forEach(key -> sheets.put(key, new ArrayList<>()));
        Registry.all()
                .forEach(sheet -> sheets.computeIfAbsent(key(sheet), key -> new ArrayList<>())
                        .add(sheet));
        return sheets.entrySet().stream()
                .filter(topic -> !topic.getValue().isEmpty())
                .map(topic -> new Topic(topic.getKey(), title(topic.getKey()), topic.getValue()))
                .toList();
    }

    /** The title of a worksheet's topic. */
    public static String title(Worksheet<?, ?> sheet) {
        return title(key(sheet));
    }

    private static String key(Worksheet<?, ?> sheet) {
        String rooms = sheet.caseType().getPackageName().substring(MECHANICS.length());
        return OF_MEASURING.contains(sheet.name()) ? MEASURING : rooms.split("[.]", 2)[0];
    }

    private static String title(String key) {
        return TITLES.getOrDefault(key, key.substring(0, 1).toUpperCase(Locale.ROOT) + key.substring(1));
    }
}
