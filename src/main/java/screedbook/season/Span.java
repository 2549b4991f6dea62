package screedbook.season;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.IsoFields;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import screedbook.entry.ShiftId;
import screedbook.report.SeasonPart;
import screedbook.tally.Accrued;
import screedbook.tally.Section;

/** Shifts that follow each other and belong together: a day's, a week's, a month's, a job's. */
final class Span {
    /** What shifts are taken together by. */
    enum By {
        SHIFT(ShiftId::toString),
        DAY(shift -> shift.date().toString()),
        WEEK(shift -> week(shift.date())),
        MONTH(shift -> YearMonth.from(shift.date()).toString()),
        JOB(shift -> "");

        private final Function<ShiftId, String> named;

        By(Function<ShiftId, String> named) {
            this.named = named;
        }

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        String of(ShiftId shift) {
            return named.apply(shift);
        }

        /** Week of the year as ISO 8601 counts it: {@code 2026-W20}. */
        private static String week(LocalDate date) {
            return String.format(
                    Locale.ROOT,
                    "%d-W%02d",
                    date.get(IsoFields.WEEK_BASED_YEAR),
                    date.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
        }
    }

    private final By by;
    private final String of;
    private final Accrued accrued = new Accrued();
    private LocalDate first;
    private LocalDate last;

    Span(By by, String of) {
        this.by = by;
        this.of = of;
    }

    boolean takes(ShiftId shift) {
        return by.of(shift).equals(of);
    }

    void add(ShiftId shift, List<Section> sections) {
        first = first == null ? shift.date() : first;
        last = shift.date();
        accrued.add(sections);
    }

    /**
     * What the shifts so far come to.
     *
     * @param plan see {@link Derived#with}
     */
    SeasonPart part(String job, List<Section> plan) {
        List<Section> sections = Derived.with(accrued.sections(), plan);
        return new SeasonPart(by.word(), by == By.JOB ? job : of, job, first, last, accrued.shifts(), sections);
    }
}
