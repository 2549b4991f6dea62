package screedbook.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import screedbook.diary.Book;
import screedbook.diary.JobFolder;
import screedbook.diary.Opened;
import screedbook.diary.Saved;
import screedbook.entry.Aside;
import screedbook.entry.Draw;
import screedbook.entry.Entry;
import screedbook.entry.Moment;
import screedbook.entry.Opening;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;
import screedbook.entry.Source;
import screedbook.entry.Ticket;
import screedbook.entry.Unwritten;
import screedbook.job.Job;
import screedbook.shelf.Shelf;
import screedbook.shelf.ShiftFile;
import screedbook.tally.RandomPlaces;

/** One shift's book in somebody's hands: entries are planned in any order and written in the order of their keying. */
final class Pen {
    private final JobFolder folder;
    private final ShiftId shift;
    private final String book;
    private final Random random;
    private final Map<String, Ref> refs;
    private final Job job;
    private final TreeMap<OffsetDateTime, String> who = new TreeMap<>();
    private final List<Planned> planned = new ArrayList<>();
    private OffsetDateTime last;
    private String sealBefore;
    private int n;
    private BiConsumer<Draw, Ref> reached = (draw, ref) -> {};
    private final Seeds seeds = new Seeds();

    private record Planned(
            OffsetDateTime keyed,
            String label,
            OffsetDateTime time,
            Source source,
            Supplier<? extends Entry> entry,
            Aside aside) {
        Planned afterwards(OffsetDateTime later) {
            return new Planned(later, label, time, Source.NOTES, entry, aside);
        }
    }

    /** @param refs entries by the labels that the script gives them; shared by the books of a shift */
    Pen(JobFolder folder, Job job, ShiftId shift, String book, String who, Random random, Map<String, Ref> refs) {
        this.job = job;
        this.folder = folder;
        this.shift = shift;
        this.book = book;
        this.random = random;
        this.refs = refs;
        this.last = at("00:00").minusDays(1);
        this.who.put(last, who);
    }

    String book() {
        return book;
    }

    /** When the last line was keyed. */
    OffsetDateTime last() {
        return last;
    }

    /** A clock time of the shift; what a night's clock shows before noon is the next day. */
    OffsetDateTime at(String clock) {
        LocalTime time = LocalTime.parse(clock);
        boolean next = shift.word().equals("night") && time.isBefore(LocalTime.NOON);
        return shift.date()
                .plusDays(next ? 1 : 0)
                .atTime(time)
                .atZone(job.zone())
                .toOffsetDateTime();
    }

    Ref ref(String label) {
        if (!refs.containsKey(label)) {
            throw new IllegalStateException("nothing is labelled " + label + " yet in " + shift);
        }
        return refs.get(label);
    }

    /** From a moment on somebody else writes. */
    void writes(OffsetDateTime from, String initials) {
        who.put(from, initials);
    }

    /** An entry that is keyed within two minutes of what happened. */
    void put(String clock, Entry entry) {
        put(null, at(clock), lag(), entry, Aside.NONE);
    }

    void put(String label, OffsetDateTime time, OffsetDateTime keyed, Entry entry, Aside aside) {
        planned.add(new Planned(keyed, label, time, Source.LIVE, () -> entry, aside));
    }

    void put(String label, OffsetDateTime time, long secondsLater, Entry entry, Aside aside) {
        put(label, time, time.plusSeconds(secondsLater), entry, aside);
    }

    /** An entry that needs to know others when it is written. */
    void put(String label, String clock, Supplier<? extends Entry> entry) {
        planned.add(new Planned(at(clock).plusSeconds(lag()), label, at(clock), Source.LIVE, entry, Aside.NONE));
    }

    /** An entry keyed afterwards. */
    void fromNotes(String label, OffsetDateTime time, OffsetDateTime keyed, Entry entry, Aside aside) {
        planned.add(new Planned(keyed, label, time, Source.NOTES, () -> entry, aside));
    }

    /** Seconds from an event to the line about it. */
    long lag() {
        return 25 + random.nextInt(95);
    }

