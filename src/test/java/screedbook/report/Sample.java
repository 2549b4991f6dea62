package screedbook.report;

import java.util.List;
import java.util.Optional;
import screedbook.check.Finding;
import screedbook.check.Sort;
import screedbook.entry.Answer;
import screedbook.entry.Day;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.entry.Seal;
import screedbook.entry.Standing;
import screedbook.job.Agreed;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;
import screedbook.tally.Jobs;
import screedbook.tally.Shift;
import screedbook.tally.ToDate;
import screedbook.tally.Totals;

/** A small shift with something of everything, for the page and its files. Invented throughout. */
final class Sample {
    private Sample() {}

    static Shift shift() {
        return Shift.day()
                .key(Kind.OPENING, null, "format", "1", "zone", "America/Boise")
                .key(
                        Kind.WEATHER,
                        "07:10",
                        "air_degF",
                        "58",
                        "humidity_pct",
                        "61",
                        "wind_mph",
                        "6",
                        "wind_from",
                        "sw",
                        "sky",
                        "clear",
                        "precipitation",
                        "none",
                        "road",
                        "dry")
                .key(Kind.SURFACE, "07:25", "surface_degF", "71", "place_sta", "12+00", "light", "sun")
                .key(
                        Kind.TACK,
                        "07:30",
                        "product",
                        "CSS-1h",
                        "distributor",
                        "D7",
                        "surface",
                        "milled",
                        "from_sta",
                        "12+00",
                        "to_sta",
                        "17+00",
                        "width_ft",
                        "12",
                        "before_gal",
                        "900",
                        "after_gal",
                        "860",
                        "material_degF",
                        "140",
                        "diluted",
                        "no",
                        "pull",
                        "A")
                .ticket(
                        "08:00",
                        "101",
                        "20.00",
                        "mix",
                        "12.5-70A",
                        "truck",
                        "T104",
                        "pull",
                        "A",
                        "lift",
                        "2",
                        "from_sta",
                        "12+00",
                        "to_sta",
                        "13+00",
                        "paver_degF",
                        "290")
                .ticket(
                        "08:10",
                        "102",
                        "22.00",
                        "mix",
                        "12.5-70A",
                        "truck",
                        "T118",
                        "pull",
                        "A",
                        "lift",
                        "2",
                        "from_sta",
                        "13+00",
                        "to_sta",
                        "15+00",
                        "paver_degF",
                        "264")
                .ticket(
                        "08:20",
                        "103",
                        "21.00",
                        "mix",
                        "12.5-70A",
                        "truck",
                        "T121",
                        "pull",
                        "A",
                        "lift",
                        "2",
                        "from_sta",
                        "15+00",
                        "fate",
                        "part-placed",
                        "returned_ston",
                        "5.00",
                        "basis",
                        "weigh-back",
                        "paver_degF",
                        "284")
                .ticket(
                        "08:22",
                        "104",
                        "20.50",
                        "mix",
                        "12.5-70A",
                        "truck",
                        "T104",
                        "fate",
                        "rejected",
                        "reason",
                        "boiled over",
                        "decided_by",
                        "R. Kell",
                        "told_to",
                        "foreman",
                        "paver_degF",
                        "231")
                .ticket("08:24", "105", "19.00", "mix", "12.5-70A", "fate", "void-at-plant")
                .ticket(
                        "08:30",
                        "106",
                        "18.00",
                        "mix",
                        "12.5-70A",
                        "truck",
                        "T118",
                        "pull",
                        "A",
                        "lift",
                        "2",
                        "from_sta",
                        "16+00",
                        "to_sta",
                        "17+00")
                .key(
                        Kind.ANSWER,
                        "08:13",
                        "of",
                        "paver/6",
                        "rule",
                        "heat-at-paver",
                        "text",
                        "spread at once, rollers close",
                        "decided_by",
                        "R. Kell",
                        "told_to",
                        "foreman")
                .key(
                        Kind.PART,
                        null,
                        "of",
                        "paver/6",
                        "share_ston",
                        "4.00",
                        "pull",
                        "B",
                        "from_sta",
                        "12+00",
                        "to_sta",
                        "12+40")
                .key(Kind.WASTE, "09:00", "weight_ston", "0.50", "mix", "12.5-70A", "reason", "cleanup")
                .key(
                        Kind.NOTE,
                        "09:05",
                        "tags",
                        "instruction",
                        "text",
                        "leave the casting at 14+20 free",
                        "from_whom",
                        "R. Kell",
                        "answer",
                        "done")
                .fromNotes()
                .ticket("08:40", "107", "21.00", "mix", "12.5-70A", "truck", "T121", "pull", "A", "lift", "2")
                .strike(15, "other job's load")
                .amend(10, "net_ston", "18.20", "read off the paper again")
                .unreadable("the line ends in the middle of a word")
                .key(
                        Kind.CLOSING,
                        "15:00",
                        "their_name",
                        "J. Alder",
                        "their_loads",
                        "5",
                        "their_ston",
                        "102.20",
                        "agreed",
                        "no",
                        "why",
                        "0.50 of the last ticket",
                        "controlling_item",
                        "401-1",
                        "day_charged",
                        "yes")
                .fromNotes()
                .key(Kind.NOTE, "14:20", "text", "mat at the north end 138 when opened", "mat_degF", "138");
    }

