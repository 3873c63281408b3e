package shimwright.rebuild.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static shimwright.rebuild.demo.DemoWorkbench.MM;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.conformity.Verdict;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.Shop.Piece;
import shimwright.rebuild.unit.model.Step.Phase;

class ShopTest {
    private static final double EVEN = 0.010 * MM;

    private final DemoWorkbench bench = DemoWorkbench.open();

    private Piece piece(String tag) {
        return Objects.requireNonNull(bench.shop().pieces().get(tag));
    }

    private void choose(String clearance, String position, String... tags) {
        List<PieceIn> pieces = bench.pieces(tags);
        bench.lay(new Entry.PackChosen(
                clearance, position, pieces, 4e-5, 5e-6, 0.97, Verdict.IN, "", List.of(), Map.of()));
    }

    private List<String> usable(String family) {
        return bench.shop().usable(family, EVEN).stream().map(Piece::id).toList();
    }

    @Test
    void aPieceIsWhatTheMicrometerSaidNotItsStamp() {
        Piece mis = piece("d80-11");
        // PD-4 of the demo source: 1.20 by stamp, 1.098 by micrometer
        assertThat(mis.stamp()).isEqualTo("1.20");
        assertThat(mis.thickness()).isCloseTo(1.098 * MM, within(1e-9));
        assertThat(piece("d52-02").thickness()).isCloseTo((0.303 + 0.303 + 0.302) / 3 * MM, within(1e-9));
        assertThat(piece("d52-02").spread()).isCloseTo(0.001 * MM, within(1e-9));
    }

    @Test
    void burredPiecesAreThereButNotUsable() {
        // H04 of the demo source: spread at most 0.010; d80-14 0.023, d52-07 0.015, d38-08 0.016
        assertThat(usable("SH80")).hasSize(21).doesNotContain("d80-14");
        assertThat(usable("SH52")).hasSize(9).doesNotContain("d52-07");
        assertThat(usable("SP38")).hasSize(7).doesNotContain("d38-08");
        assertThat(piece("d80-14").inDrawer()).isTrue();
        assertThat(usable("SH99")).isEmpty();
    }

    @Test
    void aSpreadOnTheLimitIsUsable() {
        bench.keepInShop(new Entry.ShimAdded("n1", "SH80", "1.00", List.of(1.000 * MM, 1.010 * MM), 2e-6));
        assertThat(usable("SH80")).contains("n1");
    }

    @Test
    void aPieceThatWasNeverMeasuredIsNeverUsable() {
        bench.keepInShop(new Entry.ShimAdded("n2", "SH80", "1.00", List.of(), 2e-6));
        assertThat(usable("SH80")).doesNotContain("n2");
        assertThat(bench.shop().pieces()).doesNotContainKey("n2");
    }

    @Test
    void aChosenPieceIsInTheUnit() {
        choose("c", "sI", "d52-03", "d52-09");
        assertThat(piece("d52-03").takenBy()).isEqualTo("V-0093");
        assertThat(piece("d52-03").inDrawer()).isFalse();
        assertThat(usable("SH52")).doesNotContain("d52-03", "d52-09");
    }

    @Test
    void anotherPackForThePlaceBringsTheFirstOneBack() {
        choose("c", "sI", "d52-03", "d52-09");
        choose("c", "sI", "d52-05", "d52-08");
        assertThat(usable("SH52")).contains("d52-03", "d52-09").doesNotContain("d52-05", "d52-08");
    }

    @Test
    void aTrialPieceComesBackByItself() {
        bench.packIn("c", Phase.TRIAL, "sI=d52-10");
        assertThat(usable("SH52")).contains("d52-10");
    }

    @Test
    void aPieceFittedWithoutATrialIsInTheUnitUntilAnotherIs() {
        bench.packIn("f", Phase.FINAL, "ring=r22-04");
        assertThat(usable("SR22")).doesNotContain("r22-04");
        bench.packIn("f", Phase.FINAL, "ring=r22-03");
        assertThat(usable("SR22")).contains("r22-04").doesNotContain("r22-03");
    }

    @Test
    void aPieceThatLeftForGoodSaysWhy() {
        bench.keepInShop(new Entry.ShimRemoved("d80-14", "scrapped"));
        bench.keepInShop(new Entry.ShimRemoved("d80-99", "never was there"));
        assertThat(piece("d80-14").goneBecause()).isEqualTo("scrapped");
        assertThat(piece("d80-14").inDrawer()).isFalse();
        assertThat(bench.shop().pieces()).doesNotContainKey("d80-99");
    }

    @Test
    void aPieceFitForOnePlaceIsOfferedAgainToThatPlace() {
        choose("c", "sI", "d52-03", "d52-09");
        assertThat(bench.shop().usable("SH52", EVEN, List.of("d52-03", "d52-07", "d80-01")))
                .extracting(Piece::id)
                .contains("d52-03")
                .doesNotContain("d52-09", "d52-07", "d80-01");
    }

    @Test
    void aPieceIsFreeForTheJobThatHasItAndForNobodyElse() {
        choose("c", "sI", "d52-03");
        assertThat(piece("d52-03").freeFor("V-0093")).isTrue();
        assertThat(piece("d52-03").freeFor("V-0094")).isFalse();
        assertThat(piece("d52-04").freeFor("V-0094")).isTrue();
        bench.keepInShop(new Entry.ShimRemoved("d52-03", "lost"));
        assertThat(piece("d52-03").freeFor("V-0093")).isFalse();
    }

    @Test
    void gaugesAreFoundByTheirId() {
        assertThat(bench.shop().gauge("DI").orElseThrow().errorLimit()).isCloseTo(0.005 * MM, within(1e-12));
        assertThat(bench.shop().gauge("XX")).isEmpty();
    }

    @Test
    void aGaugeThatIsNoLongerUsedStillSaysWhatItCould() {
        Entry.GaugeAdded added = new Entry.GaugeAdded(
                "DI9", "dial", shimwright.mechanics.quantity.Kind.LENGTH, 1e-5, 5e-6, 3e-6, 0, 0.01, "");
        Shop shop = Shop.of(
                shimwright.rebuild.demo.EntryStream.of(added, new Entry.GaugeRetired("DI9", "dropped"))
                        .entries(),
                java.util.Map.of());
        assertThat(shop.gauges()).doesNotContainKey("DI9");
        assertThat(shop.gauge("DI9"))
                .hasValueSatisfying(gauge -> assertThat(gauge.step()).isEqualTo(1e-5));
    }
}
