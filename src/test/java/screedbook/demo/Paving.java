package screedbook.demo;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import screedbook.entry.Aside;
import screedbook.entry.Note;

/** Loads of one mix going into one pull: hauled, looked at, laid, and their tickets planned in a book. */
final class Paving {
    private final Random random;
    private final Pen pen;
    private final Haul haul;
    private final Mat mat;
    private final String plant;
    private final String mix;
    private final boolean scales;
    private final IntSupplier numbers;
    private final Map<Integer, Consumer<Loaded>> twists = new HashMap<>();
    private final Set<Integer> mistyped = new HashSet<>();
    private final List<Loaded> loads = new ArrayList<>();
    private BiConsumer<Loaded, BigDecimal> rest = (load, tons) ->
            load.partPlaced(tons.toPlainString(), "weigh-back ticket", "end of the pull reached", "RK", "Lee Marrin");
    private final double start;
    private double sinceCheck;
    private double checkedAt;
    private int placed;
    private int lookAt;

    /** @param numbers the plant's next ticket number */
    Paving(Random random, Pen pen, Haul haul, Mat mat, String plant, String mix, boolean scales, IntSupplier numbers) {
        this.random = random;
        this.pen = pen;
        this.haul = haul;
        this.mat = mat;
        this.plant = plant;
        this.mix = mix;
        this.scales = scales;
        this.numbers = numbers;
        this.start = mat.feet();
        this.checkedAt = mat.feet();
    }

    /** What is out of the ordinary with a load, counted from 1. */
    void twist(int load, Consumer<Loaded> twist) {
        twists.put(load, twist);
    }

    /** Of this load's net the last two digits change places when it is keyed. */
    void mistype(int load) {
        mistyped.add(load);
    }

    /** What is done with the rest of the last load, in place of sending it back. */
    void rest(BiConsumer<Loaded, BigDecimal> other) {
        rest = other;
    }

    /** Where the paver is, in feet along the line. */
    double feet() {
        return mat.feet();
    }

    List<Loaded> loads() {
        return loads;
    }

    /** Loads of the mix that were placed in this shift already. */
    void placedBefore(int count) {
        placed = count;
    }

    /** A place a little ahead of the paver, where somebody reads the surface at a time. */
    double ahead(OffsetDateTime at) {
        double feet = start;
        for (Loaded load : loads) {
            if (load.to != null && load.trip.discharged().isBefore(at)) {
                feet = load.to.distance().doubleValue();
            }
        }
        return Math.round((feet + 150 + random.nextInt(250)) / 10) * 10;
    }

    /** So many loads. */
    void lay(int count) {
        for (int i = 0; i < count; i++) {
            one(Double.MAX_VALUE);
        }
    }

    /** Loads up to a station; what is too much of the last one goes back. */
    void layTo(double station) {
        while (mat.feet() < station) {
            one(station);
        }
    }

    private void one(double end) {
        Haul.Trip trip = haul.next();
        Loaded load = new Loaded(trip, plant, mix, String.valueOf(numbers.getAsInt()));
        load.scales = scales;
        load.pull = mat.pull;
        load.lift = mat.lift;
        load.silo = scales ? null : "2";
        load.arrival = random.nextInt(10) < 7;
        loads.add(load);
        twists.getOrDefault(loads.size(), l -> {}).accept(load);
        if (load.rejected()) {
            OffsetDateTime keyed = trip.discharged().plusSeconds(pen.lag());
            pen.fromNotes(label(load), trip.arrived(), keyed, load.ticket(), Aside.NONE);
            return;
        }
        look(load);
        down(load, end);
        BigDecimal typed = mistyped.contains(loads.size()) ? swapped(load.net) : load.net;
        pen.put(label(load), trip.discharged(), pen.lag(), load.ticket(typed), Aside.NONE);
        spreadCheck(load);
    }

    private static BigDecimal swapped(BigDecimal net) {
        String digits = net.toPlainString();
        int end = digits.length();
        return new BigDecimal(digits.substring(0, end - 2) + digits.charAt(end - 1) + digits.charAt(end - 2));
    }

    static String label(Loaded load) {
        return "load " + load.number;
    }

    private void down(Loaded load, double end) {
        double tons = load.placed().doubleValue();
        double wanted = mat.tonsTo(end);
        load.from = mat.at();
        if (wanted < tons + 1.5) {
            mat.stopAt(end);
            if (tons - wanted > 1.5) {
                BigDecimal back = BigDecimal.valueOf(tons - wanted).setScale(2, RoundingMode.HALF_UP);
                rest.accept(load, back);
            }
            load.to = mat.at();
        } else {
            load.to = mat.lay(tons);
        }
    }

    /** The first five loads, then one of every five at the latest on the last; now and then another one. */
    private void look(Loaded load) {
        int past = placed - 5;
        if (past >= 0 && past % 5 == 0) {
            lookAt = 2 + random.nextInt(3);
        }
        if (load.paverHeat == null && !load.unread && (past < 0 || past % 5 == lookAt || random.nextInt(12) == 0)) {
            load.paverHeat = load.trip.paverHeat();
            load.plantHeat = load.trip.plantHeat();
            load.instrument = "P-4";
        }
        placed++;
    }

    /** About every 400 tons the rate is worked out over what was laid since the last time. */
    private void spreadCheck(Loaded load) {
        sinceCheck += load.placed().doubleValue();
        if (sinceCheck < 380) {
            return;
        }
        double rate = sinceCheck * 2000 * 9 / ((mat.feet() - checkedAt) * mat.width);
        String text = String.format(
                "%.2f T from %s to %s, %.1f ft wide: %.1f lb/yd2, target %.1f; %s",
                sinceCheck,
                Mat.station(checkedAt),
                mat.at(),
                mat.width,
                rate,
                mat.target,
                rate > mat.target * 1.03 ? "screed operator told" : "screed left as it is");
        OffsetDateTime at = load.trip.discharged().plusMinutes(3);
        Note note = new Note(List.of("spread rate"), text, null, null, null, mat.at(), mat.pull);
        pen.put(null, at, pen.lag(), note, Aside.NONE);
        sinceCheck = 0;
        checkedAt = mat.feet();
    }
}
