package shimwright.bench.picture.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.bench.picture.svg.TextMetrics;

/**
 * The plan as a picture: one box a step in the order of the plan, as wide as it takes long up to a limit, in bands of the
 * station where it is done, wrapped into rows. What is done is hatched grey with a tick, where we are has a thick blue
 * frame, a hold point is a diamond on the box, a one-way step ends in a thick bar, a window is a numbered bracket under its
 * steps; the key says what each number is. Windows that run at the same time stand under one another.
 */
public final class PlanDiagram {
    private static final double LEFT = 4;
    private static final double BAND = 20;
    private static final double BOX = 48;
    private static final double LANE = 19;
    private static final double LEAST = 49;
    private static final double MOST = 96;
    private static final double PER_MINUTE = 1.1;
    private static final double KEY = 20;

    private final Svg svg = new Svg();
    private final List<Box> boxes;
    private final List<Place> places = new ArrayList<>();
    private final List<Window> windows;
    private final double row;
    private final double width;

    /** How a step stands. */
    public enum State {
        DONE,
        NOW,
        AHEAD
    }

    /**
     * A step.
     *
     * @param id printed in the box
     * @param station id of the station
     * @param minutes it takes
     * @param state how it stands
     * @param oneWay true where undoing it destroys something
     * @param hold true where it has a hold point
     * @param link where a touch leads
     */
    public record Box(
            String id, String station, double minutes, State state, boolean oneWay, boolean hold, String link) {}

    /**
     * A window.
     *
     * @param opens id of the step whose end opens it
     * @param closes id of the step that closes it
     * @param label how long it is
     */
    public record Bracket(String opens, String closes, String label) {}

    private record Place(int row, double x, double width) {}

    /** A window from one box to another, how far down it is drawn, and what it is. */
    private record Window(int from, int to, int lane, String label) {}

    private PlanDiagram(List<Box> boxes, List<Bracket> brackets, double width) {
        this.boxes = boxes;
        this.width = width;
        this.windows = windows(brackets);
        int lanes = windows.stream().mapToInt(Window::lane).max().orElse(0) + 1;
        this.row = BAND + BOX + 8 + lanes * LANE;
        lay();
    }

    /** Windows whose steps are both shown, each in the first lane that is free from its first to its last step. */
    private List<Window> windows(List<Bracket> brackets) {
        List<Window> laid = new ArrayList<>();
        for (Bracket bracket : brackets) {
            int from = find(bracket.opens());
            int to = find(bracket.closes());
            if (from >= 0 && to >= from) {
                int lane = 0;
                while (taken(laid, lane, from, to)) {
                    lane++;
                }
                laid.add(new Window(from, to, lane, bracket.label()));
            }
        }
        return List.copyOf(laid);
    }

    private static boolean taken(List<Window> laid, int lane, int from, int to) {
        return laid.stream().anyMatch(w -> w.lane() == lane && w.from() <= to && from <= w.to());
    }

    /**
     * The picture.
     *
     * @param prefix of ids
     * @param boxes steps, those done first
     * @param brackets windows; one whose steps are not both shown is left out
     * @param stations names by id, for the key
     * @param width in px
     */
    public static String svg(
            String prefix, List<Box> boxes, List<Bracket> brackets, Map<String, String> stations, double width) {
        PlanDiagram picture = new PlanDiagram(boxes, brackets, width);
        Map<String, String> key = new LinkedHashMap<>();
        boxes.forEach(box -> key.put(box.station(), stations.getOrDefault(box.station(), box.station())));
        int rows = picture.places.isEmpty()
                ? 0
                : picture.places.get(picture.places.size() - 1).row() + 1;
        double height = rows * picture.row + (key.size() + picture.windows.size() + 2) * KEY + 8;
        picture.svg.rootOfLinks(prefix, width, height, "The plan", picture.about());
        picture.bands();
        for (int i = 0; i < boxes.size(); i++) {
            picture.box(i);
        }
        for (int i = 0; i < picture.windows.size(); i++) {
            picture.window(i);
        }
        picture.key(key, rows * picture.row + KEY);
        return picture.svg.done();
    }

    private String about() {
        long done = boxes.stream().filter(box -> box.state() == State.DONE).count();
        return done + " of " + boxes.size() + " steps done, in the order of the plan, by station.";
    }

    private void lay() {
        int rows = 0;
        double x = LEFT;
        for (Box box : boxes) {
            double wide = Math.max(LEAST, Math.min(MOST, LEAST + PER_MINUTE * (box.minutes() - 10)));
            if (x + wide > width - LEFT && x > LEFT) {
                rows++;
                x = LEFT;
            }
            places.add(new Place(rows, x, wide));
            x += wide;
        }
    }

    private double top(Place place) {
        return place.row() * row;
    }

