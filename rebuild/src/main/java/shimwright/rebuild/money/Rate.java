package shimwright.rebuild.money;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What an hour at the bench costs.
 *
 * @param cents hundredths of the currency
 * @param currency as the shop typed it; empty where it typed none
 */
public record Rate(long cents, String currency) {
    private static final Pattern RATE = Pattern.compile("(\\D*?)\\s*(\\d{1,9}(?:[.,]\\d{1,2})?)\\s*(\\D*)");

    /** A rate with one number in it, such as "60 EUR"; empty for anything else. */
    public static Optional<Rate> of(String typed) {
        Matcher read = RATE.matcher(typed.strip());
        return read.matches()
                ? Optional.of(new Rate(
                        Math.round(Double.parseDouble(read.group(2).replace(',', '.')) * 100),
                        (read.group(1) + read.group(3)).strip()))
                : Optional.empty();
    }

    /** An amount of money in hundredths, as typed with or without the currency; empty for anything else. */
    public static Optional<Long> cents(String typed) {
        return of(typed).map(Rate::cents);
    }
}
