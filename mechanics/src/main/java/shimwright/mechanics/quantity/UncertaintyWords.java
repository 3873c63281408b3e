package shimwright.mechanics.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The words behind an uncertainty: {@code k=2}, {@code rectangular}, {@code nu=4}, {@code n=5}, {@code shared=DM}. */
final class UncertaintyWords {
    static final String HELP =
            "Behind ± stand a number, its unit and then k=2, nu=4, n=5 or one of rectangular, triangular, u-shaped;"
                    + " shared=NAME for what is common to several";
    private static final double MOST = 1e9;
    private static final Pattern LAST = Pattern.compile(
            "(?:^|[\\s,])\\(?(?:(k|nu|ν|n|shared)=([^\\s,()]+)|(normal|rectangular|triangular|u-shaped))\\)?$",
            Pattern.CASE_INSENSITIVE);

    private final List<String> faults = new ArrayList<>();
    private Uncertainty.Form form = Uncertainty.Form.NORMAL;
    private double k = 1;
    private double nu = Double.POSITIVE_INFINITY;
    private String shared = "";
    private String rest;

    private UncertaintyWords(String typed) {
        rest = typed.strip();
    }

    /** Peels the words off the end of a text. */
    static UncertaintyWords peel(String typed) {
        UncertaintyWords words = new UncertaintyWords(typed);
        Matcher last = LAST.matcher(words.rest);
        while (last.find()) {
            String key = last.group(1);
            if (key == null) {
                words.form = Uncertainty.Form.valueOf(
                        last.group(3).toUpperCase(Locale.ROOT).replace('-', '_'));
            } else {
                words.take(key.toLowerCase(Locale.ROOT), last.group(2));
            }
            words.rest = words.rest.substring(0, last.start()).strip();
            last = LAST.matcher(words.rest);
        }
        if (words.form != Uncertainty.Form.NORMAL && (words.k != 1 || Double.isFinite(words.nu))) {
            words.faults.add("has a half-width with a k or with degrees of freedom");
        }
        return words;
    }

    private void take(String key, String given) {
        switch (key) {
            case "k" -> k = number(given, 1e-3, "k");
            case "n" -> nu = number(given, 2, "n") - 1;
            case "shared" -> shared = given;
            default -> nu = number(given, 1, "nu");
        }
    }

    private double number(String given, double least, String name) {
        double value;
        try {
            value = Double.parseDouble(given.replace(',', '.'));
        } catch (NumberFormatException notOne) {
            faults.add("has no number behind " + name + "=");
            return least;
        }
        if (value >= least && value <= MOST) {
            return value;
        }
        faults.add(
                "has " + name + "=" + given + ", which must be " + (least < 1 ? "above 0" : (int) least + " or more"));
        return least;
    }

    /** What stood before the words. */
    String rest() {
        return rest;
    }

    /** What is wrong with the words; empty when nothing. */
    List<String> faults() {
        return List.copyOf(faults);
    }

    /** The uncertainty of the number typed, an SI value of 0 or more: standard, times k, or a half-width. */
    Uncertainty uncertainty(double typed) {
        return new Uncertainty(typed / (form == Uncertainty.Form.NORMAL ? k : form.ends()), form, nu, shared);
    }
}
