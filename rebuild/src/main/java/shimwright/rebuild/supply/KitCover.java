package shimwright.rebuild.supply;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Kit;
import shimwright.rebuild.unit.model.Unit;

/**
 * The cheapest way to have everything that is needed, from kits and single parts: least pieces that cannot be had, then least money, then
 * least left over, then fewest kits. Exact: every number of every kit is tried that could help, but what must cost more than the best
 * known: the kits still to be tried cannot save more than each would by itself. A kit or a part without a price (0) is not bought: what it costs is not known.
 */
public final class KitCover {
    private final List<Need> needs;
    private final List<Kit> kits;
    private final Map<String, Cover.Single> singles;
    private final int[][] brings;
    private final int[] pieces;
    private final long[] prices;
    private final int[] most;
    private final long[] single;
    private final int[][] helps;
    private final int[] chosen;
    private long known;
    private int[] best;
    private Score bestScore = new Score(Integer.MAX_VALUE, Long.MAX_VALUE, Integer.MAX_VALUE, Integer.MAX_VALUE);

    /** What a piece that cannot be had counts for, in hundredths: more than any list of parts costs. */
    private static final long WITHOUT = 1L << 40;

    private record Score(int without, long money, int surplus, int kits) implements Comparable<Score> {
        private static final Comparator<Score> ORDER = Comparator.comparingInt(Score::without)
                .thenComparingLong(Score::money)
                .thenComparingInt(Score::surplus)
                .thenComparingInt(Score::kits);

        @Override
        public int compareTo(Score other) {
            return ORDER.compare(this, other);
        }
    }

    private KitCover(List<Need> needs, List<Kit> kits, Map<String, Cover.Single> singles) {
        this.needs = needs;
        this.kits = kits.stream().filter(kit -> kit.price() > 0).toList();
        this.singles = singles;
        int count = this.kits.size();
        this.brings = new int[count][needs.size()];
        this.pieces = new int[count];
        this.prices = new long[count];
        this.most = new int[count];
        for (int k = 0; k < count; k++) {
            Kit kit = this.kits.get(k);
            prices[k] = cents(kit.price());
            for (Kit.Line line : kit.contents()) {
                pieces[k] += line.quantity();
                for (int n = 0; n < needs.size(); n++) {
                    brings[k][n] += has(line, needs.get(n)) ? line.quantity() : 0;
                }
            }
            for (int n = 0; n < needs.size(); n++) {
                most[k] = Math.max(
                        most[k], brings[k][n] == 0 ? 0 : (needs.get(n).pieces() + brings[k][n] - 1) / brings[k][n]);
            }
        }
        this.chosen = new int[count];
        this.best = new int[count];
        this.single = needs.stream()
                .mapToLong(need -> singles.containsKey(need.key())
                        ? cents(singles.get(need.key()).price())
                        : WITHOUT)
                .toArray();
        this.helps = new int[count][];
        for (int k = 0; k < count; k++) {
            int[] of = brings[k];
            helps[k] = IntStream.range(0, needs.size()).filter(n -> of[n] > 0).toArray();
        }
        this.known = greedy();
    }

    /** The cheapest cover of what is needed, from kits and the parts that are named in them with a price. */
    static Cover of(List<Need> needs, List<Kit> kits) {
        return of(needs, kits, singles(kits));
    }

    /**
     * The cheapest cover.
     *
     * @param singles where a part can be bought by itself, by the key of the need; pieces and need in it are not looked at
     */
    public static Cover of(List<Need> needs, List<Kit> kits, Map<String, Cover.Single> singles) {
        KitCover search = new KitCover(needs, kits, singles);
        search.from(0, 0, needs.stream().mapToInt(Need::pieces).toArray());
        return search.cover();
    }

    /** Whether a line of a kit is what is needed: the same part number or, where either has none, the same item. */
    public static boolean has(Kit.Line line, Need need) {
        return (line.part().isBlank() || need.items().contains(need.key()))
                ? need.items().contains(line.item())
                : line.part().equals(need.key());
    }

    /** What items cost bought one by one, hundredths of the currency; empty where one of them has no price. */
    public static OptionalLong price(Unit unit, List<String> items, Shop shop) {
        OneNumber numbers = OneNumber.of(unit, shop);
        Map<String, Cover.Single> singles = singles(numbers.kits(unit.type().kits()));
        long sum = 0;
        for (Need need : Needs.whole(unit, items, numbers)) {
            Cover.Single single = singles.get(need.key());
            if (single == null) {
                return OptionalLong.empty();
            }
            sum += need.pieces() * cents(single.price());
        }
        return OptionalLong.of(sum);
    }

    private static Map<String, Cover.Single> singles(List<Kit> kits) {
        Map<String, Cover.Single> singles = new LinkedHashMap<>();
        for (Kit kit : kits) {
            for (Kit.Line line : kit.contents()) {
                if (line.price() > 0) {
                    Need of = new Need(line.part(), line.name(), 1, List.of(line.item()), List.of(), "");
                    Cover.Single one = new Cover.Single(of, 1, line.price(), line.from());
                    singles.merge(line.part(), one, (a, b) -> a.price() <= b.price() ? a : b);
                    singles.merge(line.item(), one, (a, b) -> a.price() <= b.price() ? a : b);
                }
            }
        }
        return singles;
    }

