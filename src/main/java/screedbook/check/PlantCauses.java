package screedbook.check;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import screedbook.entry.Number;
import screedbook.entry.Ref;
import screedbook.entry.Standing;
import screedbook.entry.Ticket;
import screedbook.entry.Waste;
import screedbook.job.Job;
import screedbook.tally.ListPair;
import screedbook.tally.Load;
import screedbook.tally.PlantCount;
import screedbook.unit.Amount;

/**
 * What may stand behind a plant's total that is not the one kept here, each worked out from the tickets: candidates, of
 * which any may be the one.
 *
 * @param of the tickets that are named
 */
record PlantCauses(List<String> said, List<Ref> of) {
    private static final int SHOWN = 8;
    private static final BigDecimal NINE = BigDecimal.valueOf(9);

    static PlantCauses of(Look look, PlantCount count, List<PlantCount> all) {
        Search search = new Search(look, count, all);
        search.all();
        return new PlantCauses(List.copyOf(search.said), List.copyOf(search.of));
    }

    String text() {
        return said.isEmpty()
                ? "No ticket here explains it by itself."
                : "Any of these may be behind it. " + String.join(" ", said);
    }

    /** Whether two digits that changed places make one net of the other; empty where they do not. */
    static String turned(ListPair pair) {
        Amount ours = pair.ticket().entry().weights().net();
        Amount theirs = pair.row().net();
        boolean turned = ours != null
                && theirs != null
                && theirs.compareTo(ours) != 0
                && swapped(ours.value()).stream()
                        .anyMatch(s -> s.compareTo(theirs.to(ours.unit()).value()) == 0);
        return turned ? " Two digits of the net changed places in one of them." : "";
    }

    /** Every figure that two digits changing places make of one, with two decimals or more. */
    static List<BigDecimal> swapped(BigDecimal value) {
        BigDecimal two = scaled(value);
        char[] digits = two.unscaledValue().abs().toString().toCharArray();
        List<BigDecimal> made = new ArrayList<>();
        for (int i = 0; i < digits.length; i++) {
            for (int j = i + 1; j < digits.length; j++) {
                if (digits[i] != digits[j]) {
                    char[] other = digits.clone();
                    other[i] = digits[j];
                    other[j] = digits[i];
                    made.add(new BigDecimal(new BigInteger(new String(other)), two.scale()));
                }
            }
        }
        return made;
    }

    private static BigDecimal scaled(BigDecimal value) {
        return value.scale() < 2 ? value.setScale(2) : value;
    }

    /** The looking for them. */
    private static final class Search {
        private final Look look;
        private final PlantCount count;
        private final List<PlantCount> all;
        private final List<String> said = new ArrayList<>();
        private final List<Ref> of = new ArrayList<>();
        private final Integer loads;
        private final Amount tons;

        Search(Look look, PlantCount count, List<PlantCount> all) {
            this.look = look;
            this.count = count;
            this.all = all;
            this.loads = count.loadsApart();
            this.tons = count.tonsApart();
        }

        void all() {
            numbers();
            if (tons != null && tons.value().signum() != 0) {
                oneTicket();
                taken();
                otherMix();
                digits();
                String ratio = TicketRules.ratio(count.told().entry().tons(), count.tons());
                if (!ratio.isEmpty()) {
                    said.add(ratio);
                }
            }
        }

        private Amount size() {
            return AmountText.size(tons);
        }

        /** Numbers of the plant's own series that are not here. */
        private void numbers() {
            if (loads == null || loads <= 0) {
                return;
            }
            TreeMap<Long, Standing<Ticket>> series = new TreeMap<>();
            List<Load> known = new ArrayList<>(count.mine());
            known.addAll(count.others());
            known.stream()
                    .map(Load::ticket)
                    .filter(t ->
                            look.plant(t).map(p -> p.series() == Job.Series.OWN).orElse(false))
                    .forEach(t -> PlantCount.number(t.entry().paper().number()).ifPresent(n -> series.put(n, t)));
            List<String> absent = absent(series);
            if (!absent.isEmpty()) {
                said.add("Not here of the plant's own series: " + first(absent) + "; the plant has " + Look.loads(loads)
                        + " more.");
            }
        }

        private List<String> absent(TreeMap<Long, Standing<Ticket>> series) {
            List<String> absent = new ArrayList<>();
            if (series.isEmpty()) {
                return absent;
            }
            long from = PlantCount.number(count.told().entry().firstTicket()).orElse(series.firstKey());
            long to = PlantCount.number(count.told().entry().lastTicket()).orElse(series.lastKey());
            look.day().standing(Number.class).stream()
                    .filter(n -> NumberRules.explained(n.entry()) && ofPlant(n.entry()))
                    .forEach(n ->
                            PlantCount.number(n.entry().number()).ifPresent(known -> series.putIfAbsent(known, null)));
            long at = from;
            while (at <= to && absent.size() <= SHOWN) {
                Long next = series.ceilingKey(at);
                long end = next == null || next > to ? to + 1 : next;
                if (end > at) {
                    absent.add(end - at == 1 ? Long.toString(at) : at + " to " + (end - 1));
                }
                at = end + 1;
            }
            return absent;
        }

