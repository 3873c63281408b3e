package shimwright.bench.web.kit;

/** Makes a PDF of a page; handed in, so that the pages do not know how paper is made. */
public interface Paper {
    /**
     * The PDF of a well-formed XHTML page with inline SVG.
     *
     * @param xhtml the whole page
     */
    byte[] pdf(String xhtml);
}
