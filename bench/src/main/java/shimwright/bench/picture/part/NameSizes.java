package shimwright.bench.picture.part;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.bench.picture.part.PartSize.Origin;
import shimwright.bench.picture.part.PartSize.Place;
import shimwright.rebuild.part.StandardPart;
import shimwright.rebuild.part.StandardParts;

/** Sizes that stand in a name or a stamp, such as 40x55x8, 5x26 or M30x1.5, and those of the standard part it names. */
final class NameSizes {
    private static final String N = "(\\d+(?:\\.\\d+)?)";
    private static final Pattern THREE = Pattern.compile(N + "\\s?[x×]\\s?" + N + "\\s?[x×]\\s?" + N);
    private static final Pattern TWO = Pattern.compile(N + "\\s?[x×]\\s?" + N);
    private static final Pattern DIAMETER = Pattern.compile(N + " ?(?:mm\\b|[a-z]\\d\\b)");
    private static final Pattern METRIC_THREAD =
            Pattern.compile("\\bM" + N + "(?:\\s?[x×]\\s?" + N + ")?(?:\\s?[x×]\\s?" + N + ")?");
    private static final Pattern INCH_THREAD =
            Pattern.compile("(\\d+/\\d+)-(\\d+)(?: (UNC|UNF|NPTF?))?(?: x (\\d+)?(?: ?(\\d+)/(\\d+))?)?");
    private static final double MM = 1e-3;
    private static final double INCH = 25.4e-3;
    /** No thread of the trade is coarser than this share of its diameter; a larger second number is its length. */
    private static final double COARSEST = 0.27;

    private NameSizes() {}

    /** Adds what a name says about a part of this form. */
    static void add(PartSizes to, PartForm form, String name, Origin origin) {
        switch (form) {
            case LIP_SEAL, RING, NEEDLE_CAGE, NEEDLE_BUSH, BALL_BEARING, ROLLER_BEARING, TAPER_BEARING ->
                ring(to, name, origin);
            case O_RING -> pair(to, name, Place.INSIDE, Place.CORD, origin);
            case SHAFT_RING, BORE_RING -> pair(to, name, Place.FITS, Place.WIDTH, origin);
            case PIN, SPRING_PIN, RAIL, TUBE -> pin(to, name, origin);
            case KEY -> pair(to, name, Place.WIDTH, Place.HEIGHT, origin);
            case NUT, PLUG, SCREW, SOCKET_SCREW, SWITCH -> thread(to, name, origin);
            default -> {
                // the name of nothing else has sizes in it
            }
        }
    }

    private static void ring(PartSizes to, String name, Origin origin) {
        Matcher three = THREE.matcher(name);
        if (three.find() && mm(three, 1) < mm(three, 2)) {
            to.with(Place.INSIDE, mm(three, 1), origin)
                    .with(Place.OUTSIDE, mm(three, 2), origin)
                    .with(Place.WIDTH, mm(three, 3), origin);
            return;
        }
        Matcher two = TWO.matcher(name);
        if (!three.reset().find() && two.find() && mm(two, 1) < mm(two, 2)) {
            to.with(Place.INSIDE, mm(two, 1), origin).with(Place.OUTSIDE, mm(two, 2), origin);
        }
    }

    private static void pair(PartSizes to, String name, Place first, Place second, Origin origin) {
        Matcher two = TWO.matcher(name);
        if (two.find()) {
            to.with(first, mm(two, 1), origin).with(second, mm(two, 2), origin);
        }
    }

    private static void pin(PartSizes to, String name, Origin origin) {
        Matcher two = TWO.matcher(name);
        Matcher one = DIAMETER.matcher(name);
        if (two.find()) {
            to.with(Place.OUTSIDE, mm(two, 1), origin).with(Place.LENGTH, mm(two, 2), origin);
        } else if (one.find()) {
            to.with(Place.OUTSIDE, mm(one, 1), origin);
        }
    }

    private static void thread(PartSizes to, String name, Origin origin) {
        Matcher metric = METRIC_THREAD.matcher(name);
        Matcher inch = INCH_THREAD.matcher(name);
        if (metric.find()) {
            double d = mm(metric, 1);
            to.with(Place.THREAD, d, origin);
            for (int group = 2; group <= 3 && metric.group(group) != null; group++) {
                Place place = group == 2 && mm(metric, 2) <= COARSEST * d ? Place.PITCH : Place.LENGTH;
                to.with(place, mm(metric, group), origin);
            }
        } else if (inch.find()) {
            boolean pipe = inch.group(3) != null && inch.group(3).startsWith("NPT");
            if (!pipe) {
                to.with(Place.THREAD, fraction(inch.group(1)) * INCH, origin)
                        .with(Place.PITCH, INCH / Double.parseDouble(inch.group(2)), origin);
            }
            double length = inch.group(4) == null ? 0 : Double.parseDouble(inch.group(4));
            if (inch.group(5) != null) {
                length += Double.parseDouble(inch.group(5)) / Double.parseDouble(inch.group(6));
            } else if (inch.group(4) != null && name.substring(inch.end()).startsWith("/")) {
                length = fraction(inch.group(4) + name.substring(inch.end()).split(" ", 2)[0]);
            }
            to.with(Place.LENGTH, length * INCH, origin);
        }
    }

    /** The thread of a name as it is called, such as M8 or 3/8-16 UNC; empty where it has none. */
    static String threadOf(String name) {
        Matcher inch = INCH_THREAD.matcher(name);
        Matcher metric = METRIC_THREAD.matcher(name);
        if (metric.find()) {
            boolean pitch = metric.group(2) != null && mm(metric, 2) <= COARSEST * mm(metric, 1);
            return "M" + metric.group(1) + (pitch ? "x" + metric.group(2) : "");
        }
        return inch.find()
                ? inch.group(1) + "-" + inch.group(2) + (inch.group(3) == null ? "" : " " + inch.group(3))
                : "";
    }

    /** Adds what the standard says of the one part that a call-out names; nothing where several bear it. */
    static void standard(PartSizes to, String callOut, PartForm form) {
        if (callOut.isBlank() || callOut.length() > 60) {
            return;
        }
        var found = StandardParts.shipped().byStamp(callOut);
        if (found.isOk()) {
            found.orElseThrow().matches().stream()
                    .filter(match -> match.certainty() == shimwright.rebuild.part.Match.Certainty.STAMPED
                            || match.certainty() == shimwright.rebuild.part.Match.Certainty.ONE_OF_SEVERAL)
                    .map(shimwright.rebuild.part.Match::part)
                    .filter(part -> StandardSizes.form(part) == form)
                    .findFirst()
                    .ifPresent(part -> StandardSizes.add(to, part, origin(part)));
        }
    }

    private static Origin origin(StandardPart part) {
        return part.standard().isEmpty() ? Origin.CALL_OUT : Origin.STANDARD;
    }

    private static double fraction(String text) {
        String[] parts = text.split("/", 2);
        return Double.parseDouble(parts[0]) / Double.parseDouble(parts[1]);
    }

    private static double mm(Matcher matcher, int group) {
        return Double.parseDouble(matcher.group(group)) * MM;
    }
}
