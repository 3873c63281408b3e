package shimwright.bench.print;

import com.openhtmltopdf.css.constants.IdentValue;
import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.css.value.FontSpecification;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.AbstractOutputDevice;
import com.openhtmltopdf.render.FSFont;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * Draws what {@link shimwright.bench.picture.svg.Svg} writes, straight into the page: lines as lines and texts as texts in the
 * page's fonts. A whole library for SVG cost a shop half of its memory and most of the time of the first record. What is not
 * known here is a bug and throws, so that no drawing is printed short.
 */
final class PaperPen {
    private static final double MITER_LIMIT = 4;
    private static final Pattern CLIP = Pattern.compile("url\\(#(.+)\\)");

    private final OutputDevice device;
    private final RenderingContext context;
    private final AffineTransform place;
    private final Element svg;
    private final String[] families;

    /**
     * A pen.
     *
     * @param device the page
     * @param place from the drawing to the page's dots; no turning and the same scale both ways
     */
    PaperPen(OutputDevice device, RenderingContext context, AffineTransform place, Element svg) {
        this.device = device;
        this.context = context;
        this.place = place;
        this.svg = svg;
        this.families = svg.getAttribute("font-family").split(", *", -1);
    }

    /** Draws all of it; the page's own pen is as it was before. */
    void draw() {
        Stroke before = device.getStroke();
        children(svg);
        device.setStroke(before);
    }

    private void draw(Element element) {
        switch (element.getTagName()) {
            case "g", "a" -> group(element);
            case "path", "rect", "circle" -> shape(element);
            case "text" -> text(element);
            case "title", "desc", "clipPath" -> {
                // said, not drawn
            }
            default -> throw new IllegalStateException("paper cannot draw " + element.getTagName());
        }
    }

    private void children(Element parent) {
        for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element) {
                draw(element);
            }
        }
    }

    private void group(Element group) {
        String clip = group.getAttribute("clip-path");
        if (clip.isEmpty()) {
            children(group);
        } else {
            device.pushClip(clip(clip));
            children(group);
            device.popClip();
        }
    }

    private Shape clip(String reference) {
        Matcher named = CLIP.matcher(reference);
        NodeList clips = svg.getElementsByTagName("clipPath");
        for (int i = 0; named.matches() && i < clips.getLength(); i++) {
            Element clip = (Element) clips.item(i);
            if (clip.getAttribute("id").equals(named.group(1))) {
                Path2D.Double all = new Path2D.Double();
                for (Node child = clip.getFirstChild(); child != null; child = child.getNextSibling()) {
                    if (child instanceof Element element) {
                        all.append(outline(element), false);
                    }
                }
                return all;
            }
        }
        throw new IllegalStateException("the drawing has no clip " + reference);
    }

    private Shape outline(Element element) {
        return place.createTransformedShape(
                switch (element.getTagName()) {
                    case "rect" ->
                        new Rectangle2D.Double(
                                number(element, "x"),
                                number(element, "y"),
                                number(element, "width"),
                                number(element, "height"));
                    case "circle" -> {
                        double r = number(element, "r");
                        yield new Ellipse2D.Double(number(element, "cx") - r, number(element, "cy") - r, 2 * r, 2 * r);
                    }
                    default -> PathData.path(element.getAttribute("d"));
                });
    }

    private void shape(Element element) {
        Shape outline = outline(element);
        if (inks(element, "fill")) {
            device.setColor(colour(element.getAttribute("fill")));
            device.fill(outline);
        }
        if (inks(element, "stroke")) {
            device.setColor(colour(element.getAttribute("stroke")));
            device.setStroke(new BasicStroke(
                    (float) (number(element, "stroke-width") * place.getScaleX()),
                    BasicStroke.CAP_BUTT,
                    BasicStroke.JOIN_MITER,
                    (float) MITER_LIMIT,
                    dash(element.getAttribute("stroke-dasharray")),
                    0));
            device.draw(outline);
        }
    }

    private float @Nullable [] dash(String dash) {
        if (dash.isEmpty()) {
            return null;
        }
        String[] parts = dash.split(" ", -1);
        float[] lengths = new float[parts.length];
        for (int i = 0; i < parts.length; i++) {
            lengths[i] = (float) (Double.parseDouble(parts[i]) * place.getScaleX());
        }
        return lengths;
    }

    private void text(Element element) {
        FontSpecification letter = new FontSpecification();
        letter.families = families;
        letter.size = (float) (number(element, "font-size") * place.getScaleX());
        letter.fontWeight = element.getAttribute("font-weight").isEmpty() ? IdentValue.NORMAL : IdentValue.BOLD;
        letter.fontStyle = IdentValue.NORMAL;
        letter.variant = IdentValue.NORMAL;
        FSFont font = context.getFont(letter);
        String text = element.getTextContent();
        double x = number(element, "x") * place.getScaleX() + place.getTranslateX();
        double y = number(element, "y") * place.getScaleY() + place.getTranslateY();
        double wide = context.getTextRenderer().getWidth(context.getFontContext(), font, text);
        double before = switch (element.getAttribute("text-anchor")) {
            case "middle" -> wide / 2;
            case "end" -> wide;
            default -> 0;
        };
        device.setColor(colour(element.getAttribute("fill")));
        device.setFont(font);
        if (device instanceof AbstractOutputDevice page) {
            page.setFontSpecification(letter);
        }
        context.getTextRenderer().drawString(device, text, (float) (x - before), (float) y);
    }

    private static boolean inks(Element element, String attribute) {
        String colour = element.getAttribute(attribute);
        return !colour.isEmpty() && !colour.equals("none");
    }

    private static FSRGBColor colour(String colour) {
        return new FSRGBColor(Integer.parseInt(colour.substring(1), 16));
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }
}
