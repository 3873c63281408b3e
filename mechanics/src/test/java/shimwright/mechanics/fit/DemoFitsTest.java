package shimwright.mechanics.fit;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.published.PublishedFiles;

/** What the demo's source material expects of fits: its table of limits and the sleeve in the left cover. */
class DemoFitsTest {
    private static final Pattern PAIR = Pattern.compile("(\\w+): \\[(-?\\d+), (-?\\d+)]");

    private static List<String> lines() throws IOException {
        return Files.readAllLines(PublishedFiles.file("demo/demo-transaxle.yaml"));
    }

    /** Values and tolerance of one expected row. */
    private record Expected(List<Double> values, Offset<Double> tolerance) {
        static Expected of(String id) throws IOException {
            String line = lines().stream()
                    .filter(text -> text.contains("{id: " + id + ","))
                    .findFirst()
                    .orElseThrow();
            Matcher parts = Pattern.compile("value: \\[?([-0-9., ]+)]?, tol: ([0-9.]+)}")
                    .matcher(line);
            assertThat(parts.find()).as(line).isTrue();
            List<Double> values = new ArrayList<>();
            for (String number : parts.group(1).split(",")) {
                values.add(Double.parseDouble(number.strip()));
            }
            return new Expected(values, within(Double.parseDouble(parts.group(2))));
        }

        void met(double... actual) {
            assertThat(actual).hasSize(values.size());
            for (int i = 0; i < actual.length; i++) {
                assertThat(actual[i]).isCloseTo(values.get(i), tolerance);
            }
        }
    }

    @Test
    void theTableOfLimitsIsMetCellByCell() throws IOException {
        String line = lines().stream()
                .filter(text -> text.startsWith("fits_limits_um:"))
                .findFirst()
                .orElseThrow();
        Matcher pairs = PAIR.matcher(line);
        int count = 0;
        while (pairs.find()) {
            SizeLimits limits = limits(pairs.group(1));
            assertThat(limits.lower() * 1e6)
                    .as(pairs.group())
                    .isCloseTo(Double.parseDouble(pairs.group(2)), within(1e-6));
            assertThat(limits.upper() * 1e6)
                    .as(pairs.group())
                    .isCloseTo(Double.parseDouble(pairs.group(3)), within(1e-6));
            count++;
        }
        assertThat(count).isEqualTo(16);
    }

    private static SizeLimits limits(String name) {
        Matcher ring = Pattern.compile("(cup_OD|cone_bore)_(\\d+)_(\\d+)").matcher(name);
        if (ring.matches()) {
            boolean hole = ring.group(1).equals("cone_bore");
            LimitsAndFits.Result both = FitAnswers.result(
                    LimitsAndFits.SHEET, "nominal", ring.group(3) + " mm", hole ? "hole" : "shaft", "taper");
            return requireNonNull(hole ? both.hole() : both.shaft());
        }
        Matcher cell = Pattern.compile("(\\d+)(\\D+\\d+)").matcher(name);
        assertThat(cell.matches()).as(name).isTrue();
        return FitAnswers.limitsOf(cell.group(1) + " mm", cell.group(2));
    }

    /** The sleeve as bored and pressed, before its inside is finished. */
    private static Interference.Result asFitted(Map<String, String> more) {
        Map<String, String> given = FitAnswers.given(
                "bore", "88.012 mm",
                "diameter", "88.130 mm",
                "hubOutside", "112 mm",
                "shaftBore", "79.0 mm",
                "length", "20 mm",
                "hub", "aluminum 383: 71 GPa: 0.33: 150 MPa: 21.8",
                "shaft", "steel: 206 GPa: 0.30: : 11.5");
        given.putAll(more);
        return FitAnswers.result(Interference.SHEET, given);
    }

    private static Map<String, String> cup(String alloySleeve) {
        Map<String, String> given = FitAnswers.given(
                "seat", "79.957 mm",
                "cup", "79.994 mm",
                "cupBore", "72 mm",
                "boss", "112 mm",
                "housing", "aluminum 383: 71 GPa: 0.33: 150 MPa: 21.8",
                "race", "bearing steel: 206 GPa: 0.30: : 12.5",
                "housingTemperature", "80 °C",
                "raceTemperature", "80 °C");
        if (!alloySleeve.isEmpty()) {
            given.put("sleeve.outside", "88.130 mm");
            given.put("sleeve.housingBore", "88.012 mm");
            given.put("sleeve.material", "steel");
            given.put("sleeve.expansion", alloySleeve);
        }
        return given;
    }

    private static double mm(double metres) {
        return metres * 1e3;
    }

    @Test
    void sleevePressureAndHoopAsFitted() throws IOException {
        Interference.Result fit = asFitted(Map.of());
        Expected.of("SL-1")
                .met(fit.pressure().highestPressure() / 1e6, fit.hub().hoop() / 1e6);
    }

    @Test
    void forceIfItWerePressedCold() throws IOException {
        Interference.Result low = asFitted(Map.of("frictionLow", "0.12", "frictionHigh", "0.20"));
        Expected.of("SL-2").met(low.press().pressForceLow() / 1e3, low.press().pressForceHigh() / 1e3);
    }

    @Test
    void jointHotOpeningAndTemperatureOfRelease() throws IOException {
        HousingGrip.Result grip = FitAnswers.result(HousingGrip.SHEET, cup("11.5"));
        HousingGrip.Result.InHousing sleeve = requireNonNull(grip.sleeve());
        Expected.of("SL-4").met(mm(sleeve.hot()));
        Expected.of("SL-5").met(mm(grip.relaxation()));
        Expected.of("SL-8").met(sleeve.fallsOut() - 273.15);
    }

    /** A seat in the alloy itself stands for a sleeve of the same alloy, which loses nothing in its joint. */
    @Test
    void cupFitLeftHotInSteelAndInAlloy() throws IOException {
        HousingGrip.Result steel = FitAnswers.result(HousingGrip.SHEET, cup("11.5"));
        HousingGrip.Result alloy = FitAnswers.result(HousingGrip.SHEET, cup(""));
        Expected.of("SL-7").met(mm(steel.hotLoosest()), mm(alloy.hotLoosest()));
        assertThat(steel.verdict()).isEqualTo(HousingGrip.Result.Verdict.HOLDS);
        assertThat(alloy.verdict()).isEqualTo(HousingGrip.Result.Verdict.IS_LOOSE);
        HousingGrip.Result alloySleeve = FitAnswers.result(HousingGrip.SHEET, cup("21.8"));
        assertThat(alloySleeve.relaxation()).isZero();
        assertThat(alloySleeve.hotLoosest()).isCloseTo(alloy.hotLoosest(), within(1e-9));
        assertThat(requireNonNull(alloySleeve.sleeve()).fallsOut()).isInfinite();
    }
}
