package shimwright.bench.store.sign;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.bench.store.disk.Disk;
import shimwright.rebuild.job.Head;

/**
 * One signed line: that the holder of a key saw this head, and with it this document.
 *
 * @param what a hand-back, a record, a backup or a folder
 * @param shop the hash of the log's first entry
 * @param stream the job's stream; empty for the whole log
 * @param head of that stream, or of the whole log
 * @param document SHA-256 of the document; zeros where there is none
 * @param key public key, hex
 * @param signature over the text of all this, hex
 */
public record SignedHead(
        What what, String shop, String stream, Head head, String document, String key, String signature) {
    /** What is signed. */
    public enum What {
        HANDBACK,
        RECORD,
        BACKUP,
        FOLDER
    }

    private static final Pattern LINE = Pattern.compile("shimwright 1 (HANDBACK|RECORD|BACKUP|FOLDER)"
            + " shop=([0-9a-f]{64}) stream=(\\S*) count=([0-9]{1,18}) hash=([0-9a-f]{64}) document=([0-9a-f]{64})"
            + " key=([0-9a-f]{88}) signature=([0-9a-f]{128})");
    private static final String NO_DOCUMENT = Head.EMPTY.hash();
    private static final String COMMENT = "\n%";
    private static final Pattern PDF_END = Pattern.compile("startxref\\s+([0-9]{1,12})\\s+%%EOF\\s*\\z");
    private static final int LONGEST_END = 60;
    private static final int LONGEST_LINE = 2_000;

    /** Signs. */
    static SignedHead by(SigningKey key, What what, String shop, String stream, Head head, Optional<String> document) {
        SignedHead unsigned =
                new SignedHead(what, shop, stream, head, document.orElse(NO_DOCUMENT), key.publicKey(), "");
        return new SignedHead(what, shop, stream, head, unsigned.document, unsigned.key, key.sign(unsigned.text()));
    }

    private String text() {
        return "shimwright 1 %s shop=%s stream=%s count=%d hash=%s document=%s key=%s"
                .formatted(
                        what,
                        shop,
                        URLEncoder.encode(stream, StandardCharsets.UTF_8),
                        head.count(),
                        head.hash(),
                        document,
                        key);
    }

    /** The line, without an end of line. */
    public String line() {
        return text() + " signature=" + signature;
    }

    /** Whether the signature is one of this text. */
    public boolean isSound() {
        return SigningKey.fits(key, text().getBytes(StandardCharsets.UTF_8), signature);
    }

    /** A line as {@link #line} writes it, letter by letter; empty for any other. */
    public static Optional<SignedHead> of(String line) {
        Matcher text = LINE.matcher(line);
        if (!text.matches()) {
            return Optional.empty();
        }
        try {
            SignedHead signed = new SignedHead(
                    What.valueOf(text.group(1)),
                    text.group(2),
                    URLDecoder.decode(text.group(3), StandardCharsets.UTF_8),
                    new Head(Long.parseLong(text.group(4)), text.group(5)),
                    text.group(6),
                    text.group(7),
                    text.group(8));
            return signed.line().equals(line) ? Optional.of(signed) : Optional.empty();
        } catch (IllegalArgumentException notWrittenHere) {
            return Optional.empty();
        }
    }

    /**
     * The document with this line behind it as a comment. A PDF that is to be kept ends with its mark of the end and nothing
     * behind it (ISO 19005-2, 6.1.3), so where its table begins is said once more behind the line.
     */
    public byte[] behind(byte[] content) {
        return with(content, end(content));
    }

    private byte[] with(byte[] content, String end) {
        byte[] tail = (COMMENT + line() + "\n" + end).getBytes(StandardCharsets.US_ASCII);
        byte[] both = Arrays.copyOf(content, content.length + tail.length);
        System.arraycopy(tail, 0, both, content.length, tail.length);
        return both;
    }

    /** The last lines of a PDF, from where its table begins; empty for any other document. */
    private static String end(byte[] content) {
        String text = new String(content, StandardCharsets.ISO_8859_1);
        Matcher end = PDF_END.matcher(text.substring(Math.max(0, text.length() - LONGEST_END)));
        return text.startsWith("%PDF-") && end.find() ? "startxref\n" + end.group(1) + "\n%%EOF\n" : "";
    }

    /** What a code on paper holds: the line alone, without a document. */
    public static Optional<SignedHead> scanned(byte[] content) {
        return content.length > LONGEST_LINE
                ? Optional.empty()
                : of(new String(content, StandardCharsets.ISO_8859_1).strip())
                        .filter(SignedHead::isSound)
                        .filter(signed -> signed.document.equals(NO_DOCUMENT));
    }

    /** The line at the end of a document, if it is whole, its signature fits and the document is the one signed. */
    public static Optional<SignedHead> endOf(byte[] both) {
        String text = new String(both, StandardCharsets.ISO_8859_1);
        int at = text.lastIndexOf(COMMENT + "shimwright 1 ");
        int ends = text.indexOf('\n', at + 1);
        if (at < 0 || ends < 0) {
            return Optional.empty();
        }
        byte[] content = Arrays.copyOf(both, at);
        return of(text.substring(at + COMMENT.length(), ends))
                .filter(SignedHead::isSound)
                .filter(signed -> signed.document.equals(Disk.hash(content)))
                .filter(signed ->
                        Arrays.equals(both, signed.behind(content)) || Arrays.equals(both, signed.with(content, "")));
    }
}
