package shimwright.bench.picture.photo;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.coobird.thumbnailator.util.exif.Orientation;

/** A photograph without what a camera writes beside it: where and when it was taken, with what, and a second picture inside. */
public final class BarePicture {
    private static final int START_OF_IMAGE = 0xd8;
    private static final int END_OF_IMAGE = 0xd9;
    private static final int START_OF_SCAN = 0xda;
    private static final int APP0 = 0xe0;
    private static final int APP1 = 0xe1;
    private static final int APP2 = 0xe2;
    private static final int APP14 = 0xee;
    private static final int APP15 = 0xef;
    private static final int COMMENT = 0xfe;

    private static final int PNG_HEAD = 8;
    private static final int PNG_CHUNK = 12;

    /** What a PNG needs to look as it does (PNG specification, third edition, section 11). */
    private static final Set<String> CHUNKS =
            Set.of("IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "iCCP", "sBIT", "bKGD", "pHYs");

    private BarePicture() {}

    /**
     * The same pixels without the rest; which way is up stays.
     *
     * @param content a PNG or JPEG
     * @return the same bytes where there is nothing to leave out; empty where its parts cannot be told apart
     */
    public static Optional<byte[]> of(byte[] content) {
        if (content.length > PNG_HEAD && content[0] == (byte) 0x89) {
            return png(content);
        }
        return content.length > 4 && (content[1] & 0xff) == START_OF_IMAGE ? jpeg(content) : Optional.empty();
    }

    private static Optional<byte[]> png(byte[] content) {
        ByteBuffer bytes = ByteBuffer.wrap(content);
        ByteArrayOutputStream bare = new ByteArrayOutputStream(content.length);
        bare.write(content, 0, PNG_HEAD);
        int at = PNG_HEAD;
        while (at + PNG_CHUNK <= content.length) {
            int length = bytes.getInt(at);
            if (length < 0 || length > content.length - at - PNG_CHUNK) {
                return Optional.empty();
            }
            String type = new String(content, at + 4, 4, StandardCharsets.ISO_8859_1);
            if (CHUNKS.contains(type)) {
                bare.write(content, at, length + PNG_CHUNK);
            }
            if (type.equals("IEND")) {
                return Optional.of(bare.toByteArray());
            }
            at += length + PNG_CHUNK;
        }
        return Optional.empty();
    }

    /** Segment by segment (ITU-T T.81, B.1.1.4); what lies between scans is entropy-coded and stays. */
    private static Optional<byte[]> jpeg(byte[] content) {
        ByteArrayOutputStream bare = new ByteArrayOutputStream(content.length);
        bare.write(content, 0, 2);
        int at = 2;
        while (at + 4 <= content.length && (content[at] & 0xff) == 0xff) {
            int mark = content[at + 1] & 0xff;
            if (mark == 0xff) {
                at++;
                continue;
            }
            if (mark == END_OF_IMAGE) {
                return Optional.of(ended(bare));
            }
            int end = at + 2 + (ByteBuffer.wrap(content).getShort(at + 2) & 0xffff);
            if (end > content.length) {
                return Optional.empty();
            }
            segment(content, at, end, mark).ifPresent(bare::writeBytes);
            at = mark == START_OF_SCAN ? scan(content, end, bare) : end;
        }
        boolean atEnd = at + 2 <= content.length && (content[at + 1] & 0xff) == END_OF_IMAGE;
        return atEnd ? Optional.of(ended(bare)) : Optional.empty();
    }

    private static byte[] ended(ByteArrayOutputStream bare) {
        bare.write(0xff);
        bare.write(END_OF_IMAGE);
        return bare.toByteArray();
    }

    /** Copies coded data up to the next mark that is no restart and no stuffed byte; where that one stands. */
    private static int scan(byte[] content, int from, ByteArrayOutputStream bare) {
        int at = from;
        while (at + 1 < content.length) {
            int next = content[at + 1] & 0xff;
            boolean mark = (content[at] & 0xff) == 0xff && next != 0 && next != 0xff && (next < 0xd0 || next > 0xd7);
            if (mark) {
                break;
            }
            at++;
        }
        bare.write(content, from, at - from);
        return at;
    }

    private static Optional<byte[]> segment(byte[] content, int at, int end, int mark) {
        String name = new String(content, at + 4, Math.max(0, Math.min(12, end - at - 4)), StandardCharsets.ISO_8859_1);
        if (mark == APP1) {
            return name.startsWith("Exif") ? upright(Arrays.copyOfRange(content, at + 4, end)) : Optional.empty();
        }
        boolean kept = (mark == APP0 && name.startsWith("JFIF"))
                || (mark == APP2 && name.startsWith("ICC_PROFILE"))
                || mark == APP14
                || ((mark < APP0 || mark > APP15) && mark != COMMENT);
        return kept ? Optional.of(Arrays.copyOfRange(content, at, end)) : Optional.empty();
    }

    /** In the order of the numbers that TIFF gives them, from 1 on. */
    private static final List<Orientation> ORDER = List.of(
            Orientation.TOP_LEFT,
            Orientation.TOP_RIGHT,
            Orientation.BOTTOM_RIGHT,
            Orientation.BOTTOM_LEFT,
            Orientation.LEFT_TOP,
            Orientation.RIGHT_TOP,
            Orientation.RIGHT_BOTTOM,
            Orientation.LEFT_BOTTOM);

    /** An Exif segment that says which way is up and nothing else (TIFF 6.0, tag 274). */
    private static Optional<byte[]> upright(byte[] exif) {
        return Thumbnail.read(exif).map(way -> {
            ByteBuffer segment = ByteBuffer.allocate(2 + 34);
            segment.put((byte) 0xff).put((byte) APP1).putShort((short) 34);
            segment.put("Exif\0\0MM\0*".getBytes(StandardCharsets.ISO_8859_1)).putInt(8);
            segment.putShort((short) 1)
                    .putShort((short) 274)
                    .putShort((short) 3)
                    .putInt(1)
                    .putShort((short) (ORDER.indexOf(way) + 1))
                    .putShort((short) 0);
            return segment.putInt(0).array();
        });
    }
}
