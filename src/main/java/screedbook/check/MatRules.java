package screedbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Mat;
import screedbook.entry.Profile;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Told;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.spec.Asked;
import screedbook.spec.Demand;
import screedbook.spec.Quantity;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** Rules about the heat of the mat: thermal profiles and readings at one place. */
final class MatRules {
    static final List<Rule> ALL = List.of(
            new Rule(
                    "profile-range",
                    Sort.OUTSIDE,
                    "Hottest and coldest of a thermal profile differ by no more than the sheet says.",
                    MatRules::range),
            new Rule(
                    "profile-class",
                    Sort.LOOK_AGAIN,
                    "Hottest and coldest of a thermal profile differ by no more than is usual.",
                    MatRules::classed),
            new Rule(
                    "profile-below-target",
                    Sort.OUTSIDE,
                    "The coldest of a thermal profile is as near to the target at the paver as the sheet says.",
                    MatRules::belowTarget),
            new Rule(
                    "profile-upside-down",
                    Sort.DOES_NOT_ADD_UP,
                    "The hottest of a thermal profile is no colder than its coldest.",
                    MatRules::upsideDown),
            new Rule(
                    "profile-witness",
                    Sort.MISSING,
                    "Where the sheet wants the engineer at a look at the uncompacted mat, a witness is named.",
                    MatRules::witness),
            new Rule(
                    "profile-action",
                    Sort.MISSING,
                    "A thermal profile with a severe difference names what was done.",
                    MatRules::action),
            new Rule(
                    "mat-behind-screed",
                    Sort.OUTSIDE,
                    "The mat behind the screed is as warm as the sheet says.",
                    MatRules::behindScreed),
            new Rule(
                    "mat-unusual",
                    Sort.LOOK_AGAIN,
                    "A mat temperature lies where mat temperatures lie.",
                    MatRules::unusual));

    private MatRules() {}

    private static List<Standing<Profile>> profiles(Look look) {
        return look.day().standing(Profile.class);
    }

    /** {@code 298 and 261 differ by}, to be followed by the difference. */
    private static String apart(Profile p) {
        return where(p) + AmountText.plain(p.hottest()) + " and " + AmountText.plain(p.coldest()) + " differ by";
    }

    private static String where(Profile p) {
        String run = Told.run(p.from(), p.to());
        return run == null ? "" : run + ": ";
    }

    private static Optional<Case> of(Look look, Standing<Profile> p) {
        return look.ofMat(p, null, p.entry().lift(), p.entry().pull());
    }

    /** The limits of one profile: along the mat, and of the uncompacted mat at one look. */
    static Bounds ranges(Bounds along, Bounds look) {
        return along.and(look.all());
    }

    private static Bounds ranges(Case c) {
        return ranges(c.bounds(Quantity.MAT_RANGE), c.bounds(Quantity.UNCOMPACTED_RANGE));
    }

