package shimwright.bench.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import shimwright.bench.ClockedBench;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.UnitType;
import tools.jackson.databind.JsonNode;

/**
 * Any unit file with hidden true sizes, from an empty folder to the printed record, through the HTTP door alone. More of them
 * with {@code -Dshimwright.walks=20}.
 */
class DoorWalkTest {
    private static final Instant BEGIN = Instant.parse("2026-12-01T08:00:00Z");
    private static final String SHIPPED = "ambleholt-l5-74";
    private static final String IN_LINE = "hollinbridge-hb5";

    static Stream<Arguments> walks() {
        long walks = Long.getLong("shimwright.walks", 1);
        return LongStream.rangeClosed(1, walks)
                .boxed()
                .flatMap(seed -> Stream.of(
                        Arguments.of(SHIPPED, "A", 10 * seed, false),
                        Arguments.of(SHIPPED, "B", 10 * seed + 1, true),
                        Arguments.of(IN_LINE, "S", 10 * seed + 2, false),
                        Arguments.of(IN_LINE, "L", 10 * seed + 3, true)));
    }

    static byte[] file(String unit) {
        try (var in = UnitFiles.class.getResourceAsStream("/units/" + unit + ".yaml")) {
            return java.util.Objects.requireNonNull(in).readAllBytes();
        } catch (IOException broken) {
            throw new java.io.UncheckedIOException(broken);
        }
    }

    static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @ParameterizedTest(name = "{0} {1}, {2}")
    @MethodSource("walks")
    void fromAnEmptyFolderToThePdfEveryClearanceIsRight(
            String file, String variant, long seed, boolean early, @TempDir Path folder) throws IOException {
        UnitType type = UnitFiles.read(file, file(file)).outcome().orElseThrow();
        if (!file.equals(SHIPPED)) {
            Files.createDirectories(folder.resolve("units"));
            Files.write(folder.resolve("units").resolve(file + ".yaml"), file(file));
        }
        try (ClockedBench bench = new ClockedBench(folder, BEGIN)) {
            DoorWalk walk = new DoorWalk(bench, type.resolve(variant), seed, early);
            walk.takeIn();
            walk.build();
            walk.handBack();
            assertThat(walk.slips())
                    .contains(
                            "awaited",
                            "misnamed",
                            "wrong ring",
                            "magnitude",
                            "undone",
                            "struck after it was accepted",
                            "taken back after it was accepted");
            for (Clearance c : type.resolve(variant).type().clearances()) {
                List<Double> limits = walk.limits(c);
                assertThat(walk.truths().get(c.id())).as(c.id()).isBetween(limits.get(0), limits.get(1));
            }
            recorded(bench, walk.job());
        }
    }

    /** Nothing was overruled, and each entry has its line. */
    private static void recorded(ClockedBench bench, String job) throws IOException {
        JsonNode entries = new HttpDoor(bench).get("/jobs/" + job + "/entries").get("entries");
        List<String> types = new ArrayList<>();
        entries.valueStream().forEach(e -> types.add(e.get("type").asString()));
        assertThat(types).doesNotContain("HoldOverruled", "TimeOverruled", "StepJumped", "StepLeftOut");
        assertThat(types).contains("EntryStruck", "StepUndone", "Sent", "CameBack", "HandedBack", "FollowedUp");
        String text = text(bench.bytes("/job/" + job + "/record.pdf"));
        assertThat(text).contains("K-0001", "12 months", "the point slipped", "tapped on the wrong line");
    }
}
