package shimwright.mechanics.fit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.reference.Table;
import shimwright.mechanics.reference.Table.Row;
import shimwright.mechanics.working.Working;

/**
 * Limit deviations by ISO 286-1:2010: grades IT1 to IT14 (Table 1), shafts c to u (Tables 4, 5), holes C to U by the
 * general rule, the delta rule and the table of J (Tables 2, 3). Bearing rings of class Normal by ISO 492. Everything
 * comes from the printed tables; the background formulas miss them by up to 2 µm and are not used.
 */
final class Iso286 {
    private static final String ISO = "ISO 286-1:2010";
    private static final Table GRADES = Table.read("iso-286-1-2010/table-1.csv");
    private static final Table SHAFTS = Table.read("iso-286-1-2010/tables-4-5.csv");
    private static final Table HOLES_J = Table.read("iso-286-1-2010/tables-2-3.csv");
    private static final Pattern CLASS = Pattern.compile("([A-Za-z]{1,2})\\s*(\\d{1,2})");
    private static final Set<String> ABOVE_LINE = Set.of("k", "m", "n", "p", "r", "s", "t", "u");
    private static final Set<String> KNOWN =
            Set.of("c", "cd", "d", "e", "ef", "f", "fg", "g", "h", "js", "j", "k", "m", "n", "p", "r", "s", "t", "u");

    private Iso286() {}

    /**
     * Limits of a class.
     *
     * @param place where it was typed, for refusals
     * @param nominal nominal size in metres, within the tables
     * @param typed such as {@code H7}, {@code p6}, {@code bearing}, {@code taper}
     * @param hole whether a hole is meant (capital letter) or a shaft
     * @param w takes the working
     * @return refused: no class, a class of the other side, an unknown letter or grade, a cell the tables leave blank
     */
    static Outcome<SizeLimits> of(String place, double nominal, String typed, boolean hole, Working w) {
        Optional<Ring> ring = Ring.named(typed);
        if (ring.isPresent()) {
            return ring.get().limits(place, nominal, hole, w);
        }
        Matcher parts = CLASS.matcher(typed.strip());
        if (!parts.matches()) {
            return Outcome.refused(Refusal.of(
                    place,
                    "\"" + typed + "\" is not a tolerance class",
                    "Type a letter and a grade, such as " + (hole ? "H7" : "p6") + ", or bearing, or taper"));
        }
        String letter = parts.group(1);
        boolean capital = letter.equals(letter.toUpperCase(Locale.ROOT));
        String small = letter.toLowerCase(Locale.ROOT);
        if (capital != hole || (!capital && !letter.equals(small))) {
            return Outcome.refused(Refusal.of(
                    place,
                    "\"" + typed + "\" is not the class of a " + (hole ? "hole" : "shaft"),
                    "Holes have capital letters, shafts small ones: H7, p6"));
        }
        int grade = Integer.parseInt(parts.group(2));
        if (!KNOWN.contains(small)) {
            return Outcome.refused(Refusal.of(
                    place,
                    "\"" + typed + "\" has a letter outside the tables held here",
                    hole ? "Holes from C to U are held" : "Shafts from c to u are held"));
        }
        if (grade < 1 || grade > 14) {
            return Outcome.refused(
                    Refusal.of(place, "\"" + typed + "\" has grade IT" + grade, "Grades IT1 to IT14 are held"));
        }
        return new Iso286Case(place, typed, mm(nominal), small, grade, w).limits(nominal, hole);
    }

    /** Millimetres to the nearest nanometre, so that a size typed as 50 is 50. */
    static double mm(double metres) {
        return Math.rint(metres * 1e9) / 1e6;
    }

    static Optional<Row> row(Table table, double mm) {
        return table.rows().stream()
                .filter(row -> mm > row.number("over") && mm <= row.number("to"))
                .findFirst();
    }

    /** Bearing rings of class Normal, whose bore and outside lie wholly below the nominal size. */
    private enum Ring {
        BEARING("radial"),
        TAPER("taper");

        private static final Table BORES = Table.read("iso-492/normal-bores.csv");
        private static final Table OUTSIDES = Table.read("iso-492/normal-outsides.csv");
        private final String column;

        Ring(String column) {
            this.column = column;
        }

        static Optional<Ring> named(String typed) {
            return List.of(values()).stream()
                    .filter(ring -> ring.name().equalsIgnoreCase(typed.strip()))
                    .findFirst();
        }

        Outcome<SizeLimits> limits(String place, double nominal, boolean hole, Working w) {
            Optional<Row> row = row(hole ? BORES : OUTSIDES, mm(nominal)).filter(found -> found.has(column));
            if (row.isEmpty()) {
                return Outcome.refused(Refusal.of(
                        place,
                        "this size is outside the table of " + (hole ? "bearing bores" : "bearing outside diameters"),
                        "Take the limits from the bearing maker's list"));
            }
            double lower = w.line(
                    hole ? "lower deviation of the bearing bore" : "lower deviation of the bearing outside",
                    "printed table, upper deviation 0",
                    row.get().number(column) * 1e-6,
                    Kind.LENGTH,
                    "ISO 492, class Normal");
            return Outcome.ok(finished(nominal, 0, lower, null, null));
        }
    }

    static SizeLimits finished(
            double nominal, double upper, double lower, @Nullable Double delta, @Nullable Double roundedHalf) {
        return new SizeLimits(upper, lower, upper - lower, nominal + upper, nominal + lower, delta, roundedHalf);
    }

