package shimwright.mechanics.registry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import shimwright.mechanics.quantity.Range;
import shimwright.mechanics.worksheet.SheetField;

/** Random inputs that keep to their ranges, ends and tiny values included. */
final class RandomInputs {
    private RandomInputs() {}

    static Object within(SheetField field, Random random) {
        return switch (field.shape()) {
            case QUANTITY, OPTIONAL_QUANTITY -> quantity(field, random);
            case WHOLE_NUMBER -> (int) Math.floor(number(field.range(), random, 50));
            case YES_NO -> random.nextBoolean();
            case CHOICE -> {
                Object[] constants = field.type().getEnumConstants();
                yield ((Enum<?>) constants[random.nextInt(constants.length)]).name();
            }
            case TEXT -> String.valueOf((char) ('a' + random.nextInt(4)));
            case LIST -> list(field, random);
            case RECORD -> record(field.children(), random);
            case BUDGET -> throw new IllegalStateException("a budget is not an input");
        };
    }

    private static Object list(SheetField field, Random random) {
        int most = Math.min(field.most(), field.fewest() + 6);
        int size = field.fewest() + random.nextInt(most - field.fewest() + 1);
        List<Object> list = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            list.add(within(field.entry(), random));
        }
        return list;
    }

    private static Map<String, Object> record(List<SheetField> fields, Random random) {
        Map<String, Object> record = new LinkedHashMap<>();
        for (SheetField child : fields) {
            if (child.needed() || random.nextInt(3) > 0) {
                record.put(child.name(), within(child, random));
            }
        }
        return record;
    }

    private static String quantity(SheetField field, Random random) {
        double value = number(field.range(), random, 1e3);
        String uncertainty = random.nextInt(6) == 0 ? " ± " + Math.abs(value) * random.nextDouble() * 0.1 : "";
        return value + uncertainty + " " + field.kind().siSymbol();
    }

    private static double number(Range range, Random random, double openEnd) {
        double low = Double.isFinite(range.min()) ? range.min() : -openEnd;
        double high = Double.isFinite(range.max()) ? range.max() : openEnd;
        return switch (random.nextInt(8)) {
            case 0 -> low;
            case 1 -> high;
            case 2 -> Math.max(low, Math.min(high, 0));
            case 3 -> Math.max(low, Math.min(high, high * Math.pow(10, -9 * random.nextDouble())));
            default -> low + (high - low) * random.nextDouble();
        };
    }
}
