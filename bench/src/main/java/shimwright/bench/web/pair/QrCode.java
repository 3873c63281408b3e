package shimwright.bench.web.pair;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/** A text as a QR code (ISO/IEC 18004) with its quiet zone, for a page or for a terminal. */
public final class QrCode {
    private static final int QUIET = 4;

    private final BitMatrix modules;

    public QrCode(String text) {
        try {
            modules = new QRCodeWriter()
                    .encode(
                            text,
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(
                                    EncodeHintType.MARGIN,
                                    QUIET,
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.M));
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException(tooLong);
        }
    }

    /** Modules to a side, the quiet zone with them. */
    public int size() {
        return modules.getWidth();
    }

    /** The dark modules as the path of an SVG whose unit is one module, those in a row as one. */
    public String path() {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < modules.getHeight(); y++) {
            for (int x = 0; x < modules.getWidth(); x++) {
                int from = x;
                while (x < modules.getWidth() && modules.get(x, y)) {
                    x++;
                }
                if (x > from) {
                    int wide = x - from;
                    path.append("M").append(from).append(' ').append(y);
                    path.append("h").append(wide).append("v1h-").append(wide).append('Z');
                }
            }
        }
        return path.toString();
    }

    /** Lines of a terminal with light letters on dark: two modules above each other in one letter. */
    public String blocks() {
        StringBuilder text = new StringBuilder();
        for (int y = 0; y < modules.getHeight(); y += 2) {
            for (int x = 0; x < modules.getWidth(); x++) {
                boolean upper = !modules.get(x, y);
                boolean lower = y + 1 < modules.getHeight() && !modules.get(x, y + 1);
                text.append(upper ? lower ? '█' : '▀' : lower ? '▄' : ' ');
            }
            text.append('\n');
        }
        return text.toString();
    }
}
