package shimwright.rebuild.reuse;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Working;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.plan.backout.BackOut;
import shimwright.rebuild.plan.backout.Loss;
import shimwright.rebuild.plan.backout.Target;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Kit;
import shimwright.rebuild.unit.model.Unit;

/**
 * What it takes to come back for a part once the unit is built and in the vehicle.
 *
 * @param minutes of backing out to it and building again, by the unit file; empty where no step fits it
 * @param parts price of what the way there destroys or makes new, as far as it is known
 * @param unpriced what of that has no price
 */
public record ComeBack(OptionalDouble minutes, double parts, List<String> unpriced) {
    public ComeBack {
        unpriced = List.copyOf(unpriced);
    }

    /** Back from the whole unit to the part of a piece that is dearest to reach. */
    static ComeBack toAny(Unit unit, Order order, JudgedPiece piece) {
        ComeBack dearest = new ComeBack(OptionalDouble.empty(), 0, List.of());
        for (String item : piece.items()) {
            ComeBack one = to(unit, order, item);
            if (one.minutes().orElse(-1) > dearest.minutes().orElse(-1)) {
                dearest = one;
            }
        }
        return dearest;
    }

    private static ComeBack to(Unit unit, Order order, String item) {
        List<String> done = List.copyOf(order.steps().keySet());
        boolean fitted = order.steps().values().stream()
                .anyMatch(
                        step -> step.installs().contains(item) || step.builds().contains(item));
        Outcome<BackOut> back = BackOut.to(unit, java.util.Map.of(), done, new Target.OfItem(item, Target.Want.RENEW));
        if (!fitted || !back.isOk() || back.orElseThrow().free()) {
            return new ComeBack(OptionalDouble.empty(), 0, List.of());
        }
        BackOut way = back.orElseThrow();
        double price = 0;
        List<String> unpriced = new ArrayList<>();
        for (Loss loss : way.losses()) {
            price += loss.price();
            if (loss.price() <= 0) {
                unpriced.add(loss.what());
            }
        }
        for (Item renew : way.renew()) {
            OptionalDouble known = price(unit, renew);
            price += known.orElse(0);
            if (known.isEmpty()) {
                unpriced.add(renew.name());
            }
        }
        return new ComeBack(
                OptionalDouble.of(way.minutes()),
                price,
                unpriced.stream().distinct().toList());
    }

    /** The price of one of an item in the kits of its unit, the least there is; empty where none says it. */
    static OptionalDouble price(Unit unit, Item item) {
        return unit.type().kits().stream()
                .flatMap(kit -> kit.contents().stream())
                .filter(line -> line.item().equals(item.id())
                        || (!item.part().isEmpty() && line.part().equals(item.part())))
                .mapToDouble(Kit.Line::price)
                .filter(price -> price > 0)
                .min();
    }

    /** In money, with each step of it kept; empty where a needed number is not known. */
    OptionalDouble money(Stakes stakes, Working working, List<String> unknown) {
        Stream.of(
                        minutes.isEmpty() ? "minutes to come back to it: no step of the unit file fits it" : "",
                        stakes.vehicle().isEmpty() ? "minutes to get the unit out of the vehicle and in again" : "",
                        stakes.rate().isEmpty() ? "the shop's rate an hour" : "")
                .filter(one -> !one.isEmpty())
                .forEach(unknown::add);
        if (minutes.isEmpty() || stakes.vehicle().isEmpty() || stakes.rate().isEmpty()) {
            return OptionalDouble.empty();
        }
        double hours = working.line(
                "hours to come back",
                "(back out and build again + out of the vehicle and in) / 60 min",
                (minutes.getAsDouble() + stakes.vehicle().getAsDouble() / 60) / 60,
                Kind.NUMBER,
                "unit file, usual tariff of undoing");
        double labour = working.line(
                "labour of coming back", "hours × rate", hours * stakes.rate().getAsDouble(), Kind.NUMBER);
        double lost =
                working.line("parts that coming back uses up", "prices in the kits", parts, Kind.NUMBER, "unit file");
        return OptionalDouble.of(
                working.line("coming back costs at least", "labour + parts", labour + lost, Kind.NUMBER));
    }
}
