package shimwright.bench.picture.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Iterator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import net.coobird.thumbnailator.Thumbnails;
import net.coobird.thumbnailator.util.exif.ExifFilterUtils;
import net.coobird.thumbnailator.util.exif.ExifUtils;
import net.coobird.thumbnailator.util.exif.Orientation;

/** A small picture of a photograph, standing upright. */
public final class Thumbnail {
    /** Pixels read for each pixel wanted, along a side: enough for smooth edges, few enough for a small memory. */
    private static final int OVERSAMPLING = 2;

    private static final double QUALITY = 0.8;
    private static final int APP1 = 0xe1;
    private static final int START_OF_SCAN = 0xda;

    private static final Set<Orientation> ON_ITS_SIDE =
            EnumSet.of(Orientation.LEFT_TOP, Orientation.RIGHT_TOP, Orientation.RIGHT_BOTTOM, Orientation.LEFT_BOTTOM);

    private Thumbnail() {}

    /**
     * A JPEG no larger than a square, turned upright by the picture's orientation (TIFF 6.0, tag 274, as Exif uses it). Only
     * every so many pixels are read, so that memory grows with the small picture and not with the large one.
     *
     * @param content a PNG or JPEG
     * @param side of the square, px, 1 or more; a smaller picture keeps its size
     * @return empty where the picture is damaged or its colours cannot be read here
     */
    public static Optional<byte[]> of(byte[] content, int side) {
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(content))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            return readers.hasNext()
                    ? Optional.of(of(readers.next(), in, orientation(content), side))
                    : Optional.empty();
        } catch (IIOException damaged) {
            return Optional.empty();
        } catch (IOException impossible) {
            throw new IllegalStateException("reading from memory", impossible);
        }
    }

    /** Height over width of a PNG or JPEG as it is looked at, upright; empty where it is damaged. */
    public static OptionalDouble tall(byte[] content) {
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(content))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                return OptionalDouble.empty();
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in);
                double tall = reader.getHeight(0) / (double) reader.getWidth(0);
                boolean onItsSide =
                        orientation(content).map(ON_ITS_SIDE::contains).orElse(false);
                return OptionalDouble.of(onItsSide ? 1 / tall : tall);
            } finally {
                reader.dispose();
            }
        } catch (IIOException damaged) {
            return OptionalDouble.empty();
        } catch (IOException impossible) {
            throw new IllegalStateException("reading from memory", impossible);
        }
    }

    private static byte[] of(ImageReader reader, ImageInputStream in, Optional<Orientation> orientation, int side)
            throws IOException {
        try {
            reader.setInput(in);
            ImageReadParam every = reader.getDefaultReadParam();
            int longest = Math.max(reader.getWidth(0), reader.getHeight(0));
            int step = Math.max(1, longest / (OVERSAMPLING * side));
            every.setSourceSubsampling(step, step, 0, 0);
            return upright(reader.read(0, every), orientation, side);
        } finally {
            reader.dispose();
        }
    }

    /**
     * What the Exif segment of a JPEG says; its segments are walked here, for the JDK's reader refuses a file whose Exif stands
     * before its JFIF segment (ITU-T T.81, B.1.1.4: any order).
     */
    private static Optional<Orientation> orientation(byte[] content) {
        ByteBuffer bytes = ByteBuffer.wrap(content);
        int at = 2;
        while (at + 4 <= content.length && content[0] == (byte) 0xff && content[at] == (byte) 0xff) {
            int mark = content[at + 1] & 0xff;
            int end = at + 2 + (bytes.getShort(at + 2) & 0xffff);
            if (mark == START_OF_SCAN || end > content.length) {
                return Optional.empty();
            }
            if (mark == APP1
                    && new String(content, at + 4, end - at - 4, StandardCharsets.ISO_8859_1).startsWith("Exif")) {
                return read(Arrays.copyOfRange(content, at + 4, end));
            }
            at = end;
        }
        return Optional.empty();
    }

    /** Which way is up, of the content of an Exif segment; one that is damaged says nothing. */
    static Optional<Orientation> read(byte[] exif) {
        try {
            return Optional.ofNullable(ExifUtils.getOrientationFromExif(exif));
        } catch (RuntimeException damaged) {
            return Optional.empty();
        }
    }

    private static byte[] upright(BufferedImage read, Optional<Orientation> orientation, int side) throws IOException {
        BufferedImage turned = orientation
                .map(o -> ExifFilterUtils.getFilterForOrientation(o).apply(read))
                .orElse(read);
        double scale = Math.min(1, side / (double) Math.max(turned.getWidth(), turned.getHeight()));
        ByteArrayOutputStream small = new ByteArrayOutputStream();
        Thumbnails.of(turned)
                .scale(scale)
                .imageType(BufferedImage.TYPE_INT_RGB)
                .outputFormat("jpg")
                .outputQuality(QUALITY)
                .toOutputStream(small);
        return small.toByteArray();
    }
}
