package shimwright.mechanics.axial.shim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.axial.DemoTransaxle;
import shimwright.mechanics.axial.reading.EndPlay;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.conformity.Rule;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Refusal;

class ShimPackTest {
    private static final double HALF_UM = 0.0005e-3;
    private static final double INCH = 0.0254;

    /** A case in millimetres. */
    private record Bench(
            double measured,
            double u,
            double nu,
            double trial,
            double effect,
            @Nullable Double lower,
            @Nullable Double upper,
            List<Piece> drawer,
            int least,
            int most) {
        ShimPack.Result result() {
            return ShimPack.work(asCase(3)).orElseThrow().result();
        }

        ShimPack.Case asCase(int offers) {
            return new ShimPack.Case(
                    measured / 1000,
                    u / 1000,
                    nu,
                    trial / 1000,
                    DemoTransaxle.U_PIECE,
                    effect,
                    lower == null ? null : (Double) (lower / 1000),
                    upper == null ? null : (Double) (upper / 1000),
                    null,
                    0.95,
                    drawer,
                    least,
                    most,
                    offers);
        }
    }

    @Test
    void theInputPackOfTheDemo() {
        // EP-2: 0.797 + 0.2783 − 1.033 = 0.0423
        EndPlay.Result play = EndPlay.work(new EndPlay.Case(
                        DemoTransaxle.rounds(
                                new double[] {0.24, 0.32}, new double[] {0.25, 0.31}, new double[] {0.24, 0.31}),
                        DemoTransaxle.INDICATOR,
                        0.02e-3,
                        3,
                        0,
                        150.0,
                        0.04e-3))
                .orElseThrow()
                .result();
        ShimPack.Result result = new Bench(
                        play.value() * 1000,
                        play.u() * 1000,
                        play.nu(),
                        0.797,
                        -1,
                        0.02,
                        0.08,
                        DemoTransaxle.sh52(),
                        1,
                        2)
                .result();
        PackOffer best = result.offers().get(0);
        assertThat(best.pieces()).containsExactly("d52-03", "d52-09");
        assertThat(best.thickness()).isCloseTo(1.033e-3, within(1e-9));
        assertThat(best.predicted()).isCloseTo(0.0423e-3, within(HALF_UM));
        assertThat(best.verdict()).isEqualTo(Verdict.IN);
        assertThat(result.wantedThickness()).isCloseTo(1.0253e-3, within(HALF_UM));
        assertThat(result.advice()).startsWith("Fit d52-03 + d52-09, 1.033 mm (0.0407 in): 0.042 mm");
    }

    @Test
    void whoBelievesOneIndicatorWantsTheWrongPack() {
        // EP-3: with 0.24 alone the true play comes out 0.089, with 0.32 alone 0.009; truth 1.076
        assertThat(1.076e-3
                        - new Bench(0.24, 0.005, 1e9, 0.797, -1, 0.02, 0.08, DemoTransaxle.sh52(), 1, 2)
                                .result()
                                .wantedThickness())
                .isCloseTo(0.089e-3, within(HALF_UM));
        assertThat(1.076e-3
                        - new Bench(0.32, 0.005, 1e9, 0.797, -1, 0.02, 0.08, DemoTransaxle.sh52(), 1, 2)
                                .result()
                                .wantedThickness())
                .isCloseTo(0.009e-3, within(HALF_UM));
    }

    @Test
    void preloadIsANegativePlay() {
        // PB-2: 17.2893 + 1.098 − 18.341 = 0.0463 preload; read 0.1617 on the spacer 18.455 with sP 1.004, now 1.098
        PackOffer spacer = new Bench(0.16167 - 0.094, 0.005, 1e9, 18.455, 1, -0.06, -0.02, DemoTransaxle.sp38(), 1, 1)
                .result()
                .offers()
                .get(0);
        assertThat(spacer.pieces()).containsExactly("d38-03");
        assertThat(spacer.predicted()).isCloseTo(-0.0463e-3, within(HALF_UM));
        // SB-2: 1.280 + 1.126 − 2.2217 = 0.1843 preload; float 0.2217 on 1.052 + 0.948
        List<Piece> two = List.of(DemoTransaxle.piece("d80-16", 1.280), DemoTransaxle.piece("d80-13", 1.126));
        PackOffer sides = new Bench(0.22167, 0.005, 1e9, 2.000, -1, -0.25, -0.15, two, 2, 2)
                .result()
                .offers()
                .get(0);
        assertThat(sides.predicted()).isCloseTo(-0.1843e-3, within(HALF_UM));
        assertThat(sides.verdict()).isEqualTo(Verdict.IN);
    }

