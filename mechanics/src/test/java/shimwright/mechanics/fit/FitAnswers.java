package shimwright.mechanics.fit;

import static java.util.Objects.requireNonNull;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheets as a person uses them: by text. */
final class FitAnswers {
    private FitAnswers() {}

    /** Keys and values in turn. */
    static Map<String, String> given(String... pairs) {
        Map<String, String> given = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            given.put(pairs[i], pairs[i + 1]);
        }
        return given;
    }

    static Answer answer(Worksheet<?, ?> sheet, Map<String, String> given) {
        return sheet.answer(given, UnitSystem.METRIC).orElseThrow();
    }

    static <R extends Record> R result(Worksheet<?, R> sheet, String... pairs) {
        return result(sheet, given(pairs));
    }

    static <R extends Record> R result(Worksheet<?, R> sheet, Map<String, String> given) {
        return sheet.resultType().cast(answer(sheet, given).result());
    }

    static List<String> refusals(Worksheet<?, ?> sheet, String... pairs) {
        return sheet.answer(given(pairs), UnitSystem.METRIC).refusals().stream()
                .map(refusal -> refusal.placed("", refusal.key()).sentence())
                .toList();
    }

    /** The worked example with some inputs changed. */
    static Map<String, String> changed(Worksheet<?, ?> sheet, String... pairs) {
        Map<String, String> given = new LinkedHashMap<>(sheet.example());
        given(pairs).forEach((key, value) -> {
            given.keySet().removeIf(old -> old.startsWith(key + "."));
            given.put(key, value);
        });
        return given;
    }

    static List<String> refusalsOfChanged(Worksheet<?, ?> sheet, String... pairs) {
        return sheet.answer(changed(sheet, pairs), UnitSystem.METRIC).refusals().stream()
                .map(refusal -> refusal.placed("", refusal.key()).sentence())
                .toList();
    }

    /** Limits of a class such as H7 or s6. */
    static SizeLimits limitsOf(String nominal, String typed) {
        boolean hole = Character.isUpperCase(typed.charAt(0));
        LimitsAndFits.Result both = result(LimitsAndFits.SHEET, "nominal", nominal, hole ? "hole" : "shaft", typed);
        return requireNonNull(hole ? both.hole() : both.shaft());
    }

    static String mm(double mm) {
        return String.format(Locale.ROOT, "%.9f mm", mm);
    }
}
