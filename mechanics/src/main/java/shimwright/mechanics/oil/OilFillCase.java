package shimwright.mechanics.oil;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/** A fill by the book, at a temperature and on ground that may slope. */
public record OilFillCase(
        @Input(kind = Kind.VOLUME, meaning = "fill by the book", min = 1e-5, max = 0.1, example = "2.5 L")
        double volume,

        @Input(
                kind = Kind.TEMPERATURE,
                meaning = "oil when poured or read at the plug",
                min = 233,
                max = 423,
                example = "20 °C")
        double temperature,

        @Input(
                kind = Kind.DENSITY,
                meaning = "density of the oil at 60 °F",
                orElse = "880 kg/m³",
                min = 750,
                max = 1050)
        double density,

        @Input(
                kind = Kind.ANGLE,
                meaning = "slope of the gearbox along the sump",
                orElse = "0°",
                min = -0.35,
                max = 0.35)
        double tilt,

        @Input(
                kind = Kind.LENGTH,
                meaning = "plug from the middle of the sump, positive towards the raised end",
                min = -1,
                max = 1)
        @Nullable
        Double plugOffset,

        @Input(kind = Kind.LENGTH, meaning = "length of the sump", min = 0.02, max = 2) @Nullable
        Double sumpLength,

        @Input(kind = Kind.LENGTH, meaning = "width of the sump", min = 0.01, max = 2) @Nullable
        Double sumpWidth,

        @Input(kind = Kind.LENGTH, meaning = "depth of the oil in the middle", min = 1e-3, max = 1) @Nullable
        Double depth,

        @Input(kind = Kind.VOLUME, meaning = "oil that really went in to the plug", min = 1e-5, max = 0.2) @Nullable
        Double filled) {}
