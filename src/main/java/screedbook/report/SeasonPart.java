package screedbook.report;

import java.time.LocalDate;
import java.util.List;
import screedbook.tally.Section;

/**
 * What several shifts of one job come to.
 *
 * @param by {@code shift}, {@code day}, {@code week}, {@code month}, {@code job}, {@code mix}, {@code pull} or
 *     {@code lift}
 * @param of which of them: {@code 2026-05-14}, {@code 2026-W20}, {@code 12.5-70A}
 * @param job as its lines name it
 * @param from date of the first shift in it
 * @param to date of the last shift in it
 */
public record SeasonPart(
        String by, String of, String job, LocalDate from, LocalDate to, int shifts, List<Section> sections) {}
