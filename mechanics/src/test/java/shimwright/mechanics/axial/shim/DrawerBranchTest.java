package shimwright.mechanics.axial.shim;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.axial.shim.Drawer.Case.Effect;
import shimwright.mechanics.axial.shim.Drawer.Case.Loose;
import shimwright.mechanics.axial.shim.Drawer.Case.Need;
import shimwright.mechanics.axial.shim.Drawer.Case.Seat;
import shimwright.mechanics.axial.shim.Drawer.Result.Way;
import shimwright.mechanics.working.Line;

/** Branch and bound against looking at every way. More drawers with {@code -Dshimwright.drawers=2000}. */
class DrawerBranchTest {
    private static final double UM = 1e-6;

    /** Clearances that each hang on a place of their own and, where coupled, on the next one too. */
    static Drawer.Case drawer(long seed, int clearances, int shims, int most, boolean coupled) {
        Random random = new Random(seed);
        List<Need> needs = new ArrayList<>();
        List<Seat> places = new ArrayList<>();
        List<Effect> effects = new ArrayList<>();
        for (int k = 0; k < clearances; k++) {
            double middle = (20 + random.nextInt(60)) * UM;
            double half = (15 + random.nextInt(25)) * UM;
            places.add(new Seat("s" + k, "SH", 0, 1, most, 0));
            double change = 0;
            effects.add(new Effect("c" + k, "s" + k, -1));
            change += 1;
            if (coupled && k + 1 < clearances) {
                effects.add(new Effect("c" + k, "s" + (k + 1), 0.5));
                change -= 0.5;
            }
            double wanted = (500 + random.nextInt(900)) * UM;
            needs.add(new Need(
                    "c" + k,
                    middle + change * wanted,
                    (2 + random.nextInt(6)) * UM,
                    middle - half,
                    middle + half,
                    middle + (random.nextInt(11) - 5) * UM));
        }
        List<Loose> pieces = new ArrayList<>();
        for (int p = 0; p < shims; p++) {
            pieces.add(new Loose(String.format("d%03d", p), "SH", (200 + random.nextInt(1000)) * UM, 2 * UM));
        }
        return new Drawer.Case(needs, places, effects, pieces, 0.95, 3);
    }

    private static List<List<DrawerSearch.Pack>> packs(Drawer.Case c) {
        return c.places().stream().map(place -> Drawer.packs(c, place)).toList();
    }

    @Test
    void itOffersWhatLookingAtEveryWayOffers() {
        int served = 0;
        int count = Integer.getInteger("shimwright.drawers", 30);
        for (int seed = 0; seed < count; seed++) {
            Drawer.Case c = drawer(seed, 2 + seed % 2, 9 + seed % 4, 2, seed % 3 > 0);
            List<Way> every = new DrawerSearch(c, packs(c)).best();
            DrawerBranch branch = new DrawerBranch(c, packs(c));
            assertThat(branch.best()).as("drawer %d", seed).isEqualTo(every);
            assertThat(branch.proven()).isTrue();
            served += every.isEmpty() ? 0 : 1;
        }
        assertThat(served).isGreaterThan(count / 4);
    }

    @Test
    void fiveClearancesWithTwoPiecesEachAreServedAndProven() {
        int shims = Integer.getInteger("shimwright.shims", 24);
        List<Line> lines =
                Drawer.work(drawer(1, 5, shims, 2, false)).orElseThrow().working();
        assertThat(lines)
                .filteredOn(line -> line.symbol().equals("best proven"))
                .allSatisfy(line -> assertThat(line.value()).isEqualTo(1));
    }
}
