package shimwright.mechanics.oil;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.reference.Table;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Group;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code oil-viscosity}. */
public final class OilViscosity {
    static final double LEAST = 2e-6;
    private static final double MOST = 20;
    private static final String GRADES = "ISO 3448; SAE J306; SAE J300";
    private static final Table KNOWN = Table.read("oil-grades/grades.csv");
    private static final double FORTY = 313.15;
    private static final double HUNDRED = 373.15;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "oil-viscosity",
                    "Oil viscosity",
                    "Viscosity of an oil at any temperature from two, its viscosity index, and the grades it fits.",
                    List.of(Walther.SOURCE, ViscosityIndex.SOURCE, GRADES),
                    Case.class,
                    Result.class,
                    OilViscosity::work)
            .drawn(OilPictures::viscosity);

    private OilViscosity() {}

    /** Two known points; temperatures in kelvin, viscosities in m²/s. */
    public record Points(
            @Input(
                    kind = Kind.VISCOSITY,
                    meaning = "viscosity at the first",
                    min = LEAST,
                    max = 0.1,
                    example = "150 mm²/s")
            double viscosity,

            @Input(kind = Kind.TEMPERATURE, meaning = "first temperature", orElse = "40 °C", min = 223.15, max = 473.15)
            double first,

            @Input(
                    kind = Kind.VISCOSITY,
                    meaning = "viscosity at the second",
                    min = LEAST,
                    max = 0.1,
                    example = "15 mm²/s")
            double secondViscosity,

            @Input(
                    kind = Kind.TEMPERATURE,
                    meaning = "second temperature",
                    orElse = "100 °C",
                    min = 223.15,
                    max = 473.15)
            double second) {}

    /** What is known of the oil and what is asked; temperatures in kelvin, density in kg/m³. */
    public record Case(
            @Group Points points,

            @Input(
                    kind = Kind.TEMPERATURE,
                    meaning = "temperature asked for",
                    min = 223.15,
                    max = 473.15,
                    example = "0 °C")
            double wanted,

            @Input(kind = Kind.DENSITY, meaning = "density at 15 °C, for the dynamic viscosity", min = 700, max = 1100)
            @Nullable
            Double density,

            @Input(
                    meaning = "grade it should be, such as gear SAE 90 or ISO VG 150",
                    orElse = "",
                    example = "gear SAE 90")
            String grade) {}

    /** Viscosities in m²/s. */
    public record Result(
            @Output(kind = Kind.VISCOSITY, meaning = "viscosity at the temperature asked for", decimals = 2)
            double viscosity,

            @Output(meaning = "dynamic viscosity there, mPa·s", decimals = 1) @Nullable
            Double dynamic,

            @Output(kind = Kind.VISCOSITY, meaning = "viscosity at 40 °C", decimals = 2)
            double atForty,

            @Output(kind = Kind.VISCOSITY, meaning = "viscosity at 100 °C", decimals = 2)
            double atHundred,

            @Output(meaning = "viscosity index", decimals = 1) @Nullable
            Double index,

            @Output(meaning = "grades it fits") List<String> grades,
            @Output(meaning = "is it the grade asked for") String answer) {}

    /**
     * log log(ν + 0.7) = A − B log T through the two points; index from the viscosities at 40 and 100 °C; grades by their bands.
     *
     * @param c viscosities in m²/s, temperatures in K
     * @return viscosities in m²/s; refused: temperatures nearer than 10 K, an oil that thickens with heat, a grade that is not
     *     in the table, a viscosity under 2 mm²/s or over 20 m²/s, which the law does not cover. Source: ASTM D341, D2270
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        Points p = c.points();
        boolean ordered = p.first() < p.second();
        if (Math.abs(p.first() - p.second()) < 10) {
            refusals.add(Refusal.of(
                    "second", "the two temperatures lie too near each other", "Take points 10 K apart or more"));
        } else if (ordered ? p.viscosity() <= p.secondViscosity() : p.viscosity() >= p.secondViscosity()) {
            refusals.add(Refusal.of(
                    "secondViscosity",
                    "the oil would not thin with heat",
                    "Look which viscosity belongs to which temperature"));
        }
        if (!c.grade().isBlank() && named(c.grade()) == null) {
            refusals.add(Refusal.of(
                    "grade",
                    "\"" + c.grade() + "\" is in no table here",
                    "Say ISO VG 150, gear SAE 90 or engine SAE 40; of 75W-90 the 90 is meant"));
        }
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        Walther oil = Walther.through(p.first(), p.viscosity(), p.second(), p.secondViscosity());
        for (double temperature : new double[] {c.wanted(), FORTY, HUNDRED}) {
            double found = oil.at(temperature);
            if (!(found >= LEAST * (1 - 1e-9) && found <= MOST)) {
                refusals.add(Refusal.of(
                        temperature == c.wanted() ? "wanted" : "secondViscosity",
                        "at " + Quantities.brief(temperature, Units.CELSIUS)
                                + " the law leaves its range, 2 mm²/s to 20 m²/s",
                        "Nothing is said beyond it: near its pour point an oil stiffens faster than any law"));
                break;
            }
        }
        return refusals.isEmpty() ? Outcome.ok(found(c, oil)) : Outcome.refused(refusals);
    }

    private static Worked<Result> found(Case c, Walther oil) {
        Working w = new Working();
        w.line("B", "Δ log log(ν + 0.7) / Δ log T", oil.slope(), Kind.NUMBER, Walther.SOURCE);
        w.line("A", "log log(ν + 0.7) + B log T", oil.level(), Kind.NUMBER, Walther.SOURCE);
        double at = w.line("ν", "10^10^(A − B log T) − 0.7", oil.at(c.wanted()), Kind.VISCOSITY, Walther.SOURCE);
        double forty = w.line("ν at 40 °C", "the same", oil.at(FORTY), Kind.VISCOSITY, Walther.SOURCE);
        double hundred = w.line("ν at 100 °C", "the same", oil.at(HUNDRED), Kind.VISCOSITY, Walther.SOURCE);
        Double index = ViscosityIndex.of(forty, hundred, w);
        Double density = c.density();
        Double dynamic = density == null
                ? null
                : w.line(
                        "η, mPa·s",
                        "ν × ρ15 × (1 − 0.0007 (T − 15 °C))",
                        at * density * (1 - 0.0007 * (c.wanted() - 288.15)) * 1000,
                        Kind.NUMBER,
                        "0.0007 per K, common practice, no source");
        List<String> grades = new ArrayList<>();
        for (Table.Row row : KNOWN.rows()) {
            if (fits(row, forty, hundred)) {
                grades.add(row.text("name"));
            }
        }
        w.caution(
                "The grade is not the friction: blocker rings and yellow metal need the class that the book names, GL-4 or GL-5.");
        w.caution(
                "The W of a multigrade is tested in the cold, by a dynamic viscosity: no reading at 40 and 100 °C proves it.");
        w.caution(
                "Oil out of a gearbox is thinned by shear, water and fuel, or thickened by age; what it is now says little "
                        + "about what went in.");
        if (c.wanted() < 273.15) {
            w.caution("In deep cold the law reads too thin: wax and improvers stiffen the oil further.");
        }
        return w.worked(new Result(at, dynamic, forty, hundred, index, grades, answer(c.grade(), forty, hundred)));
    }

    private static boolean fits(Table.Row row, double forty, double hundred) {
        double nu = (row.number("at") == 40 ? forty : hundred) * 1e6;
        boolean upTo = row.number("at") == 40;
        return nu >= row.number("least") * (1 - 1e-9)
                && (upTo ? nu <= row.number("most") * (1 + 1e-9) : nu < row.number("most"));
    }

    private static String answer(String grade, double forty, double hundred) {
        Table.Row row = grade.isBlank() ? null : named(grade);
        if (row == null) {
            return "none named";
        }
        double nu = (row.number("at") == 40 ? forty : hundred) * 1e6;
        if (fits(row, forty, hundred)) {
            return "yes, within " + row.text("name");
        }
        return "no, " + (nu < row.number("least") ? "thinner than " : "thicker than ") + row.text("name");
    }

    private static Table.@Nullable Row named(String grade) {
        String wanted = plain(grade.replaceFirst("(?i)\\d+W-?(?=\\d)", ""));
        for (Table.Row row : KNOWN.rows()) {
            String name = plain(row.text("name"));
            if (name.equals(wanted) || name.equals("gear" + wanted) || name.equals("gearsae" + wanted)) {
                return row;
            }
        }
        return null;
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
    }
}
