package screedbook.diary;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import screedbook.entry.Amend;
import screedbook.entry.Line;
import screedbook.entry.Ref;
import screedbook.entry.Strike;
import screedbook.entry.Ticket;
import screedbook.entry.WholeLoads;
import screedbook.entry.Written;

/**
 * The tickets of a shift's proved books being sorted: those that need no second look are taken together, all others handed
 * on as lines. A ticket has to do with another only by a number that both name, and with a correction only by being named in
 * it.
 */
final class LoadsReading {
    private final List<ProvedBook> books;
    private final Map<String, BitSet> corrected = new LinkedHashMap<>();
    private final Set<Long> named = new HashSet<>();
    private final List<LoadsSum> sums = new ArrayList<>();

    LoadsReading(List<ProvedBook> books) {
        this.books = books;
    }

    /** The books with the lines that have to be looked at one by one. */
    List<BookRead> read() {
        books.forEach(book -> corrected.put(book.name(), new BitSet()));
        for (ProvedBook book : books) {
            book.lines().forEach(written -> corrects((Line) written));
        }
        twice();
        return books.stream().map(this::sorted).toList();
    }

    /** The loads of all other tickets, by mix and system of units. */
    List<WholeLoads> whole() {
        return sums.stream().map(LoadsSum::whole).toList();
    }

    private void corrects(Line line) {
        if (line.entry() instanceof Strike strike) {
            mark(strike.of());
        } else if (line.entry() instanceof Amend amend) {
            mark(amend.of());
            renumber(amend.set());
        } else if (line.entry() instanceof Ticket ticket) {
            name(ticket.paper().number());
            name(ticket.fate().reissueOf());
        }
    }

    /** The numbers that an amendment, or one of an amendment, gives. */
    private void renumber(Object set) {
        if (set instanceof Map<?, ?> values) {
            name(values.get("number"));
            name(values.get("reissue_of"));
            renumber(values.get("set"));
        }
    }

    private void mark(Ref of) {
        if (of != null && corrected.containsKey(of.book()) && of.n() <= most(of.book())) {
            corrected.get(of.book()).set(of.n());
        }
    }

    private int most(String name) {
        return books.stream()
                .filter(book -> book.name().equals(name))
                .mapToInt(ProvedBook::count)
                .sum();
    }

    private void name(Object number) {
        if (number instanceof String text) {
            byte[] bytes = text.getBytes(UTF_8);
            named.add(TicketRow.hash(bytes, 0, bytes.length));
        }
    }

    /** Numbers that stand on more than one ticket; two that only share a hash do no harm. */
    private void twice() {
        long[] hashes = books.stream()
                .flatMap(book -> book.tickets().stream())
                .mapToLong(TicketRow::numberHash)
                .toArray();
        Arrays.sort(hashes);
        for (int i = 1; i < hashes.length; i++) {
            if (hashes[i] == hashes[i - 1]) {
                named.add(hashes[i]);
            }
        }
    }

    private BookRead sorted(ProvedBook book) {
        BitSet marked = corrected.get(book.name());
        List<Written> lines = new ArrayList<>(book.lines());
        for (TicketRow ticket : book.tickets()) {
            boolean alone = ticket.whole()
                    && !marked.get(ticket.n())
                    && (named.isEmpty() || !named.contains(ticket.numberHash()));
            if (alone) {
                sum(ticket).add(ticket);
            } else {
                lines.add(book.line(ticket));
            }
        }
        lines.sort(Comparator.comparingInt(written -> ((Line) written).n()));
        return book.read(lines);
    }

    private LoadsSum sum(TicketRow ticket) {
        for (LoadsSum each : sums) {
            if (each.takes(ticket)) {
                return each;
            }
        }
        sums.add(new LoadsSum(ticket));
        return sums.get(sums.size() - 1);
    }
}
