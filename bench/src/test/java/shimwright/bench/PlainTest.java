package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** {@code --plain}: it works, and the program says what a listener learns. */
class PlainTest {
    private static final String OTHER = "127.0.0.2";

    @Test
    void withoutEncryptionTheProgramSaysWhatThatMeans() {
        try (DemoBench plain = DemoBench.with("host", OTHER, "plain", "true")) {
            int at = plain.running().server().port();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            Network.say(plain.running().entrance(), at, new PrintStream(out, true, StandardCharsets.UTF_8));
            assertThat(out.toString(StandardCharsets.UTF_8))
                    .contains("NOT ENCRYPTED", "http://" + OTHER + ":" + at + "/");
            assertThat(plain.running().entrance().certificate()).isNull();
        }
    }
}