        private boolean ofPlant(Number number) {
            return number.plant() == null
                    || number.plant().equals(count.told().entry().plant());
        }

        /** A load that weighs as much as the two differ by: one of ours too many, or one of another mix or fate. */
        private void oneTicket() {
            if (loads != null && loads != 0 && loads > 0 != tons.value().signum() > 0) {
                return;
            }
            List<Load> among = tons.value().signum() < 0 ? count.mine() : count.others();
            List<String> named = new ArrayList<>();
            for (Load load : among) {
                Amount net = load.ticket().entry().weights().net();
                if (net != null && net.unit() == tons.unit() && net.compareTo(size()) == 0) {
                    String mix = load.ticket().entry().paper().mix();
                    String as = tons.value().signum() < 0
                            ? ""
                            : load.came()
                                    ? " stands here as " + (mix == null ? "of no mix" : mix)
                                    : " stands here as " + load.fate().word().replace('-', ' ');
                    named.add(Look.name(load.ticket()) + as);
                    of.add(load.ticket().ref());
                }
            }
            if (!named.isEmpty()) {
                said.add("As much as the two differ by, " + size().text() + ": " + first(named) + ".");
            }
        }

        /** Mix that was rejected, sent back or thrown away, alone or together. */
        private void taken() {
            if (tons.value().signum() > 0) {
                return;
            }
            Map<String, Amount> parts = new LinkedHashMap<>();
            for (Load load : count.mine()) {
                Ticket.Fate fate = load.ticket().entry().fate();
                if (load.fate() == Ticket.End.REJECTED || load.fate() == Ticket.End.WASTE) {
                    add(parts, load.fate() == Ticket.End.REJECTED ? "rejected" : "thrown away whole", load.received());
                } else {
                    add(parts, "not placed", fate.returned());
                }
            }
            for (Standing<Waste> waste : look.day().standing(Waste.class)) {
                if (ofCount(waste.entry())) {
                    add(parts, "waste", waste.entry().weight());
                }
            }
            List<String> names = List.copyOf(parts.keySet());
            for (int set = 1; set < 1 << names.size(); set++) {
                Amount sum = new Amount(BigDecimal.ZERO, tons.unit());
                List<String> put = new ArrayList<>();
                for (int i = 0; i < names.size(); i++) {
                    if ((set >> i & 1) == 1) {
                        sum = sum.plus(parts.get(names.get(i)));
                        put.add(names.get(i) + " " + parts.get(names.get(i)).text());
                    }
                }
                if (sum.compareTo(size()) == 0) {
                    said.add("As much as the two differ by: " + String.join(" and ", put) + ".");
                }
            }
        }

        private boolean ofCount(Waste waste) {
            return waste.of() == null
                    ? count.told().entry().mix() == null
                            || count.told().entry().mix().equals(waste.mix())
                    : count.mine().stream().anyMatch(l -> l.ticket().ref().equals(waste.of()));
        }

        private void add(Map<String, Amount> parts, String what, Amount weight) {
            if (weight != null && weight.unit() == tons.unit() && weight.value().signum() > 0) {
                parts.merge(what, weight, Amount::plus);
            }
        }

        /** Another mix of the plant that differs by as much the other way. */
        private void otherMix() {
            for (PlantCount other : all) {
                Amount theirs = other == count ? null : other.tonsApart();
                boolean plant = other != count
                        && Objects.equals(
                                other.told().entry().plant(),
                                count.told().entry().plant());
                if (plant && theirs != null && theirs.plus(tons).value().signum() == 0) {
                    said.add(other.name() + " differs by as much the other way: a load may stand under the other mix.");
                }
            }
        }

        /** Two digits that changed places move a figure by a number that nine divides. */
        private void digits() {
            BigDecimal last = scaled(size().value());
            BigDecimal steps = new BigDecimal(last.unscaledValue());
            if (last.scale() != 2 || steps.remainder(NINE).signum() != 0) {
                return;
            }
            List<String> named = new ArrayList<>();
            for (Load load : count.mine()) {
                Amount net = load.ticket().entry().weights().net();
                if (net == null || net.unit() != tons.unit()) {
                    continue;
                }
                BigDecimal meant = net.value().add(tons.value());
                if (swapped(net.value()).stream().anyMatch(s -> s.compareTo(meant) == 0)) {
                    named.add(Look.name(load.ticket()) + " " + net.value().toPlainString() + " for "
                            + meant.toPlainString());
                    of.add(load.ticket().ref());
                }
            }
            Amount theirs = count.told().entry().tons();
            if (swapped(theirs.value()).stream()
                    .anyMatch(s -> s.compareTo(count.tons().value()) == 0)) {
                named.add("the plant's own figure " + theirs.value().toPlainString() + " for "
                        + count.tons().value().toPlainString());
            }
            said.add(size().text() + " is divisible by nine in its last digits, as when two digits change places"
                    + (named.isEmpty() ? "; no one ticket here would explain it so." : ": " + first(named) + "."));
        }

        private static String first(List<String> named) {
            return named.stream().limit(SHOWN).collect(Collectors.joining(", "))
                    + (named.size() > SHOWN ? " and " + (named.size() - SHOWN) + " more" : "");
        }
    }
}