    /**
     * The opening line, first in the book.
     *
     * @param made from the last hash of the book's shift before; null where there is none
     */
    void opening(OffsetDateTime at, Function<String, Opening> made) {
        Supplier<Opening> opening = () -> made.apply(sealBefore);
        planned.add(new Planned(at, "opening", at, Source.LIVE, opening, Aside.NONE));
    }

    /** Writes everything that is planned. */
    void write() throws IOException {
        write(OffsetDateTime.MAX);
    }

    /** Writes what is planned to be keyed before a moment. */
    void write(OffsetDateTime until) throws IOException {
        planned.sort(Comparator.comparing(Planned::keyed));
        Book open = open(planned.get(0).keyed());
        sealBefore = open.sealBefore().orElse(null);
        try {
            while (!planned.isEmpty() && planned.get(0).keyed().isBefore(until)) {
                Planned next = planned.remove(0);
                boolean free = last.isBefore(next.keyed());
                last = free
                        ? next.keyed().plusNanos(random.nextInt(1000) * 1_000_000L)
                        : last.plusSeconds(4 + random.nextInt(9));
                write(open, next);
            }
        } finally {
            open.close();
        }
    }

    private void write(Book open, Planned each) throws IOException {
        String writer = who.floorEntry(last).getValue();
        Unwritten entry =
                new Unwritten(each.time(), writer, each.source(), each.entry().get(), each.aside());
        Saved saved = open.append(List.of(entry), last).join();
        if (saved.refused().isPresent()) {
            throw new IOException(shift + "." + book + ": " + saved.refused().get());
        }
        Ref written = saved.receipts().get(0).line().ref();
        n = written.n();
        if (each.label() != null) {
            refs.put(each.label(), written);
        }
        if (entry.entry() instanceof Ticket) {
            draw(open, writer);
        }
    }

    /** The random places that the load came to, where the job has some; each is told at once to who listens. */
    private void draw(Book open, String writer) throws IOException {
        ShiftFile file = Shelf.of(folder).shift(shift);
        List<Draw> owed =
                RandomPlaces.owed(file.day(), job, file.before(), seeds::seed, () -> seeds.fresh(shift.toString()));
        for (Draw each : owed) {
            last = last.plusNanos(40_000_000L);
            Saved saved = open.append(List.of(new Unwritten(last, writer, Source.LIVE, each, Aside.NONE)), last)
                    .join();
            n = saved.receipts().get(0).line().ref().n();
            if (each.step() == Draw.Step.REACHED) {
                reached.accept(each, saved.receipts().get(0).line().ref());
                planned.sort(Comparator.comparing(Planned::keyed));
            }
        }
    }

    /** What is done when a random place is reached. */
    void reached(BiConsumer<Draw, Ref> done) {
        reached = done;
    }

    private Book open(OffsetDateTime now) throws IOException {
        Opened opened = folder.open(shift, book, job.id(), who.floorEntry(now).getValue(), now);
        if (opened instanceof Opened.Ready ready) {
            last = last.isBefore(now) ? now : last;
            return ready.book();
        }
        throw new IOException(shift + "." + book + " cannot be opened: " + opened);
    }

    /**
     * The power goes while a line is being written: what is planned until then is on the disk, and behind it the first
     * part of a line. What happens until the power is back is keyed afterwards.
     */
    void powerCut(OffsetDateTime cut, OffsetDateTime back) throws IOException {
        write(cut);
        Path file = folder.path().resolve("diary").resolve(shift + "." + book + ".jsonl");
        String begun = "{\"n\":" + (n + 1) + ",\"kind\":\"ticket\",\"job\":\"" + job.id() + "\",\"shift\":\""
                + shift + "\",\"book\":\"" + book + "\",\"time\":\"" + Moment.text(cut.minusMinutes(1))
                + "\",\"keyed\":\"" + Moment.text(cut).substring(0, 16);
        Files.writeString(file, begun, StandardOpenOption.APPEND);
        planned.replaceAll(each -> each.keyed().isBefore(back) ? each.afterwards(back.plusMinutes(1)) : each);
        OffsetDateTime setAside = back.minusMinutes(2).minusSeconds(44);
        open(setAside).close();
        n++;
        refs.put("set aside", new Ref(book, n));
    }
}
