package shimwright.rebuild.supply;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Kit;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * What is to be ordered, line by line, by supplier.
 *
 * @param needs all that is needed
 * @param cover where it comes from at the least cost
 * @param lines each piece of paper that comes, in the order of suppliers
 * @param kits those that hold for this unit
 */
public record OrderList(List<Need> needs, Cover cover, List<Line> lines, List<Kit> kits) {
    public OrderList {
        needs = List.copyOf(needs);
        lines = List.copyOf(lines);
        kits = List.copyOf(kits);
    }

    /**
     * One line.
     *
     * @param key by which it is chosen
     * @param what in words, with its number and count
     * @param items of the unit that it is for
     * @param from the kit by its number, or the supplier; empty where nobody said
     * @param price of the line; 0 where it is in the price of its kit or not known
     * @param check what is measured on it when it comes
     * @param why it is needed
     * @param parts the single parts that it takes the place of
     * @param number of the unit file, several where one took the place of another; empty where the part has none
     * @param replaced what has taken the place of that number, one after another
     * @param listed that the kit's list has a number that holds no more; empty where it has not
     * @param pieces how many
     */
    public record Line(
            String key,
            String what,
            List<String> items,
            String from,
            double price,
            String check,
            List<String> why,
            List<String> parts,
            String number,
            List<Entry.NumberReplaced> replaced,
            String listed,
            int pieces) {
        public Line {
            items = List.copyOf(items);
            why = List.copyOf(why);
            parts = List.copyOf(parts);
            replaced = List.copyOf(replaced);
        }

        /** That another number has taken the place of the one in the unit file, and who said so; empty where it stands. */
        public String instead() {
            return replaced.isEmpty()
                    ? ""
                    : "in place of " + number + ", says "
                            + replaced.stream()
                                    .map(Entry.NumberReplaced::who)
                                    .distinct()
                                    .collect(Collectors.joining(", "));
        }

        /** What to look at when it comes, with the number that it has in place of another. */
        public String look() {
            return Stream.of(instead(), listed, check)
                    .filter(text -> !text.isEmpty())
                    .collect(Collectors.joining("; "));
        }
    }

    /** What a job has to order now, by the numbers of the unit file. */
    public static OrderList of(Unit unit, Job job) {
        return of(unit, job, new Shop(Map.of(), Map.of()));
    }

    /** What a job has to order now, by the numbers that the shop knows to have taken the place of those of the unit file. */
    public static OrderList of(Unit unit, Job job, Shop shop) {
        OneNumber numbers = OneNumber.of(unit, shop);
        List<Need> needs = Needs.of(unit, job, numbers);
        List<Kit> kits = numbers.kits(unit.type().kits());
        Cover cover = KitCover.of(needs, kits);
        Lines lines = new Lines(unit, numbers);
        for (Need need : needs) {
            int left = need.pieces();
            for (Kit kit : unit.type().kits()) {
                int brings = cover.kits().getOrDefault(kit.id(), 0)
                        * kit.contents().stream()
                                .filter(line -> numbers.has(line, need))
                                .mapToInt(Kit.Line::quantity)
                                .sum();
                int taken = Math.min(left, brings);
                if (taken > 0) {
                    lines.ofKit(kit, need, taken);
                    left -= taken;
                }
            }
        }
        cover.singles()
                .forEach(single -> lines.add(
                        single.need().key(),
                        single.need(),
                        single.pieces(),
                        single.from(),
                        single.pieces() * single.price(),
                        ""));
        cover.without().forEach(need -> lines.add(need.key(), need, lines.left(need), "", 0, ""));
        return new OrderList(needs, cover, lines.made, unit.type().kits());
    }

    /** The lines while they are made. */
    private static final class Lines {
        private final Unit unit;
        private final OneNumber numbers;
        private final List<Line> made = new ArrayList<>();
        private final Map<String, Integer> given = new LinkedHashMap<>();

        Lines(Unit unit, OneNumber numbers) {
            this.unit = unit;
            this.numbers = numbers;
        }

        private int left(Need need) {
            return need.pieces() - given.getOrDefault(need.key(), 0);
        }

        private void ofKit(Kit kit, Need need, int pieces) {
            String listed = numbers.listed(kit, need, inUnit(need));
            add(kit.id() + "/" + need.key(), need, pieces, "kit " + kit.id(), 0, listed);
        }

        /** The part numbers of a need that the unit file has. */
        private List<String> inUnit(Need need) {
            return need.items().stream()
                    .map(item -> unit.item(item).part())
                    .filter(part -> !part.isBlank())
                    .distinct()
                    .toList();
        }

        /** The next so many pieces of a need; all of its parts where several of them are one piece, as cup and cone are. */
        private void add(String key, Need need, int pieces, String from, double price, String listed) {
            int first = given.getOrDefault(need.key(), 0);
            given.put(need.key(), first + pieces);
            List<String> parts = need.parts().size() == need.pieces()
                    ? need.parts().subList(first, Math.min(first + pieces, need.pieces()))
                    : need.parts();
            List<String> items = parts.isEmpty()
                    ? need.items()
                    : parts.stream().map(JudgedPiece::item).distinct().toList();
            List<Entry.NumberReplaced> replaced = numbers.replaced(inUnit(need));
            String numbered = replaced.isEmpty()
                    ? need.numbered()
                    : replaced.get(replaced.size() - 1).by() + " " + need.name();
            String number = String.join(
                    ", ",
                    inUnit(need).stream()
                            .filter(one -> replaced.isEmpty()
                                    || !numbers.replaced(List.of(one)).isEmpty())
                            .toList());
            String what = numbered + (pieces > 1 ? ", " + pieces + " pieces" : "");
            made.add(new Line(
                    key, what, items, from, price, need.check(), need.why(), parts, number, replaced, listed, pieces));
        }
    }

    /** The line of that key. */
    public Optional<Line> line(String key) {
        return lines.stream().filter(line -> line.key().equals(key)).findFirst();
    }

    /** The lines of what a step puts in. */
    public List<Line> linesFor(Step step) {
        return lines.stream().filter(line -> HeldUp.fits(step, line.items())).toList();
    }

    /** What as many of a kit as are to be bought cost together, hundredths of the currency. */
    public long price(Kit kit) {
        return Math.round(kit.price() * 100) * cover.kits().getOrDefault(kit.id(), 0);
    }

    /** Lines by where they come from, in order. */
    public Map<String, List<Line>> bySupplier() {
        return lines.stream().collect(Collectors.groupingBy(Line::from, LinkedHashMap::new, Collectors.toList()));
    }
}
