package shimwright.rebuild.inspect;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import shimwright.mechanics.reference.Table;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Item.Shape;

/**
 * What the trade looks at on a part of each sort, beside the limits of a unit file: common practice, no source, and said so. Which
 * sort a part is follows from its shape and, where it has none, from the words of its name.
 */
public final class TradeChecks {
    /** Where all of it comes from. */
    public static final String ORIGIN = "common practice";

    /** Behind these a name says where a part is or what comes with it, not what it is. */
    private static final Pattern FURTHER = Pattern.compile(" (of|with|in|under|behind|between|for|on) ");

    private static final class Shipped {
        private static final List<TradeCheck> ALL = Table.resource("/inspect/checks.csv").rows().stream()
                .map(row -> new TradeCheck(
                        Sort.valueOf(row.text("of").toUpperCase(Locale.ROOT)),
                        row.text("id"),
                        row.text("look"),
                        row.text("how")))
                .toList();
    }

    private TradeChecks() {}

    /** Sorts of parts, each with its own things to look at; the first that fits a part is its sort. */
    public enum Sort {
        FORK("Forks", "fork", Shape.FORK),
        RAIL("Rails", "rail"),
        DETENT("Detents and interlocks", "detent|interlock|poppet"),
        SLEEVE("Sliding sleeves", "sliding sleeve|slider|shift sleeve|coupling sleeve"),
        HUB("Hubs", "hub", Shape.HUB),
        RING("Blocker rings", "blocker|baulk|synchro ring", Shape.RING),
        RACE(
                "Bearings: cones, cups, races, needles",
                "bearing|needle|cone with|cup",
                Shape.TAPER_CONE,
                Shape.TAPER_CUP,
                Shape.ROLLER_INNER,
                Shape.ROLLER_OUTER,
                Shape.NEEDLES),
        SHAFT("Shafts and their splines", "\\w*shaft|spindle"),
        GEAR("Gears", "gear|wheel|pinion|idler", Shape.GEAR, Shape.BEVEL_GEAR),
        TRACK("Sleeves and bushes", "bush|track|sleeve of", Shape.SLEEVE),
        SEAL("Seals", "seal|o-ring", Shape.SEAL),
        THREAD("Nuts, plugs, threads", "nut|bolt|stud|plug", Shape.NUT),
        WASHER(
                "Washers, shims, rings",
                "washer|shim|spacer|snap ring|circlip",
                Shape.WASHER,
                Shape.SHIM,
                Shape.SPACER,
                Shape.SNAP_RING),
        CASTING("Castings and sealing faces", "case|cover|housing|bell|plate|cap|bracket|box", Shape.BODY, Shape.PLATE),
        SPRING("Springs and keys", "springs?(?! pin)|keys"),
        FLANGE("Flanges", "flange|yoke"),
        OTHER("Others", "");

        private final String heading;
        private final Pattern words;

        @SuppressWarnings("ImmutableEnumChecker") // made by List.of
        private final List<Shape> shapes;

        Sort(String heading, String words, Shape... shapes) {
            this.heading = heading;
            this.words = Pattern.compile("\\b(" + words + ")", Pattern.CASE_INSENSITIVE);
            this.shapes = List.of(shapes);
        }

        /** Several of the sort, in words. */
        public String heading() {
            return heading;
        }
    }

    /**
     * One thing to look at.
     *
     * @param id of its own among all
     * @param look what to look at
     * @param how it is measured or tried
     */
    public record TradeCheck(Sort of, String id, String look, String how) {
        /** Under which a finding and its verdict are kept. */
        public String limit() {
            return shimwright.rebuild.job.Entry.Found.TRADE + id;
        }
    }

    /** Every check there is. */
    public static List<TradeCheck> all() {
        return Shipped.ALL;
    }

    /** What sort of part an item is. */
    public static Sort sort(Item item) {
        // a name that says what it is goes before a shape that many parts share
        return first(sort -> item.shape() == Shape.SLEEVE && sort == Sort.SLEEVE && named(sort, item))
                .or(() -> first(sort -> sort.shapes.contains(item.shape())))
                .or(() -> first(sort -> sort != Sort.OTHER && named(sort, item)))
                .orElse(Sort.OTHER);
    }

    private static boolean named(Sort sort, Item item) {
        return sort.words.matcher(FURTHER.split(item.name(), 2)[0]).find();
    }

    private static Optional<Sort> first(Predicate<Sort> fits) {
        return List.of(Sort.values()).stream().filter(fits).findFirst();
    }

    /** What is looked at on an item. */
    public static List<TradeCheck> of(Item item) {
        Sort sort = sort(item);
        return all().stream().filter(check -> check.of() == sort).toList();
    }

    /** The check under which a finding was kept. */
    public static Optional<TradeCheck> find(String limit) {
        return all().stream().filter(check -> check.limit().equals(limit)).findFirst();
    }
}
