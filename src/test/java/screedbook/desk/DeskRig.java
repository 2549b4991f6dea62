package screedbook.desk;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import screedbook.check.Ground;
import screedbook.check.InForce;
import screedbook.entry.Aside;
import screedbook.entry.Built;
import screedbook.entry.Crew;
import screedbook.entry.Day;
import screedbook.entry.Draft;
import screedbook.entry.Fields;
import screedbook.entry.Line;
import screedbook.entry.Opening;
import screedbook.entry.ShiftId;
import screedbook.entry.Source;
import screedbook.entry.Unwritten;
import screedbook.entry.Written;
import screedbook.job.Agreed;
import screedbook.job.Job;
import screedbook.spec.SpecSheet;
import screedbook.tally.ToDate;

/** A desk with a paper disk: keys go in, screens come out, every effect is carried out at once and in order. */
final class DeskRig {
    static final ShiftId NIGHT = ShiftId.of("2026-06-03-night");

    private final Job job;
    private final SpecSheet sheet;
    private final List<Written> lines = new ArrayList<>();
    private ZonedDateTime now;
    private Model model;
    int keys;
    boolean refuses;
    List<Crew> crews = List.of();
    boolean silent;
    final PaperSheet paper;
    final PaperLists paperLists = new PaperLists();
    final List<Effect> effects = new ArrayList<>();
    final List<Draft> drafts = new ArrayList<>();

    DeskRig() {
        this(job(Map.of()), practice());
    }

    DeskRig(Job job, SpecSheet sheet) {
        this.job = job;
        this.sheet = sheet;
        this.paper = PaperSheet.of(job);
        this.now = ZonedDateTime.of(2026, 6, 3, 20, 0, 0, 0, job.zone());
        model = Model.start(new Setting(Optional.empty(), "harrow-bend", "paver", "", Look.NIGHT, false));
        send(new Msg.Size(80, 24));
        send(new Msg.Minute(now));
        send(new Msg.Folder(
                Optional.of(job), List.of(), List.of(new Msg.Row(ShiftId.of("2026-06-02-day"), "closed", 131, "RK"))));
    }

    static SpecSheet practice() {
        return SpecSheet.shipped("practice").orElseThrow();
    }

    /** A rig whose night shift is open and has no entry but its opening. */
    static DeskRig open() {
        return new DeskRig().keys("1n");
    }

    Model model() {
        return model;
    }

    List<Written> lines() {
        return lines;
    }

    Line last() {
        return (Line) lines.get(lines.size() - 1);
    }

    DeskRig send(Msg message) {
        Step step = Update.of(model, message);
        model = step.model();
        step.effects().forEach(this::carryOut);
        return this;
    }

    private void carryOut(Effect effect) {
        effects.add(effect);
        if (effect instanceof Effect.Open open) {
            if (lines.isEmpty()) {
                add(opening(open.who()));
            }
            send(new Msg.Opened(page(), List.copyOf(drafts), true, ""));
        } else if (effect instanceof Effect.BringList bring) {
            send(paperLists.bring(bring, this));
        } else if (effect instanceof Effect.ReadCrewBefore) {
            send(new Msg.CrewBefore(crews.isEmpty() ? null : ShiftId.of("2026-06-02-day"), crews));
        } else if (effect instanceof Effect.DropJobSheet) {
            paper.typed(Map.of());
        } else if (effect instanceof Effect.ReadJobSheet) {
            send(paper.read());
        } else if (effect instanceof Effect.WriteJobSheet write) {
            send(paper.write(write, now.toOffsetDateTime()));
        } else if (effect instanceof Effect.Write write) {
            write(write.entries());
        } else if (effect instanceof Effect.Keep keep) {
            drafts.removeIf(d -> d.kind() == keep.draft().kind());
            drafts.add(keep.draft());
        } else if (effect instanceof Effect.Drop drop) {
            drafts.removeIf(d -> d.kind() == drop.kind());
        }
    }

