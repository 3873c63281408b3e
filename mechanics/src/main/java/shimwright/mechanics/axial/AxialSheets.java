package shimwright.mechanics.axial;

import java.util.List;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheets of this topic. */
public final class AxialSheets {
    public static final Worksheet<ReadingsCase, ReadingsResult> READINGS = new Worksheet<>(
                    "readings",
                    "Readings",
                    "The settled value of a series of rounds and its doubt, or the advice to read on.",
                    List.of(
                            "JCGM 100:2008 (GUM) 4.2, 4.3, 5.1, G.4",
                            "Mann-Kendall test, exact with ties",
                            "settling rule: common practice, no source"),
                    ReadingsCase.class,
                    ReadingsResult.class,
                    Readings::work)
            .drawn(AxialPictures::readings);

    public static final Worksheet<EndPlayCase, EndPlayResult> END_PLAY = new Worksheet<>(
                    "end-play",
                    "End play",
                    "End play from indicator travel with one or two indicators, and how far it can be trusted.",
                    List.of("JCGM 100:2008 (GUM) 4.2, 4.3, 5.1, G.4", "cosine and tilt: geometry"),
                    EndPlayCase.class,
                    EndPlayResult.class,
                    EndPlay::work)
            .drawn(AxialPictures::endPlay);

    public static final Worksheet<DepthStackCase, DepthStackResult> DEPTH_STACK = new Worksheet<>(
            "depth-stack",
            "Depth stack",
            "The gap that measured lengths leave before anything is closed.",
            List.of("JCGM 100:2008 (GUM) 5.1.2, 5.2.2"),
            DepthStackCase.class,
            DepthStackResult.class,
            DepthStack::work);

    public static final Worksheet<GrowthCase, GrowthResult> GROWTH = new Worksheet<>(
                    "growth",
                    "Growth when warm",
                    "How a play changes when case and shaft warm up.",
                    List.of("linear expansion; reference temperature ISO 1:2016", "coefficients: expansion.csv"),
                    GrowthCase.class,
                    GrowthResult.class,
                    Growth::work)
            .drawn(AxialPictures::growth);

    public static final Worksheet<ConformityCase, ConformityResult> CONFORMITY = new Worksheet<>(
                    "conformity",
                    "Within limits?",
                    "How sure a measured value lies within its limits, and whether that is proof.",
                    List.of("JCGM 106:2012 7.3, 7.4, 7.6", "decision rule as in ISO 14253-1:2017, 95 % (from memory)"),
                    ConformityCase.class,
                    ConformityResult.class,
                    ConformitySheet::work)
            .drawn(AxialPictures::conformity);

    public static final Worksheet<ShimPackCase, ShimPackResult> SHIM_PACK = new Worksheet<>(
                    "shim-pack",
                    "Shim pack",
                    "The pack of the drawer that makes a clearance most surely lawful.",
                    List.of(
                            "JCGM 106:2012 7.4, 8.3.2",
                            "JCGM 100:2008 (GUM) 5.1.2, G.4",
                            "order of packs: common practice, no source"),
                    ShimPackCase.class,
                    ShimPackResult.class,
                    ShimPack::work)
            .drawn(AxialPictures::shimPack);

    public static final Worksheet<BacklashShiftCase, BacklashShiftResult> BACKLASH_SHIFT = new Worksheet<>(
            "backlash-shift",
            "Backlash shift",
            "How backlash answers to a measured shift of the crown wheel, and how far to go on.",
            List.of("difference quotient; 5 % rule: common practice, no source", "Grubbs 1969"),
            BacklashShiftCase.class,
            BacklashShiftResult.class,
            BacklashShift::work);

    public static final Worksheet<DrawerCase, DrawerResult> DRAWER = new Worksheet<>(
            "drawer",
            "One drawer, several clearances",
            "The shims for several clearances that share one drawer, chosen together.",
            List.of("JCGM 106:2012 7.4", "order of ways: common practice, no source"),
            DrawerCase.class,
            DrawerResult.class,
            Drawer::work);

    public static final List<Worksheet<?, ?>> ALL = List.of(
            READINGS, END_PLAY, DEPTH_STACK, GROWTH, CONFORMITY, SHIM_PACK, DRAWER, BACKLASH_SHIFT, PinionDepth.SHEET);

    private AxialSheets() {}
}