    /** One label over each run of steps at the same station within a row. */
    private void bands() {
        int from = 0;
        for (int i = 1; i <= boxes.size(); i++) {
            boolean ends = i == boxes.size()
                    || !boxes.get(i).station().equals(boxes.get(from).station())
                    || places.get(i).row() != places.get(from).row();
            if (ends && from < boxes.size()) {
                Place first = places.get(from);
                Place last = places.get(i - 1);
                double right = last.x() + last.width();
                svg.rect(
                        first.x(),
                        top(first) + 1,
                        right - first.x() - 1,
                        BAND - 3,
                        DrawingStyle.CASTING,
                        new Stroke("", 0));
                svg.text(
                        first.x() + 1,
                        top(first) + BAND - 6.5,
                        TextMetrics.fit(boxes.get(from).station(), DrawingStyle.SMALL, true, right - first.x() - 2),
                        Letter.start(DrawingStyle.SMALL).strong());
                from = i;
            }
        }
    }

    private void box(int index) {
        Box box = boxes.get(index);
        Place place = places.get(index);
        double x = place.x();
        double y = top(place) + BAND;
        svg.open("a", "href", box.link());
        boolean done = box.state() == State.DONE;
        boolean now = box.state() == State.NOW;
        Stroke frame =
                now ? new Stroke(DrawingStyle.BLUE, 3.5) : new Stroke(done ? DrawingStyle.GREY : DrawingStyle.INK, 1);
        double inset = now ? 2 : 0.5;
        svg.rect(
                x + inset,
                y + inset,
                place.width() - 2 * inset - 1,
                BOX - 2 * inset,
                done ? DrawingStyle.STEEL : now ? DrawingStyle.BLUE_WASH : DrawingStyle.SECTION,
                frame);
        if (box.oneWay()) {
            double right = x + place.width() - 3;
            svg.line(right, y, right, y + BOX, new Stroke(done ? DrawingStyle.GREY : DrawingStyle.INK, 5));
        }
        if (done) {
            svg.text(
                    x + place.width() - 19,
                    y + 12,
                    "✓",
                    Letter.start(DrawingStyle.SMALL).in(DrawingStyle.SOFT));
        }
        Letter letter = Letter.start(DrawingStyle.SMALL).in(done ? DrawingStyle.SOFT : DrawingStyle.INK);
        svg.text(
                x + 4,
                y + 31,
                TextMetrics.fit(box.id(), DrawingStyle.SMALL, now, place.width() - 8),
                now ? letter.strong() : letter);
        if (box.hold()) {
            diamond(x + 9, y + 8);
        }
        svg.close();
    }

    private void diamond(double x, double y) {
        String d = "M" + Svg.p(x - 5, y) + "L" + Svg.p(x, y - 5) + "L" + Svg.p(x + 5, y) + "L" + Svg.p(x, y + 5) + "Z";
        svg.path(d, DrawingStyle.BLUE, new Stroke(DrawingStyle.INK, 0.8));
    }

    private void window(int index) {
        Window window = windows.get(index);
        Place first = places.get(window.from());
        Place end = places.get(window.to());
        for (int at = first.row(); at <= end.row(); at++) {
            double left = at == first.row() ? first.x() : LEFT;
            Place last = at == end.row() ? end : lastOf(at);
            double right = last.x() + last.width() - 2;
            double y = at * row + BAND + BOX + 4 + window.lane() * LANE;
            Stroke stroke = new Stroke(DrawingStyle.BLUE, 1.6);
            svg.path("M" + Svg.p(left + 1, y) + "V" + Svg.n(y + 5) + "H" + Svg.n(right) + "V" + Svg.n(y), "", stroke);
            svg.text(
                    left + 3,
                    y + 16,
                    String.valueOf(index + 1),
                    Letter.start(DrawingStyle.SMALL).in(DrawingStyle.BLUE).strong());
        }
    }

    private Place lastOf(int row) {
        Place last = places.get(0);
        for (Place place : places) {
            last = place.row() == row ? place : last;
        }
        return last;
    }

    private int find(String step) {
        for (int i = 0; i < boxes.size(); i++) {
            if (boxes.get(i).id().equals(step)) {
                return i;
            }
        }
        return -1;
    }

    private void key(Map<String, String> stations, double top) {
        double y = top;
        diamond(LEFT + 8, y - 4);
        svg.text(LEFT + 20, y, "hold point", Letter.start(DrawingStyle.TEXT));
        svg.line(LEFT + 122, y - 12, LEFT + 122, y + 3, new Stroke(DrawingStyle.INK, 5));
        svg.text(LEFT + 132, y, "one way", Letter.start(DrawingStyle.TEXT));
        svg.path("M" + Svg.p(LEFT + 208, y - 8) + "v5h16v-5", "", new Stroke(DrawingStyle.BLUE, 1.6));
        svg.text(LEFT + 230, y, "window", Letter.start(DrawingStyle.TEXT));
        for (int i = 0; i < windows.size(); i++) {
            y += KEY;
            svg.text(
                    LEFT,
                    y,
                    String.valueOf(i + 1),
                    Letter.start(DrawingStyle.TEXT).in(DrawingStyle.BLUE).strong());
            words(y, windows.get(i).label());
        }
        for (Map.Entry<String, String> station : stations.entrySet()) {
            y += KEY;
            svg.text(LEFT, y, station.getKey(), Letter.start(DrawingStyle.TEXT).strong());
            words(y, station.getValue());
        }
    }

    private void words(double y, String text) {
        svg.text(
                LEFT + 72,
                y,
                TextMetrics.fit(text, DrawingStyle.TEXT, false, width - LEFT - 76),
                Letter.start(DrawingStyle.TEXT));
    }
}
