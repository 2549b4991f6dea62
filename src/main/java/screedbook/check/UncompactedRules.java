package screedbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import screedbook.entry.Profile;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.spec.Asked;
import screedbook.spec.Demand;
import screedbook.tally.Lot;
import screedbook.tally.Samples;

/** The rule that each sublot of a shift was looked at before it was rolled, once a thermal profile was keyed at all. */
final class UncompactedRules {
    static final List<Rule> ALL = List.of(new Rule(
            "uncompacted-sublot",
            Sort.MISSING,
            "Where the sheet asks for it, a thermal profile names each sublot that was placed.",
            UncompactedRules::sublots));

    private UncompactedRules() {}

    /** A shift without any profile is told of as a whole; a sublot that began in an earlier one may have its look there. */
    private static List<Mark> sublots(Look look) {
        List<Standing<Profile>> profiles = look.day().standing(Profile.class);
        Optional<Samples> samples = look.samples();
        List<Mark> marks = new ArrayList<>();
        if (profiles.isEmpty() || samples.isEmpty()) {
            return marks;
        }
        ShiftId here = look.day().shift();
        for (Lot lot : samples.get().filling().lots(here)) {
            for (Lot.Sublot sublot : lot.sublots()) {
                boolean whole = sublot.over()
                        && !sublot.pieces().isEmpty()
                        && sublot.pieces().stream()
                                .allMatch(p -> p.load().shift().equals(here));
                if (whole && profiles.stream().noneMatch(p -> names(p.entry(), lot, sublot))) {
                    last(look, sublot)
                            .ifPresent(t -> asked(look, t).ifPresent(a -> marks.add(mark(t, lot, sublot, a))));
                }
            }
        }
        return marks;
    }

    private static boolean names(Profile p, Lot lot, Lot.Sublot sublot) {
        boolean ofLot = p.lot() == null || p.lot() == lot.number();
        return ofLot && p.sublot() != null && p.sublot() == sublot.number();
    }

    private static Optional<Standing<Ticket>> last(Look look, Lot.Sublot sublot) {
        Ref ref = sublot.pieces().get(sublot.pieces().size() - 1).load().ticket();
        return look.tickets().stream().filter(t -> t.ref().equals(ref)).findFirst();
    }

    private static Optional<Asked> asked(Look look, Standing<Ticket> load) {
        return look.ofTicket(load).flatMap(c -> c.asked(Demand.UNCOMPACTED_MAT_LOOKED_AT));
    }

    private static Mark mark(Standing<Ticket> load, Lot lot, Lot.Sublot sublot, Asked asked) {
        return Mark.asked(
                asked,
                load.ref(),
                lot.name() + ", sublot " + sublot.number() + ": no thermal profile names it",
                "a thermal profile with this sublot's number");
    }
}
