package shimwright.bench;

import java.util.Optional;
import shimwright.bench.print.PdfPaper;
import shimwright.bench.web.kit.Paper;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Signing;

/** Paper whose records are signed at their end, and whose heads are remembered. */
final class SignedPaper implements Paper {
    private final Signing signing;

    SignedPaper(Signing signing) {
        this.signing = signing;
    }

    @Override
    public byte[] pdf(String xhtml) {
        return PdfPaper.pdf(xhtml);
    }

    @Override
    public byte[] record(String xhtml, String stream, Head head) {
        byte[] signed = signing.sign(pdf(xhtml), stream, head);
        signing.remember(Signing.Occasion.PRINTED, stream, head);
        return signed;
    }

    @Override
    public Optional<String> signed(String stream, Head head) {
        return signing.line(stream, head);
    }
}
