package screedbook.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import screedbook.entry.Aside;
import screedbook.entry.Built;
import screedbook.entry.Day;
import screedbook.entry.Entry;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.Moment;
import screedbook.entry.PlantRows;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;
import screedbook.entry.Source;
import screedbook.entry.Written;
import screedbook.job.Agreed;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;
import screedbook.tally.ToDate;
import screedbook.tally.Totals;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/**
 * A shift of an invented job, keyed line by line. An entry is told as a line has it, {@code "number=48217 net_ston=22.31"};
 * blanks in a value stand as {@code ~}.
 */
final class Shift {
    private static final Pattern NUMBERS = Pattern.compile(
            "(\\w+_(degF|degC|lb|ston|t|ft|in|m|gal|gal_yd2|pct|mph|kmh|min|dF|times|lb_ft3|mm|yd2|in_h|kg)|lift|format|batches|\\w+_parts"
                    + "|first_loads|then_one_in|tack_samples|job_revision|after_sunset|before_sunrise|latitude"
                    + "|longitude|their_loads|loads|lot|sublot|gmb|gmm|found|density_count|waiting|passes)=-?[0-9.]+|number=[0-9]");

    /** Two lifts, two mixes, two plants, PG 70 with a compaction aid, imaging; night from 20:00 to 06:00. */
    static final Map<String, Object> JOB = Map.ofEntries(
            Map.entry("id", "harrow-bend"),
            Map.entry("name", "Harrow Bend overlay"),
            Map.entry("zone", "America/Denver"),
            Map.entry("units", "us"),
            Map.entry("thermal", "continuous-imaging"),
            Map.entry("sheet", "practice"),
            Map.entry("night", map("begins=20:00 ends=06:00")),
            Map.entry(
                    "lifts",
                    List.of(
                            map("number=1 layer=below-riding-surface thickness_in=2.5 mix=19-64 base=asphalt"),
                            map("number=2 layer=riding-surface thickness_in=2.0 mix=12.5-70A base=asphalt"))),
            Map.entry(
                    "pulls",
                    List.of(map("name=A lift=2 left_ft=-12 right_ft=0"), map("name=B lift=2 left_ft=0 right_ft=12"))),
            Map.entry(
                    "lane_lines",
                    List.of(
                            map("name=left offset_ft=-12"),
                            map("name=centre offset_ft=0"),
                            map("name=right offset_ft=12"))),
            Map.entry(
                    "mixes",
                    List.of(
                            map("name=19-64 nmas_mm=19 binder=64-22 polymer=no aid=neither target_plant_degF=300"),
                            map("name=12.5-70A nmas_mm=12.5 binder=70-22 polymer=yes aid=compaction-aid"
                                    + " target_plant_degF=300 unit_weight_lb_ft3=145 pay_item=403"))),
            Map.entry(
                    "plants",
                    List.of(
                            map("name=Quarry series=own prints=net scale_until=2026-12-31"),
                            map("name=River series=shared prints=net scale_until=2026-12-31"))),
            Map.entry(
                    "trucks",
                    List.of(map("number=T104 tare_lb=27400 legal_gross_lb=73280"), map("number=T118 tare_lb=28000"))),
            Map.entry(
                    "products",
                    List.of(
                            map("name=CSS-1h grade=CSS-1h residue_pct=60 correction=emulsion dilution=no"),
                            map("name=Dilutable grade=SS-1 residue_pct=60 correction=emulsion dilution=yes"))),
            Map.entry(
                    "tack_targets",
                    List.of(
                            map(
                                    "surface=milled basis=residual rate_gal_yd2=0.05 tolerance_gal_yd2=0.01 source=plan~sheet~7"))));

    private final Job job;
    private SpecSheet sheet;
    private final List<List<Written>> books = new ArrayList<>();
    private final ShiftId id;
    private final OffsetDateTime opens;
    private OffsetDateTime keyed;
    private ToDate before = ToDate.NONE;
    private boolean lost;
    private final Map<Ref, PlantRows> lists = new HashMap<>();

    private Shift(Job job, SpecSheet sheet, ShiftId id, String opens) {
        this.job = job;
        this.sheet = sheet;
        this.id = id;
        this.opens = OffsetDateTime.parse(opens);
        this.keyed = this.opens;
        books.add(new ArrayList<>());
    }

    /** The night of 3 June 2026, opened at 19:30 with the weather noted and the surface read. */
    static Shift night() {
        return night(Map.of());
    }

    /** The same with parts of the job changed; a null value takes a part away. */
    static Shift night(Map<String, Object> changes) {
        return bare(changes)
                .at(
                        "19:40",
                        "weather air_degF=60 humidity_pct=50 wind_mph=5 sky=clear precipitation=none road=dry"
                                + " engineer_call=none-recorded")
                .at("19:45", "surface surface_degF=70 place_sta=12+00 pull=B lift=2 light=shade base=asphalt");
    }

    /** Opened, and nothing else. */
    static Shift bare(Map<String, Object> changes) {
        return new Shift(job(changes), sheet(changes), ShiftId.of("2026-06-03-night"), "2026-06-03T19:30:00-06:00")
                .at("19:30", "opening format=1 zone=America/Denver");
    }

