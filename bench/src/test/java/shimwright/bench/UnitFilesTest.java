package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.unit.file.UnitFiles;

/** How a unit file comes on to the shelf without anybody looking into the data folder, in a shop that has only the example. */
class UnitFilesTest {
    private static final String EXAMPLE = "hollinbridge-hb5";

    private static final Path FOLDER = folder();

    private static Path folder() {
        try {
            return Files.createTempDirectory("shimwright-units-");
        } catch (IOException broken) {
            throw new java.io.UncheckedIOException(broken);
        }
    }

    private static DemoBench bench;

    @BeforeAll
    static void start() {
        bench = DemoBench.at(FOLDER);
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    private static List<String> kept() throws IOException {
        try (Stream<Path> files = Files.walk(FOLDER.resolve("documents"))) {
            return files.filter(Files::isRegularFile)
                    .map(file -> {
                        try {
                            return Files.readString(file);
                        } catch (IOException broken) {
                            throw new java.io.UncheckedIOException(broken);
                        }
                    })
                    .toList();
        }
    }

    @Test
    void aFileIsPastedMendedReplacedAndHadAgain() throws IOException {
        assertThat(bench.page("/new").select("main a[href='/units']")).hasSize(1);
        int before = bench.page("/units").select("main a[href^=/new/]").size();
        String starter = bench.get("/units/shipped/starter.yaml").body();
        assertThat(starter).isEqualTo(UnitFiles.starter());
        String broken = starter.replace("shafts:", "shfats:");
        var refused = bench.post("/units", "text", broken);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("the pasted text:", "shfats");
        assertThat(bench.post("/units", "text", "").statusCode()).isEqualTo(422);
        assertThat(bench.page("/units").select("main a[href^=/new/]")).hasSize(before);
        assertThat(bench.post("/units", "text", starter).statusCode()).isEqualTo(200);
        assertThat(bench.page("/units").select("main a[href^=/new/]")).hasSize(before + 1);
        String second = starter.replaceFirst("\n", "\n# another evening\n");
        assertThat(bench.post("/units", "text", second).statusCode()).isEqualTo(200);
        assertThat(bench.page("/units").select("main a[href^=/new/]")).hasSize(before + 1);
        String file = bench.page("/units").select("main a[href^=/units/shelf/]").stream()
                .map(a -> a.attr("href"))
                .filter(href -> !href.contains("ambleholt") && !href.contains(EXAMPLE))
                .findFirst()
                .orElseThrow();
        assertThat(bench.get(file).body()).isEqualTo(second);
        // the one before is kept under its hash too
        assertThat(kept()).contains(starter, second);
    }

    @Test
    void anExampleIsPutOnTheShelfWithOneTapAndAJobIsOpenedOnIt() {
        assertThat(bench.page("/units").text()).contains("Hollinbridge");
        assertThat(bench.get("/new/" + EXAMPLE).statusCode()).isEqualTo(404);
        assertThat(bench.post("/units/shipped", "name", EXAMPLE + ".yaml").statusCode())
                .isEqualTo(200);
        assertThat(FOLDER.resolve("units").resolve(EXAMPLE + ".yaml")).exists();
        assertThat(bench.get("/new/" + EXAMPLE).statusCode()).isEqualTo(200);
        assertThat(bench.page("/new").select("a.job")).hasSizeGreaterThanOrEqualTo(2);
        assertThat(bench.post("/units/shipped", "name", "../shimwright.db").statusCode())
                .isEqualTo(404);
    }
}
