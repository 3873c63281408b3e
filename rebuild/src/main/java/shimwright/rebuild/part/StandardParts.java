package shimwright.rebuild.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.reference.Table;

/** The standard parts that the program knows, found by what is stamped on them or by what a caliper reads. */
public final class StandardParts {
    /** The most matches that are shown at once. */
    public static final int MOST = 12;

    /**
     * What was found.
     *
     * @param matches the likeliest first, at most {@link #MOST}
     * @param more how many there are besides
     */
    public record Found(List<Match> matches, int more) {
        public Found {
            matches = List.copyOf(matches);
        }

        static Found of(List<Match> all) {
            return new Found(all.subList(0, Math.min(MOST, all.size())), Math.max(0, all.size() - MOST));
        }
    }

    private static final class Shipped {
        private static final StandardParts ALL = new StandardParts(read());
    }

    private final List<StandardPart> parts;
    private final StampReader stamps;
    private final SizeSearch sizes;

    private StandardParts(Map<StandardPart, List<CallOut>> callOuts) {
        this.parts = List.copyOf(callOuts.keySet());
        this.stamps = new StampReader(callOuts);
        this.sizes = new SizeSearch(parts);
    }

    /** The tables that ship with the program, read when first asked for. */
    public static StandardParts shipped() {
        return Shipped.ALL;
    }

    /** All of them, by family in the order of the tables. */
    public List<StandardPart> all() {
        return parts;
    }

    /**
     * What a stamp or a call-out means: {@code 6206-2RS C3}, {@code 25x47x7}, {@code M8x1.25 8.8}, {@code shaft ring 30x1.5}. A
     * question mark stands for a character that cannot be read. Where several parts bear what was typed all are given, and none
     * is chosen; where none does, the nearest ones, or the sizes that the call-out itself has.
     *
     * @param typed as read off the part, in any case, with or without its family in words
     * @return refused: nothing typed, over 60 characters, or nothing that is like it
     */
    public Outcome<Found> byStamp(String typed) {
        return stamps.read(typed);
    }

    /**
     * Parts that have the measured sizes, the nearest first, each size within what a caliper on a used part may be out: 0.15 mm
     * or 0.4 %, and 0.08 mm under 4 mm.
     *
     * @param measured one to three lengths in any order, m; of splines tip and
     *     root, of screws thread and pitch or across flats
     * @return refused: none or more than three, a size that is not above 0, or none that fits
     */
    public Outcome<Found> bySize(List<Double> measured) {
        return sizes.search(measured);
    }

    private static Map<StandardPart, List<CallOut>> read() {
        Map<StandardPart, List<CallOut>> all = new LinkedHashMap<>();
        for (Family family : Family.values()) {
            for (Table.Row row : Table.read(family.table()).rows()) {
                StandardPart part = part(family, row);
                all.put(part, CallOut.of(part, row));
            }
        }
        return all;
    }

    private static StandardPart part(Family family, Table.Row row) {
        List<StandardPart.Size> sizes = new ArrayList<>();
        family.sizes().forEach((column, words) -> {
            if (row.has(column)) {
                Kind kind = kind(column);
                sizes.add(new StandardPart.Size(column, words, row.number(column) * unit(column), kind));
            }
        });
        StandardPart.Agreement agreement = new StandardPart.Agreement(
                Integer.parseInt(row.text("sources")),
                row.has("single") ? row.text("single") : "",
                row.has("differs") ? row.text("differs") : "");
        String designation = row.text("designation").replace(" - ", " ");
        return new StandardPart(family, designation, sizes, row.text("standard"), agreement);
    }

    private static Kind kind(String column) {
        String unit = column.substring(column.lastIndexOf('_') + 1);
        return switch (unit) {
            case "mm" -> Kind.LENGTH;
            case "mm2" -> Kind.AREA;
            case "deg" -> Kind.ANGLE;
            case "g" -> Kind.MASS;
            default -> Kind.NUMBER;
        };
    }

    private static double unit(String column) {
        return switch (kind(column)) {
            case LENGTH, MASS -> 1e-3;
            case AREA -> 1e-6;
            case ANGLE -> Math.PI / 180;
            default -> 1;
        };
    }
}
