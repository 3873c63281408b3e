package shimwright.mechanics.fit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * Case of {@code interference}; lengths in metres, temperatures in kelvin.
 *
 * @param bore readings of the hub bore at 20 °C, or its two limits
 * @param diameter readings of the shaft at 20 °C, or its two limits
 * @param hubOutside outside diameter of the hub; for a gear the root diameter
 * @param shaftBore inside diameter of the shaft, 0 when solid
 * @param length length of the seat
 * @param hub what the hub is made of
 * @param shaft what the shaft is made of
 * @param hubRoughness Rz of the bore; null when not known
 * @param shaftRoughness Rz of the shaft; null when not known
 * @param hubTemperature of the hub at work
 * @param shaftTemperature of the shaft at work
 * @param speed at work, rad/s
 * @param frictionLow for what is held
 * @param frictionHigh for sizing the press
 * @param slipFactor safety against slip
 * @param yieldFactor safety against yield
 * @param criterion how stress is compared with yield
 */
public record PressPair(
        @Input(
                kind = Kind.LENGTH,
                meaning = "hub bore, all readings or the two limits",
                min = 1e-3,
                max = 2,
                most = 100,
                example = "35.000, 35.004 mm")
        List<Double> bore,

        @Input(
                kind = Kind.LENGTH,
                meaning = "shaft diameter, all readings or the two limits",
                min = 1e-3,
                max = 2,
                most = 100,
                example = "35.030, 35.034 mm")
        List<Double> diameter,

        @Input(
                kind = Kind.LENGTH,
                meaning = "hub outside diameter, root diameter for a gear",
                min = 1e-3,
                max = 10,
                example = "60 mm")
        double hubOutside,

        @Input(kind = Kind.LENGTH, meaning = "bore of the shaft", min = 0, max = 2, orElse = "0 mm")
        double shaftBore,

        @Input(kind = Kind.LENGTH, meaning = "length of the seat", min = 1e-4, max = 2, example = "22 mm")
        double length,

        @Input(meaning = "hub, what it is made of") Stock hub,
        @Input(meaning = "shaft, what it is made of") Stock shaft,

        @Input(kind = Kind.LENGTH, unit = "µm", meaning = "roughness Rz of the bore", min = 0, max = 1e-4) @Nullable
        Double hubRoughness,

        @Input(kind = Kind.LENGTH, unit = "µm", meaning = "roughness Rz of the shaft", min = 0, max = 1e-4) @Nullable
        Double shaftRoughness,

        @Input(
                kind = Kind.TEMPERATURE,
                meaning = "hub temperature at work",
                min = 173.15,
                max = 573.15,
                orElse = "20 °C")
        double hubTemperature,

        @Input(
                kind = Kind.TEMPERATURE,
                meaning = "shaft temperature at work",
                min = 173.15,
                max = 573.15,
                orElse = "20 °C")
        double shaftTemperature,

        @Input(kind = Kind.ROTATION, meaning = "speed at work", min = 0, max = 10000, orElse = "0 rpm")
        double speed,

        @Input(meaning = "low friction, for what is held", min = 0.01, max = 1, orElse = "0.08")
        double frictionLow,

        @Input(meaning = "high friction, for the press", min = 0.01, max = 1, orElse = "0.20")
        double frictionHigh,

        @Input(meaning = "safety against slip", min = 1, max = 5, orElse = "1.5")
        double slipFactor,

        @Input(meaning = "safety against yield", min = 1, max = 3, orElse = "1.2")
        double yieldFactor,

        @Input(meaning = "yield criterion", orElse = "von mises")
        Criterion criterion) {}
