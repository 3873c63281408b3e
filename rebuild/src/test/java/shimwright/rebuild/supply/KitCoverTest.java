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
            int parts = 1 + random.nextInt(6);
            List<Need> needs = new ArrayList<>();
            double[] prices = new double[parts];
            for (int n = 0; n < parts; n++) {
                needs.add(need(n, 1 + random.nextInt(4)));
                prices[n] = random.nextInt(4) == 0 ? 0 : 1 + random.nextInt(40);
            }
            List<Kit> kits = new ArrayList<>();
            for (int k = 0; k < random.nextInt(5); k++) {
                List<Kit.Line> lines = new ArrayList<>();
                // a part may stand in two lines of a kit, and a kit may hold what nobody needs
                for (int l = 0; l < 1 + random.nextInt(5); l++) {
                    lines.add(line(random.nextInt(parts + 2), 1 + random.nextInt(3)));
                }
                kits.add(kit(
                        "K" + k, random.nextInt(8) == 0 ? 0 : 5 + random.nextInt(60), lines.toArray(Kit.Line[]::new)));
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
                more.merge(line.part(), count * line.quantity(), Integer::sum);
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

    private static int had(Random4 problem, Cover cover, Need need) {
        int kits = problem.kits().stream()
                .mapToInt(kit -> cover.kits().getOrDefault(kit.id(), 0)
                        * kit.contents().stream()
                                .filter(line -> line.part().equals(need.key()))
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
        assertThat(KitCover.wrong(DemoUnit.A, kit)).isEmpty();
    }
}
