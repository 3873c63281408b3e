package shimwright.bench.picture.part;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import shimwright.rebuild.unit.model.Item;

/** The one table of words by which a part's name tells what it looks like. */
final class FormWords {
    /** Names that only their whole tells, for what stands behind is what they are. */
    private static final List<Row> WHOLE = List.of(
            row("rings? of the (\\w+ )?bearing", PartForm.SHAFT_RING),
            row("cones? between", PartForm.BLOCKER_RING),
            row("shaft of the reverse idler", PartForm.RAIL),
            row("bearing of the output in the input", PartForm.NEEDLE_CAGE));

    /** Words, and the form they mean; the first that is found counts. */
    private static final List<Row> TABLE = List.of(
            row("keys? (and|with) (its )?springs?|sliding keys?|struts?", PartForm.HUB_KEYS),
            row("parallel keys?|woodruff keys?|keys?", PartForm.KEY),
            row("detent plate|lock(ing)? plate", PartForm.PLATE),
            row("interlock (plug|pin)s?|cross pins?|spider pins?|lock pins?|dowels?|dowel pins?", PartForm.PIN),
            row("spring pins?|roll pins?|tension pins?", PartForm.SPRING_PIN),
            row("o-?rings?", PartForm.O_RING),
            row("bore rings?|inside (snap )?rings?|internal (snap )?rings?|bore circlips?", PartForm.BORE_RING),
            row("snap rings?|circlips?|retaining rings?|selective (mid )?rings?", PartForm.SHAFT_RING),
            row("(sealing|copper|crush) (washer|ring)s?", PartForm.RING),
            row("speed driven gear|idler gear", PartForm.GEAR),
            row("seals?", PartForm.LIP_SEAL),
            row("shims?", PartForm.SHIM),
            row("blocker rings?|baulk rings?|synchro(niser)? rings?", PartForm.BLOCKER_RING),
            row("(lamp|light|neutral|reverse) switch|switch(es)?|sensors?|pick-?ups?", PartForm.SWITCH),
            row("breathers?|vents?", PartForm.BREATHER),
            row("magnets?", PartForm.MAGNET),
            row("forks?", PartForm.FORK),
            row("detents?", PartForm.DETENT),
            row("drain|filler|fill plug|plugs?", PartForm.PLUG),
            row("idler shafts?", PartForm.RAIL),
            row("rails?|selector shafts?|shift shafts?|rods?", PartForm.RAIL),
            row("side gears?|planet gears?|crown wheel", PartForm.BEVEL_GEAR),
            row("thrust needle|axial needle", PartForm.THRUST_NEEDLES),
            row("pocket bearings?", PartForm.NEEDLE_CAGE),
            row("needles?|needle cages?|needle bearings?", PartForm.NEEDLE_CAGE),
            row("taper (roller )?bearings?", PartForm.TAPER_BEARING),
            row("cups?|outer rings? of .* taper", PartForm.TAPER_CUP),
            row("cones?", PartForm.TAPER_CONE),
            row("roller bearings?", PartForm.ROLLER_BEARING),
            row("bearing retainer|retainer( plate)?", PartForm.PLATE),
            row("bearings?", PartForm.BALL_BEARING),
            row("sliding sleeves?|sliders?", PartForm.SLIDING_SLEEVE),
            row("hubs?", PartForm.HUB),
            row("nuts?", PartForm.NUT),
            row("washers?|spacers?|distance rings?|bush(es)?|bushings?|sleeves?|thrust pieces?", PartForm.RING),
            row("drive flanges?|flanges?|yokes?", PartForm.FLANGE),
            row("tubes?", PartForm.TUBE),
            row("levers?|brackets?|fingers?|pawls?|interlocks?|arms?", PartForm.LEVER),
            row("selector box|gate|cross shaft housing", PartForm.HOUSING),
            row("(intermediate |end |retaining |cover )?plates?|covers?|caps?|pans?", PartForm.PLATE),
            row("shafts?|countershafts?|layshafts?|mainshafts?|pinion with its shaft", PartForm.SHAFT),
            row("wheels?|gears?|idlers?|pinions?|worm", PartForm.GEAR),
            row("cases?|housings?|bell ?housings?|bells?|castings?|halves|half|carriers?", PartForm.HOUSING),
            row("springs?", PartForm.SPRING),
            row("pins?", PartForm.PIN),
            row("balls?", PartForm.BALL),
            row("bolts?|screws?|studs?|fasteners?", PartForm.SCREW),
            row("clips?|rings?", PartForm.RING));

    /** What stands behind one of these says where a part sits or what hangs on it, not what it is. */
    private static final Pattern BEHIND =
            Pattern.compile("[,:;(]| (with|of|for|in|under|on|at|to|that|behind|between|from) ");

    private record Row(Pattern words, PartForm form) {}

    private FormWords() {}

    private static Row row(String words, PartForm form) {
        return new Row(Pattern.compile("(^|[^a-z])(" + words + ")(?![a-z])"), form);
    }

    /** The form that a name means; unknown where no word of the table stands in it. */
    static PartForm of(String name) {
        String whole = name.toLowerCase(Locale.ROOT).strip();
        String head = head(name);
        return find(WHOLE, whole)
                .or(() -> find(TABLE, head))
                .or(() -> find(TABLE, whole))
                .orElse(PartForm.UNKNOWN);
    }

    /** What a name calls the part itself, without where it sits and what hangs on it. */
    static String head(String name) {
        return BEHIND.split(name.toLowerCase(Locale.ROOT).strip(), 2)[0];
    }

    private static Optional<PartForm> find(List<Row> table, String text) {
        return table.stream()
                .filter(row -> row.words().matcher(text).find())
                .map(Row::form)
                .findFirst();
    }

    /** The form of an item: what its shape says, and its name where the shape leaves it open or there is none. */
    static PartForm of(Item item) {
        PartForm named = of(item.name());
        return switch (item.shape()) {
            case NONE -> named;
            case GEAR -> PartForm.GEAR;
            case BEVEL_GEAR -> PartForm.BEVEL_GEAR;
            case TAPER_CONE -> PartForm.TAPER_CONE;
            case TAPER_CUP -> PartForm.TAPER_CUP;
            case ROLLER_INNER, SPACER, WASHER -> PartForm.RING;
            case ROLLER_OUTER -> named == PartForm.BALL_BEARING ? named : PartForm.ROLLER_BEARING;
            case NEEDLES -> PartForm.NEEDLE_CAGE;
            case SHIM -> PartForm.SHIM;
            case SLEEVE -> named == PartForm.SLIDING_SLEEVE ? named : PartForm.RING;
            case HUB -> PartForm.HUB;
            case RING -> named == PartForm.BLOCKER_RING ? named : PartForm.RING;
            case NUT -> PartForm.NUT;
            case SNAP_RING -> named == PartForm.BORE_RING ? named : PartForm.SHAFT_RING;
            case SEAL -> PartForm.LIP_SEAL;
            case FORK -> PartForm.FORK;
            case PLATE, BODY -> named == PartForm.SHAFT ? named : PartForm.TURNED;
            default -> throw new IllegalStateException("unknown shape " + item.shape());
        };
    }
}
