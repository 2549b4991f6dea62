package screedbook.desk;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Station;
import screedbook.entry.Ticket;
import screedbook.entry.Yield;
import screedbook.job.Job;
import screedbook.tally.Run;
import screedbook.unit.Measure;

/**
 * What was laid since the last yield check of a pull, for the blanks of the next one; and where the paver is. The end
 * that was measured to is typed: nobody writes a check with nothing but Enter.
 */
final class SinceCheck {
    private final Shift shift;

    private SinceCheck(Shift shift) {
        this.shift = shift;
    }

    static void yield(Model model, Map<String, String> carried) {
        new SinceCheck(model.shift()).into(carried);
    }

    /** A probe is made where the paver is, or has just been. */
    static void depth(Model model, Map<String, String> carried) {
        Standing<?> last = model.shift().last().get(Kind.TICKET);
        if (last != null && last.entry() instanceof Ticket ticket) {
            Station at = ticket.spot().to() == null
                    ? ticket.spot().from()
                    : ticket.spot().to();
            put(carried, "place_sta", at);
        }
    }

    private static void put(Map<String, String> carried, String blank, Object value) {
        if (value != null) {
            carried.put(blank, value.toString());
        }
    }

    private void into(Map<String, String> carried) {
        List<Run> runs = shift.totals().runs();
        if (runs.isEmpty()) {
            return;
        }
        Run run = newest(runs);
        Optional<Yield> last = lastOf(run);
        Job job = shift.job();
        put(carried, "pull", run.pull());
        put(carried, "lift", run.lift());
        job.pull(run.pull(), run.lift())
                .ifPresent(p -> carried.put(
                        "width_" + Measure.WIDTH.unit(job.system()).suffix(),
                        p.width().value().toPlainString()));
        put(carried, "from_sta", last.map(Yield::to).orElse(run.begin()));
        tickets(run, last, carried);
    }

    /** Where the newest load went; a part of a load that was laid elsewhere does not move the paver. */
    private Run newest(List<Run> runs) {
        Run last = runs.get(runs.size() - 1);
        return Optional.ofNullable(shift.last().get(Kind.TICKET))
                .map(t -> ((Ticket) t.entry()).spot())
                .flatMap(spot -> runs.stream()
                        .filter(r -> Objects.equals(r.pull(), spot.pull()) && Objects.equals(r.lift(), spot.lift()))
                        .reduce((a, b) -> b))
                .orElse(last);
    }

    private Optional<Yield> lastOf(Run run) {
        List<Standing<Yield>> all = shift.day().standing(Yield.class);
        for (int i = all.size() - 1; i >= 0; i--) {
            Yield y = all.get(i).entry();
            if (Objects.equals(y.pull(), run.pull()) && (y.lift() == null || Objects.equals(y.lift(), run.lift()))) {
                return Optional.of(y);
            }
        }
        return Optional.empty();
    }

    /** From the ticket behind the last one of the check before; what has no number is passed over. */
    private void tickets(Run run, Optional<Yield> last, Map<String, String> carried) {
        String behind = last.map(Yield::lastTicket).orElse(null);
        String first = null;
        boolean passed = behind == null;
        String end = null;
        for (Ref ref : run.entries()) {
            String number = shift.find(ref)
                    .map(Standing::entry)
                    .filter(Ticket.class::isInstance)
                    .map(t -> ((Ticket) t).paper().number())
                    .orElse(null);
            if (number != null) {
                first = passed && first == null ? number : first;
                passed |= number.equals(behind);
                end = number;
            }
        }
        if (first != null) {
            carried.put("first_ticket", first);
            carried.put("last_ticket", end);
        }
    }
}
