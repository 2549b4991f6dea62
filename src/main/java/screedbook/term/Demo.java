package screedbook.term;

import java.io.IOException;
import java.math.BigInteger;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import screedbook.desk.Effect;
import screedbook.diary.Book;
import screedbook.diary.JobFolder;
import screedbook.diary.Opened;
import screedbook.entry.Answer;
import screedbook.entry.Aside;
import screedbook.entry.Built;
import screedbook.entry.Day;
import screedbook.entry.Entry;
import screedbook.entry.Field;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Line;
import screedbook.entry.Moment;
import screedbook.entry.Opening;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;
import screedbook.entry.Source;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.entry.Unwritten;
import screedbook.job.Agreed;
import screedbook.job.Job;

/**
 * A shift to try the desk on: a copy of the demo job in which a shift of today has just got going. What is keyed there
 * stays in the copy.
 */
final class Demo {
    private static final int LOADS = 12;
    private static final String JOB = "harrow-bend";
    private static final Pattern DATE = Pattern.compile("\"(\\d{4}-\\d{2}-\\d{2})\"");

    private Demo() {}

    /** A fresh copy under {@code target/demo} of the folder that the program is built in; elsewhere in the cache. */
    static Path copy() throws IOException {
        Path from = source();
        Path home = from.getParent().getParent();
        Path to = (Files.exists(home.resolve("pom.xml")) ? home.resolve("target") : cache())
                .resolve("demo")
                .resolve(JOB);
        clear(to);
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path there = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(there);
                } else {
                    Files.createDirectories(there.getParent());
                    Files.copy(file, there);
                }
            }
        }
        return to;
    }

    private static Path cache() {
        String given = System.getenv().getOrDefault("XDG_CACHE_HOME", "");
        return (given.isEmpty() ? Path.of(System.getProperty("user.home"), ".cache") : Path.of(given))
                .resolve("screedbook");
    }

    /** {@code demo-logs} here, beside the program, or where it was built. */
    private static Path source() throws IOException {
        List<Path> places = new ArrayList<>(List.of(Path.of("demo-logs")));
        try {
            Path program = Path.of(Demo.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            places.add(program.toAbsolutePath().resolveSibling("demo-logs"));
            places.add(program.toAbsolutePath().getParent().resolveSibling("demo-logs"));
        } catch (URISyntaxException e) {
            throw new IOException("the program cannot find its own place: " + e.getMessage(), e);
        }
        for (Path place : places) {
            if (Files.isDirectory(place.resolve(JOB))) {
                return place.resolve(JOB).toAbsolutePath();
            }
        }
        throw new IOException(
                "demo-logs is not here: --demo works where the program was built, and where its image was unpacked");
    }

    private static void clear(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    /** Today's shift with the first loads of a shift of the demo, told as if they had just come. */
    static Effect.Open begin(Path folder, String bookName, String program, Clock clock) throws IOException {
        JobFolder at = JobFolder.at(folder);
        Job job = at.job().job().orElseThrow(() -> new IOException("the demo's job.json cannot be read"));
        OffsetDateTime now = clock.instant().atZone(job.zone()).toOffsetDateTime();
        boolean day = now.getHour() >= 6 && now.getHour() < 18;
        ShiftId like = like(at, day ? "day" : "night");
        Day model = at.shift(like).day();
        String who = model.opening().orElseThrow().line().who();
        ShiftId today = new ShiftId(
                now.getHour() < 6 ? now.toLocalDate().minusDays(1) : now.toLocalDate(), day ? "day" : "night");
        Agreed agreed = renewed(at, ChronoUnit.DAYS.between(like.date(), today.date()), who, now);
        replay(at, agreed, model, today, bookName, program, who, now);
        return new Effect.Open(today, who, true);
    }

    /** The oldest shift of the demo with this word that has loads. */
    private static ShiftId like(JobFolder at, String word) throws IOException {
        return at.shifts().stream()
                .filter(s -> s.word().equals(word))
                .filter(s -> at.shift(s).day().standing(Ticket.class).size() >= LOADS)
                .findFirst()
                .orElseThrow(() -> new IOException("the demo holds no " + word + " shift"));
    }

    /** The copy's job agreed anew: certificates and checks last as long from today as they did from that shift. */
    private static Agreed renewed(JobFolder at, long days, String who, OffsetDateTime now) throws IOException {
        Path file = at.path().resolve("job.json");
        String text = DATE.matcher(Files.readString(file))
                .replaceAll(date -> "\"" + LocalDate.parse(date.group(1)).plusDays(days) + "\"");
        Files.writeString(file, text);
        return at.accept(who, now, "dates moved to today, to try the program");
    }

    private static void replay(
            JobFolder at,
            Agreed agreed,
            Day model,
            ShiftId today,
            String bookName,
            String program,
            String who,
            OffsetDateTime now)
            throws IOException {
        List<Line> lines = first(model);
        Duration on = Duration.between(lines.get(lines.size() - 1).keyed(), now.minusMinutes(4));
        BigInteger further = further(at, lines);
        if (!(at.open(today, bookName, agreed.job().id(), who, now) instanceof Opened.Ready ready)) {
            throw new IOException("the demo shift cannot be written");
        }
        try (Book book = ready.book()) {
            int n = 0;
            for (Line line : lines) {
                Entry entry = line.entry() instanceof Opening o
                        ? opening(o, agreed, program)
                        : moved(line.entry(), on, further, agreed.job().zone());
                OffsetDateTime time = line.time() == null
                        ? null
                        : moved(line.time(), on, agreed.job().zone());
                Unwritten unwritten = new Unwritten(time, who, Source.LIVE, entry, line.aside());
                book.append(
                                List.of(unwritten),
                                moved(line.keyed(), on, agreed.job().zone()))
                        .join();
                n++;
                boolean firstLoad = line.entry() instanceof Ticket && n == firstLoad(lines);
                if (line.entry() instanceof Opening || firstLoad) {
                    OffsetDateTime keyed = moved(line.keyed(), on, agreed.job().zone());
                    String rule = firstLoad ? "paved-before" : "days-without-shift";
                    book.append(List.of(answer(new Ref(bookName, n), rule, who, keyed)), keyed)
                            .join();
                    n++;
                }
            }
        }
    }

    /** The line that the first load comes to, with the answer behind the opening before it. */
    private static int firstLoad(List<Line> lines) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).entry() instanceof Ticket) {
                return i + 2;
            }
        }
        return -1;
    }

    /** The demo's other shifts are long past, and one of them paved this stretch: both have their answer. */
    private static Unwritten answer(Ref of, String rule, String who, OffsetDateTime keyed) {
        Answer answer = new Answer(of, rule, "this shift was made today, to try the program", null, null);
        return new Unwritten(keyed, who, Source.LIVE, answer, Aside.NONE);
    }

    /** Opening, then what was observed, up to the twelfth load. */
    private static List<Line> first(Day model) {
        String book = model.opening().orElseThrow().line().book();
        List<Line> lines = new ArrayList<>();
        int loads = 0;
        for (Standing<?> each : model.all()) {
            boolean observed = switch (each.line().kind()) {
                case OPENING, WEATHER, SURFACE, TICKET, TACK, NOTE -> true;
                default -> false;
            };
            if (observed && !each.struck() && each.line().book().equals(book) && loads < LOADS) {
                lines.add(each.line());
                loads += each.line().kind() == Kind.TICKET ? 1 : 0;
            }
        }
        return lines;
    }

    private static Opening opening(Opening o, Agreed agreed, String program) {
        return new Opening(
                o.format(),
                program,
                o.fileId(),
                o.zone(),
                null,
                agreed.revision(),
                agreed.sha256(),
                o.sheet(),
                o.sheetSha256(),
                agreed.job().people(),
                agreed.job().instruments(),
                null);
    }

    /** A time moved; in winter the zone's clocks stand elsewhere than in summer. */
    private static OffsetDateTime moved(OffsetDateTime time, Duration on, ZoneId zone) {
        return time.plus(on).atZoneSameInstant(zone).toOffsetDateTime();
    }

    /** How much further the plants' numbers are today than they were then: behind every one that was used since. */
    private static BigInteger further(JobFolder at, List<Line> lines) {
        BigInteger last = at.shifts().stream()
                .flatMap(shift -> at.shift(shift).day().every(Ticket.class).stream())
                .flatMap(ticket -> number(ticket.entry()).stream())
                .max(Comparator.naturalOrder())
                .orElse(BigInteger.ZERO);
        return lines.stream()
                .flatMap(line -> line.entry() instanceof Ticket t ? number(t).stream() : Stream.empty())
                .min(Comparator.naturalOrder())
                .map(first -> last.add(BigInteger.ONE).subtract(first))
                .orElse(BigInteger.ZERO);
    }

    private static Optional<BigInteger> number(Ticket ticket) {
        return Optional.ofNullable(ticket.paper().number())
                .filter(number -> number.matches("\\d{5}"))
                .map(BigInteger::new);
    }

    /** The same entry with every time in it moved, and the number of a ticket. */
    private static Entry moved(Entry entry, Duration on, BigInteger further, ZoneId zone) {
        Map<String, Object> plain = new LinkedHashMap<>(Fields.plain((Record) entry));
        if (entry instanceof Ticket ticket) {
            number(ticket)
                    .ifPresent(number -> plain.put("number", number.add(further).toString()));
        }
        for (Field field : entry.kind().fields()) {
            if (field.type() == OffsetDateTime.class && plain.containsKey(field.name())) {
                OffsetDateTime time = OffsetDateTime.parse((String) plain.get(field.name()));
                plain.put(field.name(), Moment.text(moved(time, on, zone)));
            }
        }
        Built<? extends Record> built = Fields.build(entry.kind().type(), plain);
        return (Entry) built.value();
    }
}
