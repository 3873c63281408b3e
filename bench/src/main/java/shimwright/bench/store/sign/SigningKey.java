package shimwright.bench.store.sign;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.bench.store.disk.Disk;

/** The shop's Ed25519 key (RFC 8032) and a secret for checksums, in one file that only its owner may read. */
public final class SigningKey {
    private static final HexFormat HEX = HexFormat.of();
    private static final int HMAC_BLOCK = 64;
    private static final String ED25519 = "Ed25519";
    private static final Pattern FILE = Pattern.compile(
            "shimwright key 1\npublic ([0-9a-f]{88})\nprivate ([0-9a-f]{96,})\nsecret ([0-9a-f]{64})\n");

    private final String publicKey;
    private final String privateKey;
    private final byte[] secret;

    private SigningKey(String publicKey, String privateKey, byte[] secret) {
        this.publicKey = publicKey;
        this.privateKey = privateKey;
        this.secret = secret;
    }

    /** The key of a file, which is made where there is none. */
    static SigningKey of(Path file) throws IOException {
        if (!Files.exists(file)) {
            Disk.makePrivateFolder(Disk.parent(file));
            Disk.writePrivate(file, made().getBytes(StandardCharsets.US_ASCII));
        }
        Matcher text = FILE.matcher(Files.readString(file, StandardCharsets.ISO_8859_1));
        if (!text.matches()) {
            throw new IOException(file + " does not hold the key that this program put there");
        }
        return new SigningKey(text.group(1), text.group(2), HEX.parseHex(text.group(3)));
    }

    private static String made() {
        try {
            KeyPair pair = KeyPairGenerator.getInstance(ED25519).generateKeyPair();
            byte[] secret = new byte[32];
            new SecureRandom().nextBytes(secret);
            return "shimwright key 1\npublic " + HEX.formatHex(pair.getPublic().getEncoded()) + "\nprivate "
                    + HEX.formatHex(pair.getPrivate().getEncoded()) + "\nsecret " + HEX.formatHex(secret) + "\n";
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("every Java since 15 has Ed25519", impossible);
        }
    }

    /** The public key, X.509 as lower-case hex. */
    public String publicKey() {
        return publicKey;
    }

    /** The signature of a text, lower-case hex. */
    String sign(String text) {
        try {
            PrivateKey key =
                    KeyFactory.getInstance(ED25519).generatePrivate(new PKCS8EncodedKeySpec(HEX.parseHex(privateKey)));
            Signature signature = Signature.getInstance(ED25519);
            signature.initSign(key);
            signature.update(text.getBytes(StandardCharsets.UTF_8));
            return HEX.formatHex(signature.sign());
        } catch (GeneralSecurityException broken) {
            throw new IllegalStateException("the shop's key cannot sign", broken);
        }
    }

    /** Whether a signature is one of this message by the holder of that public key. */
    public static boolean fits(String publicKey, byte[] message, String signature) {
        try {
            PublicKey key =
                    KeyFactory.getInstance(ED25519).generatePublic(new X509EncodedKeySpec(HEX.parseHex(publicKey)));
            Signature check = Signature.getInstance(ED25519);
            check.initVerify(key);
            check.update(message);
            return check.verify(HEX.parseHex(signature));
        } catch (GeneralSecurityException | IllegalArgumentException notOne) {
            return false;
        }
    }

    /** A checksum that only the holder of the key can make: HMAC-SHA256, lower-case hex. */
    public String mac(String text) {
        return hmac(secret, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * HMAC-SHA256 (RFC 2104) of the JDK's SHA-256: H(K ^ opad, H(K ^ ipad, text)). Asked for by its name, Java reads its policy of
     * ciphers first, a tenth of a start.
     *
     * @param key of at most 64 bytes
     * @return lower-case hex
     */
    static String hmac(byte[] key, byte[] text) {
        byte[] inner = Arrays.copyOf(key, HMAC_BLOCK);
        byte[] outer = Arrays.copyOf(key, HMAC_BLOCK);
        for (int at = 0; at < HMAC_BLOCK; at++) {
            inner[at] ^= 0x36;
            outer[at] ^= 0x5c;
        }
        try {
            MessageDigest hash = MessageDigest.getInstance("SHA-256");
            hash.update(inner);
            byte[] first = hash.digest(text);
            hash.update(outer);
            return HEX.formatHex(hash.digest(first));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /** A short name of a public key, to be compared by eye: the first 32 hex digits of its SHA-256, in groups of four. */
    public static String fingerprint(String publicKey) {
        return Disk.hash(publicKey.getBytes(StandardCharsets.US_ASCII))
                .substring(0, 32)
                .replaceAll("(.{4})(?=.)", "$1 ");
    }
}
