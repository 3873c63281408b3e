package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.command.Options;
import shimwright.bench.store.sign.OwnerFolder;
import shimwright.bench.web.pair.Role;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Heads;

/** A log that was put back from before a device was let in is named, also where the program never stopped by itself. */
class PairedHeadTest {
    private static final List<String> LOG = List.of("shimwright.db", "head", "sums", "checked");

    private static Outcome<Serving.Running> open(Path data, OwnerFolder owner) {
        return Serving.open(
                data,
                new Options(Map.of("port", "0", "host", "127.0.0.2")),
                false,
                Clock.systemUTC(),
                Optional.of(owner));
    }

    @Test
    void anOlderLogThanTheOneAtThePairingIsNamed(@TempDir Path work) throws IOException {
        Path data = DemoBench.copy();
        OwnerFolder owner = new OwnerFolder(work.resolve("owner"), Clock.systemUTC());
        open(data, owner).orElseThrow().close();
        Path old = Files.createDirectories(work.resolve("old"));
        for (String file : LOG) {
            Files.copy(data.resolve(file), old.resolve(file));
        }
        Path heads = owner.root().resolve("heads");
        String atTheCut;
        try (Serving.Running running = open(data, owner).orElseThrow()) {
            Draft note = new Draft(
                    "job-v-0093",
                    "before-pairing",
                    Clock.systemUTC().instant(),
                    "rebuilder",
                    new Entry.NoteMade("job", "before"));
            running.log().append(List.of(note), Heads.NOTHING).orElseThrow();
            String code = running.entrance()
                    .devices()
                    .code(Role.BENCH, "")
                    .orElseThrow()
                    .text();
            running.entrance().devices().pair(code, "tablet").orElseThrow();
            atTheCut = Files.readString(heads);
        }
        // the power failed: nothing was remembered at a stop
        Files.writeString(heads, atTheCut);
        for (String file : LOG) {
            Files.copy(old.resolve(file), data.resolve(file), StandardCopyOption.REPLACE_EXISTING);
        }
        assertThat(open(data, owner).refusals())
                .extracting(refusal -> refusal.sentence())
                .singleElement()
                .asString()
                .contains("the job log lost its end")
                .contains("at the pairing of a device");
    }
}
