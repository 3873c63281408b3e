package shimwright.bench.picture.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import shimwright.bench.store.SamplePictures;

/** Where a photograph was taken does not go out with it; what it shows does. */
class BarePictureTest {
    private static final String PLACE = "GPS 51.5 N 0.1 W";

    private static String text(byte[] content) {
        return new String(content, StandardCharsets.ISO_8859_1);
    }

    /** A JPEG with segments after its first two bytes. */
    private static byte[] jpeg(byte[] plain, byte[]... segments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(plain, 0, 2);
        for (byte[] segment : segments) {
            out.writeBytes(segment);
        }
        out.write(plain, 2, plain.length - 2);
        return out.toByteArray();
    }

    private static byte[] segment(int mark, byte[] content) {
        return ByteBuffer.allocate(4 + content.length)
                .put((byte) 0xff)
                .put((byte) mark)
                .putShort((short) (content.length + 2))
                .put(content)
                .array();
    }

    /** Exif that says how the picture lies, and where it was taken (TIFF 6.0: tag 274, one short; the rest is text). */
    private static byte[] exif(int way) {
        byte[] place = PLACE.getBytes(StandardCharsets.ISO_8859_1);
        return ByteBuffer.allocate(6 + 8 + 2 + 12 + 4 + place.length)
                .put("Exif\0\0MM\0*".getBytes(StandardCharsets.ISO_8859_1))
                .putInt(8)
                .putShort((short) 1)
                .putShort((short) 274)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) way)
                .putShort((short) 0)
                .putInt(0)
                .put(place)
                .array();
    }

    @Test
    void aJpegLosesPlaceAndRemarksAndKeepsPixelsAndWayUp() throws IOException {
        byte[] plain = SamplePictures.byLibrary("jpg", 40, 20);
        for (int way = 1; way <= 8; way++) {
            byte[] taken = jpeg(
                    plain,
                    segment(0xe1, exif(way)),
                    segment(0xed, PLACE.getBytes(StandardCharsets.ISO_8859_1)),
                    segment(0xfe, PLACE.getBytes(StandardCharsets.ISO_8859_1)));
            byte[] trailing = java.util.Arrays.copyOf(taken, taken.length + 20);
            byte[] bare = BarePicture.of(trailing).orElseThrow();
            assertThat(text(bare)).doesNotContain("GPS");
            assertThat(BarePicture.of(bare))
                    .hasValueSatisfying(again -> assertThat(again).isEqualTo(bare));
            var small =
                    ImageIO.read(new ByteArrayInputStream(Thumbnail.of(bare, 40).orElseThrow()));
            var was = ImageIO.read(
                    new ByteArrayInputStream(Thumbnail.of(taken, 40).orElseThrow()));
            assertThat(small.getWidth()).as("way %d", way).isEqualTo(was.getWidth());
            assertThat(small.getHeight()).isEqualTo(was.getHeight());
            for (int x = 0; x < small.getWidth(); x++) {
                for (int y = 0; y < small.getHeight(); y++) {
                    assertThat(small.getRGB(x, y)).isEqualTo(was.getRGB(x, y));
                }
            }
        }
        assertThat(BarePicture.of(plain))
                .hasValueSatisfying(same -> assertThat(same).isEqualTo(plain));
    }

    @Test
    void aPngLosesItsTexts() {
        byte[] plain = SamplePictures.noise(new Random(1), 9, 9);
        byte[] named = ("tEXtComment\0" + PLACE).getBytes(StandardCharsets.ISO_8859_1);
        CRC32 sum = new CRC32();
        sum.update(named);
        byte[] chunk = ByteBuffer.allocate(8 + named.length)
                .putInt(named.length - 4)
                .put(named)
                .putInt((int) sum.getValue())
                .array();
        int head = 8 + 25;
        byte[] taken = ByteBuffer.allocate(plain.length + chunk.length)
                .put(plain, 0, head)
                .put(chunk)
                .put(plain, head, plain.length - head)
                .array();
        assertThat(BarePicture.of(taken))
                .hasValueSatisfying(bare -> assertThat(bare).isEqualTo(plain));
    }

    @Test
    void whatIsCutShortOrNoPictureIsNone() throws IOException {
        byte[] plain = SamplePictures.byLibrary("jpg", 40, 20);
        for (int length = 0; length < plain.length - 1; length++) {
            assertThat(BarePicture.of(java.util.Arrays.copyOf(plain, length))).isEmpty();
        }
        assertThat(BarePicture.of(PLACE.getBytes(StandardCharsets.ISO_8859_1))).isEmpty();
    }
}
