package screedbook.report;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import screedbook.check.Cases;
import screedbook.check.CrossSection;
import screedbook.check.HeatBand;
import screedbook.check.JointPlaces;
import screedbook.check.PlannedNight;
import screedbook.check.SurfaceMinimum;
import screedbook.check.TaughtLoss;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.picture.CrossSectionPicture;
import screedbook.picture.HeatBandPicture;
import screedbook.spec.Limit;
import screedbook.spec.Quantity;
import screedbook.spec.Ruling;
import screedbook.unit.Amount;
import screedbook.unit.Unit;

/** The parts of the pre-paving sheet that numbers stand in, each number with its clause. */
final class PlanParts {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    /** Days that are told one by one; of more only the first, the last and those on which the words change. */
    private static final int DAYS = 10;

    private final PlanPaper paper;
    private final Job job;
    private final Leaf leaf;

    PlanParts(PlanPaper paper, Leaf leaf) {
        this.paper = paper;
        this.job = paper.job();
        this.leaf = leaf;
    }

    void lifts() {
        leaf.heading(job.lifts().isEmpty() ? "Lifts: none are settled" : "Lifts, the lowest first");
        job.lifts().stream().sorted(Comparator.comparing(Job.Lift::number)).forEach(this::lift);
    }

    private void lift(Job.Lift lift) {
        String base = lift.base() == null ? "" : " on " + lift.base().word();
        leaf.say(
                1,
                lift.number() + ". " + lift.layer().word().replace('-', ' ') + ", "
                        + lift.thickness().text() + " of " + lift.mix() + base);
        job.mix(lift.mix()).ifPresent(this::mix);
        leaf.say(4, "thickness: " + said(lift, Quantity.LIFT));
    }

    private void mix(Mix mix) {
        leaf.say(
                4,
                Entries.phrases(
                        "design",
                        mix.design(),
                        "size",
                        mix.nmas() == null ? null : mix.nmas().text(),
                        "gradation",
                        mix.gradation() == null ? null : mix.gradation().word(),
                        "binder",
                        mix.binder(),
                        "aid",
                        mix.aid() == null ? null : mix.aid().word(),
                        "target at the plant",
                        mix.targetPlant() == null ? null : mix.targetPlant().text()));
    }

    /** What the sheet says, with its clause. */
    private String said(Job.Lift lift, Quantity quantity) {
        Ruling ruling = paper.sheet().ruling(quantity, Cases.of(job, null, Optional.of(lift), null, null));
        List<String> said = new ArrayList<>();
        ruling.inForce().forEach(l -> said.add(limit(l)));
        ruling.unsure().forEach(l -> said.add("perhaps " + limit(l)));
        return said.isEmpty() ? "no limit set" : String.join("; ", said);
    }

    private static String limit(Limit l) {
        String unit = (l.low() == null ? l.high() : l.low()).unit().symbol();
        return l.text() + " " + unit + " (" + l.citation() + ")";
    }

    void joints() {
        CrossSection road = CrossSection.of(job);
        List<JointPlaces> places = JointPlaces.all(job, paper.sheet(), road);
        Set<CrossSection.Joint> marked =
                places.stream().filter(p -> !p.holds()).map(JointPlaces::joint).collect(Collectors.toSet());
        List<String> picture = CrossSectionPicture.of(road, marked, Leaf.PAPER);
        if (picture.isEmpty()) {
            return;
        }
        leaf.heading("Cross-section, offsets in " + road.unit().symbol() + ", left negative, looking up-station");
        picture.forEach(leaf::drawn);
        leaf.say(1, "| final lane line, = wheel path, + edge or joint, # a joint that does not satisfy every rule.");
        if (!road.paths().isEmpty()) {
            leaf.say(1, "Wheel paths: " + road.pathSource() + (road.settled() ? "." : "; nobody has settled them."));
        }
        leaf.say(1, "Outer edges of a lift are not looked at as joints.");
        places.stream().filter(p -> !p.holds()).forEach(p -> leaf.say(1, place(road, p)));
    }

    private static String place(CrossSection road, JointPlaces p) {
        String which = "lift " + p.joint().lift() + ", " + p.joint().left() + " and "
                + p.joint().right() + " at "
                + new Amount(p.joint().at(), road.unit()).text();
        return which + ", nearest to satisfy every rule: " + p.text();
    }

    void targets() {
        List<HeatBand> bands = HeatBand.all(job, paper.sheet());
        if (bands.isEmpty()) {
            return;
        }
        leaf.heading("Target discharge temperatures");
        for (HeatBand band : bands) {
            leaf.say(1, band.name() + ": " + band.text());
            HeatBandPicture.of(band, 70).forEach(line -> leaf.drawn("    " + line));
            band.floor().ifPresent(f -> leaf.say(4, "at least: " + f.steps() + " (" + f.clause() + ")"));
            band.ceiling().ifPresent(c -> leaf.say(4, "at most: " + c.steps() + " (" + c.clause() + ")"));
            if (band.haul() != null && band.haul().source() != null) {
                leaf.say(4, "loss: " + band.haul().source());
            }
            band.opens().forEach(o -> leaf.say(4, "would open it: " + o));
            TaughtLoss.of(band, job, paper.sheet(), paper.seen()).ifPresent(t -> leaf.say(4, t));
        }
        leaf.say(
                1,
                "| limit of a load, . tolerance, - loss on the way, = targets that hold both, x taken by both, T the"
                        + " target.");
    }

