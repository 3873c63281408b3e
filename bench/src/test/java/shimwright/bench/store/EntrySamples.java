package shimwright.bench.store;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.JobLog;

/** Entries of every type, filled through their components, so that a new type is tested the day it is added. */
final class EntrySamples {
    private static final Instant START = Instant.parse("2026-11-25T19:30:00.123456789Z");
    private static final List<String> TEXTS =
            List.of("", "input shaft", "0.24 mm / 9.5 thou", "\"quoted\"\nnext line", "µ ± 😀", "ré-usage\t");

    private final Random random;

    EntrySamples(long seed) {
        random = new Random(seed);
    }

    /** All types of entry. */
    static List<Class<?>> types() {
        return Stream.of(Entry.OfJob.class, Entry.OfShop.class)
                .flatMap(room -> Arrays.stream(room.getPermittedSubclasses()))
                .<Class<?>>map(type -> type)
                .toList();
    }

    /** One entry of the type. */
    Entry entry(Class<?> type) {
        return (Entry) record(type);
    }

    /** One entry of any type. */
    Entry entry() {
        return entry(types().get(random.nextInt(types().size())));
    }

    /** One of any type but those that name a picture or a unit file, which would be one that is not there. */
    Entry alone() {
        Entry entry = entry();
        while (entry instanceof Entry.PictureAdded
                || entry instanceof Entry.UnitPictured
                || entry instanceof Entry.JobOpened
                || entry instanceof Entry.UnitMoved) {
            entry = entry();
        }
        return entry;
    }

    /** A draft of an entry in a job's stream or the shop's. */
    Draft draft(String id, String job, Entry entry) {
        String stream = entry instanceof Entry.OfShop ? JobLog.SHOP : job;
        return new Draft(stream, id, START.plusMillis(random.nextInt(1_000_000)), "rebuilder", entry);
    }

    private Object record(Class<?> type) {
        RecordComponent[] parts = type.getRecordComponents();
        Class<?>[] types = Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new);
        Object[] values =
                Arrays.stream(parts).map(part -> value(part.getGenericType())).toArray();
        try {
            var constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (NoSuchMethodException
                | InstantiationException
                | IllegalAccessException
                | InvocationTargetException e) {
            throw new IllegalStateException("no sample of " + type, e);
        }
    }

    private Object value(Type type) {
        if (type instanceof ParameterizedType generic) {
            return many(generic);
        }
        Class<?> plain = (Class<?>) type;
        if (plain == String.class) {
            return TEXTS.get(random.nextInt(TEXTS.size()));
        } else if (plain == double.class || plain == Double.class) {
            return (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(12) - 9);
        } else if (plain == long.class) {
            return random.nextLong();
        } else if (plain == int.class) {
            return random.nextInt();
        } else if (plain == LocalDate.class) {
            return LocalDate.ofEpochDay(random.nextInt(40_000));
        } else if (plain == boolean.class) {
            return random.nextBoolean();
        } else if (plain.isEnum()) {
            Object[] choices = plain.getEnumConstants();
            return choices[random.nextInt(choices.length)];
        } else if (plain.isRecord()) {
            return record(plain);
        }
        throw new IllegalStateException("no sample of " + type);
    }

    private Object many(ParameterizedType generic) {
        int count = random.nextInt(4);
        Type[] of = generic.getActualTypeArguments();
        if (generic.getRawType() == List.class) {
            List<Object> list = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                list.add(value(of[0]));
            }
            return list;
        } else if (generic.getRawType() == Map.class) {
            Map<Object, Object> map = new LinkedHashMap<>();
            for (int i = 0; i < count; i++) {
                map.put("key " + i, value(of[1]));
            }
            return map;
        }
        throw new IllegalStateException("no sample of " + generic);
    }
}
