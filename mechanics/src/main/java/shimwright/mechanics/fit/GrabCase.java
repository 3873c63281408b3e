package shimwright.mechanics.fit;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * Case of {@code time-to-grab}; lengths in metres, temperatures in kelvin. The carried part is the one heated or chilled.
 *
 * @param outer outside diameter of the carried part
 * @param bore its bore, 0 for a solid one
 * @param width its width
 * @param joint diameter at which it fits: its bore when hot, its outside when cold
 * @param part what it is made of
 * @param start its temperature leaving the oven or the cold
 * @param air temperature around it
 * @param needed growth (or shrink) that must still be there when it is home: interference and the clearance to move it
 * @param film film coefficient of the air with radiation; null takes 10 for still air and adds radiation
 * @param emissivity for the radiation
 * @param carry time from the oven to the shoulder, s
 * @param contact contact coefficient once it touches
 */
public record GrabCase(
        @Input(
                kind = Kind.LENGTH,
                meaning = "outside diameter of the carried part",
                min = 1e-3,
                max = 2,
                example = "110 mm")
        double outer,

        @Input(kind = Kind.LENGTH, meaning = "its bore, 0 when solid", min = 0, max = 2, example = "35 mm")
        double bore,

        @Input(kind = Kind.LENGTH, meaning = "its width", min = 1e-4, max = 2, example = "22 mm")
        double width,

        @Input(kind = Kind.LENGTH, meaning = "diameter at which it fits", min = 1e-3, max = 2, example = "35 mm")
        double joint,

        @Input(meaning = "what it is made of") Stock part,

        @Input(
                kind = Kind.TEMPERATURE,
                meaning = "its temperature leaving the oven or the cold",
                min = 73.15,
                max = 673.15,
                example = "150 °C")
        double start,

        @Input(kind = Kind.TEMPERATURE, meaning = "air temperature", min = 253.15, max = 323.15, orElse = "20 °C")
        double air,

        @Input(
                kind = Kind.LENGTH,
                meaning = "growth or shrink that must still be there",
                min = 1e-7,
                max = 0.02,
                example = "0.030 mm")
        double needed,

        @Input(
                kind = Kind.HEAT_TRANSFER,
                meaning = "film coefficient with radiation, else still air",
                min = 1,
                max = 1000)
        @Nullable
        Double film,

        @Input(meaning = "emissivity of the surface", min = 0, max = 1, orElse = "0.8")
        double emissivity,

        @Input(kind = Kind.TIME, meaning = "time from the oven to the shoulder", min = 0, max = 3600, orElse = "15 s")
        double carry,

        @Input(
                kind = Kind.HEAT_TRANSFER,
                meaning = "contact coefficient once it touches",
                min = 100,
                max = 100000,
                orElse = "3000")
        double contact) {}