    void surface() {
        List<SurfaceMinimum> all = SurfaceMinimum.all(job, paper.sheet());
        if (all.isEmpty()) {
            return;
        }
        String degrees = all.stream()
                .map(SurfaceMinimum::unit)
                .filter(Objects::nonNull)
                .map(Unit::symbol)
                .distinct()
                .collect(Collectors.joining(" and "));
        leaf.heading("Surface temperature, at least" + (degrees.isEmpty() ? "" : ", in " + degrees)
                + "; > as the job plans to watch the mat");
        Map<Job.Lift, List<SurfaceMinimum>> lifts = new LinkedHashMap<>();
        all.forEach(m -> lifts.computeIfAbsent(m.lift(), l -> new ArrayList<>()).add(m));
        lifts.forEach(this::surface);
        leaf.say(1, "Not set means that the sheet sets no limit; it never means that any temperature is good.");
    }

    private void surface(Job.Lift lift, List<SurfaceMinimum> of) {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        for (SurfaceMinimum m : of) {
            String sign = m.thermal()
                            .equals(job.thermal() == null ? "" : job.thermal().word())
                    ? "> "
                    : "  ";
            List<String> row = rows.computeIfAbsent(
                    m.light() + m.thermal(),
                    k -> new ArrayList<>(
                            List.of(sign + m.light() + ", " + m.thermal().replace('-', ' '))));
            row.add((m.planned() ? ">" : "") + brief(m));
        }
        List<List<String>> told = new ArrayList<>(rows.values());
        leaf.say(1, "lift " + lift.number() + " of " + lift.mix());
        if (told.stream().allMatch(r -> plain(r).equals(plain(told.get(0))))) {
            leaf.say(
                    4,
                    "by day and night, with every thermal method and aid: "
                            + told.get(0).get(1).replace(">", ""));
        } else {
            leaf.table(List.of("  ", "no aid", "warm mix", "compaction aid"), told);
        }
        String clauses = of.stream()
                .map(SurfaceMinimum::clause)
                .filter(c -> !c.isEmpty())
                .distinct()
                .collect(Collectors.joining("; "));
        leaf.say(4, clauses.isEmpty() ? "The sheet has no row for this lift." : clauses);
    }

    private static List<String> plain(List<String> row) {
        return row.subList(1, row.size()).stream().map(c -> c.replace(">", "")).toList();
    }

    private static String brief(SurfaceMinimum minimum) {
        return minimum.silent() ? "not set" : minimum.text().replace("at least ", "");
    }

    void days() {
        List<PlannedNight> days = PlannedNight.all(job);
        leaf.heading(days.isEmpty() ? "Planned days: none are settled" : "Planned days, " + days.size());
        String before = "";
        for (int i = 0; i < days.size(); i++) {
            PlannedNight day = days.get(i);
            boolean end = i == 0 || i == days.size() - 1;
            boolean week = i % 7 == 0;
            if (days.size() <= DAYS || end || week || !hours(day).equals(before)) {
                leaf.say(1, day.date() + "  " + hours(day) + night(day) + sun(day));
            }
            before = hours(day);
        }
        if (days.size() > DAYS) {
            leaf.say(1, "Every seventh day is told, the first and the last one too.");
        }
    }

    private static String hours(PlannedNight day) {
        String shift = day.shift() == null ? "" : day.shift().word() + " ";
        return day.begins() == null
                ? shift + "no hours settled"
                : shift + clock(day.begins()) + "-" + clock(day.ends());
    }

    private static String night(PlannedNight day) {
        if (day.begins() == null) {
            return "";
        }
        if (!day.told()) {
            return "; night is not told apart";
        }
        return day.night().isEmpty()
                ? "; no hour is night"
                : "; night rules "
                        + day.night().stream()
                                .map(s -> clock(s.from()) + "-" + clock(s.to()))
                                .collect(Collectors.joining(" and "));
    }

    private static String sun(PlannedNight day) {
        return day.sun()
                .map(s -> "; dawn " + clock(s.dawn()) + ", sunrise " + clock(s.rise()) + ", sunset " + clock(s.set())
                        + ", dusk " + clock(s.dusk()))
                .orElse("");
    }

    private static String clock(Optional<ZonedDateTime> time) {
        return time.map(PlanParts::clock).orElse("none");
    }

    /** To the nearest minute. */
    private static String clock(ZonedDateTime time) {
        return CLOCK.format(time.plusSeconds(30));
    }
}
