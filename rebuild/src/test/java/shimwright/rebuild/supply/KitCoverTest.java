package shimwright.rebuild.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Kit;

/** The cheapest cover against every number of every kit. */
class KitCoverTest {
    /** A need of so many pieces. */
    private static Need need(int n, int pieces) {
        return new Need("P" + n, "part " + n, pieces, List.of("i" + n), List.of("worn"), "");
    }

    private static Kit kit(String id, double price, Kit.Line... lines) {
        return new Kit(id, List.of(lines), price, Set.of());
    }

    private static Kit.Line line(int n, int quantity) {
        return new Kit.Line("P" + n, "part " + n, quantity, 0, "", "i" + n);
    }

    /** The same line as a list that names the item and no number has it. */
    private static Kit.Line withoutNumber(Kit.Line line) {
        return new Kit.Line("", line.name(), line.quantity(), 0, "", line.item());
    }

    private static boolean is(Kit.Line line, Need need) {
        return line.part().equals(need.key()) || need.items().contains(line.item());
    }

    private static Map<String, Cover.Single> singles(double... prices) {
        Map<String, Cover.Single> singles = new LinkedHashMap<>();
        for (int n = 0; n < prices.length; n++) {
            if (prices[n] > 0) {
                singles.put("P" + n, new Cover.Single(need(n, 1), 1, prices[n], "S"));
            }
        }
        return singles;
    }

    private record Random4(List<Need> needs, List<Kit> kits, Map<String, Cover.Single> singles) {
        static Random4 of(long seed) {
            Random random = new Random(seed);
            int parts = 1 + random.nextInt(8);
            double cent = random.nextInt(3) == 0 ? 0.01 * random.nextInt(100) : 0;
            List<Need> needs = new ArrayList<>();
            double[] prices = new double[parts];
            for (int n = 0; n < parts; n++) {
                needs.add(need(n, 1 + random.nextInt(4)));
                prices[n] = random.nextInt(4) == 0 ? 0 : 1 + random.nextInt(40) + cent;
            }
            List<Kit> kits = new ArrayList<>();
            for (int k = 0; k < random.nextInt(5); k++) {
                List<Kit.Line> lines = new ArrayList<>();
                // a part may stand in two lines of a kit, and a kit may hold what nobody needs
                for (int l = 0; l < 1 + random.nextInt(5); l++) {
                    Kit.Line one = line(random.nextInt(parts + 2), 1 + random.nextInt(3));
                    lines.add(random.nextInt(4) == 0 ? withoutNumber(one) : one);
                }
                kits.add(kit(
                        "K" + k,
                        random.nextInt(8) == 0 ? 0 : 5 + cent + random.nextInt(60),
                        lines.toArray(Kit.Line[]::new)));
            }
            return new Random4(needs, kits, KitCoverTest.singles(prices));
        }
    }

    /** Pieces that cannot be had, then money: the least of every combination, reckoned anew. */
    private static double[] least(Random4 problem, int kit, Map<String, Integer> got, double money) {
        if (kit == problem.kits().size()) {
            double without = 0;
            double all = money;
            for (Need need : problem.needs()) {
                int left = Math.max(0, need.pieces() - got.getOrDefault(need.key(), 0));
                Cover.Single single = problem.singles().get(need.key());
                without += single == null ? left : 0;
                all += single == null ? 0 : left * single.price();
            }
            return new double[] {without, all};
        }
        double[] least = {Double.POSITIVE_INFINITY, 0};
        Kit one = problem.kits().get(kit);
        for (int count = 0; count <= (one.price() > 0 ? 4 : 0); count++) {
            Map<String, Integer> more = new LinkedHashMap<>(got);
            for (Kit.Line line : one.contents()) {
                more.merge("P" + line.item().substring(1), count * line.quantity(), Integer::sum);
            }
            double[] found = least(problem, kit + 1, more, money + count * one.price());
            if (found[0] < least[0] || (found[0] == least[0] && found[1] < least[1])) {
                least = found;
            }
        }
        return least;
    }

