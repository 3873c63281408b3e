package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.web.pair.DeviceFile;
import shimwright.bench.web.pair.Devices;
import shimwright.bench.web.pair.Role;

/** How long a code and a device count. */
class DevicesTest {
    @TempDir
    @SuppressWarnings("NullAway") // laid in by JUnit
    Path folder;

    @Test
    void aCodeIsOverAfterTenMinutesAndADeviceAfterHalfAYear() {
        DeviceFile file = new DeviceFile(folder.resolve("devices"));
        Instant start = Instant.parse("2026-01-01T08:00:00Z");
        Devices then = Devices.in(file, Clock.fixed(start, ZoneOffset.UTC));
        String first = then.code(Role.BENCH, "").orElseThrow().text();
        Devices late = Devices.in(file, Clock.fixed(start.plus(Duration.ofMinutes(10)), ZoneOffset.UTC));
        assertThat(late.pair(first, "x").isOk()).isFalse();
        Devices justIn = Devices.in(file, Clock.fixed(start.plus(Duration.ofSeconds(599)), ZoneOffset.UTC));
        String key = justIn.pair(first, "x").orElseThrow().key();
        assertThat(justIn.asker(key)).isPresent();
        assertThat(Devices.in(file, Clock.fixed(start.plus(Duration.ofDays(179)), ZoneOffset.UTC))
                        .asker(key))
                .isPresent();
        assertThat(Devices.in(file, Clock.fixed(start.plus(Duration.ofDays(181)), ZoneOffset.UTC))
                        .asker(key))
                .isEmpty();
    }
}
