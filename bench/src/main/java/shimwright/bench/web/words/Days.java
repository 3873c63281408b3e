package shimwright.bench.web.words;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A day as pages show it, "30 Nov 2026", with or without the time of day, as German has it: 30.11.2026 (DIN 5008, from memory). */
final class Days {
    private static final List<String> MONTHS =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");
    private static final Pattern DAY =
            Pattern.compile("(\\d{1,2}) (" + String.join("|", MONTHS) + ") (\\d{4})(, \\d\\d:\\d\\d)?");

    private Days() {}

    /** True for a text that is a day and nothing else. */
    static boolean is(String text) {
        return text.length() <= "30 Nov 2026, 23:59".length()
                && !text.isEmpty()
                && Character.isDigit(text.charAt(0))
                && DAY.matcher(text).matches();
    }

    /** The same day in figures. */
    static String german(String text) {
        Matcher day = DAY.matcher(text);
        if (!day.matches()) {
            return text;
        }
        String time = day.group(4) == null ? "" : day.group(4);
        return twice(day.group(1))
                + '.'
                + twice(String.valueOf(MONTHS.indexOf(day.group(2)) + 1))
                + '.'
                + day.group(3)
                + time;
    }

    private static String twice(String number) {
        return number.length() == 1 ? '0' + number : number;
    }
}
