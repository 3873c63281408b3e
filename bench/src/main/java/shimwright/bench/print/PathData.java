package shimwright.bench.print;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.Objects;

/** Reads the path data that the program's drawings are written with: M, L, H, V, Q, C, Z, h and v. Any other throws. */
final class PathData {
    private final String data;
    private final Path2D.Double path = new Path2D.Double();
    private int at;

    private PathData(String data) {
        this.data = data;
    }

    /** The path, filled by the rule that SVG has where none is named: what is wound round. */
    static Path2D path(String data) {
        PathData reader = new PathData(data);
        while (reader.at < data.length()) {
            reader.step(data.charAt(reader.at++));
            reader.skip();
        }
        return reader.path;
    }

    private void step(char command) {
        switch (command) {
            case 'M' -> path.moveTo(number(), number());
            case 'L' -> path.lineTo(number(), number());
            case 'H' -> path.lineTo(number(), here().getY());
            case 'V' -> path.lineTo(here().getX(), number());
            case 'h' -> path.lineTo(here().getX() + number(), here().getY());
            case 'v' -> path.lineTo(here().getX(), here().getY() + number());
            case 'Q' -> path.quadTo(number(), number(), number(), number());
            case 'C' -> path.curveTo(number(), number(), number(), number(), number(), number());
            case 'Z' -> path.closePath();
            default -> throw new IllegalStateException("paper cannot draw the path step " + command + " in " + data);
        }
    }

    private Point2D here() {
        return Objects.requireNonNull(path.getCurrentPoint());
    }

    private double number() {
        skip();
        int from = at;
        while (at < data.length() && "+-.0123456789".indexOf(data.charAt(at)) >= 0) {
            at++;
        }
        return Double.parseDouble(data.substring(from, at));
    }

    private void skip() {
        while (at < data.length() && (data.charAt(at) == ' ' || data.charAt(at) == ',')) {
            at++;
        }
    }
}
