package shimwright.bench.web.kit;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Drawings at a size of the paper's own: it reserves the height that is said, and not one that follows from the width. */
public final class OnPaper {
    private static final Pattern BOX = Pattern.compile("<svg([^>]*) viewBox=\"0 0 ([0-9.]+) ([0-9.]+)\"");

    private OnPaper() {}

    /**
     * The same drawing so wide.
     *
     * @param svg one drawing, its view box from 0 0; anything else is left as it is
     * @param wide mm
     * @param high the most that it may be high, mm; then it is narrower
     */
    public static String sized(String svg, double wide, double high) {
        Matcher box = BOX.matcher(svg);
        if (!box.find()) {
            return svg;
        }
        double width = Double.parseDouble(box.group(2));
        double height = Double.parseDouble(box.group(3));
        double scale = Math.min(wide / width, high / height);
        return svg.substring(0, box.start())
                + String.format(
                        Locale.ROOT,
                        "<svg style=\"width: %.1fmm; height: %.1fmm\"%s",
                        scale * width,
                        scale * height,
                        svg.substring(box.start() + "<svg".length()));
    }
}
