package shimwright.bench.web.kit;

import java.util.Optional;
import shimwright.rebuild.job.Head;

/** Makes a PDF of a page; handed in, so that the pages do not know how paper is made. */
public interface Paper {
    /**
     * The PDF of a well-formed XHTML page with inline SVG.
     *
     * @param xhtml the whole page
     */
    byte[] pdf(String xhtml);

    /**
     * The PDF of a job's record, signed and remembered where the shop does that.
     *
     * @param xhtml the whole page
     * @param stream the job's stream
     * @param head of that stream
     */
    default byte[] record(String xhtml, String stream, Head head) {
        return pdf(xhtml);
    }

    /**
     * The line that signs a job's head, for a code on the paper itself; empty where the shop signs nothing.
     *
     * @param stream the job's stream
     * @param head of that stream
     */
    default Optional<String> signed(String stream, Head head) {
        return Optional.empty();
    }
}
