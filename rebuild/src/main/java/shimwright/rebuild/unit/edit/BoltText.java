package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.thread.Tightening;
import shimwright.mechanics.working.Worked;
import shimwright.rebuild.part.Family;
import shimwright.rebuild.part.StandardParts;

/**
 * Bolts as they are named at the bench: {@code 6 × M8x1.25 8.8}, {@code 4 x 3/8-16 grade 5 in steel}.
 *
 * @param quantity how many
 * @param thread as written
 * @param strength mark on the head; empty where it was not read
 * @param diameter m
 * @param pitch m; 0 where it is not known
 * @param steel true where the thread it goes into was said to be in steel or iron
 */
public record BoltText(int quantity, String thread, String strength, double diameter, double pitch, boolean steel) {
    private static final Pattern ONE = Pattern.compile(
            "(?:([1-9][0-9]?)\\s*[x×*]\\s*)?(M([0-9]{1,2}(?:\\.[0-9])?)((?:\\s*[x×]\\s*[0-9]+(?:\\.[0-9]+)?){0,2})"
                    + "|([0-9]{1,2})(?:/([0-9]{1,2}))?\"?-([0-9]{1,2}))(.*)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern MARK =
            Pattern.compile("(?:grade\\s*[0-9.]+|[0-9]{1,2}\\.[0-9])", Pattern.CASE_INSENSITIVE);
    private static final double INCH = 25.4e-3;
    /** A number behind the diameter from here on is a length: no bolt of a gearbox has such a pitch, mm. */
    private static final double LENGTH_FROM = 6;

    /** Share of the proof load in steel, usual; half in light alloy of unknown length of thread: common practice, no source. */
    private static final double IN_STEEL = 0.75;

    private static final double IN_LIGHT_ALLOY = 0.5;

    /** The bolts that a text names; what cannot be read as bolts is left out. */
    public static List<BoltText> of(String text) {
        List<BoltText> bolts = new ArrayList<>();
        for (String part : text.split("[;\\n]|,(?=\\s*[0-9])")) {
            Matcher one = ONE.matcher(part.strip());
            if (one.matches()) {
                bolts.add(read(one));
            }
        }
        return bolts;
    }

    private static BoltText read(Matcher one) {
        String rest = one.group(8);
        Matcher mark = MARK.matcher(rest);
        String strength = mark.find() ? mark.group() : "";
        int quantity = one.group(1) == null ? 1 : Integer.parseInt(one.group(1));
        boolean steel = rest.toLowerCase(Locale.ROOT).matches(".*\\b(steel|iron)\\b.*");
        String thread = one.group(2).replaceAll("\\s", "");
        if (one.group(3) == null) {
            double over = one.group(6) == null ? 1 : Double.parseDouble(one.group(6));
            double inches = over == 0 ? 0 : Double.parseDouble(one.group(5)) / over;
            double threads = Math.max(1, Double.parseDouble(one.group(7)));
            return new BoltText(quantity, thread, strength, inches * INCH, INCH / threads, steel);
        }
        double diameter = Double.parseDouble(one.group(3)) * 1e-3;
        double pitch = 0;
        for (String number : one.group(4).split("[x×]")) {
            if (!number.isBlank() && Double.parseDouble(number.strip()) < LENGTH_FROM) {
                pitch = Double.parseDouble(number.strip()) * 1e-3;
            }
        }
        return new BoltText(quantity, thread, strength, diameter, pitch > 0 ? pitch : coarse(diameter), steel);
    }

    /** The coarse pitch of a metric thread by the tables; 0 where they have none. */
    private static double coarse(double diameter) {
        return StandardParts.shipped().all().stream()
                .filter(part -> part.family() == Family.HEX_SCREW)
                .filter(part -> near(part.size("thread_d_mm"), diameter))
                .mapToDouble(part -> part.size("pitch_mm").orElse(0))
                .max()
                .orElse(0);
    }

    private static boolean near(OptionalDouble size, double diameter) {
        return size.isPresent() && Math.abs(size.getAsDouble() - diameter) < 1e-6;
    }

    /** The torque that tightening proposes, N·m; empty where diameter, pitch or the mark on the head is missing. */
    OptionalDouble torque() {
        if (pitch <= 0 || strength.isEmpty() || diameter < 1e-3) {
            return OptionalDouble.empty();
        }
        boolean metric = thread.startsWith("M") || thread.startsWith("m");
        Map<String, Object> typed = new LinkedHashMap<>();
        typed.put("diameter", diameter + " m");
        typed.put(metric ? "pitch" : "perInch", metric ? pitch + " m" : Double.toString(INCH / pitch));
        typed.put("strengthClass", strength);
        typed.put("proofShare", Double.toString(share()));
        typed.put("condition", "lubricated");
        return Tightening.SHEET.read(typed, UnitSystem.METRIC).flatMap(bolt -> Tightening.work(bolt.value()))
                        instanceof Outcome.Ok<Worked<Tightening.Result>> ok
                ? OptionalDouble.of(rounded(ok.value().result().wrench().torque()))
                : OptionalDouble.empty();
    }

    private double share() {
        return steel ? IN_STEEL : IN_LIGHT_ALLOY;
    }

    /** Down to two figures: more would pretend. */
    private static double rounded(double torque) {
        double figure = Math.pow(10, Math.floor(Math.log10(torque)) - 1);
        return Math.round(Math.floor(torque / figure + 1e-9) * figure * 1000) / 1000.0;
    }

    /** How the torque came about, as the file writes it. */
    String origin() {
        return "computed: from the mark on the head, " + Math.round(share() * 100)
                + " % of the proof load, threads clean"
                + " and lightly oiled; "
                + (steel
                        ? "thread in steel"
                        : "thread in light alloy of unknown length: " + "check what the thread bears")
                + "; a printed one takes its place";
    }

    /** In words with its torque, where there is one. */
    String words() {
        String what = quantity + " × " + thread + (strength.isEmpty() ? "" : " " + strength);
        OptionalDouble torque = torque();
        return torque.isPresent()
                ? what + ": " + Quantities.print(torque.getAsDouble(), Kind.TORQUE, UnitSystem.METRIC) + " computed"
                : what;
    }

    /** True for the same part in the hand: thread without its length and the count. */
    boolean like(String otherThread, int otherQuantity) {
        return quantity == otherQuantity
                && thread.replace('×', 'x')
                        .equalsIgnoreCase(otherThread.replace('×', 'x').replaceAll("\\s", ""));
    }
}
