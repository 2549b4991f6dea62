package screedbook.demo;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.function.IntSupplier;
import screedbook.diary.JobFolder;
import screedbook.diary.KeptPages;
import screedbook.diary.LimitSheets;
import screedbook.entry.Closing;
import screedbook.entry.Opening;
import screedbook.entry.Ref;
import screedbook.entry.ShiftId;
import screedbook.entry.Ticket;
import screedbook.entry.YesNo;
import screedbook.job.Agreed;
import screedbook.job.Job;
import screedbook.job.Mix;
import screedbook.report.DayCsv;
import screedbook.report.DayPage;
import screedbook.report.DayPaper;
import screedbook.shelf.Papers;
import screedbook.shelf.Shelf;
import screedbook.tally.Tons;

/** One shift with its books, the plan in force and the chances that make it look like a real one. */
final class Scene {
    final JobFolder folder;
    final ShiftId shift;
    final Random random;
    final Agreed agreed;
    private final Numbers numbers;
    private final Map<String, Ref> refs = new HashMap<>();

    /** The ticket numbers that the plants have come to; they run on from shift to shift. */
    static final class Numbers {
        private int own = 48201;
        private int shared = 7716;

        /** Every ticket of the plant is this job's. */
        IntSupplier own() {
            return () -> own++;
        }

        /** The other customers' tickets lie between. */
        IntSupplier shared(Random random) {
            return () -> shared += 1 + random.nextInt(3);
        }

        int skip() {
            return own++;
        }
    }

    Scene(JobFolder folder, String shift, long seed, Agreed agreed, Numbers numbers) {
        this.folder = folder;
        this.shift = ShiftId.of(shift);
        this.random = new Random(seed);
        this.agreed = agreed;
        this.numbers = numbers;
    }

    Job job() {
        return agreed.job();
    }

    Numbers numbers() {
        return numbers;
    }

    Pen pen(String book, String who) {
        return new Pen(folder, job(), shift, book, who, random, refs);
    }

    Job.Product product(String name) {
        return job().product(name).orElseThrow();
    }

    Sprayer sprayer(String name, double reading, String paper) {
        return new Sprayer(job().distributor(name).orElseThrow(), reading, paper);
    }

    Mat mat(String pull, int lift, double share, double from) {
        Job.Lift planned = job().lift(lift).orElseThrow();
        Mix mix = job().mix(planned.mix()).orElseThrow();
        double inches = planned.thickness().value().doubleValue();
        double perInch = mix.spread() == null
                ? mix.unitWeight().value().doubleValue() * 9 / 12
                : mix.spread().value().doubleValue();
        double width = job().pull(pull, lift).orElseThrow().width().value().doubleValue();
        return new Mat(random, pull, lift, width, inches * perInch, share, from);
    }

    List<Job.Truck> trucks(String... numbers) {
        return List.of(numbers).stream().map(n -> job().truck(n).orElseThrow()).toList();
    }

    /** The hash of the limit sheet in force, which is kept as it is now. */
    String frozenSheet() throws IOException {
        Path own = folder.path().resolve("spec").resolve(job().sheet() + ".csv");
        byte[] text = Files.exists(own)
                ? Files.readAllBytes(own)
                : DemoShifts.resource("/spec/" + job().sheet() + ".csv").getBytes(StandardCharsets.UTF_8);
        return LimitSheets.in(folder).freeze(job().sheet(), text);
    }

    /** The first line of a book. */
    void opens(Pen pen, String clock) throws IOException {
        byte[] id = new byte[8];
        random.nextBytes(id);
        String frozen = frozenSheet();
        OffsetDateTime at = pen.at(clock);
        pen.opening(
                at,
                before -> new Opening(
                        1,
                        DemoShifts.PROGRAM,
                        HexFormat.of().formatHex(id),
                        job().zone().getId(),
                        null,
                        agreed.revision(),
                        agreed.sha256(),
                        job().sheet(),
                        frozen,
                        job().people(),
                        job().instruments(),
                        before));
    }

    /** The last line of a book: what was counted until then, and the representative's word on it. */
    void closes(Pen pen, String clock, Function<Tons, Closing.Theirs> theirs, String item, String text, YesNo charged) {
        pen.put(null, clock, () -> Closings.of(folder, shift, pen.book(), theirs, item, text, charged));
    }

    /** The page of the shift as it stands, kept beside the diary. */
    void page() throws IOException {
        DayPaper paper = Papers.of(Shelf.of(folder).shift(shift));
        KeptPages.in(folder).page(shift, DayPage.text(paper), DayCsv.text(paper));
    }

    /** The ticket number of an entry that is on the disk. */
    String number(Ref of) {
        return folder.shift(shift).day().standing(Ticket.class).stream()
                .filter(t -> t.ref().equals(of))
                .map(t -> t.entry().paper().number())
                .findFirst()
                .orElse(null);
    }

    /** What loads weigh together, as text. */
    String tons(List<Loaded> loads) {
        return loads.stream()
                .map(l -> l.net)
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .toPlainString();
    }

    /** This representative counted what was counted here. */
    Function<Tons, Closing.Theirs> by(String name) {
        return ours -> new Closing.Theirs(name, ours.loads(), ours.received(), Closing.Agreed.YES, null);
    }

    /** The representative counted what was counted here. */
    static Closing.Theirs agreed(Tons ours) {
        return new Closing.Theirs("Lee Marrin", ours.loads(), ours.received(), Closing.Agreed.YES, null);
    }
}
