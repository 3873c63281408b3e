package shimwright.bench.web.shop;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.quantity.Kind;

/**
 * What the first page shows.
 *
 * @param cards the jobs, the newest first
 * @param loose how many pieces lie in the drawer
 * @param gauges what the shop measures with
 */
public record Overview(List<Card> cards, int loose, List<Gauge> gauges) {
    private static final String END = "end";

    /**
     * A job as it lies on the bench.
     *
     * @param where what is next, in words
     * @param done steps done
     * @param total steps in all; 0 where the unit type is not on the shelf
     */
    public record Card(
            String job,
            String number,
            String owner,
            boolean closed,
            String unitName,
            String where,
            int done,
            int total) {

        Card saying(String other) {
            return new Card(job, number, owner, closed, unitName, other, done, total);
        }
    }

    /**
     * A gauge.
     *
     * @param step of its scale, in SI units of its kind
     * @param errorLimit half-width, in SI units of its kind
     */
    public record Gauge(String name, Kind kind, double step, double errorLimit) {}

    void write(DataOutputStream out) throws IOException {
        out.writeInt(loose);
        out.writeInt(cards.size());
        for (Card card : cards) {
            out.writeUTF(card.job());
            out.writeUTF(card.number());
            out.writeUTF(card.owner());
            out.writeBoolean(card.closed());
            out.writeUTF(card.unitName());
            out.writeUTF(card.where());
            out.writeInt(card.done());
            out.writeInt(card.total());
        }
        out.writeInt(gauges.size());
        for (Gauge gauge : gauges) {
            out.writeUTF(gauge.name());
            out.writeUTF(gauge.kind().name());
            out.writeDouble(gauge.step());
            out.writeDouble(gauge.errorLimit());
        }
        out.writeUTF(END);
    }

    /**
     * What was written.
     *
     * @throws IOException where it is cut short or no overview
     */
    static Overview read(DataInputStream in) throws IOException {
        int loose = in.readInt();
        List<Card> cards = new ArrayList<>();
        for (int left = in.readInt(); left > 0; left--) {
            cards.add(new Card(
                    in.readUTF(),
                    in.readUTF(),
                    in.readUTF(),
                    in.readBoolean(),
                    in.readUTF(),
                    in.readUTF(),
                    in.readInt(),
                    in.readInt()));
        }
        List<Gauge> gauges = new ArrayList<>();
        for (int left = in.readInt(); left > 0; left--) {
            gauges.add(new Gauge(in.readUTF(), Kind.valueOf(in.readUTF()), in.readDouble(), in.readDouble()));
        }
        if (!in.readUTF().equals(END)) {
            throw new IOException("no end");
        }
        return new Overview(cards, loose, gauges);
    }
}