    private static long cents(double price) {
        return Math.round(price * 100);
    }

    private Score score(int[] counts) {
        int without = 0;
        long money = 0;
        int all = 0;
        int used = 0;
        int bought = 0;
        for (int k = 0; k < counts.length; k++) {
            money += counts[k] * prices[k];
            all += counts[k] * pieces[k];
            bought += counts[k];
        }
        for (int n = 0; n < needs.size(); n++) {
            int here = 0;
            for (int k = 0; k < counts.length; k++) {
                here += counts[k] * brings[k][n];
            }
            int wanted = needs.get(n).pieces();
            used += Math.min(here, wanted);
            int left = Math.max(0, wanted - here);
            Optional<Cover.Single> single =
                    Optional.ofNullable(singles.get(needs.get(n).key()));
            if (single.isPresent()) {
                money += left * cents(single.get().price());
            } else {
                without += left;
            }
        }
        return new Score(without, money, all - used, bought);
    }

    /** What one cover costs that takes the kit that saves most, as long as one saves anything. */
    private long greedy() {
        int[] left = needs.stream().mapToInt(Need::pieces).toArray();
        long money = 0;
        int best = 0;
        while (best >= 0) {
            best = -1;
            long saved = 0;
            for (int k = 0; k < kits.size(); k++) {
                long one = saves(k, 1, left);
                best = one > saved ? k : best;
                saved = Math.max(saved, one);
            }
            if (best >= 0) {
                money += prices[best];
                left = after(best, 1, left);
            }
        }
        return money + alone(left);
    }

    private long alone(int[] left) {
        long money = 0;
        for (int n = 0; n < left.length; n++) {
            money += left[n] * single[n];
        }
        return money;
    }

    private long saves(int kit, int count, int[] left) {
        long saved = -count * prices[kit];
        for (int n : helps[kit]) {
            saved += Math.min(left[n], count * brings[kit][n]) * single[n];
        }
        return saved;
    }

    private int[] after(int kit, int count, int[] left) {
        int[] then = left.clone();
        for (int n : helps[kit]) {
            then[n] = Math.max(0, then[n] - count * brings[kit][n]);
        }
        return then;
    }

    /** The least that it can come to from here: each kit still to be tried saves at most what it would save by itself. */
    private long least(int kit, long money, int[] left) {
        long least = money + alone(left);
        for (int k = kit; k < kits.size(); k++) {
            long best = 0;
            for (int count = 1; count <= most[k]; count++) {
                best = Math.max(best, saves(k, count, left));
            }
            least -= best;
        }
        return least;
    }

    private void from(int kit, long money, int[] left) {
        if (least(kit, money, left) > known) {
            return;
        }
        if (kit == kits.size()) {
            Score score = score(chosen);
            if (score.compareTo(bestScore) < 0) {
                bestScore = score;
                best = chosen.clone();
                known = Math.min(known, score.without() * WITHOUT + score.money());
            }
            return;
        }
        for (int count = 0; count <= most[kit]; count++) {
            chosen[kit] = count;
            from(kit + 1, money + count * prices[kit], count == 0 ? left : after(kit, count, left));
        }
        chosen[kit] = 0;
    }

    private Cover cover() {
        Map<String, Integer> bought = new LinkedHashMap<>();
        for (int k = 0; k < best.length; k++) {
            if (best[k] > 0) {
                bought.put(kits.get(k).id(), best[k]);
            }
        }
        List<Cover.Single> alone = new ArrayList<>();
        List<Need> without = new ArrayList<>();
        for (int n = 0; n < needs.size(); n++) {
            Need need = needs.get(n);
            int left = need.pieces();
            for (int k = 0; k < best.length; k++) {
                left -= best[k] * brings[k][n];
            }
            Cover.Single single = singles.get(need.key());
            if (left > 0 && single != null) {
                alone.add(new Cover.Single(need, left, single.price(), single.from()));
            } else if (left > 0) {
                without.add(need);
            }
        }
        return new Cover(bought, alone, without, bestScore.money() / 100.0, bestScore.surplus());
    }

    /**
     * Lines of a kit that bear another part number than the item of this unit has, where the kit has no line with that number: so a kit
     * for another variant, or a wrong list, shows. Numbers of which one took the place of the other are one.
     */
    public static List<Kit.Line> wrong(Unit unit, Kit kit, OneNumber numbers) {
        return kit.contents().stream()
                .filter(line -> !line.part().isBlank())
                .filter(line -> unit.type().items().stream()
                        .filter(item ->
                                item.id().equals(line.item()) && !item.part().isBlank())
                        .map(item -> numbers.of(item.part()))
                        .anyMatch(part -> kit.contents().stream()
                                .noneMatch(other -> numbers.of(other.part()).equals(part))))
                .toList();
    }
}
