package screedbook.entry;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time of day as people type it, placed in a shift.
 *
 * @param which {@code a} or {@code b}, for the first or the second of an instant that exists twice; else empty
 */
record HourTyped(LocalTime hour, String which) {
    private static final Pattern FORM = Pattern.compile("(\\d{1,2})[:.]?(\\d{2})?\\s*(?:([ap])(m)?)?\\s*([ab])?");
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("HH:mm");

    /** Days before the clock's that are looked at; a day may lack an hour, so one is not enough. */
    private static final int DAYS = 3;

    static Typed<OffsetDateTime> read(String text, Typed.Clock clock) {
        String t = text.strip().toLowerCase(Locale.ROOT);
        if (t.isEmpty()) {
            return Typed.of(null);
        }
        return of(t).map(typed -> typed.in(clock))
                .orElseGet(() -> Typed.not(
                        "\"" + Shown.text(text.strip()) + "\" is no time; right would be 2132, 21:32 or 9:32p"));
    }

    private static Optional<HourTyped> of(String text) {
        Matcher m = FORM.matcher(text);
        if (!m.matches() || (m.group(2) == null && m.group(3) == null)) {
            return Optional.empty();
        }
        int minute = m.group(2) == null ? 0 : Integer.parseInt(m.group(2));
        boolean loneA = "a".equals(m.group(3)) && m.group(4) == null;
        int hour = hour(Integer.parseInt(m.group(1)), m.group(3), loneA);
        if (hour == 24 && minute == 0) {
            hour = 0;
        }
        if (hour < 0 || hour > 23 || minute > 59) {
            return Optional.empty();
        }
        String which = m.group(5) != null ? m.group(5) : loneA ? "a" : "";
        return Optional.of(new HourTyped(LocalTime.of(hour, minute), which));
    }

    /** An a may mean the morning or the first of two, which is never after noon; so 0:40a is read as well. */
    private static int hour(int typed, String half, boolean loneA) {
        if (half == null || (loneA && typed == 0)) {
            return typed;
        }
        return typed < 1 || typed > 12 ? -1 : typed % 12 + (half.equals("p") ? 12 : 0);
    }

    private Typed<OffsetDateTime> in(Typed.Clock clock) {
        List<OffsetDateTime> fits =
                around(hour, clock).stream().filter(clock::holds).toList();
        if (!fits.isEmpty()) {
            return chosen(fits);
        }
        List<OffsetDateTime> half =
                around(hour.plusHours(12), clock).stream().filter(clock::holds).toList();
        List<OffsetDateTime> offered = half.isEmpty() ? half : List.of(half.get(half.size() - 1));
        LocalDateTime today = day(clock).atTime(hour);
        return instants(today, clock.zone()).isEmpty()
                ? skipped(today, clock.zone(), offered)
                : outside(clock, offered);
    }

    /** Every such instant of the days about the clock's, oldest first. */
    private static List<OffsetDateTime> around(LocalTime hour, Typed.Clock clock) {
        List<OffsetDateTime> all = new ArrayList<>();
        for (int back = DAYS; back >= -1; back--) {
            all.addAll(instants(day(clock).minusDays(back).atTime(hour), clock.zone()));
        }
        return all;
    }

    private static LocalDate day(Typed.Clock clock) {
        return clock.last().atZoneSameInstant(clock.zone()).toLocalDate();
    }

    private static List<OffsetDateTime> instants(LocalDateTime local, ZoneId zone) {
        return zone.getRules().getValidOffsets(local).stream()
                .map(local::atOffset)
                .sorted(OffsetDateTime.timeLineOrder())
                .toList();
    }

    private Typed<OffsetDateTime> chosen(List<OffsetDateTime> fits) {
        OffsetDateTime newest = fits.get(fits.size() - 1);
        List<OffsetDateTime> same = fits.stream()
                .filter(t -> t.toLocalDateTime().equals(newest.toLocalDateTime()))
                .toList();
        if (same.size() == 2 && which.isEmpty()) {
            String said = SHORT.format(hour) + " comes twice, clocks go back; add a for the first, b for the second";
            return new Typed<>(null, said, same);
        }
        if (same.size() == 1 && which.equals("b")) {
            return Typed.not(
                    SHORT.format(hour) + " comes once here; right would be " + SHORT.format(hour) + " without b");
        }
        return Typed.of(which.equals("b") ? newest : same.get(0));
    }

    private Typed<OffsetDateTime> skipped(LocalDateTime local, ZoneId zone, List<OffsetDateTime> offered) {
        LocalDateTime later = local.plus(zone.getRules().getTransition(local).getDuration());
        String said = SHORT.format(hour) + " does not exist on this date, clocks go forward; right would be "
                + SHORT.format(later);
        return new Typed<>(null, said, offered.isEmpty() ? instants(later, zone) : offered);
    }

    private Typed<OffsetDateTime> outside(Typed.Clock clock, List<OffsetDateTime> offered) {
        List<OffsetDateTime> all = around(hour, clock);
        OffsetDateTime before = all.get(0);
        List<OffsetDateTime> ahead = new ArrayList<>();
        for (OffsetDateTime each : all) {
            if (each.isAfter(clock.last())) {
                ahead.add(each);
            } else {
                before = each;
            }
        }
        return new Typed<>(before, "", offered.isEmpty() && !ahead.isEmpty() ? List.of(ahead.get(0)) : offered);
    }
}
