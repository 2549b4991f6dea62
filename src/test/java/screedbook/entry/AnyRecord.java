package screedbook.entry;

import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.UnitSystem;

/** Any record filled with seeded random values by what its components are; about every third blank is not observed. */
public final class AnyRecord {
    private static final String LETTERS = "abcXYZ 019-/.,é°²ñ\"\\\t\u202E=";

    private final Random random;
    private final UnitSystem system;

    public AnyRecord(long seed, UnitSystem system) {
        this.random = new Random(seed);
        this.system = system;
    }

    public <R extends Record> R of(Class<R> type) {
        RecordComponent[] components = type.getRecordComponents();
        Object[] arguments = Arrays.stream(components).map(this::component).toArray();
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            Constructor<R> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(arguments);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(type + " cannot be made", e);
        }
    }

    private Object component(RecordComponent component) {
        Blank blank = component.getAnnotation(Blank.class);
        if (blank == null) {
            return of(component.getType().asSubclass(Record.class));
        }
        if (random.nextInt(3) == 0) {
            return null;
        }
        if (component.getType() == Amount.class) {
            Measure measure = blank.measure()[0];
            return new Amount(number(), measure.unit(system));
        }
        if (component.getType() == List.class) {
            Type element = ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
            List<Object> list = new ArrayList<>();
            for (int i = random.nextInt(4); i > 0; i--) {
                list.add(value((Class<?>) element));
            }
            return List.copyOf(list);
        }
        return value(component.getType());
    }

    private Object value(Class<?> type) {
        if (type == String.class) {
            return text();
        }
        if (type == Integer.class) {
            return random.nextInt(20_000) - 10_000;
        }
        if (type == BigDecimal.class) {
            return number();
        }
        if (type.isEnum()) {
            return type.getEnumConstants()[random.nextInt(type.getEnumConstants().length)];
        }
        if (type == OffsetDateTime.class) {
            return OffsetDateTime.of(2026, 1, 1, 0, 0, 0, 0, ZoneOffset.ofHours(random.nextInt(9) - 8))
                    .plusSeconds(random.nextInt(40_000_000));
        }
        if (type == LocalDate.class) {
            return LocalDate.of(2024, 2, 28).plusDays(random.nextInt(800));
        }
        if (type == LocalTime.class) {
            return LocalTime.ofSecondOfDay(60L * random.nextInt(1440));
        }
        if (type == ZoneId.class) {
            return ZoneId.of(
                    List.of("America/Denver", "America/New_York", "UTC").get(random.nextInt(3)));
        }
        if (type == Station.class) {
            return Station.of(
                    random.nextInt(900) + "+" + (10 + random.nextInt(90)) + (random.nextBoolean() ? ".5" : " ah"));
        }
        if (type == Ref.class) {
            return new Ref("paver", 1 + random.nextInt(999));
        }
        if (type == Map.class) {
            Map<String, Object> set = new LinkedHashMap<>();
            set.put("net_ston", number());
            set.put("truck", text());
            set.put("photos", List.of("1", "2"));
            return set;
        }
        return of(type.asSubclass(Record.class));
    }

    /** With trailing zeros and without, below zero and above, never more than 12 digits. */
    private BigDecimal number() {
        return BigDecimal.valueOf(random.nextInt(2_000_000) - 1_000_000, random.nextInt(4));
    }

    private String text() {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(12); i > 0; i--) {
            text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return text.toString();
    }
}