    /** The disk that was silent answers what it was asked last. */
    DeskRig answer() {
        silent = false;
        for (int i = effects.size() - 1; i >= 0; i--) {
            if (effects.get(i) instanceof Effect.Write write) {
                write(write.entries());
                return this;
            }
        }
        throw new IllegalStateException("nothing was asked of the disk");
    }

    private void write(List<Unwritten> entries) {
        if (silent) {
            return;
        }
        if (refuses) {
            send(new Msg.Refused("no room is left on the disk"));
            return;
        }
        List<Line> wrote = new ArrayList<>();
        entries.forEach(u -> wrote.add(add(u)));
        send(new Msg.Wrote(wrote, page(), ""));
    }

    /** Lines put there by another hand, with the desk told as if it had opened the shift. */
    DeskRig with(List<Unwritten> entries) {
        entries.forEach(this::add);
        return send(new Msg.Opened(page(), List.of(), true, ""));
    }

    Job job() {
        return job;
    }

    Line add(Unwritten u) {
        int n = lines.size() + 1;
        Line line = new Line(
                "paver",
                n,
                n,
                job.id(),
                NIGHT,
                u.time(),
                now.toOffsetDateTime(),
                u.who(),
                u.source(),
                u.entry(),
                u.aside(),
                List.of(),
                "{\"n\":" + n + "}");
        lines.add(line);
        return line;
    }

    private Unwritten opening(String who) {
        Opening opening = new Opening(
                1,
                "screedbook",
                null,
                "America/Denver",
                null,
                1,
                "ab12",
                "practice",
                "cd34",
                job.people(),
                List.of(),
                null);
        return new Unwritten(now.toOffsetDateTime(), who, Source.LIVE, opening, Aside.NONE);
    }

    Msg.Page page() {
        Ground ground = new Ground(
                List.of(new InForce("paver", 1, Optional.of(new Agreed(job, 1, "ab12")), Optional.of(sheet))));
        return new Msg.Page(
                NIGHT,
                "paver",
                Day.of(NIGHT, List.of(List.copyOf(lines))).with(paperLists.lists()),
                ground,
                ToDate.NONE,
                List.of(),
                List.of());
    }

    DeskRig later(int minutes) {
        now = now.plus(Duration.ofMinutes(minutes));
        return send(new Msg.Minute(now));
    }

    OffsetDateTime now() {
        return now.toOffsetDateTime();
    }

    /** Keys as typed; {@code <enter>}, {@code <esc>} and the like in angle brackets, {@code <C-s>} with Ctrl. */
    DeskRig keys(String typed) {
        struck(typed).forEach(this::key);
        return this;
    }

    static List<Key> struck(String typed) {
        List<Key> keys = new ArrayList<>();
        int i = 0;
        while (i < typed.length()) {
            int next = typed.offsetByCodePoints(i, 1);
            if (typed.charAt(i) == '<') {
                next = typed.indexOf('>', i) + 1;
                keys.add(named(typed.substring(i + 1, next - 1)));
            } else {
                keys.add(Key.of(typed.substring(i, next)));
            }
            i = next;
        }
        return keys;
    }

    DeskRig key(Key key) {
        keys++;
        return send(new Msg.Struck(key));
    }

    private static Key named(String name) {
        if (name.startsWith("C-")) {
            return Key.ctrl(name.substring(2));
        }
        return Key.of(name.equals("esc") ? Key.Code.ESCAPE : Key.Code.valueOf(name.toUpperCase(java.util.Locale.ROOT)));
    }

    /** The form on the desk changed by hand; for blanks far apart. */
    DeskRig type1(UnaryOperator<Form> change) {
        Screen.Keying keying = (Screen.Keying) model.top();
        model = model.top(new Screen.Keying(change.apply(keying.form())));
        return this;
    }

    /** The form on the desk taken for this one, and written. */
    DeskRig type(Form form) {
        return type1(f -> form).keys("<C-s>");
    }

    DeskRig size(int width, int height) {
        return send(new Msg.Size(width, height));
    }