    @Test
    void pinionDepthIsSetByTheSameArithmetic() {
        // PD-1: 1.004 + (32.18 + 20.00 − 52.07) = 1.114
        assertThat(new Bench(32.18 + 20.00, 0.005, 1e9, 1.004, -1, 52.04, 52.10, List.of(), 1, 1)
                        .result()
                        .wantedThickness())
                .isCloseTo(1.114e-3, within(HALF_UM));
    }

    @Test
    void aPackThatLeavesTheNominalOutsideIsNeverOfferedHoweverNear() {
        // common practice, no source: travel 0.068 in, limit 0.0045 in at most: 0.0635 in of pack; 0.063 leaves 0.005
        Piece near = new Piece("near", 0.063 * INCH, DemoTransaxle.U_PIECE);
        Piece just = new Piece("just", 0.0635 * INCH, DemoTransaxle.U_PIECE);
        Piece good = new Piece("good", 0.0645 * INCH, DemoTransaxle.U_PIECE);
        double mm = INCH * 1000;
        Bench tight = new Bench(0.068 * mm, 0.01, 1e9, 0, -1, null, 0.0045 * mm, List.of(near), 1, 1);
        ShimPack.Result none = tight.result();
        assertThat(none.leastThickness()).isCloseTo(0.0635 * INCH, within(1e-9));
        assertThat(none.mostThickness()).isInfinite();
        assertThat(none.offers()).isEmpty();
        assertThat(none.advice())
                .contains("No pack of the drawer lies within: it must be 1.613 mm (0.0635 in) or more");
        ShimPack.Result some =
                new Bench(0.068 * mm, 0.01, 1e9, 0, -1, null, 0.0045 * mm, List.of(near, just, good), 1, 1).result();
        assertThat(some.offers()).extracting(offer -> offer.pieces().get(0)).containsExactly("good", "just");
        assertThat(some.offers()).extracting(PackOffer::verdict).containsExactly(Verdict.IN, Verdict.NOT_PROVEN);
        assertThat(Conformity.verdict(0.005 * INCH, 0.001, 4, new Limits(null, 0.0045 * INCH), Rule.DEFAULT))
                .isEqualTo(Verdict.OUT);
    }

    @Test
    void theAdviceSaysWhatToBuyGrindOrReadAgain() {
        List<Piece> thick = List.of(DemoTransaxle.piece("x", 1.15));
        assertThat(new Bench(0.2783, 0.005, 1e9, 0.797, -1, 0.02, 0.08, thick, 1, 2)
                        .result()
                        .advice())
                .contains("it must be 0.995 mm (0.0392 in) to 1.055 mm", "Buy 1.025 mm", "or grind x to 1.025 mm");
        assertThat(new Bench(0.2783, 0.02, 9, 0.797, -1, 0.02, 0.08, thick, 1, 1)
                        .result()
                        .advice())
                .contains("Even that would be only", "Measure finer first.");
        String open = new Bench(0.2783, 0.015, 1e9, 0.797, -1, 0.02, 0.08, DemoTransaxle.sh52(), 1, 2)
                .result()
                .advice();
        assertThat(open).contains("That is not proof. It takes a clearance known to ±", "times as many rounds");
        assertThat(new Bench(0.2783, 0.009, 2, 0.797, -1, 0.02, 0.08, DemoTransaxle.sh52(), 1, 2)
                        .result()
                        .advice())
                .contains("rests on too few rounds");
        assertThat(new Bench(-0.9, 0.005, 1e9, 0.5, -1, 0.02, 0.08, DemoTransaxle.sh52(), 1, 2)
                        .result()
                        .advice())
                .contains("thinner than nothing");
        List<Piece> vague = List.of(new Piece("v", 1.0253e-3, 50e-6));
        assertThat(new Bench(0.2783, 0.005, 1e9, 0.797, -1, 0.02, 0.08, vague, 1, 1)
                        .result()
                        .advice())
                .contains("Measure them finer.");
    }

