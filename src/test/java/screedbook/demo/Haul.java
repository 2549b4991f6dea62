package screedbook.demo;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import screedbook.job.Job;

/** Trucks going round between a plant and a paver: each load with its times, weights and heat. */
final class Haul {
    /** What the haul is like. Minutes, tons an hour, degrees F; loss is degrees F for each minute on the road. */
    record Way(
            String plant, double minutes, double tonsAnHour, double heat, double loss, double lightest, double most) {}

    /** One load on its way; weights in pounds by 20-lb steps, net in tons by 0.01. */
    record Trip(
            String truck,
            OffsetDateTime loaded,
            OffsetDateTime arrived,
            OffsetDateTime discharged,
            int gross,
            int tare,
            BigDecimal net,
            int plantHeat,
            int paverHeat) {
        long age() {
            return Duration.between(loaded, discharged).toMinutes();
        }
    }

    private static final class Truck {
        private final String number;
        private final int usualTare;
        private final int legalGross;
        private OffsetDateTime ready;

        Truck(Job.Truck truck, OffsetDateTime ready) {
            this.number = truck.number();
            this.usualTare = truck.tare().value().intValueExact();
            this.legalGross = truck.legalGross().value().intValueExact();
            this.ready = ready;
        }
    }

    private record Stop(OffsetDateTime from, OffsetDateTime to) {}

    private final Random random;
    private final Way way;
    private final List<Truck> trucks = new ArrayList<>();
    private final List<Stop> stops = new ArrayList<>();
    private OffsetDateTime plantFree;
    private OffsetDateTime paverFree;

    /**
     * @param first when the plant begins to load
     * @param open before when nothing can be discharged
     */
    Haul(Random random, Way way, List<Job.Truck> trucks, OffsetDateTime first, OffsetDateTime open) {
        this.random = random;
        this.way = way;
        this.plantFree = first;
        this.paverFree = open;
        for (Job.Truck truck : trucks) {
            this.trucks.add(new Truck(truck, first));
        }
    }

    /** The paver stands from one time to another. */
    void stop(OffsetDateTime from, OffsetDateTime to) {
        stops.add(new Stop(from, to));
    }

    /** A truck that comes to the plant later than the others. */
    void joins(Job.Truck truck, OffsetDateTime ready) {
        trucks.add(new Truck(truck, ready));
    }

    OffsetDateTime paverFree() {
        return paverFree;
    }

    /** The next load; the paver takes them as they come. */
    Trip next() {
        Truck truck = trucks.stream().min(Comparator.comparing(t -> t.ready)).orElseThrow();
        OffsetDateTime begun = later(truck.ready, plantFree);
        OffsetDateTime loaded = begun.plusSeconds(seconds(3.0, 4.2));
        plantFree = loaded.plusSeconds(seconds(0.6, 1.2));
        int tare = truck.usualTare + 20 * (random.nextInt(9) - 4);
        double wanted = way.lightest + (way.most - way.lightest) * random.nextDouble();
        int full = truck.legalGross - 20 * (4 + random.nextInt(14));
        int gross = Math.min(full, (int) Math.round((tare + wanted * 2000) / 20) * 20);
        BigDecimal net = BigDecimal.valueOf(gross - tare).divide(BigDecimal.valueOf(2000));
        OffsetDateTime arrived = loaded.plusSeconds(seconds(way.minutes * 0.92, way.minutes * 1.12));
        OffsetDateTime discharged = stopped(later(arrived.plusSeconds(seconds(1.5, 2.5)), paverFree));
        double laying = net.doubleValue() / way.tonsAnHour * 60;
        paverFree = discharged.plusSeconds(seconds(laying + 0.2, laying + 0.7));
        truck.ready = paverFree.plusSeconds(seconds(way.minutes * 0.82 + 1, way.minutes * 0.98 + 2));
        return trip(truck.number, loaded, arrived, discharged, gross, tare, net.setScale(2));
    }

    private Trip trip(
            String truck,
            OffsetDateTime loaded,
            OffsetDateTime arrived,
            OffsetDateTime discharged,
            int gross,
            int tare,
            BigDecimal net) {
        OffsetDateTime in = minute(loaded);
        OffsetDateTime out = minute(discharged);
        double heat = way.heat + Math.max(-12, Math.min(12, 4 * random.nextGaussian()));
        double lost = 3 + way.loss * Duration.between(in, out).toMinutes() + 1.5 * random.nextGaussian();
        return new Trip(truck, in, minute(arrived), out, gross, tare, net, (int) Math.round(heat), (int)
                Math.round(heat - Math.max(2, lost)));
    }

    private OffsetDateTime stopped(OffsetDateTime at) {
        for (Stop stop : stops) {
            if (!at.isBefore(stop.from) && at.isBefore(stop.to)) {
                return stop.to.plusSeconds(seconds(0.5, 1.5));
            }
        }
        return at;
    }

    private long seconds(double least, double most) {
        return Math.round(60 * (least + (most - least) * random.nextDouble()));
    }

    private static OffsetDateTime later(OffsetDateTime a, OffsetDateTime b) {
        return a.isAfter(b) ? a : b;
    }

    /** People note whole minutes. */
    private static OffsetDateTime minute(OffsetDateTime at) {
        return at.withSecond(0).withNano(0);
    }
}
