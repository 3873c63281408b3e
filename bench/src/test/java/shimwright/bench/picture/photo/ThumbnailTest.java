package shimwright.bench.picture.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ThumbnailTest {
    private static final List<Color> CORNERS = List.of(Color.RED, Color.GREEN, Color.BLUE, Color.YELLOW);

    /** Red, green, blue, yellow: upper left, upper right, lower left, lower right. */
    private static BufferedImage quarters(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        for (int i = 0; i < CORNERS.size(); i++) {
            pen.setColor(CORNERS.get(i));
            pen.fillRect(i % 2 * width / 2, i / 2 * height / 2, (width + 1) / 2, (height + 1) / 2);
        }
        pen.dispose();
        return image;
    }

    private static byte[] file(BufferedImage image, String format) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertThat(ImageIO.write(image, format, out)).isTrue();
        return out.toByteArray();
    }

    /** The JPEG with an Exif segment that says nothing but the orientation (Exif 2.3, 4.5.4; TIFF 6.0, section 2). */
    private static byte[] turned(byte[] jpeg, int orientation) throws IOException {
        ByteBuffer exif = ByteBuffer.allocate(36);
        exif.putShort((short) 0xffe1).putShort((short) 34);
        exif.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        exif.put("MM\0*".getBytes(StandardCharsets.US_ASCII)).putInt(8).putShort((short) 1);
        exif.putShort((short) 274).putShort((short) 3).putInt(1).putShort((short) orientation);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.write(exif.array());
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    private static BufferedImage small(byte[] content, int side) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(Thumbnail.of(content, side).orElseThrow()));
    }

    private static String corners(BufferedImage image) {
        StringBuilder corners = new StringBuilder();
        for (int[] at : new int[][] {{1, 1}, {3, 1}, {1, 3}, {3, 3}}) {
            Color seen = new Color(image.getRGB(image.getWidth() * at[0] / 4, image.getHeight() * at[1] / 4));
            int nearest = 0;
            for (int i = 1; i < CORNERS.size(); i++) {
                nearest = apart(seen, CORNERS.get(i)) < apart(seen, CORNERS.get(nearest)) ? i : nearest;
            }
            corners.append("RGBY".charAt(nearest));
        }
        return corners.toString();
    }

    private static int apart(Color a, Color b) {
        return Math.abs(a.getRed() - b.getRed())
                + Math.abs(a.getGreen() - b.getGreen())
                + Math.abs(a.getBlue() - b.getBlue());
    }

    /**
     * Where the 0th row and 0th column of what is stored stand in what is seen: TIFF 6.0, section 8, Orientation: 1 top left, 2
     * top right, 3 bottom right, 4 bottom left, 5 left top, 6 right top, 7 right bottom, 8 left bottom.
     */
    @ParameterizedTest
    @CsvSource({
        "1, RGBY, 60, 40",
        "2, GRYB, 60, 40",
        "3, YBGR, 60, 40",
        "4, BYRG, 60, 40",
        "5, RBGY, 40, 60",
        "6, BRYG, 40, 60",
        "7, YGBR, 40, 60",
        "8, GYRB, 40, 60"
    })
    void standsUpright(int orientation, String corners, int width, int height) throws IOException {
        BufferedImage small = small(turned(file(quarters(600, 400), "jpg"), orientation), 60);
        assertThat(corners(small)).isEqualTo(corners);
        assertThat(small.getWidth()).isEqualTo(width);
        assertThat(small.getHeight()).isEqualTo(height);
    }

    @ParameterizedTest
    @CsvSource({"1200, 300, 240, 60", "300, 1200, 60, 240", "33, 21, 33, 21", "1, 1, 1, 1", "4000, 1, 240, 1"})
    void keepsItsShapeAndIsNeverMadeLarger(int width, int height, int smallWidth, int smallHeight) throws IOException {
        for (String format : List.of("png", "jpg")) {
            BufferedImage small = small(file(quarters(width, height), format), 240);
            assertThat(small.getWidth()).isEqualTo(smallWidth);
            assertThat(small.getHeight()).isEqualTo(smallHeight);
        }
    }

    @Test
    void aTransparentOneIsStillAPicture() throws IOException {
        BufferedImage clear = new BufferedImage(500, 400, BufferedImage.TYPE_INT_ARGB);
        assertThat(small(file(clear, "png"), 100).getWidth()).isEqualTo(100);
    }

    @Test
    void aDamagedOneHasNone() throws IOException {
        byte[] jpeg = file(quarters(300, 300), "jpg");
        byte[] noPixels = Arrays.copyOf(jpeg, 100);
        assertThat(Thumbnail.of(noPixels, 60)).isEmpty();
        assertThat(Thumbnail.of(new byte[0], 60)).isEmpty();
        assertThat(Thumbnail.of("no picture".getBytes(StandardCharsets.UTF_8), 60))
                .isEmpty();
        byte[] png = file(quarters(300, 300), "png");
        assertThat(Thumbnail.of(Arrays.copyOf(png, 60), 60)).isEmpty();
    }

    /** The largest that is kept, 50 megapixels, in a program whose memory could not hold its pixels once (50 MB a colour). */
    @ParameterizedTest
    @ValueSource(strings = {"jpg", "png"})
    void theLargestThatIsKeptNeedsLittleMemory(String format, @TempDir Path work) throws Exception {
        Path large = work.resolve("large");
        Files.write(large, file(new BufferedImage(7071, 7071, BufferedImage.TYPE_BYTE_GRAY), format));
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String classes = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        Process child = new ProcessBuilder(
                        java, "-Xmx40m", "-XX:+UseSerialGC", "-cp", classes, Child.class.getName(), large.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(said).isEqualTo("240 240");
        assertThat(child.waitFor()).isZero();
    }

    /** Makes one small picture and says its size. */
    static final class Child {
        private Child() {}

        public static void main(String[] args) throws IOException {
            System.setProperty("java.awt.headless", "true");
            BufferedImage small = small(Files.readAllBytes(Path.of(args[0])), 240);
            System.out.print(small.getWidth() + " " + small.getHeight());
        }
    }
}
