package shimwright.mechanics.axial;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * A measured length against its limits.
 *
 * @param value m
 * @param u standard uncertainty, m
 * @param nu degrees of freedom of u; null when taken as certain
 * @param lower smallest lawful value, m; null when open
 * @param upper largest lawful value, m; null when open
 * @param ruleProbability conformance probability that proves
 */
public record ConformityCase(
        @Input(kind = Kind.LENGTH, meaning = "measured value", min = -10, max = 10, example = "0.084 mm")
        double value,

        @Input(kind = Kind.LENGTH, meaning = "its standard uncertainty", min = 0, max = 1, example = "0.012 mm")
        double u,

        @Input(meaning = "degrees of freedom of that", min = 1, max = 1e6) @Nullable
        Double nu,

        @Input(kind = Kind.LENGTH, meaning = "smallest lawful value", min = -10, max = 10, example = "0.050 mm")
        @Nullable
        Double lower,

        @Input(kind = Kind.LENGTH, meaning = "largest lawful value", min = -10, max = 10, example = "0.100 mm")
        @Nullable
        Double upper,

        @Input(meaning = "probability that counts as proof", min = 0.501, max = 0.9999, orElse = "0.95")
        double ruleProbability) {}
