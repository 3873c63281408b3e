package shimwright.bench.web.guard;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.bench.text.Characters;
import shimwright.mechanics.outcome.Refusal;

/** Whether what was written in an address, a content type or a form can be read at all. */
public final class ReadableText {
    private static final Set<String> CHARSETS = Set.of("utf-8", "utf8", "us-ascii");
    private static final int HEX = 16;

    private ReadableText() {}

    static Optional<Refusal> refusal(RequestHead asked) {
        String raw = asked.address().split("\\?", 2)[0].toLowerCase(Locale.ROOT);
        // what one reader of an address takes for a part of a name and another for its end
        if (asked.path().isEmpty()
                || raw.contains(";")
                || raw.contains("%2f")
                || raw.contains("%5c")
                || raw.contains("\\")) {
            return Optional.of(Refusal.at("address", "it cannot be read", "Go back to the shop"));
        }
        return unreadable(asked.address()).or(() -> charset(asked.header("Content-Type")));
    }

    /** Percent signs without two digits behind them, bytes that are no UTF-8, and characters that no text may hold. */
    private static Optional<Refusal> unreadable(String address) {
        byte[] bytes = new byte[address.length()];
        int length = 0;
        for (int at = 0; at < address.length(); at++) {
            char c = address.charAt(at);
            if (c >= 0x80) {
                return Optional.of(
                        Refusal.at("address", "it holds a bare letter that is not ASCII", "Go back to the shop"));
            }
            if (c == '%') {
                boolean room = at + 2 < address.length();
                int high = room ? Character.digit(address.charAt(at + 1), HEX) : -1;
                int low = room ? Character.digit(address.charAt(at + 2), HEX) : -1;
                if (high < 0 || low < 0) {
                    return Optional.of(Refusal.at("address", "a percent sign stands alone in it", "Write it as %25"));
                }
                bytes[length++] = (byte) (high * HEX + low);
                at += 2;
            } else {
                bytes[length++] = (byte) c;
            }
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes, 0, length))
                    .toString();
            OptionalInt unfit = Characters.unfit(text);
            return unfit.isEmpty() ? Optional.empty() : Optional.of(holds("", "address", unfit.getAsInt()));
        } catch (CharacterCodingException wrong) {
            return Optional.of(Refusal.at("address", "is not text in UTF-8", "Go back to the shop"));
        }
    }

    private static Optional<Refusal> charset(String type) {
        for (String part : type.split(";")) {
            String[] pair = part.strip().toLowerCase(Locale.ROOT).split("=", 2);
            if (pair.length == 2
                    && pair[0].strip().equals("charset")
                    && !CHARSETS.contains(pair[1].strip().replace("\"", ""))) {
                return Optional.of(Refusal.at("body", "it is not in UTF-8", "Send it as UTF-8"));
            }
        }
        return Optional.empty();
    }

    private static Refusal holds(String key, String place, int unfit) {
        return new Refusal(
                key,
                place,
                "it holds the character " + Characters.name(unfit) + ", which no page or paper can show",
                "Take it out; a scanner that sends it can be told to leave it out");
    }

    /**
     * What stands against a form as a whole; empty for none.
     *
     * @param fields values by name
     */
    public static List<Refusal> refusals(Map<String, List<String>> fields) {
        List<Refusal> refusals = new ArrayList<>();
        if (fields.values().stream().mapToInt(List::size).sum() > RequestLimits.FIELDS) {
            refusals.add(
                    Refusal.at("form", "it has more than " + RequestLimits.FIELDS + " fields", "Send less at a time"));
            return refusals;
        }
        fields.forEach((name, values) -> {
            String place = name.length() > RequestLimits.FIELD_NAME ? "form" : Characters.harmless(name);
            if (name.length() > RequestLimits.FIELD_NAME) {
                refusals.add(Refusal.at(place, "a field has a name of " + name.length() + " characters", "Shorten it"));
            }
            Integer unfit = first(name, values);
            if (unfit != null) {
                refusals.add(holds(place, place, unfit));
            }
            int length = values.stream().mapToInt(String::length).sum();
            if (length > RequestLimits.FIELD) {
                refusals.add(new Refusal(
                        place,
                        place,
                        "the text has " + length + " characters",
                        "Keep it under " + RequestLimits.FIELD));
            }
        });
        return refusals;
    }

    private static @Nullable Integer first(String name, List<String> values) {
        OptionalInt inName = Characters.unfit(name);
        if (inName.isPresent()) {
            return inName.getAsInt();
        }
        for (String value : values) {
            OptionalInt unfit = Characters.unfit(value);
            if (unfit.isPresent()) {
                return unfit.getAsInt();
            }
        }
        return null;
    }
}