    Canvas canvas(int width, int height) {
        return View.of(model, width, height);
    }

    /** The screen at 80 x 24 as text, the cursor drawn as @. */
    String screen() {
        return screen(80, 24);
    }

    String screen(int width, int height) {
        Canvas canvas = canvas(width, height);
        StringBuilder out = new StringBuilder();
        for (int y = 0; y < canvas.height(); y++) {
            String row = canvas.row(y);
            if (y == canvas.cursorY()) {
                row = row.substring(0, canvas.cursorX()) + "@" + row.substring(canvas.cursorX() + 1);
            }
            out.append(row.stripTrailing()).append('\n');
        }
        return out.toString();
    }

    /** Map literals for jobs. */
    static Map<String, Object> map(Object... pairs) {
        Map<String, Object> out = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            Object value = pairs[i + 1];
            boolean number = value instanceof Integer || value instanceof Double;
            out.put((String) pairs[i], number ? new BigDecimal(value.toString()) : value);
        }
        return out;
    }

    /** An invented job in an invented place, with other values for some of its keys. */
    static Job job(Map<String, Object> other) {
        Map<String, Object> job = map(
                "id", "harrow-bend",
                "name", "Harrow Bend overlay",
                "contract", "24-117",
                "zone", "America/Denver",
                "units", "us",
                "sheet", "practice");
        job.put("place", map("name", "Harrow Bend", "latitude", 39.2, "longitude", -105.6));
        job.put("stationing", map("base", "ft-100", "begins_sta", "10+00", "ends_sta", "120+00"));
        job.put(
                "lifts",
                List.of(
                        map("number", 1, "layer", "below-riding-surface", "thickness_in", 2.5, "mix", "19-64"),
                        map("number", 2, "layer", "below-riding-surface", "thickness_in", 2.0, "mix", "12.5-70A")));
        job.put(
                "pulls",
                List.of(
                        map("name", "A", "lift", 2, "left_ft", -12, "right_ft", 0),
                        map("name", "B", "lift", 2, "left_ft", 0, "right_ft", 12)));
        job.put(
                "mixes",
                List.of(
                        map(
                                "name",
                                "12.5-70A",
                                "nmas_mm",
                                12.5,
                                "binder",
                                "70-22",
                                "polymer",
                                "no",
                                "aid",
                                "compaction-aid",
                                "target_plant_degF",
                                300,
                                "target_paver_degF",
                                285,
                                "pay_item",
                                "403-12"),
                        map(
                                "name",
                                "19-64",
                                "nmas_mm",
                                19,
                                "binder",
                                "64-22",
                                "polymer",
                                "no",
                                "aid",
                                "neither",
                                "target_plant_degF",
                                295,
                                "pay_item",
                                "403-19")));
        job.put("plants", List.of(map("name", "Quarry Road", "series", "own", "prints", "net")));
        job.put(
                "trucks",
                List.of(
                        map("number", "T104", "tare_lb", 27400, "legal_gross_lb", 80000),
                        map("number", "T118", "tare_lb", 27800, "legal_gross_lb", 80000)));
        job.put(
                "products",
                List.of(map(
                        "name",
                        "CSS-1h",
                        "grade",
                        "CSS-1h",
                        "residue_pct",
                        57,
                        "correction",
                        "emulsion",
                        "dilution",
                        "no")));
        job.put("distributors", List.of(map("name", "D2", "reading", "tank")));
        job.put("thermal", "continuous-imaging");
        job.put("night", map("begins", "20:00", "ends", "06:00"));
        job.put(
                "people",
                List.of(
                        map("initials", "RK", "name", "Robin Kell", "role", "inspector"),
                        map("initials", "AS", "name", "Ari Stone", "role", "supervisor")));
        job.putAll(other);
        Built<Job> built = Fields.build(Job.class, job);
        if (!built.slips().isEmpty() || !built.unknown().isEmpty()) {
            throw new IllegalArgumentException(built.slips() + " " + built.unknown());
        }
        return built.value().settled();
    }
}
