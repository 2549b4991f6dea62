package screedbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Custody;
import screedbook.entry.Result;
import screedbook.entry.Standing;
import screedbook.entry.YesNo;
import screedbook.tally.Samples;
import screedbook.tally.Taken;

/** Rules about seals and about the hands through which a sample goes. */
final class CustodyRules {
    private static final String SEAL = "Iowa IM 205 appendix A (April 2016)";
    private static final String HANDS = "chain of custody as San Joaquin County files define it";

    static final List<Rule> ALL = List.of(
            new Rule(
                    "seal-differs",
                    Sort.DOES_NOT_ADD_UP,
                    "A hand-over reads the seal number under which the sample was sealed.",
                    CustodyRules::seal),
            new Rule("seal-not-whole", Sort.LOOK_AGAIN, "A seal is whole at every hand-over.", CustodyRules::whole),
            new Rule("custody-gap", Sort.DOES_NOT_ADD_UP, "Who gives a sample is who took it last.", CustodyRules::gap),
            new Rule(
                    "custody-open",
                    Sort.LOOK_AGAIN,
                    "At the close of its shift a sample was handed over.",
                    CustodyRules::open),
            new Rule(
                    "sample-not-known",
                    Sort.LOOK_AGAIN,
                    "A hand-over or a result names a sample or a core of the record.",
                    CustodyRules::unknown));

    private CustodyRules() {}

    private record Handed(Taken sample, int at, Standing<Custody> hand) {}

    /** The hand-overs of this shift, each with its sample and which of its hand-overs it is. */
    private static List<Handed> handed(Look look) {
        List<Handed> handed = new ArrayList<>();
        for (Taken sample : look.samples().map(Samples::all).orElse(List.of())) {
            for (int i = 0; i < sample.hands().size(); i++) {
                if (SampleRules.here(look, sample.hands().get(i))) {
                    handed.add(new Handed(sample, i, sample.hands().get(i)));
                }
            }
        }
        return handed;
    }

    private static List<Mark> seal(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Handed each : handed(look)) {
            String sealed = each.sample().sample().entry().keeping().sealNumber();
            String read = each.hand().entry().sealNumber();
            if (sealed != null && read != null && !same(sealed, read)) {
                marks.add(new Mark(
                        each.hand().ref(),
                        "sample " + each.sample().number() + ": seal " + read + " read, sealed under " + sealed,
                        "the same number",
                        SEAL,
                        "seal " + sealed));
            }
        }
        return marks;
    }

    private static boolean same(String one, String other) {
        return one.strip().equalsIgnoreCase(other.strip());
    }

    private static List<Mark> whole(Look look) {
        return handed(look).stream()
                .filter(h -> h.hand().entry().whole() == YesNo.NO)
                .map(h -> new Mark(
                        h.hand().ref(),
                        "sample " + h.sample().number() + ": the seal was not whole",
                        "a whole seal",
                        SEAL,
                        "a seal that is whole"))
                .toList();
    }

    private static List<Mark> gap(Look look) {
        List<Mark> marks = new ArrayList<>();
        for (Handed each : handed(look)) {
            String giver = each.hand().entry().givenBy();
            String holder = each.sample().holder(each.at());
            if (giver != null && holder != null && !same(giver, holder)) {
                marks.add(new Mark(
                        each.hand().ref(),
                        "sample " + each.sample().number() + ": given by " + giver + ", last taken by " + holder,
                        "one hand to the next",
                        HANDS,
                        "given by " + holder + ", or the hand-over between them"));
            }
        }
        return marks;
    }

    private static List<Mark> open(Look look) {
        if (!look.day().closed()) {
            return List.of();
        }
        return look.samples().map(Samples::open).orElse(List.of()).stream()
                .filter(t -> SampleRules.here(look, t.sample()) && t.hands().isEmpty())
                .map(t -> new Mark(
                        t.sample().ref(),
                        "sample " + t.number() + " at the close: with " + t.holder() + ", no hand-over noted",
                        "in somebody's hands, in view or locked away",
                        HANDS,
                        "a hand-over, also one to a locked place"))
                .toList();
    }

    private static List<Mark> unknown(Look look) {
        Optional<Samples> samples = look.samples();
        if (samples.isEmpty()) {
            return List.of();
        }
        List<Mark> marks = new ArrayList<>();
        look.day()
                .standing(Custody.class)
                .forEach(c -> unknown(samples.get(), c, c.entry().sample(), marks));
        look.day()
                .standing(Result.class)
                .forEach(r -> unknown(samples.get(), r, r.entry().sample(), marks));
        return marks;
    }

    private static void unknown(Samples samples, Standing<?> each, String number, List<Mark> marks) {
        if (number != null && !samples.known(number)) {
            marks.add(new Mark(
                    each.ref(),
                    each.line().kind().word() + " of " + number + ", which is no sample or core of the record",
                    "a number of the record",
                    "the record",
                    "the sample's entry, or its right number"));
        }
    }
}
