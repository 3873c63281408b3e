package shimwright.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.registry.Registry;

/** The harness times a process that ends well, says its ratio, and takes no failed one for a time. */
class ColdStartTest {
    private static String said(String... args) throws IOException, InterruptedException {
        PrintStream before = System.out;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
        try {
            ColdStart.main(args);
        } finally {
            System.setOut(before);
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void everyWorksheetIsNamed() throws IOException, InterruptedException {
        assertThat(said("names").strip().split(",")).hasSize(Registry.all().size());
    }

    @Test
    void aProcessIsTimedBesideABareOneAndAFailedOneIsSaid() throws IOException, InterruptedException {
        assertThat(said("/bin/true")).matches("(?s)java -version \\d+ ms, /bin/true \\d+ ms, ratio [0-9.]+\\s*");
        assertThatThrownBy(() -> ColdStart.main(new String[] {"/bin/false"}))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("ended with 1");
    }
}
