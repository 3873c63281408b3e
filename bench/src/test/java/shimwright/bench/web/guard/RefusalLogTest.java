package shimwright.bench.web.guard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** What is refused is said on the console in one line, whatever was sent, and seldom. */
class RefusalLogTest {
    @Test
    void aThousandRefusalsAreOneLine() {
        PrintStream before = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
        try {
            RefusalLog watch = new RefusalLog();
            for (int i = 0; i < 1_000; i++) {
                watch.refused("127.0.0.1", "GET /a\r\n2026-01-01 WARN forged \u001b[2J" + "x".repeat(5_000), "why");
            }
        } finally {
            System.setErr(before);
        }
        String text = said.toString(StandardCharsets.UTF_8);
        assertThat(text.lines().filter(line -> line.contains("refused"))).hasSizeLessThanOrEqualTo(1);
        assertThat(text).doesNotContain("\u001b").hasSizeLessThan(1_000);
        assertThat(text.lines()).noneMatch(line -> line.startsWith("2026-01-01 WARN forged"));
    }
}