    private static List<Mark> range(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Profile> p : profiles(look)) {
            Optional<Amount> apart = p.entry().apart();
            Optional<Case> at = of(look, p);
            if (apart.isPresent() && at.isPresent()) {
                marks.addAll(Marks.judged(
                        ranges(at.get()), List.of(p.ref()), () -> apart(p.entry()), apart.get(), () -> ""));
            }
        }
        return marks;
    }

    /** Only where the sheet has no limit of its own: what is usual is asked about, never judged by. */
    private static List<Mark> classed(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Profile> p : profiles(look)) {
            Optional<Amount> apart = p.entry().apart();
            boolean own = of(look, p).filter(c -> !ranges(c).noLimit()).isPresent();
            if (apart.isPresent() && !own) {
                Word word = Word.of(apart.get());
                if (word != Word.NONE) {
                    Marks.judged(
                                    Marks.usual(Quantity.PROFILE_MODERATE),
                                    List.of(p.ref()),
                                    apart(p.entry()),
                                    apart.get(),
                                    ", " + word.text())
                            .forEach(marks::add);
                }
            }
        }
        return marks;
    }

    /** What a difference is called: common practice, no source. */
    enum Word {
        NONE("neither moderate nor severe"),
        MODERATE("moderate"),
        SEVERE("severe");

        private final String text;

        Word(String text) {
            this.text = text;
        }

        String text() {
            return text;
        }

        static Word of(Amount apart) {
            if (Marks.usual(Quantity.PROFILE_SEVERE).of(apart) == Verdict.OUTSIDE) {
                return SEVERE;
            }
            return Marks.usual(Quantity.PROFILE_MODERATE).of(apart) == Verdict.OUTSIDE ? MODERATE : NONE;
        }
    }

    private static List<Mark> belowTarget(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Profile> p : profiles(look)) {
            Optional<Amount> target = look.job(p).flatMap(j -> target(j, p.entry()));
            Optional<Amount> below =
                    target.flatMap(t -> Amount.apart(t, p.entry().coldest()));
            Optional<Case> at = of(look, p);
            if (below.isPresent() && at.isPresent()) {
                marks.addAll(Marks.judged(
                        at.get().bounds(Quantity.MAT_BELOW_TARGET),
                        List.of(p.ref()),
                        where(p.entry()) + "coldest "
                                + AmountText.plain(p.entry().coldest()) + ", below the target by",
                        below.get(),
                        ""));
            }
        }
        return marks;
    }

    static Optional<Amount> target(Job job, Profile p) {
        return Cases.lift(job, p.lift(), p.pull())
                .flatMap(lift -> job.mix(lift.mix()))
                .map(Mix::targetPaver);
    }

    private static List<Mark> upsideDown(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Profile> p : profiles(look)) {
            p.entry()
                    .apart()
                    .filter(d -> d.value().signum() < 0)
                    .ifPresent(d -> marks.add(new Mark(
                            p.ref(),
                            "hottest " + AmountText.text(p.entry().hottest()) + ", coldest "
                                    + AmountText.text(p.entry().coldest()),
                            "hottest is at least coldest",
                            "entry",
                            "hottest at least " + AmountText.text(p.entry().coldest()))));
        }
        return marks;
    }

    private static List<Mark> witness(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Profile> p : profiles(look)) {
            boolean none = p.entry().witness() == null || p.entry().witness().isBlank();
            Optional<Asked> asked = of(look, p).flatMap(c -> c.asked(Demand.UNCOMPACTED_MAT_LOOKED_AT));
            if (none && asked.isPresent()) {
                marks.add(Mark.asked(
                        asked.get(),
                        p.ref(),
                        where(p.entry()) + "witness: not noted",
                        "the name of the engineer who was there"));
            }
        }
        return marks;
    }

    private static List<Mark> action(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Profile> p : profiles(look)) {
            Optional<Amount> apart = p.entry().apart().filter(d -> Word.of(d) == Word.SEVERE);
            if (apart.isPresent() && p.entry().action() == null) {
                Bound severe = Marks.usual(Quantity.PROFILE_SEVERE).all().get(0);
                marks.add(new Mark(
                        p.ref(),
                        apart(p.entry()) + " " + AmountText.text(apart.get()) + ", action: not noted",
                        "what was done is noted above "
                                + AmountText.both(severe.high(), apart.get().unit()),
                        severe.clause(),
                        "what was done about it"));
            }
        }
        return marks;
    }

    private static List<Mark> behindScreed(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Mat> m : look.day().standing(Mat.class)) {
            if (m.entry().taken() == Mat.Taken.BEHIND_SCREED) {
                look.ofMat(m, null, m.entry().lift(), m.entry().pull())
                        .ifPresent(c -> marks.addAll(Marks.judged(
                                c.bounds(Quantity.MAT_BEHIND_SCREED),
                                List.of(m.ref()),
                                "behind the screed",
                                m.entry().mat(),
                                "")));
            }
        }
        return marks;
    }

    private static List<Mark> unusual(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Standing<Mat> m : look.day().standing(Mat.class)) {
            if (m.entry().taken() != Mat.Taken.BEFORE_TRAFFIC) {
                marks.addAll(odd(m.ref(), "mat", m.entry().mat()));
            }
        }
        for (Standing<Profile> p : profiles(look)) {
            marks.addAll(odd(p.ref(), "hottest", p.entry().hottest()));
            marks.addAll(odd(p.ref(), "coldest", p.entry().coldest()));
        }
        return marks;
    }

    private static List<Mark> odd(Ref of, String what, Amount value) {
        boolean heat = value != null && Measure.TEMPERATURE.takes(value.unit());
        return heat ? Marks.odd(Quantity.MAT, List.of(of), what, value) : List.of();
    }
}
