package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.command.Options;

@SuppressWarnings("NullAway.Init") // the folder is set by JUnit
class MainTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    Path folder;

    private int run(String... args) {
        return Main.run(
                List.of(args),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    private String said() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String refused() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void helpSaysWhatThereIsAndAnUnknownCommandSaysSo() {
        assertThat(run("help")).isZero();
        assertThat(said()).contains("shimwright demo").contains("unit check FILE");
        assertThat(run()).isZero();
        assertThat(run("fly")).isEqualTo(2);
        assertThat(refused()).contains("There is no command \"fly\"");
    }

    @Test
    void aUnitFileOfGarbageIsAnsweredWithSentencesAndPlaces() throws IOException {
        byte[] noise = new byte[5000];
        new Random(7).nextBytes(noise);
        Path file = Files.write(folder.resolve("noise.yaml"), noise);
        assertThat(run("unit", "check", file.toString())).isEqualTo(2);
        assertThat(refused()).contains("noise.yaml").doesNotContain("Exception");
        Path typo = Files.writeString(folder.resolve("typo.yaml"), "format: shimwright-unit 1\nmakr: x\n");
        assertThat(run("unit", "check", typo.toString())).isEqualTo(2);
        assertThat(refused()).contains("typo.yaml:2:1").contains("maker");
        assertThat(run("unit", "check", folder.resolve("none.yaml").toString())).isEqualTo(2);
        assertThat(refused()).contains("cannot be read");
        assertThat(run("unit", "walk")).isEqualTo(2);
    }

    @Test
    void theShippedUnitAndTheStarterAreSound() throws IOException {
        String shipped =
                System.getProperty("shimwright.root", "..") + "/rebuild/src/main/resources/units/ambleholt-l5-74.yaml";
        assertThat(run("unit", "check", shipped)).as(refused()).isZero();
        assertThat(said()).contains("sound").contains("variants A, B");
        out.reset();
        assertThat(run("unit", "new")).isZero();
        Path starter = Files.writeString(folder.resolve("new.yaml"), said());
        assertThat(run("unit", "check", starter.toString())).as(refused()).isZero();
        out.reset();
        assertThat(run("unit", "schema")).isZero();
        assertThat(said()).contains("$schema");
    }

    @Test
    void theDemoShopIsPlayedOnceAndCopiedAfterwards() throws IOException {
        Path played = folder.resolve("played");
        assertThat(run("--warm", played.toString())).as(refused()).isZero();
        Path demo = folder.resolve("demo");
        System.setProperty("shimwright.played", played.toString());
        try {
            PlayedDemo.layInto(demo);
            Files.writeString(folder.resolve("mine"), "mine");
            PlayedDemo.layInto(folder);
        } finally {
            System.clearProperty("shimwright.played");
        }
        assertThat(demo.resolve("shimwright.db")).hasSameBinaryContentAs(played.resolve("shimwright.db"));
        assertThat(folder.resolve("shimwright.db")).doesNotExist();
    }

    @Test
    void servingSaysWhatIsMissing() {
        assertThat(run("serve")).isEqualTo(2);
        assertThat(refused()).contains("--data DIR");
        assertThat(run("serve", "--data", folder.toString(), "--port", "ninety"))
                .isEqualTo(2);
        assertThat(refused()).contains("\"ninety\" is not a number");
        assertThat(run("serve", "--data", folder.toString(), "--port", "99999")).isEqualTo(2);
        assertThat(run("serve", "--dta", folder.toString())).isEqualTo(2);
        assertThat(refused()).contains("\"--dta\" is not known here");
        assertThat(run("serve", "--data")).isEqualTo(2);
        assertThat(refused()).contains("needs a value");
    }

    @Test
    void aPortThatIsTakenAndAFolderInUseAreSaid() {
        try (DemoBench bench = DemoBench.fresh()) {
            String port = bench.url("").replaceAll(".*:", "");
            assertThat(run("serve", "--data", folder.toString(), "--port", port))
                    .isEqualTo(2);
            assertThat(refused()).contains("another program listens there");
            assertThat(run("serve", "--data", bench.folder().toString(), "--port", "0"))
                    .isEqualTo(2);
            assertThat(refused()).contains("another Shimwright is working in this folder");
        }
    }

    @Test
    void aBackupIsMadeOfAnOpenShopAndLaidBack() {
        try (DemoBench bench = DemoBench.fresh()) {
            String copy = folder.resolve("copy").toString();
            assertThat(run("backup", "--data", bench.folder().toString(), "--to", copy))
                    .as(refused())
                    .isZero();
            assertThat(run(
                            "restore",
                            "--from",
                            copy,
                            "--to",
                            folder.resolve("back").toString()))
                    .as(refused())
                    .isZero();
            assertThat(said()).contains("restored: ").contains("entries");
            assertThat(run("restore", "--from", folder.resolve("none").toString(), "--to", copy))
                    .isEqualTo(2);
        }
        assertThat(run("backup", "--to", "x")).isEqualTo(2);
        assertThat(refused()).contains("--data DIR");
    }

    @Test
    void whatIsWholeIsSaidToBeAndWhatIsNotIsNamed() throws IOException {
        String owner = folder.resolve("owner").toString();
        String data = folder.resolve("data").toString();
        try (DemoBench bench = DemoBench.fresh()) {
            String copy = folder.resolve("copy").toString();
            assertThat(run("backup", "--data", bench.folder().toString(), "--to", copy, "--owner", owner))
                    .as(refused())
                    .isZero();
            assertThat(run("restore", "--from", copy, "--to", data)).isZero();
            assertThat(run("verify", "--backup", copy, "--data", data, "--owner", owner))
                    .as(refused())
                    .isZero();
            assertThat(said()).contains("are as they were when this backup was made");
        }
        assertThat(run("verify", "--data", data, "--owner", owner)).isZero();
        assertThat(said()).contains("Nothing was found that is not as it was kept.");
        assertThat(run("verify", "--data", data, "--count", "3", "--hash", "000000000000", "--owner", owner))
                .isEqualTo(1);
        assertThat(refused()).contains("is not what it was when this head was printed");
        assertThat(run("verify", "--data", data, "--store", "postgresql://127.0.0.1:1/x"))
                .isEqualTo(2);
        assertThat(refused()).contains("two shops are named");
        assertThat(run("verify", "--store", "postgresql://127.0.0.1:1/x", "--owner", owner))
                .isEqualTo(1);
        assertThat(refused()).contains("the database does not answer");
        assertThat(run("verify")).isEqualTo(2);
        assertThat(refused()).contains("nothing to check is named");
    }

    @Test
    void aBrokenUnitFileIsSaidAndStandsInNobodysWay() throws IOException {
        Files.createDirectories(folder.resolve("units"));
        Files.writeString(folder.resolve("units/mine.yaml"), "maker: x\n");
        try (Serving.Running running = Serving.open(folder, new Options(Map.of("port", "0")), false, Clock.systemUTC())
                .orElseThrow()) {
            assertThat(running.units().files().sound()).hasSize(1);
            assertThat(running.units().faults())
                    .isNotEmpty()
                    .allSatisfy(fault -> assertThat(fault.place()).contains("mine.yaml"));
        }
    }
}
