package shimwright.mechanics.axial.shim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.axial.shim.Drawer.Case.Effect;
import shimwright.mechanics.axial.shim.Drawer.Case.Loose;
import shimwright.mechanics.axial.shim.Drawer.Case.Need;
import shimwright.mechanics.axial.shim.Drawer.Case.ReadWith;
import shimwright.mechanics.axial.shim.Drawer.Case.Seat;
import shimwright.mechanics.axial.shim.Drawer.Result;
import shimwright.mechanics.axial.shim.Drawer.Result.Wish;

/**
 * The search of a drawer against every way to lay it. More drawers with {@code -Dshimwright.drawers=2000}, large ones with their times with
 * {@code -Dshimwright.figures=true}.
 */
class DrawerSearchTest {
    private static final double UM = 1e-6;
    private static final long WORK = 1_000_000_000L;

    /** Clearances that each hang on a place of their own and, where coupled, on others too. */
    static Drawer.Case drawer(long seed, int clearances, int shims, int most, boolean coupled, boolean shared) {
        Random random = new Random(seed);
        List<Need> needs = new ArrayList<>();
        List<Seat> places = new ArrayList<>();
        List<Effect> effects = new ArrayList<>();
        List<Loose> pieces = new ArrayList<>();
        List<ReadWith> readWith = new ArrayList<>();
        boolean tight = random.nextInt(3) == 0;
        for (int p = 0; p < shims; p++) {
            double u = shared && random.nextInt(4) == 0 ? 3 * UM : 2 * UM;
            String tag = String.format(Locale.ROOT, "d%03d", p);
            pieces.add(new Loose(tag, "SH", (200 + random.nextInt(1000)) * UM, u));
        }
        double[] laid = new double[clearances];
        for (int p = 0; p < clearances; p++) {
            for (int q = 1 + random.nextInt(most); q > 0; q--) {
                laid[p] += pieces.get(random.nextInt(shims)).thickness();
            }
            laid[p] += (random.nextInt(13) - 6) * UM;
        }
        for (int k = 0; k < clearances; k++) {
            double middle = (20 + random.nextInt(60)) * UM;
            double half = (tight ? 6 + random.nextInt(8) : 15 + random.nextInt(25)) * UM;
            int fewest = random.nextInt(4) == 0 ? 0 : 1;
            places.add(new Seat("s" + k, "SH", 0, fewest, most, shared ? random.nextInt(3) * UM : 0));
            double wanted = 0;
            for (int p = 0; p < clearances; p++) {
                boolean also = p != k && coupled && (p == k + 1 || random.nextInt(4) == 0);
                if (p == k || also) {
                    double change = p == k ? -1 : random.nextBoolean() ? 0.5 : 1;
                    effects.add(new Effect("c" + k, "s" + p, change));
                    wanted += change * laid[p];
                }
            }
            double u = (2 + random.nextInt(6)) * UM;
            double value = middle - wanted;
            if (shared && random.nextInt(3) > 0) {
                Loose in = pieces.get(random.nextInt(shims));
                readWith.add(new ReadWith("c" + k, "s" + k, in.id(), in.thickness(), in.u()));
                value -= in.thickness();
            }
            needs.add(new Need(
                    "c" + k,
                    value,
                    u,
                    middle - half,
                    middle + half,
                    middle + (random.nextInt(7) - 3) * UM,
                    shared ? u * random.nextInt(3) / 2 : 0));
        }
        double micrometer = shared && random.nextBoolean() ? 2 * UM : 0;
        return new Drawer.Case(needs, places, effects, pieces, 0.95, 3, micrometer, readWith);
    }

    private static Drawer.Case small(int seed) {
        int clearances = 2 + seed % 3;
        int most = clearances == 4 ? 1 : 2;
        return drawer(seed, clearances, clearances == 3 ? 7 : 9, most, seed % 4 > 0, seed % 2 == 0);
    }

    @Test
    void itOffersWhatLookingAtEveryWayOffers() {
        int served = 0;
        int count = Integer.getInteger("shimwright.drawers", 10);
        for (int seed = 0; seed < count; seed++) {
            Drawer.Case c = small(seed);
            List<EveryWay.One> every = EveryWay.of(c);
            DrawerModel m = new DrawerModel(c);
            DrawerSearch search = new DrawerSearch(m, 3, 0, WORK, DrawerWish.Free.none(m.places));
            List<DrawerSearch.Found> found = search.best();
            assertThat(search.proven()).isTrue();
            assertThat(found.stream().map(one -> one.way().pieces()).toList())
                    .as("drawer %d", seed)
                    .isEqualTo(every.stream().limit(3).map(EveryWay.One::pieces).toList());
            for (int k = 0; k < found.size(); k++) {
                assertThat(found.get(k).way().probability())
                        .isCloseTo(every.get(k).probability(), within(1e-9));
                assertThat(found.get(k).way().distance()).isCloseTo(every.get(k).distance(), within(1e-6));
            }
            served += every.isEmpty() ? 0 : 1;
        }
        assertThat(served).isGreaterThan(count / 3);
    }