    @Property(tries = 1000)
    void noCoverIsCheaper(@ForAll long seed) {
        Random4 problem = Random4.of(seed);
        Cover cover = KitCover.of(problem.needs(), problem.kits(), problem.singles());
        double[] least = least(problem, 0, Map.of(), 0);
        int without = problem.needs().stream()
                .mapToInt(need -> need.pieces() - had(problem, cover, need))
                .sum();
        assertThat(without).isEqualTo((int) least[0]);
        assertThat(cover.price()).isCloseTo(least[1], within(1e-9));
    }

    /** Whichever of the numbers that took one another's place a kit's list has, it costs the same. */
    @Property(tries = 200)
    void aNumberThatWasReplacedChangesNothing(@ForAll long seed) {
        Random4 problem = Random4.of(seed);
        Random random = new Random(seed);
        Map<String, Entry.NumberReplaced> replaced = new LinkedHashMap<>();
        for (Need need : problem.needs()) {
            String key = need.key();
            for (int link = 0; link < random.nextInt(4); link++) {
                replaced.put(key, new Entry.NumberReplaced(key, key + "+", "S1", ""));
                key = key + "+";
            }
        }
        Shop shop = new Shop(Map.of(), Map.of(), Map.of(), Map.of(), replaced, Map.of());
        OneNumber numbers = OneNumber.of(DemoUnit.A, shop);
        List<Kit> renamed = problem.kits().stream()
                .map(kit -> kit(
                        kit.id(),
                        kit.price(),
                        kit.contents().stream()
                                .map(line -> renamed(line, shop, random))
                                .toArray(Kit.Line[]::new)))
                .toList();
        Map<String, Cover.Single> singles = new LinkedHashMap<>();
        problem.singles().forEach((key, single) -> singles.put(numbers.of(key), single));
        List<Need> needs = problem.needs().stream()
                .map(need -> new Need(numbers.of(need.key()), need.name(), need.pieces(), need.items(), List.of(), ""))
                .toList();
        Cover cover = KitCover.of(needs, numbers.kits(renamed), singles);
        Cover plain = KitCover.of(problem.needs(), problem.kits(), problem.singles());
        assertThat(cover.price()).isEqualTo(plain.price());
        assertThat(cover.kits()).isEqualTo(plain.kits());
        assertThat(cover.without()).hasSameSizeAs(plain.without());
    }

    private static Kit.Line renamed(Kit.Line line, Shop shop, Random random) {
        List<Entry.NumberReplaced> chain = shop.inPlaceOf(line.part());
        int link = random.nextInt(chain.size() + 1);
        return link == 0
                ? line
                : new Kit.Line(chain.get(link - 1).by(), line.name(), line.quantity(), 0, "", line.item());
    }

    private static int had(Random4 problem, Cover cover, Need need) {
        int kits = problem.kits().stream()
                .mapToInt(kit -> cover.kits().getOrDefault(kit.id(), 0)
                        * kit.contents().stream()
                                .filter(line -> is(line, need))
                                .mapToInt(Kit.Line::quantity)
                                .sum())
                .sum();
        int alone = cover.singles().stream()
                .filter(single -> single.need().key().equals(need.key()))
                .mapToInt(Cover.Single::pieces)
                .sum();
        return Math.min(need.pieces(), kits + alone);
    }

    @Test
    void aKitWithoutAPriceIsNotBoughtAndWhatNobodyHasIsSaid() {
        Cover cover = KitCover.of(
                List.of(need(0, 2), need(1, 1)), List.of(kit("K", 0, line(0, 2), line(1, 1))), singles(7, 0));
        assertThat(cover.kits()).isEmpty();
        assertThat(cover.price()).isEqualTo(14);
        assertThat(cover.without()).extracting(Need::key).containsExactly("P1");
    }

    @Test
    void theShippedKitIsCheaperThanItsPartsAndItsWrongLinesAreNamed() {
        Kit kit = DemoUnit.A.type().kits().get(0);
        assertThat(KitCover.wrong(DemoUnit.A, kit, OneNumber.EACH)).isEmpty();
    }
}
