package screedbook.season;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import screedbook.check.InShort;
import screedbook.check.Sort;
import screedbook.entry.ShiftId;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** A shift in short as a text without line ends, and back. */
final class InOneLine {
    private static final int BEFORE_SORTS = 9;

    private InOneLine() {}

    static String text(InShort s) {
        StringBuilder text = new StringBuilder(String.join(
                ";",
                s.shift().toString(),
                s.state(),
                Integer.toString(s.loads()),
                s.placed().value().toPlainString(),
                s.placed().unit().suffix(),
                s.spread().map(BigDecimal::toPlainString).orElse(""),
                s.paver().map(BigDecimal::toPlainString).orElse(""),
                Integer.toString(s.notRead()),
                Integer.toString(s.damages())));
        for (Sort sort : Sort.values()) {
            text.append(';').append(s.count(sort));
        }
        return text.toString();
    }

    /** Empty when the text tells of no such thing. */
    static Optional<InShort> read(String text) {
        String[] parts = text.split(";", -1);
        if (parts.length != BEFORE_SORTS + Sort.values().length) {
            return Optional.empty();
        }
        try {
            Map<Sort, Integer> sorts = new EnumMap<>(Sort.class);
            for (Sort sort : Sort.values()) {
                int many = Integer.parseInt(parts[BEFORE_SORTS + sort.ordinal()]);
                if (many > 0) {
                    sorts.put(sort, many);
                }
            }
            return Optional.of(new InShort(
                    ShiftId.of(parts[0]),
                    parts[1],
                    Integer.parseInt(parts[2]),
                    new Amount(new BigDecimal(parts[3]), Unit.ofSuffix(parts[4]).orElseThrow()),
                    figure(parts[5]),
                    figure(parts[6]),
                    Map.copyOf(sorts),
                    Integer.parseInt(parts[7]),
                    Integer.parseInt(parts[8])));
        } catch (RuntimeException notOne) {
            return Optional.empty();
        }
    }

    private static Optional<BigDecimal> figure(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(text));
    }
}