    @Test
    void whatCannotBeSearchedIsRefused() {
        List<Piece> twice = List.of(DemoTransaxle.piece("a", 1), DemoTransaxle.piece("a", 2));
        ShimPack.Case c = new ShimPack.Case(0, 0, null, 0, 0, 0, null, null, null, 0.95, twice, 3, 2, 1);
        assertThat(ShimPack.work(c).refusals())
                .extracting(Refusal::key)
                .containsExactly("lower", "effect", "minPieces", "drawer");
        assertThat(ShimPack.work(new Bench(0.1, 0, 1, 1, -1, 0.0, 1.0, random(new Random(1), 100, 1), 1, 6).asCase(1))
                        .refusals())
                .extracting(Refusal::key)
                .containsExactly("maxPieces");
    }

    @Test
    void ofPacksThatAreEquallySureTheOneNearestToTheAimComesFirst() {
        List<Piece> drawer = List.of(
                new Piece("p1", 1.00e-3, 1e-6),
                new Piece("p2", 1.01e-3, 1e-6),
                new Piece("p3", 1.03e-3, 1e-6),
                new Piece("p4", 1.04e-3, 1e-6));
        // by calculation: 0.17, 0.16, 0.14 and 0.13 in limits 0.10 to 0.20, all beyond uncertainty
        ShimPack.Case c = new ShimPack.Case(
                0.17e-3, 1e-6, null, 1.00e-3, 1e-6, -1, 0.10e-3, 0.20e-3, 0.132e-3, 0.95, drawer, 1, 1, 4);
        ShimPack.Result aimed = ShimPack.work(c).orElseThrow().result();
        assertThat(aimed.wantedThickness()).isCloseTo(1.038e-3, within(1e-9));
        assertThat(aimed.offers()).extracting(o -> o.pieces().get(0)).containsExactly("p4", "p3", "p2", "p1");
        ShimPack.Case outside = new ShimPack.Case(
                0.17e-3, 1e-6, null, 1.00e-3, 1e-6, -1, 0.10e-3, 0.20e-3, 0.25e-3, 0.95, drawer, 1, 1, 4);
        assertThat(ShimPack.work(outside).refusals())
                .extracting(Refusal::sentence)
                .containsExactly("aim: it does not lie between the limits. Aim inside them.");
    }

