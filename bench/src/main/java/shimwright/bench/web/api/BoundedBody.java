package shimwright.bench.web.api;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.jspecify.annotations.Nullable;

/** The body of a request, which ends in a refusal after the largest that is read. */
final class BoundedBody extends InputStream {
    /** Bytes of the largest body. */
    static final int LARGEST = 4 * 1024 * 1024;

    private final InputStream from;
    private int left = LARGEST;

    BoundedBody(@Nullable InputStream from) {
        this.from = from == null ? new ByteArrayInputStream(new byte[0]) : from;
    }

    @Override
    public int read() throws IOException {
        int one = from.read();
        count(one < 0 ? 0 : 1);
        return one;
    }

    @Override
    public int read(byte[] into, int at, int most) throws IOException {
        int got = from.read(into, at, most);
        count(Math.max(0, got));
        return got;
    }

    private void count(int got) throws TooLarge {
        left -= got;
        if (left < 0) {
            throw new TooLarge();
        }
    }

    /** More came than is read. */
    static final class TooLarge extends IOException {
        private static final long serialVersionUID = 1L;

        String words() {
            return "holds more than " + LARGEST / (1024 * 1024) + " MB";
        }
    }
}
