package shimwright.bench.web.kit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Line;
import shimwright.rebuild.job.Entry.PieceIn;

/** Values as the person wants to see them: units, uncertainty, times. Handed to every template. */
public record Show(UnitSystem system, ZoneId zone) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    /** A value of any kind in the person's units. */
    public String value(double si, Kind kind) {
        UnitSystem.Display display = display(kind);
        return Quantities.print(si, display.unit(), display.decimals());
    }

    /** Unit and decimals as a bench wants them: pressures are those of an air test, in bar, not stresses. */
    public UnitSystem.Display display(Kind kind) {
        if (kind == Kind.PRESSURE) {
            return system == UnitSystem.INCH
                    ? new UnitSystem.Display(Units.PSI, 2)
                    : new UnitSystem.Display(Units.BAR, 3);
        }
        return system.display(kind);
    }

    /** A length in the person's units. */
    public String length(double metres) {
        return value(metres, Kind.LENGTH);
    }

    /** A length with its expanded uncertainty (k = 2). */
    public String lengthWithUncertainty(double metres, double u) {
        UnitSystem.Display display = system.display(Kind.LENGTH);
        return Quantities.print(metres, 2 * u, display.unit(), display.decimals());
    }

    /** Two limits as a range. */
    public String range(double lower, double upper) {
        UnitSystem.Display display = system.display(Kind.LENGTH);
        String low = Quantities.print(lower, display.unit(), display.decimals());
        return low.replace(" " + display.unit().symbol(), "") + " … "
                + Quantities.print(upper, display.unit(), display.decimals());
    }

    /** A torque in the person's units, with the unit's name; newton metres handed in. */
    public String torque(double newtonMetres) {
        return value(newtonMetres, Kind.TORQUE);
    }

    /** A probability in percent; never rounds up to certainty. */
    public String percent(double probability) {
        double shown = Math.floor(probability * 1000) / 10;
        return probability > 0.999 ? "over 99.9 %" : String.format(Locale.ENGLISH, "%.1f %%", shown);
    }

    /** A number with so many decimals. */
    public String number(double value, int decimals) {
        return String.format(Locale.ENGLISH, "%." + decimals + "f", value);
    }

    /** One line of working: its value in the person's units. */
    public String line(Line line) {
        return value(line.value(), line.kind());
    }

    /** A verdict in the words of the bench. */
    public String verdict(Verdict verdict) {
        return switch (verdict) {
            case IN -> "within limits";
            case OUT -> "outside limits";
            case NOT_PROVEN -> "not proven";
        };
    }

    /** A mark that does not need colour. */
    public String mark(Verdict verdict) {
        return switch (verdict) {
            case IN -> "✓";
            case OUT -> "✗";
            case NOT_PROVEN -> "?";
        };
    }

    /** The day in the shop's own zone. */
    public LocalDate date(Instant at) {
        return at.atZone(zone).toLocalDate();
    }

    /** The day of a moment in the shop's time zone. */
    public String day(Instant at) {
        return DAY.format(at.atZone(zone));
    }

    /** The time of day of a moment in the shop's time zone. */
    public String time(Instant at) {
        return TIME.format(at.atZone(zone));
    }

    /** Day and time of a moment in the shop's time zone. */
    public String dayAndTime(Instant at) {
        return day(at) + ", " + time(at);
    }

    /** A span in the words of a bench. */
    public String span(double seconds) {
        Duration d = Duration.ofSeconds(Math.round(seconds));
        if (d.toMinutes() < 2) {
            return d.toSeconds() + " s";
        }
        if (d.toHours() < 3) {
            return d.toMinutes() + " min";
        }
        return d.toDays() < 3 ? d.toHours() + " h" : d.toDays() + " days";
    }

    /** A span that is handed in as minutes. */
    public String minutes(double minutes) {
        return span(minutes * 60);
    }

    /** Minutes as hours, without the unit. */
    public String hours(double minutes) {
        return number(minutes / 60, 1);
    }

    /** A share as whole hundredths, without the sign. */
    public String hundredths(double share) {
        return number(share * 100, 0);
    }

    /** A number as somebody would type it; empty where there is none. */
    public String plain(@Nullable Double number) {
        return number == null
                ? ""
                : BigDecimal.valueOf(number)
                        .round(new MathContext(7))
                        .stripTrailingZeros()
                        .toPlainString();
    }

    /** A share as somebody would type it in percent. */
    public String inPercent(@Nullable Double share) {
        return plain(share == null ? null : (Double) (100 * share));
    }

    /** Seconds as somebody would type them in minutes. */
    public String inMinutes(@Nullable Double seconds) {
        return plain(seconds == null ? null : (Double) (seconds / 60));
    }

    /** A length without its sign. */
    public String size(double metres) {
        return length(Math.abs(metres));
    }

    /** Pieces of a pack, each by its thickness with its tag behind it. */
    public String pieces(List<PieceIn> pieces) {
        return pieces.stream()
                .map(piece -> length(piece.thickness()) + " (" + piece.piece() + ")")
                .collect(Collectors.joining(" + "));
    }

    /** How thick a pack is. */
    public String thickness(List<PieceIn> pieces) {
        return length(pieces.stream().mapToDouble(PieceIn::thickness).sum());
    }

    /** Things by their names; by their ids where they have none. */
    public String named(Collection<String> ids, Map<String, String> names) {
        return ids.stream().map(id -> names.getOrDefault(id, id)).collect(Collectors.joining(", "));
    }

    /** The unit in which a bare number of a kind is read; empty for a plain number. */
    public String unit(Kind kind) {
        return display(kind).unit().symbol();
    }

    /** Whole numbers in a row. */
    public String listed(List<Long> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /** The beginning of a hash. */
    public String shortened(String hash, int letters) {
        return hash.substring(0, letters);
    }

    /** A key of the unit file as words. */
    public String spaced(String key) {
        return key.replace('_', ' ');
    }

    /** An enum's name in lower case with hyphens, for a style. */
    public String key(Enum<?> value) {
        return words(value).replace(' ', '-');
    }

    /** Values of one kind in a row, the unit once. */
    public String values(List<Double> values, Kind kind) {
        if (kind == Kind.NUMBER) {
            return values.stream()
                    .map(v -> Quantities.brief(v, system.display(kind).unit()))
                    .collect(Collectors.joining(", "));
        }
        UnitSystem.Display display = display(kind);
        String unit = display.unit().symbol();
        // a degree sign stands close, other units behind a space
        String behind = Quantities.print(0, display.unit(), 0).endsWith(" " + unit) ? " " + unit : unit;
        return values.stream()
                        .map(v -> Quantities.print(v, display.unit(), display.decimals())
                                .replace(behind, ""))
                        .collect(Collectors.joining(", "))
                + behind;
    }

    /** A unit as it reads behind the word "in". */
    public String spoken(String symbol) {
        return symbol.equals("in") ? "inches" : symbol;
    }

    /** An enum's name in lower case with spaces. */
    public String words(Enum<?> value) {
        return value.name().toLowerCase(Locale.ENGLISH).replace('_', ' ');
    }
}
