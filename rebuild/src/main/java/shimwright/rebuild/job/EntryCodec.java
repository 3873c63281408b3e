package shimwright.rebuild.job;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.json.JsonWriteFeature;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.databind.deser.jdk.StringDeserializer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/**
 * Entries to text and back. The text is what is stored and hashed.
 *
 * <p>Entries written by older programs stay readable for ever: a component is never renamed or removed, and only text, a
 * list or a map may be added, which is empty in entries written before. A number, choice or yes-or-no cannot be added to
 * a type that is already written, because nothing would tell an absent one from a real one; that takes a new type.
 */
public final class EntryCodec {
    private static final JsonSetter.Value EMPTY = JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY);
    private static final Map<String, Class<? extends Entry>> TYPES = types();
    private static final int LONGEST_SHARED = 120;

    private EntryCodec() {}

    /** Made when an entry is first read or written: asking for a type needs none. */
    private static final class Json {
        private static final ObjectMapper MAPPER = JsonMapper.builder()
                .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
                .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                .withConfigOverride(String.class, absent -> absent.setNullHandling(EMPTY))
                .withConfigOverride(List.class, absent -> absent.setNullHandling(EMPTY))
                .withConfigOverride(Map.class, absent -> absent.setNullHandling(EMPTY))
                .disable(JsonWriteFeature.WRITE_NAN_AS_STRINGS)
                .addModule(new SimpleModule().addDeserializer(String.class, new Shared()))
                .build();
    }

    /** Texts of which an entry holds many that others hold as well: names of steps, parts, words of the working. Each is held once. */
    private static final class Shared extends StringDeserializer {
        @Override
        public String deserialize(JsonParser parser, DeserializationContext context) {
            String text = super.deserialize(parser, context);
            return text.length() > LONGEST_SHARED ? text : text.intern();
        }
    }

    private static Map<String, Class<? extends Entry>> types() {
        Map<String, Class<? extends Entry>> types = new TreeMap<>();
        for (Class<?> room : new Class<?>[] {Entry.OfJob.class, Entry.OfShop.class}) {
            Arrays.stream(room.getPermittedSubclasses())
                    .map(c -> c.<Entry>asSubclass(Entry.class))
                    .forEach(c -> types.put(c.getSimpleName(), c));
        }
        return types;
    }

    /** The name under which an entry's type is stored. */
    public static String typeOf(Entry entry) {
        return entry.getClass().getSimpleName();
    }

    /** Whether this program has entries of that type. */
    public static boolean knows(String type) {
        return TYPES.containsKey(type);
    }

    /** The body as JSON text. */
    public static String write(Entry entry) {
        return Json.MAPPER.writeValueAsString(entry);
    }

    /**
     * The entry of a stored body.
     *
     * @throws IllegalStateException for a type or text that this program never wrote
     */
    public static Entry read(String type, String body) {
        Class<? extends Entry> known = TYPES.get(type);
        if (known == null) {
            throw new IllegalStateException("the log holds an entry of the unknown type " + type
                    + "; it was written by a newer program, use that one");
        }
        try {
            return Json.MAPPER.readValue(body, known);
        } catch (JacksonException broken) {
            throw new IllegalStateException("the log holds a broken entry of type " + type, broken);
        }
    }
}
