package shimwright.bench.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.ClockedBench;
import shimwright.rebuild.unit.begin.Construction;
import shimwright.rebuild.unit.begin.FirstUnit;
import shimwright.rebuild.unit.edit.AddClearance;
import shimwright.rebuild.unit.edit.UnitEdit;
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

    private static final Map<String, String> SET_OF_THREE = seen(
            "model=set of three&layout=IN_LINE&housing-BELL=yes&housing-PLATE=yes&housing-TAIL=yes&gears=5&straight=4"
                    + "&countershafts=3&cones1=0&cones2=1&cones3=2&cones4=1&cones5=1&reverse=SYNCHRONIZED&shift=RAILS");

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

    /** A box with a set of three countershafts, which is in no file either, with {@code -Dshimwright.nothing=true}. */
    @Test
    @EnabledIfSystemProperty(named = "shimwright.nothing", matches = "true")
    void theBoxWithASetOfThree() {
        rebuilt(setOfThree(), "A", SET_OF_THREE, true, List.of(299, 807, 136), List.of(572, 580, 756, 4556));
    }

    /** Made as such boxes are, with what the book of it says: plays of the three countershafts and of the input shaft. */
    private static UnitType setOfThree() {
        Construction built = new Construction(
                Construction.Layout.IN_LINE,
                Set.of(Construction.Housing.PLATE, Construction.Housing.TAIL, Construction.Housing.BELL),
                List.of(0, 1, 2, 1, 1),
                4,
                Construction.Reverse.SYNCHRONIZED,
                Construction.Shift.RAILS,
                3);
        UnitType type = read(FirstUnit.text(built, "Old Works", "set of three").orElseThrow());
        List<UnitEdit> book = new ArrayList<>(List.of(
                // what such boxes usually have and this one does not
                new UnitEdit.RemoveItems(List.of("magnet", "breather")),
                new UnitEdit.Weigh(118),
                new UnitEdit.Fill("75W-80 GL-4", 2.6e-3, "lower edge of the filler"),
                new UnitEdit.AddFastener("bell housing", "M12x1.75x40", "8.8", 8, 80, "told", into(type, "bell")),
                new UnitEdit.AddFastener("tail housing", "M10x1.5x30", "8.8", 10, 45, "told", into(type, "tail")),
                play("end play of the input shaft", 44, into(type, "input_shaft"))));
        for (int k = 1; k <= 3; k++) {
            book.add(play("end play of countershaft " + k, 30 + k, into(type, "counter_" + k)));
        }
        for (UnitEdit fact : book) {
            type = read(UnitEdit.text(type, fact).orElseThrow());
        }
        return type;
    }

    private static String into(UnitType type, String item) {
        return type.steps().stream()
                .filter(step -> step.installs().contains(item))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private static UnitEdit play(String name, double bore, String after) {
        return new AddClearance(
                name,
                Clearance.Sense.END_PLAY,
                0.05e-3,
                0.25e-3,
                "told",
                "behind the bearing",
                new AddClearance.Shims(bore * 1e-3, (bore + 8) * 1e-3, 0.2e-3, 1.2e-3),
                true,
                "dial indicator 0.01 mm",
                after);
    }

    private static UnitType read(String text) {
        return UnitFiles.read("three.yaml", text).outcome().orElseThrow();
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
        rebuilt(shipped, variant, seen, second, counted, pairs);
    }

    private void rebuilt(
            UnitType shipped,
            String variant,
            Map<String, String> seen,
            boolean second,
            List<Integer> counted,
            List<Integer> pairs) {
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
            RebuiltComparison.Pairs found = beside.pairs();
            assertThat(List.of(
                            person.tally().sum(), List.of(found.kept(), found.needed(), found.bound(), found.pairs())))
                    .as(
                            "taps, characters, questions; pairs kept, of those needed; bound more, of all%n%s",
                            person.tally().words())
                    .isEqualTo(List.of(counted, pairs));
            // three shafts side by side are bound in the order in which they came out
            assertThat(found.alikeShare()).isGreaterThanOrEqualTo(seen.equals(SET_OF_THREE) ? 0.8 : 0.9);
        }
    }

    private static void same(RebuiltComparison beside) {
        assertThat(beside.itemShare()).as("%s", beside.missing()).isGreaterThanOrEqualTo(0.95);
        assertThat(beside.more()).isEmpty();
        RebuiltComparison.Pairs pairs = beside.pairs();
        assertThat(pairs.freed()).isEmpty();
        assertThat(pairs.keptShare()).isGreaterThanOrEqualTo(0.9);
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
