package screedbook.tally;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import screedbook.entry.Crew;
import screedbook.entry.Day;
import screedbook.entry.Entry;
import screedbook.entry.InstrumentCheck;
import screedbook.entry.Joint;
import screedbook.entry.Moment;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Stop;
import screedbook.entry.Straightedge;
import screedbook.entry.Told;
import screedbook.entry.Word;
import screedbook.entry.YesNo;
import screedbook.job.Job;
import screedbook.job.Road;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/** The sections of joints, straightedge, stops, people and machines, and instruments; each empty where nothing was keyed. */
final class SiteSections {
    private static final String KEYED = "the entries as keyed";

    private final Day day;
    private final Job job;
    private final OffsetDateTime now;

    SiteSections(Day day, Job job, OffsetDateTime now) {
        this.day = day;
        this.job = job;
        this.now = now;
    }

    private static Working working(String formula, List<String> put, List<Ref> entries) {
        return Figures.working(formula, put, entries, KEYED);
    }

    private static <E extends Entry> Map<String, List<Standing<E>>> by(
            List<Standing<E>> all, Function<E, Optional<String>> of) {
        Map<String, List<Standing<E>>> groups = new TreeMap<>();
        for (Standing<E> each : all) {
            of.apply(each.entry())
                    .ifPresent(key ->
                            groups.computeIfAbsent(key, k -> new ArrayList<>()).add(each));
        }
        return groups;
    }

    private static <E extends Entry> List<Ref> refs(List<Standing<E>> all) {
        return all.stream().map(Standing::ref).toList();
    }

    private static <E extends Entry> List<String> told(List<Standing<E>> all) {
        return all.stream().map(s -> s.ref() + " " + Told.line(s.entry())).toList();
    }

    private static String word(Word word) {
        return word.word().replace('-', ' ');
    }

    /** Lengths of joints along the road, whole and tacked, and how many go across. */
    Section joints() {
        Figures figures = new Figures();
        List<Standing<Joint>> all = day.standing(Joint.class);
        by(
                        all,
                        j -> along(j)
                                ? Optional.of(
                                        j.heat() == null ? "other side not noted" : "other side " + word(j.heat()))
                                : Optional.empty())
                .forEach((side, joints) -> {
                    length(figures, "joint-length." + side, "joint along, " + side, joints);
                    length(
                            figures,
                            "joint-tacked." + side,
                            "of it tacked",
                            joints.stream()
                                    .filter(j -> j.entry().tacked() == YesNo.YES)
                                    .toList());
                });
        List<Standing<Joint>> across =
                all.stream().filter(j -> !along(j.entry())).toList();
        if (!across.isEmpty()) {
            figures.count(
                    "joints-across",
                    "joints across",
                    across.size(),
                    working("number of them", told(across), refs(across)));
        }
        return figures.section("joints", "Joints");
    }

    private static boolean along(Joint joint) {
        return joint.run() != Joint.Run.TRANSVERSE;
    }

    private void length(Figures figures, String id, String label, List<Standing<Joint>> joints) {
        Unit unit = Measure.WIDTH.unit(job.system());
        Amount sum = new Amount(BigDecimal.ZERO, unit);
        List<String> put = new ArrayList<>();
        for (Standing<Joint> each : joints) {
            if (each.entry().from() != null && each.entry().to() != null) {
                Amount length = Road.of(job)
                        .length(each.entry().from(), each.entry().to())
                        .to(unit);
                sum = sum.plus(length);
                put.add(each.ref() + " "
                        + Told.run(each.entry().from(), each.entry().to()) + ": "
                        + length.shown(0).text());
            } else {
                put.add(each.ref() + " without both ends: in no length");
            }
        }
        if (!joints.isEmpty()) {
            figures.amount(id, label, sum, 0, working("sum of the lengths", put, refs(joints)));
        }
    }

    /** Readings under a straightedge and the widest gap, by how it lay. */
    Section straightedge() {
        Figures figures = new Figures();
        List<Standing<Straightedge>> all = day.standing(Straightedge.class).stream()
                .filter(s -> s.entry().gap() != null && s.entry().gap().unit() == Measure.DEPTH.unit(job.system()))
                .toList();
        by(all, s -> Optional.of(s.laid() == null ? "way not noted" : word(s.laid())))
                .forEach((laid, readings) -> {
                    List<Amount> gaps =
                            readings.stream().map(s -> s.entry().gap()).toList();
                    Working working = working("greatest of the readings", told(readings), refs(readings));
                    figures.count(
                            "straightedge-readings." + laid,
                            "straightedge " + laid + ", readings",
                            gaps.size(),
                            working);
                    Amount most = gaps.stream().max(Amount::compareTo).orElseThrow();
                    figures.amount(
                            "straightedge-most." + laid,
                            "straightedge " + laid + ", widest gap",
                            most,
                            Math.max(0, most.value().scale()),
                            working);
                });
        CrossSlope.of(day, job).forEach(each -> each.add(figures));
        return figures.section("straightedge", "Straightedge");
    }

