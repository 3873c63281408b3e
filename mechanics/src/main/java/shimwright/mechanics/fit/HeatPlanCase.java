package shimwright.mechanics.fit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * Case of {@code heat-to-fit}; lengths in metres, temperatures in kelvin.
 *
 * @param diameter joint diameter
 * @param interference the tightest of the measured pair at 20 °C
 * @param clearance wanted while the parts go together
 * @param outer the part that is heated, what it is made of
 * @param inner the part that goes in, what it is made of
 * @param heated everything that gets hot; the lowest ceiling counts
 * @param ownCeiling a lower ceiling that is known, such as 20 to 30 K under the part's own temper; null when none is
 * @param room temperature of the shop
 * @param cold the strongest cold at hand
 * @param innerHardened whether the inner part is hardened, so that deep cold would change it
 * @param innerTemperature temperature of the inner part as measured when fitted; null lets the plan choose
 */
public record HeatPlanCase(
        @Input(kind = Kind.LENGTH, meaning = "joint diameter", min = 1e-3, max = 2, example = "30 mm")
        double diameter,

        @Input(
                kind = Kind.LENGTH,
                meaning = "interference, the tightest of the pair",
                min = 1e-7,
                max = 0.02,
                example = "0.020 mm")
        double interference,

        @Input(
                kind = Kind.LENGTH,
                meaning = "clearance wanted while fitting: 0.001 of the diameter, for a small bearing by hand 0.01 mm",
                min = 0,
                max = 0.02,
                example = "0.010 mm")
        double clearance,

        @Input(meaning = "outer part, what it is made of") Stock outer,
        @Input(meaning = "inner part, what it is made of") Stock inner,

        @Input(meaning = "everything that gets hot", most = 12, example = "open bearing")
        List<HeatedPart> heated,

        @Input(kind = Kind.TEMPERATURE, meaning = "own lower ceiling", min = 293.15, max = 673.15) @Nullable
        Double ownCeiling,

        @Input(kind = Kind.TEMPERATURE, meaning = "shop temperature", min = 253.15, max = 323.15, orElse = "20 °C")
        double room,

        @Input(meaning = "strongest cold at hand", orElse = "none")
        Cold cold,

        @Input(meaning = "inner part is hardened", example = "yes")
        boolean innerHardened,

        @Input(
                kind = Kind.TEMPERATURE,
                meaning = "temperature of the inner part when fitted, else the plan chooses",
                min = 73.15,
                max = 373.15)
        @Nullable
        Double innerTemperature) {}
