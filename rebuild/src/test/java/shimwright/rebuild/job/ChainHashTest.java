package shimwright.rebuild.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class ChainHashTest {
    /** NIST, FIPS 180-2 with change notice, appendix B.1: SHA-256 of "abc". */
    @Test
    void aPublishedHashIsReadAndWritten() throws NoSuchAlgorithmException {
        String published = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
        byte[] made = MessageDigest.getInstance("SHA-256").digest("abc".getBytes(StandardCharsets.US_ASCII));
        assertThat(ChainHash.of(published).hex())
                .isEqualTo(published)
                .isEqualTo(HexFormat.of().formatHex(made));
    }

    @Property(tries = 200)
    void whatIsWrittenIsReadAsItWas(@ForAll long a, @ForAll long b, @ForAll long c, @ForAll long d) {
        ChainHash digest = new ChainHash(a, b, c, d);
        assertThat(ChainHash.of(digest.hex())).isEqualTo(digest);
    }

    @Test
    void whatIsNoHashIsRefused() {
        assertThatThrownBy(() -> ChainHash.of("0".repeat(63))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ChainHash.of("x".repeat(64))).isInstanceOf(IllegalArgumentException.class);
    }
}
