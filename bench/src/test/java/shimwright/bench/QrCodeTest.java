package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.bench.web.pair.QrCode;

/** What a camera makes of the code in the terminal and of the one on the page; read back by the library's own reader. */
class QrCodeTest {
    private static final int SCALE = 6;

    @ParameterizedTest
    @ValueSource(strings = {"https://192.168.1.5:8613/pair?code=K7QF-2M9X", "http://[fe80::1]:80/", "x"})
    void whatIsShownIsReadBack(String text) throws Exception {
        QrCode code = new QrCode(text);
        boolean[][] terminal = new boolean[code.size() + 1][code.size()];
        List<String> lines = code.blocks().lines().toList();
        for (int y = 0; y < lines.size(); y++) {
            for (int x = 0; x < code.size(); x++) {
                char c = lines.get(y).charAt(x);
                terminal[2 * y][x] = c == '█' || c == '▀';
                terminal[2 * y + 1][x] = c == '█' || c == '▄';
            }
        }
        assertThat(read(terminal, code.size())).isEqualTo(text);
        boolean[][] page = new boolean[code.size()][code.size()];
        for (boolean[] row : page) {
            java.util.Arrays.fill(row, true);
        }
        for (String dark : code.path().split("M")) {
            if (!dark.isEmpty()) {
                String[] at = dark.split("[ hv]");
                for (int x = 0; x < Integer.parseInt(at[2]); x++) {
                    page[Integer.parseInt(at[1])][Integer.parseInt(at[0]) + x] = false;
                }
            }
        }
        assertThat(read(page, code.size())).isEqualTo(text);
    }

    private static String read(boolean[][] light, int size) throws Exception {
        int side = size * SCALE;
        int[] pixels = new int[side * side];
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                pixels[y * side + x] = light[y / SCALE][x / SCALE] ? 0xFFFFFF : 0;
            }
        }
        RGBLuminanceSource source = new RGBLuminanceSource(side, side, pixels);
        return new QRCodeReader()
                .decode(new BinaryBitmap(new HybridBinarizer(source)))
                .getText();
    }

    @Test
    void itHasTheQuietZoneOfTheStandard() {
        // ISO/IEC 18004: four modules on every side
        String path = new QrCode("https://192.168.1.5:8613/pair?code=K7QF-2M9X").path();
        assertThat(path).startsWith("M4 4h").doesNotContain("M0 ", "M3 ");
    }
}