    @Test
    void withinItsToleranceNothingIsBetter() {
        for (int seed = 0; seed < Integer.getInteger("shimwright.drawers", 10); seed++) {
            Drawer.Case c = small(seed);
            DrawerModel m = new DrawerModel(c);
            List<DrawerSearch.Found> found =
                    new DrawerSearch(m, 1, DrawerSearch.NEAR, WORK, DrawerWish.Free.none(m.places)).best();
            List<EveryWay.One> every = EveryWay.of(c);
            assertThat(found.isEmpty()).as("drawer %d", seed).isEqualTo(every.isEmpty());
            if (!found.isEmpty()) {
                Result.Way best = found.get(0).way();
                int pieces = found.get(0).pieces();
                assertThat(every)
                        .as("drawer %d", seed)
                        .noneMatch(one -> one.probability() > best.probability() + DrawerSearch.TIE + 1e-9
                                || (one.sure() >= found.get(0).sure() && one.count() < pieces)
                                || (one.sure() == found.get(0).sure()
                                        && one.count() == pieces
                                        && one.distance() < best.distance() - DrawerSearch.NEAR - 1e-9));
            }
        }
    }

    /** What it says to get does, once it lies in the drawer; a ten-thousandth of a millimetre beyond what will do does not. */
    @Test
    void whatItSaysToGetDoes() {
        int wished = 0;
        for (int seed = 0; seed < Integer.getInteger("shimwright.drawers", 10); seed++) {
            Drawer.Case c = small(seed);
            Result result = Drawer.work(c).orElseThrow().result();
            double needed = Math.pow(c.ruleProbability(), c.needs().size());
            boolean more = result.advice().contains("more rounds");
            if (result.wishes().isEmpty() || more) {
                continue;
            }
            wished++;
            List<Loose> pieces = new ArrayList<>(c.pieces());
            for (Wish wish : result.wishes()) {
                assertThat(wish.from()).isLessThanOrEqualTo(wish.thickness());
                assertThat(wish.to()).isGreaterThanOrEqualTo(wish.thickness());
                double u = c.pieces().stream().mapToDouble(Loose::u).max().orElse(0);
                pieces.add(new Loose("new " + wish.place(), wish.family(), wish.thickness(), u));
            }
            Drawer.Case with =
                    new Drawer.Case(c.needs(), c.places(), c.effects(), pieces, 0.95, 1, c.micrometer(), c.readWith());
            assertThat(Drawer.work(with).orElseThrow().result().offers())
                    .as("drawer %d", seed)
                    .anyMatch(way -> way.probability() >= needed - 1e-9);
        }
        assertThat(wished).isPositive();
    }

    @Test
    void fiveClearancesAndThreeHundredShimsOfWhichThreeMayLieAtAPlaceAreServed() {
        int served = 0;
        int proven = 0;
        for (int seed = 0; seed < (Boolean.getBoolean("shimwright.figures") ? 20 : 1); seed++) {
            for (int kind = 0; kind < (Boolean.getBoolean("shimwright.figures") ? 4 : 1); kind++) {
                Drawer.Case c = drawer(seed, 5, 300, 3, kind % 2 > 0, kind > 1);
                ThreadMXBean cpu = ManagementFactory.getThreadMXBean();
                long began = cpu.getCurrentThreadCpuTime();
                Result result = Drawer.work(c).orElseThrow().result();
                if (Boolean.getBoolean("shimwright.figures")) {
                    System.out.printf(
                            Locale.ROOT,
                            "%d %s %s: %.3f s, %s, %.4f, %s%n",
                            seed,
                            kind % 2 > 0 ? "coupled" : "apart",
                            kind > 1 ? "shared" : "own",
                            (cpu.getCurrentThreadCpuTime() - began) / 1e9,
                            result.proven() == 1 ? "proven" : "not proven",
                            result.offers().isEmpty()
                                    ? 0
                                    : result.offers().get(0).probability(),
                            result.advice());
                }
                served += result.offers().isEmpty() ? 0 : 1;
                proven += result.proven();
            }
        }
        assertThat(served).isPositive();
        assertThat(proven).isPositive();
    }
}
