package shimwright.mechanics.published;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A published value as it is asked of a worksheet, and whether it proves anything. It does not where a number was typed that
 * the row does not print, that is the printed answer times or over a printed number, and with which the answer moves in
 * proportion: then it was made from the answer; nor where the answer is nothing but one of the numbers typed.
 *
 * @param printed what the row says is given
 * @param expected the printed answer
 * @param given as typed
 * @param answer of other inputs; empty where refused
 */
record TypedRow(
        String printed,
        String expected,
        Map<String, String> given,
        Function<Map<String, String>, OptionalDouble> answer) {
    private static final Pattern NUMBER = Pattern.compile("(?<![A-Za-z0-9_.])\\d+(?:\\.\\d+)?(?:[eE][-+]?\\d+)?");
    private static final double STEP = 1e-3;
    private static final double NEAR = 1e-6;

    private record Typed(boolean printed, double value, double power) {}

    /** Whether the answer was typed. */
    boolean circular() {
        if (given.values().stream().noneMatch(this::suspect)) {
            return false;
        }
        OptionalDouble base = answer.apply(given);
        if (base.isEmpty() || base.getAsDouble() == 0) {
            return false;
        }
        List<Typed> typed = new ArrayList<>();
        given.forEach((key, text) -> {
            Matcher numbers = NUMBER.matcher(text);
            while (numbers.find()) {
                typed.add(typed(key, text, numbers, base.getAsDouble()));
            }
        });
        boolean made = typed.stream()
                .anyMatch(t -> !t.printed() && near(Math.abs(t.power()), 1) && madeFromTheAnswer(t.value()));
        List<Typed> moving =
                typed.stream().filter(t -> Math.abs(t.power()) >= NEAR).toList();
        return made
                || (moving.size() == 1
                        && near(moving.get(0).power(), 1)
                        && near(moving.get(0).value() / base.getAsDouble(), 1));
    }

    /** Whether a text holds a number that could be the answer or made from it; only then is the sheet asked again. */
    private boolean suspect(String text) {
        if (!NUMBER.matcher(expected.replaceFirst("^-", "")).matches()) {
            return true;
        }
        double printedAnswer = Math.abs(Double.parseDouble(expected));
        return NUMBER.matcher(text)
                .results()
                .mapToDouble(number -> Double.parseDouble(number.group()))
                .anyMatch(value -> Math.abs(value - printedAnswer) <= 0.05 * printedAnswer
                        || (!isPrinted(value) && madeFromTheAnswer(value)));
    }

    private Typed typed(String key, String text, Matcher at, double base) {
        double value = Double.parseDouble(at.group());
        Map<String, String> moved = new LinkedHashMap<>(given);
        moved.put(key, text.substring(0, at.start()) + value * (1 + STEP) + text.substring(at.end()));
        OptionalDouble other = answer.apply(moved);
        double power = other.isEmpty() ? Double.NaN : Math.log(other.getAsDouble() / base) / Math.log1p(STEP);
        return new Typed(isPrinted(value), value, power);
    }

    /** Printed as it is, in another power of ten, or as its reciprocal. */
    private boolean isPrinted(double value) {
        Matcher numbers = NUMBER.matcher(printed);
        while (numbers.find()) {
            double ratio = Double.parseDouble(numbers.group()) / value;
            double inverse = Double.parseDouble(numbers.group()) * value;
            if (tenfold(ratio) || tenfold(inverse)) {
                return true;
            }
        }
        return false;
    }

    /** Whether it is the printed answer, or its reciprocal, alone or times or over a printed number, in any power of ten. */
    private boolean madeFromTheAnswer(double value) {
        double answer = Math.abs(Double.parseDouble(expected));
        for (double made : new double[] {value / answer, value * answer}) {
            Matcher numbers = NUMBER.matcher(printed);
            boolean found = tenfold(made);
            while (numbers.find() && !found) {
                double number = Double.parseDouble(numbers.group());
                found = number != 0 && (tenfold(made / number) || tenfold(made * number));
            }
            if (found) {
                return true;
            }
        }
        return false;
    }

    private static boolean tenfold(double ratio) {
        double exponent = Math.log10(ratio);
        return near(exponent, Math.rint(exponent));
    }

    private static boolean near(double value, double to) {
        return Math.abs(value - to) < NEAR;
    }
}