    /** A metric shift: 22.00 t and 21.50 t on 3.5 m by 100 m, and a shot of 120 L at 60 °C on 350 m². */
    static Shift metric() {
        return Shift.day()
                .key(Kind.OPENING, null, "format", "1")
                .key(
                        Kind.TACK,
                        "07:30",
                        "product",
                        "SS-1",
                        "surface",
                        "existing",
                        "from_sta",
                        "1+000",
                        "to_sta",
                        "1+100",
                        "width_m",
                        "3.5",
                        "used_L",
                        "120",
                        "material_degC",
                        "60",
                        "diluted",
                        "no")
                .ticket(
                        "08:00",
                        "1",
                        "22.00",
                        "mix",
                        "AC-12",
                        "pull",
                        "A",
                        "lift",
                        "1",
                        "from_sta",
                        "1+000",
                        "to_sta",
                        "1+050",
                        "paver_degC",
                        "150")
                .ticket(
                        "08:15",
                        "2",
                        "21.50",
                        "mix",
                        "AC-12",
                        "pull",
                        "A",
                        "lift",
                        "1",
                        "from_sta",
                        "1+050",
                        "to_sta",
                        "1+100",
                        "paver_degC",
                        "146");
    }

    static Shift empty() {
        return Shift.day();
    }

    static Shift noWork() {
        return Shift.day()
                .key(Kind.OPENING, null, "format", "1")
                .key(
                        Kind.WEATHER,
                        "07:00",
                        "air_degF",
                        "44",
                        "humidity_pct",
                        "95",
                        "precipitation",
                        "rain",
                        "road",
                        "wet")
                .key(Kind.NO_WORK, "07:15", "why", "rain", "said_by", "R. Kell")
                .key(Kind.CLOSING, "07:20", "day_charged", "no");
    }

    static List<Finding> findings(Day day) {
        List<Standing<Answer>> answers = day.standing(Answer.class);
        return List.of(
                new Finding(
                        "heat-at-paver",
                        Sort.OUTSIDE,
                        List.of(new Ref("paver", 6)),
                        "at the paver 264 °F",
                        "at least 270 °F",
                        "practice, PG 70",
                        "270 °F or more",
                        "",
                        answers),
                new Finding(
                        "heat-at-paver",
                        Sort.OUTSIDE,
                        List.of(new Ref("paver", 8)),
                        "at the paver 231 °F",
                        "at least 270 °F",
                        "practice, PG 70",
                        "270 °F or more",
                        "",
                        List.of()),
                new Finding(
                        "heat-due",
                        Sort.MISSING,
                        List.of(new Ref("paver", 10)),
                        "no temperature at the paver",
                        "first 5 loads of a mix",
                        "the job's checks",
                        "",
                        "",
                        List.of()));
    }

    static DayPaper paper() {
        return paper(shift(), Jobs.us());
    }

    static DayPaper paper(Shift shift, Job job) {
        Day day = shift.read();
        Totals totals = Totals.of(day, job, ToDate.NONE, shift.at("15:00"));
        List<Seal> seals = day.closed()
                ? List.of(new Seal("paver", "3f0c9a7be21d44580a".repeat(4).substring(0, 64), 19))
                : List.of();
        List<Finding> findings = day.standing(Answer.class).isEmpty() ? List.of() : findings(day);
        return new DayPaper(
                day,
                totals,
                findings,
                Optional.of(new Agreed(job, 2, "ab".repeat(32))),
                SpecSheet.shipped("practice"),
                seals,
                List.of(),
                2);
    }
}