    /** Stops of the paver: how many, how long, by cause, and the most trucks that waited. */
    Section stops() {
        Figures figures = new Figures();
        List<Stoppage> all = Stoppage.of(day);
        if (all.isEmpty()) {
            return figures.section("stops", "Stops of the paver");
        }
        stops(figures, "", "stops of the paver", all);
        Map<String, List<Stoppage>> causes = new TreeMap<>();
        all.forEach(s -> causes.computeIfAbsent(cause(s.stop().entry()), c -> new ArrayList<>())
                .add(s));
        causes.forEach((cause, some) -> stops(figures, "." + cause, "stops, " + cause, some));
        List<Stoppage> waited =
                all.stream().filter(s -> s.stop().entry().waiting() != null).toList();
        if (!waited.isEmpty()) {
            int most = waited.stream()
                    .mapToInt(s -> s.stop().entry().waiting())
                    .max()
                    .orElseThrow();
            figures.count(
                    "trucks-waiting-most",
                    "trucks waiting at one stop, most",
                    most,
                    working("greatest of the counts", put(waited), of(waited)));
        }
        return figures.section("stops", "Stops of the paver");
    }

    private void stops(Figures figures, String tail, String label, List<Stoppage> some) {
        Working working = working("sum of end less beginning, in whole minutes each", put(some), of(some));
        figures.count("stops" + tail, label, some.size(), working);
        long minutes = some.stream()
                .flatMap(s -> s.minutes(now).stream())
                .mapToLong(m -> m)
                .sum();
        figures.add(
                "stop-minutes" + tail, label + ", minutes", minutes + " min", BigDecimal.valueOf(minutes), "", working);
    }

    private static String cause(Stop stop) {
        return stop.cause() == null ? "cause not noted" : word(stop.cause());
    }

    private static List<Ref> of(List<Stoppage> some) {
        List<Ref> refs = new ArrayList<>();
        for (Stoppage each : some) {
            refs.add(each.stop().ref());
            each.restart().ifPresent(r -> refs.add(r.ref()));
        }
        return refs;
    }

    private List<String> put(List<Stoppage> some) {
        return some.stream().map(this::put).toList();
    }

    private String put(Stoppage s) {
        String until = s.lasts() ? "lasts" : Moment.clock(s.ended());
        String waiting = s.stop().entry().waiting() == null
                ? ""
                : ", " + s.stop().entry().waiting() + " waiting";
        return s.stop().ref() + " " + cause(s.stop().entry()) + " "
                + Moment.clock(s.stop().time()) + " to " + until
                + s.minutes(now).map(m -> ": " + m + " min").orElse(": in no minutes") + waiting;
    }

    /** Hours of people by trade and of machines, with how many they were. */
    Section crew() {
        Figures figures = new Figures();
        for (Crew.What what : Crew.What.values()) {
            List<Standing<Crew>> all = day.standing(Crew.class).stream()
                    .filter(c -> (c.entry().what() == null
                                    ? Crew.What.PEOPLE
                                    : c.entry().what())
                            == what)
                    .toList();
            Map<String, List<Standing<Crew>>> named = new LinkedHashMap<>();
            all.forEach(c -> named.computeIfAbsent(
                            c.entry().named() == null ? "not named" : c.entry().named(), n -> new ArrayList<>())
                    .add(c));
            named.forEach((name, lines) -> crew(figures, what, name, lines));
        }
        return figures.section("crew", "People and machines");
    }

    private static void crew(Figures figures, Crew.What what, String name, List<Standing<Crew>> lines) {
        int count = 0;
        BigDecimal hours = BigDecimal.ZERO;
        List<String> put = new ArrayList<>();
        boolean open = false;
        for (Standing<Crew> each : lines) {
            Crew c = each.entry();
            int many = c.howMany() == null ? 0 : c.howMany();
            count += many;
            open |= c.hours() == null || c.howMany() == null;
            hours = c.hours() == null ? hours : hours.add(c.hours().multiply(BigDecimal.valueOf(many)));
            put.add(each.ref() + " " + many + " x "
                    + (c.hours() == null ? "hours not noted" : c.hours().toPlainString() + " h"));
        }
        String id = what.word() + "." + name;
        Working working = working("sum of how many x hours each", put, refs(lines));
        figures.count("crew-" + id, name, count, working);
        String text = hours.stripTrailingZeros().toPlainString() + " h" + (open ? ", some not noted" : "");
        figures.add("crew-hours-" + id, name + ", hours", text, hours, "", working);
    }

    /** Instruments that were checked, each with its last check. */
    Section instruments() {
        Figures figures = new Figures();
        by(day.standing(InstrumentCheck.class), c -> Optional.ofNullable(c.instrument()))
                .forEach((name, checks) -> {
                    Standing<InstrumentCheck> last = checks.get(checks.size() - 1);
                    String text = Told.line(last.entry()).replaceFirst("^instrument check\\s+\\S+\\s*", "");
                    figures.text(
                            "instrument." + name,
                            "instrument " + name + ", checked " + Moment.clock(last.time()),
                            text.isEmpty() ? "nothing more noted" : text,
                            working("its last check", told(checks), refs(checks)));
                });
        for (WeighedAgain each : WeighedAgain.of(day, job)) {
            String truck = each.weighed().entry().truck();
            figures.text(
                    "weighed-again." + each.weighed().ref(),
                    (truck == null ? "a truck" : "truck " + truck) + " weighed again"
                            + (each.ticket().entry().paper().number() == null
                                    ? ""
                                    : ", ticket "
                                            + each.ticket().entry().paper().number()),
                    each.what() + " " + each.found().shown(0).text() + ", printed "
                            + each.printed().shown(0).text() + ", " + each.difference()
                            + each.percent().map(p -> " (" + p.text() + ")").orElse(""),
                    working(
                            each.what() + " on the other scale less what the ticket prints",
                            each.how().isEmpty() ? List.of() : List.of(each.how()),
                            List.of(each.weighed().ref(), each.ticket().ref())));
        }
        return figures.section("instruments", "Instruments checked");
    }
}
