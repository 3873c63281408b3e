package shimwright.bench.web.pair;

import java.io.IOException;
import java.io.StringReader;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.MessageDigest;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Date;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.bouncycastle.asn1.pkcs.PrivateKeyInfo;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.openssl.PEMParser;
import org.bouncycastle.openssl.jcajce.JcaPEMKeyConverter;
import org.bouncycastle.openssl.jcajce.JcaPEMWriter;
import org.bouncycastle.openssl.jcajce.JcaPKCS8Generator;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/**
 * The shop's own certificate: a key on the curve P-256, signed by itself (RFC 5280), for the names and addresses at which
 * devices find the shop. It is made at the first start that needs it, and made anew when it runs out or a name is missing.
 */
public final class ShopCertificate {
    /** The longest that tablets accept; from memory. */
    private static final Duration LASTS = Duration.ofDays(820);

    private static final Duration RENEWED_BEFORE = Duration.ofDays(30);
    private static final Duration CLOCKS_DIFFER = Duration.ofDays(1);
    private static final int SERIAL_BITS = 120;

    private final PrivateKey key;
    private final X509Certificate certificate;

    private ShopCertificate(PrivateKey key, X509Certificate certificate) {
        this.key = key;
        this.certificate = certificate;
    }

    /**
     * The certificate kept in a folder, or a new one.
     *
     * @param folder readable by its owner alone
     * @param names by which the shop is found, addresses among them
     * @param clock says whether it still counts
     */
    public static Outcome<ShopCertificate> in(Path folder, Collection<String> names, Clock clock) {
        Path file = folder.resolve("certificate.pem");
        try {
            OwnerOnlyFiles.folder(folder);
            if (Files.exists(file)) {
                ShopCertificate kept = read(file);
                Instant ends = kept.certificate.getNotAfter().toInstant();
                boolean lasts = clock.instant().plus(RENEWED_BEFORE).isBefore(ends);
                if (lasts && kept.names().containsAll(lower(names))) {
                    return Outcome.ok(kept);
                }
            }
            ShopCertificate made = make(lower(names), clock.instant());
            made.write(file);
            return Outcome.ok(made);
        } catch (IOException | GeneralSecurityException | OperatorCreationException | IllegalArgumentException broken) {
            return Outcome.refused(Refusal.at(
                    file.toString(),
                    "the shop's certificate cannot be read or written",
                    "Remove the file; a new one is made"));
        }
    }

    private static Set<String> lower(Collection<String> names) {
        Set<String> lower = new TreeSet<>();
        names.forEach(name -> lower.add(name.toLowerCase(Locale.ROOT).replaceAll("[\\[\\]]", "")));
        return lower;
    }

    private static ShopCertificate make(Set<String> names, Instant now)
            throws GeneralSecurityException, OperatorCreationException, IOException {
        KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
        generator.initialize(new ECGenParameterSpec("secp256r1"));
        KeyPair pair = generator.generateKeyPair();
        X500Name self = new X500Name("CN=Shimwright shop");
        List<GeneralName> alternatives = new ArrayList<>();
        for (String name : names) {
            boolean address = name.contains(":") || name.matches("[0-9.]+");
            alternatives.add(new GeneralName(address ? GeneralName.iPAddress : GeneralName.dNSName, name));
        }
        JcaX509v3CertificateBuilder builder = new JcaX509v3CertificateBuilder(
                self,
                new BigInteger(SERIAL_BITS, new SecureRandom()).add(BigInteger.ONE),
                Date.from(now.minus(CLOCKS_DIFFER)),
                Date.from(now.plus(LASTS)),
                self,
                pair.getPublic());
        builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
        builder.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature));
        builder.addExtension(Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
        builder.addExtension(
                Extension.subjectAlternativeName, false, new GeneralNames(alternatives.toArray(GeneralName[]::new)));
        X509CertificateHolder holder =
                builder.build(new JcaContentSignerBuilder("SHA256withECDSA").build(pair.getPrivate()));
        return new ShopCertificate(pair.getPrivate(), new JcaX509CertificateConverter().getCertificate(holder));
    }

    private static ShopCertificate read(Path file) throws IOException, GeneralSecurityException {
        try (PEMParser pem = new PEMParser(new StringReader(Files.readString(file)))) {
            Object first = pem.readObject();
            Object second = pem.readObject();
            if (first instanceof PrivateKeyInfo key && second instanceof X509CertificateHolder holder) {
                return new ShopCertificate(
                        new JcaPEMKeyConverter().getPrivateKey(key),
                        new JcaX509CertificateConverter().getCertificate(holder));
            }
            throw new IOException("no key and certificate in " + file);
        }
    }

    private void write(Path file) throws IOException {
        Path beside = file.resolveSibling(file.getFileName() + ".new");
        Files.deleteIfExists(beside);
        OwnerOnlyFiles.file(beside);
        try (JcaPEMWriter pem = new JcaPEMWriter(Files.newBufferedWriter(beside))) {
            pem.writeObject(new JcaPKCS8Generator(key, null)); // PKCS 8, not under a password
            pem.writeObject(certificate);
        }
        Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    private Set<String> names() throws GeneralSecurityException {
        Set<String> names = new TreeSet<>();
        Collection<List<?>> alternatives = certificate.getSubjectAlternativeNames();
        if (alternatives != null) {
            alternatives.forEach(one -> names.add(String.valueOf(one.get(1))));
        }
        return names;
    }

    /** For the server's TLS: key and certificate under a password of no meaning, in memory only. */
    public KeyStore keys(char[] password) {
        try {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(null, password);
            store.setKeyEntry("shop", key, password, new Certificate[] {certificate});
            return store;
        } catch (IOException | GeneralSecurityException broken) {
            throw new IllegalStateException(broken);
        }
    }

    /** SHA-256 of the certificate as browsers show it: pairs of hex digits, colons between. */
    public String fingerprint() {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(certificate.getEncoded());
            return HexFormat.ofDelimiter(":").withUpperCase().formatHex(hash);
        } catch (GeneralSecurityException broken) {
            throw new IllegalStateException(broken);
        }
    }
}
