package shimwright.bench.store.content;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * What a file is by its content. A PNG or JPEG is read piece by piece to its end and asked for its size; its pixels are
 * never unpacked here.
 */
public final class Image {
    private Image() {}

    /** The two kinds that are kept. */
    public enum Type {
        PNG("image/png", "png", "PNG"),
        JPEG("image/jpeg", "jpg", "JPEG");

        final String mediaType;
        final String ending;
        final String word;

        Type(String mediaType, String ending, String word) {
            this.mediaType = mediaType;
            this.ending = ending;
            this.word = word;
        }
    }

    /** Width and height in pixels. */
    public record Size(int width, int height) {
        public long pixels() {
            return (long) width * height;
        }
    }

    private record Mark(int at, String bytes, String what) {}

    private static final List<Mark> OTHERS = List.of(
            new Mark(0, "%PDF", "a PDF"),
            new Mark(0, "GIF8", "a GIF"),
            new Mark(8, "WEBP", "a WebP picture"),
            new Mark(8, "WAVE", "a sound"),
            new Mark(4, "ftypheic", "a HEIC picture"),
            new Mark(4, "ftypheix", "a HEIC picture"),
            new Mark(4, "ftypmif1", "a HEIC picture"),
            new Mark(4, "ftypavif", "an AVIF picture"),
            new Mark(4, "ftyp", "a film"),
            new Mark(0, "BM", "a BMP picture"),
            new Mark(0, "II*\0", "a TIFF or raw picture"),
            new Mark(0, "MM\0*", "a TIFF or raw picture"),
            new Mark(0, "PK\u0003\u0004", "a ZIP archive or office document"),
            new Mark(0, "ID3", "a sound"));

    /** PNG or JPEG by the first bytes. */
    static Optional<Type> type(byte[] content) {
        if (startsWith(content, 0, "\u0089PNG\r\n\u001a\n")) {
            return Optional.of(Type.PNG);
        }
        return startsWith(content, 0, "\u00ff\u00d8\u00ff") ? Optional.of(Type.JPEG) : Optional.empty();
    }

    /** What another file is, in words: "a PDF", "text", "empty". */
    static String what(byte[] content) {
        if (content.length == 0) {
            return "empty";
        }
        for (Mark mark : OTHERS) {
            if (startsWith(content, mark.at(), mark.bytes())) {
                return mark.what();
            }
        }
        return isText(content) ? "text" : "of a kind not known here";
    }

    private static boolean startsWith(byte[] content, int at, String bytes) {
        byte[] mark = bytes.getBytes(StandardCharsets.ISO_8859_1);
        if (content.length < at + mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if (content[at + i] != mark[i]) {
                return false;
            }
        }
        return true;
    }

    private static boolean isText(byte[] content) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(content))
                    .chars()
                    .noneMatch(c -> c < ' ' && c != '\n' && c != '\r' && c != '\t');
        } catch (CharacterCodingException notText) {
            return false;
        }
    }

    /** The size of a picture that goes on whole to its own end mark; empty for one that is damaged or cut short. */
    public static Optional<Size> size(Type type, byte[] content) {
        return (type == Type.PNG ? sizeOfPng(content) : sizeOfJpeg(content))
                .filter(size -> size.width() > 0 && size.height() > 0);
    }

    /** Every chunk with its checksum, from IHDR to IEND (PNG specification, third edition, sections 5 and 11.2.1). */
    private static Optional<Size> sizeOfPng(byte[] content) {
        ByteBuffer rest = ByteBuffer.wrap(content).position(8);
        Optional<Size> size = Optional.empty();
        while (rest.remaining() >= 12) {
            int length = rest.getInt();
            int at = rest.position();
            if (length < 0 || rest.remaining() < length + 8L) {
                return Optional.empty();
            }
            CRC32 sum = new CRC32();
            sum.update(content, at, length + 4);
            if (rest.getInt(at + 4 + length) != (int) sum.getValue()) {
                return Optional.empty();
            }
            if (startsWith(content, at, "IHDR") && length == 13) {
                size = Optional.of(new Size(rest.getInt(at + 4), rest.getInt(at + 8)));
            } else if (startsWith(content, at, "IEND")) {
                return size;
            }
            rest.position(at + 4 + length + 4);
        }
        return Optional.empty();
    }

    /** Segment by segment through the frame header to the end-of-image mark (ITU-T T.81, sections B.1.1 and B.2.2). */
    private static Optional<Size> sizeOfJpeg(byte[] content) {
        ByteBuffer bytes = ByteBuffer.wrap(content);
        Optional<Size> size = Optional.empty();
        int at = 2;
        while (at + 9 <= content.length && content[at] == (byte) 0xff) {
            int mark = content[at + 1] & 0xff;
            if (mark == 0xff) {
                at++;
                continue;
            }
            if (isFrame(mark)) {
                size = Optional.of(new Size(bytes.getShort(at + 7) & 0xffff, bytes.getShort(at + 5) & 0xffff));
            }
            at += 2 + (bytes.getShort(at + 2) & 0xffff);
            if (mark == 0xda) {
                return hasEnd(content, at) ? size : Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** SOF0 to SOF15 without DHT, JPG and DAC, which stand between them. */
    private static boolean isFrame(int mark) {
        return mark >= 0xc0 && mark <= 0xcf && mark != 0xc4 && mark != 0xc8 && mark != 0xcc;
    }

    private static boolean hasEnd(byte[] content, int from) {
        for (int i = from; i + 1 < content.length; i++) {
            if (content[i] == (byte) 0xff && content[i + 1] == (byte) 0xd9) {
                return true;
            }
        }
        return false;
    }
}
