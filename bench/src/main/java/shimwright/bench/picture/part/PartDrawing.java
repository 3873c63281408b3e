package shimwright.bench.picture.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.bench.picture.part.PartSize.Place;
import shimwright.bench.picture.section.PartFigure;

/**
 * The views of a part and what is written at them, lengths in m.
 *
 * @param side the view with the axis from left to right
 * @param face the view along the axis
 * @param half true where the side view is cut above its axis
 * @param detail true where only what is cut is shown, enlarged
 * @param scale true where the shape is to scale
 * @param dimensions sizes with their lines
 * @param pointers words at places of the side view
 */
record PartDrawing(
        PartFigure side,
        Optional<PartFigure> face,
        boolean half,
        boolean detail,
        boolean scale,
        List<Dimension> dimensions,
        List<Pointer> pointers) {

    /** Where a dimension line stands. */
    enum Line {
        /** A diameter over all, left of the side view; a is the edge and b the radius. */
        LEFT,
        /** A diameter right of the side view; a is the edge and b the radius. */
        RIGHT,
        /** A length above the side view from a to b. */
        ABOVE,
        /** A length below the side view from a to b. */
        BELOW,
        /** A width or diameter below the face from -b to b. */
        FACE
    }

    /**
     * A size with its line.
     *
     * @param text what stands before the number, or the whole text where there is no number
     * @param size the size; null where the text alone is written, such as a thread
     */
    record Dimension(
            Line line,
            double a,
            double b,
            String text,
            @Nullable PartSize size) {}

    /** A word for a place of the side view; the number stands at (atW, atR), its line ends at (w, r). */
    record Pointer(double w, double r, double atW, double atR, String words) {}

    static DrawingDraft of(PartSubject subject, PartFigure side) {
        return new DrawingDraft(subject, side);
    }

    /** Collects what belongs to a drawing; a dimension whose size is not known is left out. */
    static final class DrawingDraft {
        private final PartSubject subject;
        private final PartFigure side;
        private final List<Dimension> dimensions = new ArrayList<>();
        private final List<Pointer> pointers = new ArrayList<>();
        private Optional<PartFigure> face = Optional.empty();
        private boolean half;
        private boolean detail;
        private boolean scale = true;

        private DrawingDraft(PartSubject subject, PartFigure side) {
            this.subject = subject;
            this.side = side;
        }

        DrawingDraft face(PartFigure view) {
            face = Optional.of(view);
            return this;
        }

        DrawingDraft half() {
            half = true;
            return this;
        }

        /** Only the ring's own section, larger than the face. */
        DrawingDraft detail() {
            detail = true;
            return this;
        }

        /** The shape is to scale only where all of these are known. */
        DrawingDraft needs(Place... places) {
            scale &= subject.sizes().has(places);
            return this;
        }

        DrawingDraft notToScale() {
            scale = false;
            return this;
        }

        DrawingDraft size(Line line, Place place, String before, double a, double b) {
            subject.sizes().get(place).ifPresent(size -> dimensions.add(new Dimension(line, a, b, before, size)));
            return this;
        }

        DrawingDraft words(Line line, String text, double a, double b) {
            if (!text.isEmpty()) {
                dimensions.add(new Dimension(line, a, b, text, null));
            }
            return this;
        }

        DrawingDraft point(double w, double r, double atW, double atR, String words) {
            pointers.add(new Pointer(w, r, atW, atR, words));
            return this;
        }

        PartDrawing build() {
            return new PartDrawing(side, face, half, detail, scale, List.copyOf(dimensions), List.copyOf(pointers));
        }
    }
}
