package shimwright.mechanics.seal;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/** An air test by pressure decay: gauge pressures and temperatures at its start and end. */
public record LeakTestCase(
        @Input(kind = Kind.VOLUME, meaning = "free volume of the case", min = 1e-5, max = 1, example = "3 L")
        double volume,

        @Input(
                kind = Kind.PRESSURE,
                meaning = "gauge pressure at the start",
                unit = "kPa",
                min = 100,
                max = 1e7,
                example = "20 kPa")
        double startPressure,

        @Input(
                kind = Kind.PRESSURE,
                meaning = "gauge pressure at the end",
                unit = "kPa",
                min = 0,
                max = 1e7,
                example = "19.8 kPa")
        double endPressure,

        @Input(
                kind = Kind.TEMPERATURE,
                meaning = "air in the case at the start",
                min = 250,
                max = 340,
                example = "20.0 °C")
        double startTemperature,

        @Input(
                kind = Kind.TEMPERATURE,
                meaning = "air in the case at the end",
                min = 250,
                max = 340,
                example = "20.2 °C")
        double endTemperature,

        @Input(kind = Kind.TIME, meaning = "time between them", min = 1, max = 1e6, example = "300 s")
        double time,

        @Input(
                kind = Kind.FLOW,
                meaning = "leak allowed, at the reference",
                min = 1e-12,
                max = 1e-2,
                example = "4 cm³/min")
        @Nullable
        Double limit,

        @Input(
                kind = Kind.PRESSURE,
                meaning = "smallest step of the gauge",
                unit = "Pa",
                min = 0,
                max = 1e5,
                example = "10 Pa")
        double resolution,

        @Input(
                kind = Kind.TEMPERATURE_DIFFERENCE,
                meaning = "smallest step of the thermometer",
                orElse = "0.1 K",
                min = 0,
                max = 5)
        double temperatureStep,

        @Input(
                kind = Kind.PRESSURE,
                meaning = "pressure of the air outside",
                unit = "kPa",
                orElse = "101.325 kPa",
                min = 6e4,
                max = 1.1e5)
        double ambient,

        @Input(
                kind = Kind.PRESSURE,
                meaning = "the same at the end, where it changed",
                unit = "kPa",
                min = 6e4,
                max = 1.1e5)
        @Nullable
        Double ambientEnd,

        @Input(
                kind = Kind.TEMPERATURE,
                meaning = "reference temperature of the leak",
                orElse = "20 °C",
                min = 250,
                max = 340)
        double referenceTemperature,

        @Input(
                kind = Kind.PRESSURE,
                meaning = "reference pressure of the leak",
                unit = "kPa",
                orElse = "101.325 kPa",
                min = 5e4,
                max = 2e5)
        double referencePressure,

        @Input(kind = Kind.AREA, meaning = "largest cover the pressure pushes on", unit = "cm²", min = 1e-5, max = 1)
        @Nullable
        Double coverArea) {}
