package shimwright.bench.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.ClockedBench;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.UnitType;

/**
 * A shipped unit rebuilt from nothing: somebody who has never seen its file begins one on an empty data folder, strips the box in the
 * reverse of its true order, and says what is stamped, measured and printed, through the HTTP door alone. What is then in the file
 * stands beside the shipped one; what was done is counted as {@link Tally} says. With {@code -Dshimwright.nothing=true} a second box in line
 * is rebuilt with it to the hand-back.
 */
class RebuiltFromNothingTest {
    private static final Map<String, String> ALONG = seen(
            "model=transaxle&layout=ALONG&housing-BELL=yes&housing-END_COVER=yes&gears=5&cones1=1&cones2=1&cones3=1"
                    + "&cones4=1&cones5=1&reverse=SLIDING&shift=RAILS");
    private static final Map<String, String> IN_LINE = seen(
            "model=in line&layout=IN_LINE&housing-BELL=yes&housing-PLATE=yes&housing-TAIL=yes&gears=5&straight=4"
                    + "&countershafts=1&cones1=1&cones2=1&cones3=1&cones4=1&cones5=1&reverse=SYNCHRONIZED&shift=SINGLE_RAIL");

    /** The transaxle too, and a second box in line to its hand-back. */
    private static final boolean ALL = Boolean.getBoolean("shimwright.nothing");

    @TempDir
    private Path folder = Path.of("");

    private static Map<String, String> seen(String fields) {
        Map<String, String> seen = new LinkedHashMap<>(Map.of("maker", "not known"));
        for (String field : fields.split("&")) {
            seen.put(field.split("=")[0], field.split("=")[1]);
        }
        return seen;
    }

    /** A box with three shafts in line. */
    @Test
    void theBoxInLine() {
        rebuilt("hollinbridge-hb5", "S", IN_LINE, true, List.of(631, 2702, 178), List.of(1057, 1083, 203, 2804));
    }

    /** A transaxle of twice as many parts, with {@code -Dshimwright.nothing=true}. */
    @Test
    @EnabledIfSystemProperty(named = "shimwright.nothing", matches = "true")
    void theTransaxle() {
        rebuilt("ambleholt-l5-74", "A", ALONG, false, List.of(1044, 4957, 283), List.of(3656, 3819, 592, 9502));
    }

    private void rebuilt(
            String name,
            String variant,
            Map<String, String> seen,
            boolean second,
            List<Integer> counted,
            List<Integer> pairs) {
        UnitType shipped =
                UnitFiles.read(name, DoorWalkTest.file(name)).outcome().orElseThrow();
        BoxOnBench box = new BoxOnBench(shipped.resolve(variant));
        try (ClockedBench bench = new ClockedBench(folder, Instant.parse("2026-12-01T08:00:00Z"))) {
            Newcomer person = new Newcomer(bench, box, seen);
            person.readAsFound();
            person.strip();
            person.putIn();
            NewcomerFacts facts = new NewcomerFacts(person);
            facts.clearances();
            facts.loops(second);
            facts.torques();
            facts.onePiece();
            facts.names();
            facts.weightAndOil();
            assertThat(facts.unknownStamps()).isEmpty();
            String text =
                    bench.get("/api/units/" + person.type() + "?format=yaml").body();
            UnitType written = UnitFiles.read("written.yaml", text).outcome().orElseThrow();
            RebuiltComparison beside = new RebuiltComparison(box, written);
            same(beside);
            if (second && ALL) {
                secondBox(bench, written);
            }
            assertThat(person.tally().sum())
                    .as("taps, characters, questions%n%s", person.tally().words())
                    .containsExactlyElementsOf(counted);
            RebuiltComparison.Pairs found = beside.pairs();
            assertThat(List.of(found.kept(), found.needed(), found.bound(), found.pairs()))
                    .as("pairs kept, of those needed; bound more, of all")
                    .isEqualTo(pairs);
        }
    }

    private static void same(RebuiltComparison beside) {
        assertThat(beside.itemShare()).as("%s", beside.missing()).isGreaterThanOrEqualTo(0.95);
        assertThat(beside.more()).isEmpty();
        RebuiltComparison.Pairs pairs = beside.pairs();
        assertThat(pairs.freed()).isEmpty();
        assertThat(pairs.keptShare()).isGreaterThanOrEqualTo(0.9);
        assertThat(pairs.alikeShare()).isGreaterThanOrEqualTo(0.9);
        assertThat(beside.withoutTorque()).isEmpty();
        assertThat(beside.clearancesApart()).isEmpty();
    }

    /** Every clearance is set by shims that the program chose, and its true size lies within the limits of the book. */
    private static void secondBox(ClockedBench bench, UnitType written) {
        DoorWalk walk = new DoorWalk(bench, written.resolve("A"), 74, false);
        walk.takeIn();
        walk.build();
        walk.handBack();
        for (Clearance clearance : written.clearances()) {
            assertThat(walk.truths().get(clearance.id()))
                    .as(clearance.name())
                    .isBetween(clearance.lower(), clearance.upper());
        }
    }
}
