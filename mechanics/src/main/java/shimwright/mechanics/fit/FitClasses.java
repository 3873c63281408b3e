package shimwright.mechanics.fit;

import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * Case of {@code limits-and-fits}.
 *
 * @param nominal nominal size in metres
 * @param hole class of the hole; empty when none is asked for
 * @param shaft class of the shaft; empty when none is asked for
 */
public record FitClasses(
        @Input(kind = Kind.LENGTH, meaning = "nominal size", min = 1e-4, max = 0.5, example = "25 mm")
        double nominal,

        @Input(
                meaning = "class of the hole, such as H7; bearing or taper for the bore of a bearing",
                orElse = "",
                example = "H7")
        String hole,

        @Input(
                meaning = "class of the shaft, such as p6; bearing or taper for the outside of a bearing",
                orElse = "",
                example = "p6")
        String shaft) {}
