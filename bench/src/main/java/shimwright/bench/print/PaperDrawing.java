package shimwright.bench.print;

import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.geom.AffineTransform;
import org.w3c.dom.Element;

/** One of the program's drawings at its size on paper. */
final class PaperDrawing implements SVGDrawer.SVGImage {
    private final Element svg;
    private final double wide;
    private final double high;
    private final double scale;

    /**
     * A drawing.
     *
     * @param svg with a view box from 0 0
     * @param dotsPerPixel how many of the paper's dots a drawing unit takes where no size is asked for
     * @param cssWidth asked for in dots, or below 0
     * @param cssHeight asked for in dots, or below 0
     */
    PaperDrawing(Element svg, double dotsPerPixel, double cssWidth, double cssHeight) {
        this.svg = svg;
        String[] box = svg.getAttribute("viewBox").split(" ", -1);
        this.wide = Double.parseDouble(box[2]);
        this.high = Double.parseDouble(box[3]);
        double byWidth = cssWidth >= 0 ? cssWidth / wide : Double.POSITIVE_INFINITY;
        double byHeight = cssHeight >= 0 ? cssHeight / high : Double.POSITIVE_INFINITY;
        double asked = Math.min(byWidth, byHeight);
        this.scale = Double.isFinite(asked) ? asked : dotsPerPixel;
    }

    @Override
    public int getIntrinsicWidth() {
        return (int) Math.round(wide * scale);
    }

    @Override
    public int getIntrinsicHeight() {
        return (int) Math.round(high * scale);
    }

    @Override
    public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
        new PaperPen(device, context, new AffineTransform(scale, 0, 0, scale, x, y), svg).draw();
    }
}