    /** A day, opened at 06:30. */
    static Shift day(LocalDate date, Map<String, Object> changes) {
        Job job = job(changes);
        OffsetDateTime opens = date.atTime(6, 30).atZone(job.zone()).toOffsetDateTime();
        return new Shift(
                        job,
                        sheet(changes),
                        new ShiftId(date, "day"),
                        opens.toString().replace("T06:30", "T06:30:00"))
                .at("06:30", "opening format=1 zone=America/Denver");
    }

    /** Nothing written yet. */
    static Shift unopened() {
        return new Shift(job(Map.of()), sheet(Map.of()), ShiftId.of("2026-06-03-night"), "2026-06-03T19:30:00-06:00");
    }

    static Job job(Map<String, Object> changes) {
        Map<String, Object> all = new LinkedHashMap<>(JOB);
        changes.forEach((key, value) -> {
            if (value == null) {
                all.remove(key);
            } else {
                all.put(key, value);
            }
        });
        Built<Job> built = Fields.build(Job.class, all);
        if (!built.slips().isEmpty() || !built.unknown().isEmpty()) {
            throw new AssertionError(built.slips() + " " + built.unknown());
        }
        return built.value().settled();
    }

    private static SpecSheet sheet(Map<String, Object> changes) {
        String name = (String) changes.getOrDefault("sheet", "practice");
        return SpecSheet.shipped(name).orElseGet(() -> invented(name));
    }

