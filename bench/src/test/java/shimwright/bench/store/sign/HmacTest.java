package shimwright.bench.store.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Arrays;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;

/** Values published in RFC 4231 (2005), section 4, and the JDK's own HMAC. */
class HmacTest {
    @Example
    void publishedValues() {
        byte[] key = new byte[20];
        Arrays.fill(key, (byte) 0x0b);
        assertThat(SigningKey.hmac(key, ascii("Hi There")))
                .isEqualTo("b0344c61d8db38535ca8afceaf0bf12b881dc200c9833da726e9376c2e32cff7");
        assertThat(SigningKey.hmac(ascii("Jefe"), ascii("what do ya want for nothing?")))
                .isEqualTo("5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843");
    }

    @Property(tries = 100)
    void asTheJdk(@ForAll @Size(min = 1, max = 64) byte[] key, @ForAll byte[] text) throws GeneralSecurityException {
        Mac mac = Mac.getInstance("HmacSHA256");
        mac.init(new SecretKeySpec(key, "HmacSHA256"));
        assertThat(SigningKey.hmac(key, text)).isEqualTo(HexFormat.of().formatHex(mac.doFinal(text)));
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
