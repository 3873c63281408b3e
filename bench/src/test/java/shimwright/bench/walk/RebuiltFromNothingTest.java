package shimwright.bench.walk;

import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.ClockedBench;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.UnitType;

class RebuiltFromNothingTest {
    private static Map<String, String> seen(String... fields) {
        Map<String, String> all = new LinkedHashMap<>();
        for (int i = 0; i < fields.length; i += 2) {
            all.put(fields[i], fields[i + 1]);
        }
        return all;
    }

    private static final Map<String, String> TRANSAXLE = seen(
            "maker", "not known", "model", "transaxle", "layout", "ALONG", "housing-BELL", "yes", "housing-END_COVER",
            "yes", "gears", "5", "cones1", "1", "cones2", "1", "cones3", "1", "cones4", "1", "cones5", "1", "reverse",
            "SLIDING", "shift", "RAILS");
    private static final Map<String, String> IN_LINE = seen(
            "maker", "not known", "model", "in line", "layout", "IN_LINE", "housing-BELL", "yes", "housing-PLATE", "yes",
            "housing-TAIL", "yes", "gears", "5", "straight", "4", "countershafts", "1", "cones1", "1", "cones2", "1",
            "cones3", "1", "cones4", "1", "cones5", "1", "reverse", "SYNCHRONIZED", "shift", "SINGLE_RAIL");

    @Test
    void transaxle(@TempDir Path folder) {
        play("ambleholt-l5-74", "A", TRANSAXLE, folder);
    }

    @Test
    void inLine(@TempDir Path folder) {
        play("hollinbridge-hb5", "S", IN_LINE, folder);
    }

    private static void play(String name, String variant, Map<String, String> seen, Path folder) {
        UnitType shipped = UnitFiles.read(name, DoorWalkTest.file(name)).outcome().orElseThrow();
        BoxOnBench box = new BoxOnBench(shipped.resolve(variant));
        try (ClockedBench bench = new ClockedBench(folder, Instant.parse("2026-12-01T08:00:00Z"))) {
            Newcomer person = new Newcomer(bench, box, seen);
            person.readAsFound();
            person.strip();
            person.putIn();
            NewcomerFacts facts = new NewcomerFacts(person);
            facts.clearances();
            facts.loops();
            facts.torques();
            facts.onePiece();
            facts.names();
            facts.weightAndOil();
            System.out.println("unknown stamps " + facts.unknownStamps());
            System.out.println(person.tally().words()); ClockedBench.T.forEach((k, v) -> System.out.println(k + " " + ClockedBench.N.get(k) + " " + v / 1000000 + " ms")); ClockedBench.T.clear(); ClockedBench.N.clear();
            String text = bench.get("/api/units/" + person.type() + "?format=yaml").body();
            UnitType rebuilt = UnitFiles.read("rebuilt.yaml", text).outcome().orElseThrow();
            try {
                java.nio.file.Files.writeString(Path.of("/tmp/" + name + "-rebuilt.yaml"), text);
            } catch (java.io.IOException e) {
                throw new RuntimeException(e);
            }
            RebuiltComparison beside = new RebuiltComparison(box, rebuilt);
            System.out.println(beside.itemShare() + " missing " + beside.missing() + " more " + beside.more());
            RebuiltComparison.Pairs p = beside.pairs();
            System.out.println("pairs " + p.pairs() + " needed " + p.needed() + " kept " + p.kept() + " bound " + p.bound() + " alike " + p.alikeShare() + " freed " + p.freed().size() + " " + p.freed().stream().limit(60).toList());
            System.out.println("torque " + beside.withoutTorque());
            System.out.println("clear " + beside.clearancesApart());
        }
    }
}
