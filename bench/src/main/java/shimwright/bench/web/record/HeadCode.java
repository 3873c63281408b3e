package shimwright.bench.web.record;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.bench.web.pair.QrCode;
import shimwright.rebuild.job.Head;

/**
 * The head of a job's log as a code that a camera reads.
 *
 * @param code what is printed
 * @param signed true where the shop's signature is in it
 */
public record HeadCode(QrCode code, boolean signed) {
    /** The code that was asked last: a record is looked at several times over. */
    private static volatile @Nullable Drawn last;

    private record Drawn(String text, QrCode code) {}

    /**
     * The code of a head.
     *
     * @param signature the line that signs it; empty where the shop signs nothing
     */
    static HeadCode of(String stream, Head head, Optional<String> signature) {
        String plain = "shimwright head stream=" + stream + " count=" + head.count() + " hash=" + head.hash();
        String text = signature.orElse(plain);
        Drawn drawn = last;
        if (drawn == null || !drawn.text().equals(text)) {
            drawn = new Drawn(text, new QrCode(text));
            last = drawn;
        }
        return new HeadCode(drawn.code(), signature.isPresent());
    }
}
