package shimwright.mechanics.axial;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.axial.reading.GaugeData;
import shimwright.mechanics.axial.shim.Piece;

/** The demo transaxle's readings and drawer, in millimetres as written in its file; invented. */
public final class DemoTransaxle {
    /** Two dial indicators of 0.01 mm; error limit and retrace of JIS B 7503:2011. */
    public static final GaugeData INDICATOR = new GaugeData(10e-6, 5e-6, 3e-6, 0);

    public static final double U_PIECE = 2e-6;

    private DemoTransaxle() {}

    public static List<List<Double>> rounds(double[]... millimetres) {
        List<List<Double>> rounds = new ArrayList<>();
        for (double[] round : millimetres) {
            List<Double> values = new ArrayList<>();
            for (double value : round) {
                values.add(value / 1000);
            }
            rounds.add(values);
        }
        return rounds;
    }

    public static List<List<Double>> series(double... millimetres) {
        List<List<Double>> rounds = new ArrayList<>();
        for (double value : millimetres) {
            rounds.add(List.of(value / 1000));
        }
        return rounds;
    }

    static List<Double> metres(double... millimetres) {
        List<Double> values = new ArrayList<>();
        for (double value : millimetres) {
            values.add(value / 1000);
        }
        return values;
    }

    /** Three readings of the drawer's file, averaged. */
    public static Piece piece(String id, double... millimetres) {
        double sum = 0;
        for (double value : millimetres) {
            sum += value;
        }
        return new Piece(id, sum / millimetres.length / 1000, U_PIECE);
    }

    /** Family SH52 without the burred d52-07. */
    public static List<Piece> sh52() {
        return List.of(
                piece("d52-01", 0.251),
                piece("d52-02", 0.303, 0.303, 0.302),
                piece("d52-03", 0.352),
                piece("d52-04", 0.398, 0.398, 0.397),
                piece("d52-05", 0.447),
                piece("d52-06", 0.502),
                piece("d52-08", 0.602, 0.602, 0.603),
                piece("d52-09", 0.681),
                piece("d52-10", 0.797));
    }

    /** Family SP38 without the burred d38-08. */
    public static List<Piece> sp38() {
        return List.of(
                piece("d38-01", 18.214, 18.214, 18.213),
                piece("d38-02", 18.262),
                piece("d38-03", 18.341),
                piece("d38-04", 18.402),
                piece("d38-05", 18.455),
                piece("d38-06", 18.511, 18.512, 18.511),
                piece("d38-07", 18.558));
    }
}
