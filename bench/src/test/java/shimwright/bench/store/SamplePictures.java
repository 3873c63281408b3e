package shimwright.bench.store;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;

/** Pictures for tests. */
public final class SamplePictures {
    private SamplePictures() {}

    /** A PNG of noise, made without the image library. */
    public static byte[] noise(Random random, int width, int height) {
        byte[] rows = new byte[height * (1 + width)];
        random.nextBytes(rows);
        for (int row = 0; row < height; row++) {
            rows[row * (1 + width)] = 0;
        }
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DeflaterOutputStream pack = new DeflaterOutputStream(packed)) {
            pack.write(rows);
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
        return png(width, height, packed.toByteArray());
    }

    /** A PNG that says it has this size, with these packed pixels. */
    static byte[] png(int width, int height, byte[] packed) {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.writeBytes("\u0089PNG\r\n\u001a\n".getBytes(StandardCharsets.ISO_8859_1));
        chunk(
                file,
                "IHDR",
                ByteBuffer.allocate(13)
                        .putInt(width)
                        .putInt(height)
                        .put((byte) 8)
                        .array());
        chunk(file, "IDAT", packed);
        chunk(file, "IEND", new byte[0]);
        return file.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream file, String type, byte[] content) {
        byte[] named = ByteBuffer.allocate(4 + content.length)
                .put(type.getBytes(StandardCharsets.US_ASCII))
                .put(content)
                .array();
        CRC32 sum = new CRC32();
        sum.update(named);
        file.writeBytes(ByteBuffer.allocate(4).putInt(content.length).array());
        file.writeBytes(named);
        file.writeBytes(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
    }

    /** A picture written by the JDK's own library. */
    public static byte[] byLibrary(String format, int width, int height) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        image.createGraphics().drawString("gauge", 1, height / 2);
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        if (!ImageIO.write(image, format, file)) {
            throw new IOException("no writer for " + format);
        }
        return file.toByteArray();
    }
}