    /** A sheet of invented figures, for what no shipped one has a row for. */
    private static SpecSheet invented(String name) {
        try (java.io.InputStream in = Shift.class.getResourceAsStream("/sheets/" + name + ".csv")) {
            return SpecSheet.read(name, in.readAllBytes()).sheet().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Map<String, Object> map(String told) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (String each : told.strip().split("\\s+")) {
            int is = each.indexOf('=');
            String value = each.substring(is + 1).replace('~', ' ');
            boolean number = NUMBERS.matcher(each).matches();
            map.put(each.substring(0, is), number ? new BigDecimal(value) : value);
        }
        return map;
    }

    /** An entry of a kind from its line's keys; for parts of forms as well. */
    static Entry entry(String told) {
        String kind = told.strip().split("\\s+")[0];
        String rest = told.strip().substring(kind.length());
        return entry(kind, rest.isBlank() ? Map.of() : map(rest));
    }

    private static Entry entry(String kind, Map<String, Object> values) {
        Built<? extends Record> built =
                Fields.build(Kind.ofWord(kind).orElseThrow().type(), values);
        if (!built.slips().isEmpty() || !built.unknown().isEmpty()) {
            throw new AssertionError(built.slips() + " " + built.unknown());
        }
        return (Entry) built.value();
    }

    /** Keyed live one minute after it happened. */
    Shift at(String clock, String told) {
        OffsetDateTime time = time(clock);
        return line(time, time.plusMinutes(1), Source.LIVE, told(told), "RK");
    }

    /** So many minutes after the opening and a half hour. */
    Shift minute(int minute, String told) {
        OffsetDateTime time = opens.plusMinutes(30L + minute);
        return line(time, time.plusMinutes(1), Source.LIVE, told(told), "RK");
    }

    /** The same by another writer. */
    Shift by(String who, String clock, String told) {
        OffsetDateTime time = time(clock);
        return line(time, time.plusMinutes(1), Source.LIVE, told(told), who);
    }

    /**
     * An ordinary load of the riding surface, discharged and keyed at an hour, with what differs: plant Quarry, truck
     * T104, 22.31 tons, pull B, 290 at the paver. An empty value takes one away.
     */
    Shift load(String clock, String number, String differs) {
        Map<String, Object> values = map("plant=Quarry truck=T104 mix=12.5-70A net_ston=22.31 pull=B lift=2"
                + " paver_degF=290 discharged=" + clock);
        values.put("number", number);
        if (!differs.isBlank()) {
            values.putAll(map(differs));
        }
        values.values().removeIf(""::equals);
        OffsetDateTime time = time(clock);
        return line(time, time.plusMinutes(1), Source.LIVE, entry("ticket", timed(values)), "RK");
    }

    private Entry told(String told) {
        String kind = told.strip().split("\\s+")[0];
        String rest = told.strip().substring(kind.length());
        return entry(kind, rest.isBlank() ? Map.of() : timed(map(rest)));
    }

    /** Hours as full times of this shift. */
    private Map<String, Object> timed(Map<String, Object> values) {
        values.replaceAll((key, value) ->
                value instanceof String text && text.matches("\\d\\d:\\d\\d") ? Moment.text(time(text)) : value);
        return values;
    }

    /** Keyed from notes in the order in which it is told, its time as noted or not at all. */
    Shift noted(String clock, String told) {
        keyed = keyed.plusMinutes(1);
        return line(clock.isEmpty() ? null : time(clock), keyed, Source.NOTES, told(told), "RK");
    }

    /** Keyed at another time than it happened. */
    Shift keyed(String clock, String keyedAt, String told) {
        return line(clock.isEmpty() ? null : time(clock), time(keyedAt), Source.LIVE, told(told), "RK");
    }

    /** From here on another book writes. */
    Shift book() {
        books.add(new ArrayList<>());
        return this;
    }

    Shift with(Entry entry) {
        return line(keyed, keyed.plusMinutes(1), Source.LIVE, entry, "RK");
    }

    /** Two loads on the morning of 1 November 2026, 01:40 daylight time and 01:40 standard time. */
    static Day clocksGoBack() {
        ShiftId id = ShiftId.of("2026-10-31-night");
        List<Written> book = new ArrayList<>();
        book.add(clocked(1, id, "2026-10-31T19:30:00-06:00", entry("opening zone=America/Denver")));
        book.add(clocked(2, id, "2026-11-01T01:40:00-06:00", entry("ticket number=1001")));
        book.add(clocked(3, id, "2026-11-01T01:40:00-07:00", entry("ticket number=1002")));
        return Day.of(id, List.of(book));
    }

    private static Line clocked(int n, ShiftId id, String time, Entry entry) {
        OffsetDateTime at = OffsetDateTime.parse(time);
        return new Line(
                "paver",
                n,
                n,
                "harrow-bend",
                id,
                at,
                at.plusMinutes(1),
                "RK",
                Source.LIVE,
                entry,
                Aside.NONE,
                List.of(),
                "");
    }

    /**
     * A list of the plant Quarry is brought in; each row is number, truck, net tons, and where they are told the date
     * and hour of loading and the mix, with {@code -} for a cell that is empty.
     */
    Shift list(String... rows) {
        List<PlantRows.Row> read = new ArrayList<>();
        for (String row : rows) {
            read.add(row(read.size() + 2, row.split("\\s+")));
        }
        return list(new PlantRows("Quarry", "quarry.csv", "", read, List.of()));
    }

    Shift list(PlantRows rows) {
        with(entry("plant-list plant=Quarry list_file=quarry.csv"));
        List<Written> book = books.get(books.size() - 1);
        lists.put(((Line) book.get(book.size() - 1)).ref(), rows);
        return this;
    }

    static PlantRows.Row row(int line, String... cells) {
        return new PlantRows.Row(
                line,
                cells[0],
                told(cells, 1),
                told(cells, 2) == null ? null : Amount.of(cells[2], Unit.SHORT_TON),
                told(cells, 3) == null ? null : LocalDate.parse(cells[3]),
                told(cells, 4) == null ? null : LocalTime.parse(cells[4]),
                told(cells, 5));
    }

    private static String told(String[] cells, int at) {
        return at >= cells.length || cells[at].equals("-") ? null : cells[at];
    }

    /** A line that cannot be read. */
    Shift unreadable(String reason) {
        List<Written> book = books.get(books.size() - 1);
        book.add(new screedbook.entry.Unreadable("paver", book.size() + 1, reason, "{"));
        return this;
    }

    /** A line of a kind of a newer program. */
    Shift foreign() {
        List<Written> book = books.get(books.size() - 1);
        book.add(new screedbook.entry.Foreign("paver", book.size() + 1, book.size() + 1, "depth", "{}"));
        return this;
    }

    /** The limit sheet of the second book cannot be found. */
    Shift sheetLost() {
        lost = true;
        return this;
    }

    /** From the first line on another sheet is in force. */
    Shift judgedBy(SpecSheet other) {
        this.sheet = other;
        return this;
    }

    Shift after(ToDate before) {
        this.before = before;
        return this;
    }

    private Shift line(OffsetDateTime time, OffsetDateTime keyedAt, Source source, Entry entry, String who) {
        keyed = keyedAt;
        int book = books.size() - 1;
        int n = books.get(book).size() + 1;
        books.get(book)
                .add(new Line(
                        book == 0 ? "paver" : "second",
                        n,
                        n,
                        "harrow-bend",
                        id,
                        time,
                        keyedAt,
                        who,
                        source,
                        entry,
                        Aside.NONE,
                        List.of(),
                        ""));
        return this;
    }

    /** The first such hour at or after three hours before the opening. */
    OffsetDateTime time(String clock) {
        OffsetDateTime from = opens.minusHours(3);
        OffsetDateTime time = from.toLocalDate().atTime(LocalTime.parse(clock)).atOffset(opens.getOffset());
        return time.isBefore(from) ? time.plusDays(1) : time;
    }

    Day day() {
        return Day.of(id, books).with(lists);
    }

    Job job() {
        return job;
    }

    Ground ground() {
        return new Ground(List.of(
                new InForce("paver", 1, Optional.of(new Agreed(job, 1, "0")), Optional.of(sheet)),
                new InForce(
                        "second",
                        1,
                        Optional.of(new Agreed(job, 1, "0")),
                        lost ? Optional.empty() : Optional.of(sheet))));
    }

    List<Finding> findings() {
        return Findings.of(day(), totals(), ground());
    }

    List<Finding> findings(String rule) {
        return findings().stream().filter(f -> f.rule().equals(rule)).toList();
    }

    Totals totals() {
        return Totals.of(day(), job, before, keyed);
    }
}
