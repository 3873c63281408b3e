package shimwright.bench.picture.part;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names as the trade calls parts (common practice, no source), and what each looks like. */
class FormWordsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "selector box with cross shaft and seal | HOUSING",
                "seal of the selector shaft | LIP_SEAL",
                "input seal 25x40x7 | LIP_SEAL",
                "O-rings of the side covers | O_RING",
                "speed sensor with O-ring | SWITCH",
                "reverse lamp switch | SWITCH",
                "keys and springs of hub 3/4 | HUB_KEYS",
                "woodruff key | KEY",
                "spring pin 5x26 of fork 1/2 | SPRING_PIN",
                "roll pins of the forks | SPRING_PIN",
                "fork 1/2 | FORK",
                "rail 3/4 with its cross pin | RAIL",
                "idler shaft 18 h6 | RAIL",
                "shaft of the reverse idler | RAIL",
                "input shaft with gears 1 2 3 4 and reverse | SHAFT",
                "countershaft with its gears | SHAFT",
                "countershaft cap | PLATE",
                "countershaft nut | NUT",
                "nut of the output shaft | NUT",
                "input bearing retainer | PLATE",
                "input front bearing | BALL_BEARING",
                "bearing of the output in the input | NEEDLE_CAGE",
                "needles under the wheel of 3rd | NEEDLE_CAGE",
                "ring of the input bearing | SHAFT_RING",
                "selective snap ring | SHAFT_RING",
                "inside snap ring | BORE_RING",
                "cone between the rings of 1st | BLOCKER_RING",
                "inner blocker ring of 2nd | BLOCKER_RING",
                "detent plate | PLATE",
                "detent ball with its spring and plug | DETENT",
                "drain plug with magnet | PLUG",
                "magnet | MAGNET",
                "interlock plug 1 | PIN",
                "interlock sleeve | RING",
                "interlock | LEVER",
                "dowels of the case joint | PIN",
                "side gears with their washers | BEVEL_GEAR",
                "lever that slides the reverse idler | LEVER",
                "drive flange with stub | FLANGE",
                "yoke nut | NUT",
                "tail bush | RING",
                "wheel of reverse | GEAR",
                "case half that stands in the fixture | HOUSING",
                "bellhousing | HOUSING",
                "end cover | PLATE",
                "breather | BREATHER",
                "shiny thing | UNKNOWN"
            })
    void a_name_tells_what_it_looks_like(String name, PartForm form) {
        assertThat(FormWords.of(name)).isEqualTo(form);
    }
}