    static List<Piece> random(Random random, int pieces, int distinctU) {
        List<Piece> drawer = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            double millimetres = Math.round(1000 * (0.1 + 0.9 * random.nextDouble())) / 1000.0;
            drawer.add(new Piece("p" + i, millimetres / 1000, (1 + random.nextInt(distinctU)) * 1e-6));
        }
        return drawer;
    }

    @Property(tries = 600)
    void theSearchIsExact(@ForAll long seed) {
        Random random = new Random(seed);
        List<Piece> drawer = random(random, 1 + random.nextInt(11), 1 + random.nextInt(4));
        int most = 1 + random.nextInt(5);
        double trial = 0.2 + random.nextDouble();
        int side = random.nextInt(4);
        double low = -0.1 + 0.2 * random.nextDouble();
        Bench bench = new Bench(
                -0.5 + random.nextDouble(),
                0.001 + 0.03 * random.nextDouble(),
                random.nextBoolean() ? 1 + random.nextInt(9) : Double.POSITIVE_INFINITY,
                trial,
                random.nextBoolean() ? -1 : random.nextBoolean() ? 1 : 0.7,
                side == 0 ? null : (Double) low,
                side == 1 ? null : (Double) (low + 0.01 + 0.3 * random.nextDouble()),
                drawer,
                random.nextInt(Math.min(most, 2) + 1),
                most);
        ShimPack.Case c = bench.asCase(1 + random.nextInt(5));
        ShimPack.Result result = ShimPack.work(c).orElseThrow().result();
        assertThat(result.offers().stream().map(PackOffer::pieces).toList())
                .isEqualTo(BruteForce.best(c, result.wantedThickness()));
    }

    @Test
    void fortyPiecesAndPacksOfSixAreSearched() {
        // uncertainties too large for certainty, so that no size of pack can be left out; how fast: ShimPackBenchmark
        Bench alike = new Bench(0.3, 0.02, 6, 1.9, -1, 0.02, 0.08, random(new Random(7), 40, 1), 1, 6);
        Bench mixed = new Bench(0.3, 0.02, 2, 1.9, -1, 0.02, 0.08, random(new Random(8), 40, 5), 1, 6);
        assertThat(alike.result().offers()).hasSize(3);
        assertThat(mixed.result().offers()).hasSize(3);
    }

    /** Every subset, judged and ordered by the rule as written, without any short cut. */
    private static final class BruteForce {
        private record Pack(List<Piece> pieces, double probability, double thickness) {}

        static List<List<String>> best(ShimPack.Case c, double wanted) {
            List<Pack> left = new ArrayList<>();
            for (int mask = 0; mask < 1 << c.drawer().size(); mask++) {
                List<Piece> pieces = new ArrayList<>();
                for (int i = 0; i < c.drawer().size(); i++) {
                    if ((mask & 1 << i) != 0) {
                        pieces.add(c.drawer().get(i));
                    }
                }
                pieces.sort(Comparator.comparingDouble(Piece::thickness).thenComparing(Piece::id));
                if (pieces.size() >= c.minPieces() && pieces.size() <= c.maxPieces()) {
                    judge(c, pieces, left);
                }
            }
            List<List<String>> order = new ArrayList<>();
            while (order.size() < c.offers() && !left.isEmpty()) {
                double best = left.stream().mapToDouble(Pack::probability).max().orElseThrow();
                Pack next = left.stream()
                        .filter(pack -> best - pack.probability() < 0.001)
                        .min(Comparator.comparingInt(
                                        (Pack pack) -> pack.pieces().size())
                                .thenComparingLong(pack -> Math.round(1e10 * rarity(c.drawer(), pack.pieces())))
                                .thenComparingLong(pack -> Math.round(1e10 * Math.abs(pack.thickness() - wanted)))
                                .thenComparing(pack -> String.join("\u0000", ids(pack))))
                        .orElseThrow();
                order.add(ids(next));
                left.remove(next);
            }
            return order;
        }

        private static List<String> ids(Pack pack) {
            return pack.pieces().stream().map(Piece::id).toList();
        }

        private static void judge(ShimPack.Case c, List<Piece> pieces, List<Pack> packs) {
            double thickness = 0;
            double variance = 0;
            for (Piece piece : pieces) {
                thickness += piece.thickness();
                variance += piece.u() * piece.u();
            }
            double play = c.measured() + c.effect() * (thickness - c.trialThickness());
            double u = Math.sqrt(
                    c.uMeasured() * c.uMeasured() + c.effect() * c.effect() * (variance + c.uTrial() * c.uTrial()));
            Double nu = c.nu();
            double freedom = nu == null ? Double.POSITIVE_INFINITY : nu * Math.pow(u / c.uMeasured(), 4);
            Limits limits = new Limits(c.lower(), c.upper());
            if (limits.hold(play)) {
                packs.add(new Pack(pieces, Conformity.probability(play, u, freedom, limits), thickness));
            }
        }

        private static double rarity(List<Piece> drawer, List<Piece> pack) {
            double sum = 0;
            for (Piece piece : pack) {
                sum += drawer.stream()
                        .filter(other -> !pack.contains(other))
                        .mapToDouble(other -> Math.abs(other.thickness() - piece.thickness()))
                        .min()
                        .orElse(piece.thickness());
            }
            return sum;
        }
    }
}
