package shimwright.bench.web.kit;

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
}