    /** One class at one size; µm and mm inside, as the tables are printed. */
    private record Iso286Case(String place, String typed, double mm, String letter, int grade, Working w) {

        Outcome<SizeLimits> limits(double nominal, boolean hole) {
            Row grades = row(GRADES, mm).orElseThrow(() -> new IllegalArgumentException("size " + mm));
            double it = w.line(
                    "tolerance IT" + grade + " of the " + (hole ? "hole" : "shaft"),
                    "printed table, over " + grades.text("over") + " to " + grades.text("to") + " mm",
                    grades.number(String.valueOf(grade)) * 1e-6,
                    Kind.LENGTH,
                    ISO + " Table 1");
            if (letter.equals("js")) {
                boolean odd = Math.rint(it * 1e6) % 2 == 1 && grade >= 7 && grade <= 11;
                Double rounded = odd ? Math.floor(it * 1e6 / 2) * 1e-6 : null;
                w.line("half the tolerance", "± IT/2, not rounded", it / 2, Kind.LENGTH, ISO);
                return Outcome.ok(finished(nominal, it / 2, -it / 2, null, rounded));
            }
            return hole ? hole(nominal, it) : shaft(nominal, it);
        }

        private Outcome<SizeLimits> shaft(double nominal, double it) {
            return shaftDeviation().map(um -> {
                boolean isLower = letter.equals("j") || ABOVE_LINE.contains(letter);
                double deviation = w.line(
                        isLower ? "lower deviation ei of the shaft" : "upper deviation es of the shaft",
                        "printed table, letter " + letter,
                        um * 1e-6,
                        Kind.LENGTH,
                        ISO + " Tables 4 and 5");
                return isLower
                        ? finished(nominal, deviation + it, deviation, null, null)
                        : finished(nominal, deviation, deviation - it, null, null);
            });
        }

        private Outcome<Double> shaftDeviation() {
            if (letter.equals("h")) {
                return Outcome.ok(0.0);
            }
            if (letter.equals("k") && (grade < 4 || grade > 7)) {
                return Outcome.ok(0.0);
            }
            String column = letter.equals("j") ? (grade == 5 || grade == 6 ? "j5-6" : "j" + grade) : letter;
            Row row = row(SHAFTS, mm).orElseThrow(() -> new IllegalArgumentException("size " + mm));
            if (!row.has(column)) {
                return undefined();
            }
            return Outcome.ok(row.number(column));
        }

        private <T> Outcome<T> undefined() {
            return Outcome.refused(Refusal.of(
                    place,
                    "\"" + typed + "\" is not defined at this size",
                    "The table leaves this cell blank; take a neighbouring letter or grade"));
        }

        private Outcome<SizeLimits> hole(double nominal, double it) {
            if (letter.equals("j")) {
                Row row = row(HOLES_J, mm).orElseThrow(() -> new IllegalArgumentException("size " + mm));
                return row.has(String.valueOf(grade))
                        ? Outcome.ok(below(nominal, it, row.number(String.valueOf(grade)), null))
                        : undefined();
            }
            if (!ABOVE_LINE.contains(letter)) {
                return shaftDeviation().map(um -> {
                    double lower = w.line(
                            "lower deviation EI of the hole",
                            "mirror of the shaft, EI = −es",
                            um == 0 ? 0 : -um * 1e-6,
                            Kind.LENGTH,
                            ISO + " general rule");
                    return finished(nominal, lower + it, lower, null, null);
                });
            }
            return aboveLine(nominal, it);
        }

        /** Holes K to U: the delta rule to grade 8 (K, M, N) or 7 (P to U), the mirror without Δ above. */
        private Outcome<SizeLimits> aboveLine(double nominal, double it) {
            boolean soft = Set.of("k", "m", "n").contains(letter);
            boolean fine = grade <= (soft ? 8 : 7);
            Row row = row(SHAFTS, mm).orElseThrow(() -> new IllegalArgumentException("size " + mm));
            if (!row.has(letter) || (letter.equals("k") && !fine && mm > 3)) {
                return undefined();
            }
            double mirror = row.number(letter);
            if (mm <= 3) {
                return Outcome.ok(below(nominal, it, -mirror, null));
            }
            if (!fine) {
                return Outcome.ok(below(nominal, it, letter.equals("n") ? 0 : -mirror, null));
            }
            if (grade < 3) {
                return Outcome.refused(Refusal.of(
                        place,
                        "\"" + typed + "\" needs a Δ, which the table gives from IT3 on",
                        "Take grade 3 or coarser"));
            }
            if (letter.equals("m") && grade == 6 && mm > 250 && mm <= 315) {
                return Outcome.ok(below(nominal, it, -9, null));
            }
            Row grades = row(GRADES, mm).orElseThrow(() -> new IllegalArgumentException("size " + mm));
            double finer = grades.number(String.valueOf(grade - 1));
            double delta = w.line(
                    "Δ", "IT" + grade + " − IT" + (grade - 1), it - finer * 1e-6, Kind.LENGTH, ISO + " delta rule");
            return Outcome.ok(below(nominal, it, Math.rint(2 * (-mirror + delta * 1e6)) / 2, delta));
        }

        private SizeLimits below(double nominal, double it, double upperUm, @Nullable Double delta) {
            double upper = w.line(
                    "upper deviation ES of the hole",
                    delta == null ? "printed table" : "−ei + Δ",
                    upperUm == 0 ? 0 : upperUm * 1e-6,
                    Kind.LENGTH,
                    ISO + " Tables 2 and 3");
            return finished(nominal, upper, upper - it, delta, null);
        }
    }
}
