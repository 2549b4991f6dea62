package screedbook.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import screedbook.entry.Blank;
import screedbook.entry.Built;
import screedbook.entry.Field;
import screedbook.entry.Fields;
import screedbook.entry.StationBase;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.UnitSystem;

/** Plain values read as a job: every doubt is told, not only the first. */
public final class JobReading {
    private final List<Doubt> doubts = new ArrayList<>();

    private JobReading() {}

    /**
     * A place in a job's values that cannot be used as it is.
     *
     * @param path such as {@code mixes[1].binder}; empty when it speaks of the whole job
     * @param said what was seen
     * @param right what would be right; empty when that cannot be said
     */
    public record Doubt(String path, String said, String right) {}

    /**
     * What the values come to.
     *
     * @param job settled; empty when there is any doubt
     */
    public record Read(Optional<Job> job, List<Doubt> doubts) {}

    public static Read of(Map<String, Object> values) {
        JobReading reading = new JobReading();
        Optional<Job> job = reading.settled(values);
        return new Read(job, List.copyOf(reading.doubts));
    }

    private Optional<Job> settled(Map<String, Object> values) {
        Built<Job> built = Fields.build(Job.class, values);
        built.slips().forEach(slip -> at(slip.path(), slip.path() + " is " + slip.seen(), slip.right()));
        built.unknown().forEach(key -> at(key, "there is no " + key, nearest(key)));
        missing(built.value(), "", built);
        if (built.value().units() != null) {
            units(built.value(), "", built.value().units().system());
        }
        if (doubts.isEmpty()) {
            Job job = built.value().settled();
            mileposts(job);
            names(job);
            references(job);
            return doubts.isEmpty() ? Optional.of(job) : Optional.empty();
        }
        return Optional.empty();
    }

    /** A mile is told in feet; where a job measures metres, a full station is a kilometre. */
    private void mileposts(Job job) {
        if (job.stationing().base() == StationBase.MILEPOSTS && job.system() == UnitSystem.METRIC) {
            at("stationing.base", "stationing.base is mileposts in a metric job", "m-1000: kilometre posts, 12+350");
        }
    }

    /** Everything that has to be there, in records within records too. */
    private void missing(Record record, String path, Built<Job> built) {
        Set<String> slipped = new HashSet<>();
        built.slips().forEach(slip -> slipped.add(slip.path()));
        for (Field field : Fields.of(record.getClass())) {
            Object value = field.get(record);
            String here = path + field.name();
            boolean read = slipped.stream().noneMatch(slip -> slip.startsWith(here));
            if (value == null && field.due() == Blank.Due.ALWAYS && read) {
                String where = path.isEmpty() ? "" : path.substring(0, path.length() - 1);
                at(where, (where.isEmpty() ? "the job" : where) + " has no " + field.name(), right(field));
            }
            inside(value, here, (inner, its) -> missing(inner, its + ".", built));
        }
    }

    private static String right(Field field) {
        if (!field.words().isEmpty()) {
            return field.name() + " as one of " + String.join(", ", field.words());
        }
        String key = field.measure().isPresent() ? field.name() + " with its unit behind it" : field.name();
        return field.help().isEmpty() ? key : key + ": " + field.help();
    }

    private interface Inside {
        void look(Record record, String path);
    }

    private static void inside(Object value, String path, Inside look) {
        if (value instanceof Record record && Fields.areIn(record.getClass())) {
            look.look(record, path);
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                inside(list.get(i), path + "[" + i + "]", look);
            }
        }
    }

    /** A job has one system of units; a key of the other one is told. */
    private void units(Record record, String path, UnitSystem system) {
        for (Field field : Fields.of(record.getClass())) {
            Object value = field.get(record);
            Optional<Measure> measure = field.measure();
            if (value instanceof Amount amount
                    && measure.isPresent()
                    && amount.unit() != measure.get().unit(system)) {
                String key = path + field.name() + "_" + amount.unit().suffix();
                at(key, key + " is not of the job's units", field.key(system));
            }
            inside(value, path + field.name(), (inner, its) -> units(inner, its + ".", system));
        }
    }

    private void names(Job job) {
        unique("mixes", "name", job.mixes(), Mix::name);
        unique("lifts", "number", job.lifts(), Job.Lift::number);
        unique("pulls", "name", job.pulls(), pull -> pull.name() + " of lift " + pull.lift());
        unique("plants", "name", job.plants(), Job.Plant::name);
        unique("trucks", "number", job.trucks(), Job.Truck::number);
        unique("products", "name", job.products(), Job.Product::name);
        unique("distributors", "name", job.distributors(), Job.Distributor::name);
        unique("people", "initials", job.people(), person -> person.initials());
        keys(job);
        unique("instruments", "id", job.instruments(), instrument -> instrument.id());
    }

    private void keys(Job job) {
        for (int i = 0; i < job.people().size(); i++) {
            String key = job.people().get(i).publicKey();
            if (key != null && SignKey.of(key).isEmpty()) {
                String path = "people[" + i + "].public_key";
                at(path, path + " is " + key, "the 60 characters of a .pub file made with: screedbook key FILE");
            }
        }
    }

    private <T> void unique(String list, String key, List<T> all, Function<T, Object> name) {
        Set<Object> seen = new HashSet<>();
        for (int i = 0; i < all.size(); i++) {
            Object each = name.apply(all.get(i));
            if (!seen.add(each)) {
                String path = list + "[" + i + "]." + key;
                at(path, list + " has " + each + " twice", "another " + key);
            }
        }
    }

    private void references(Job job) {
        for (int i = 0; i < job.lifts().size(); i++) {
            String mix = job.lifts().get(i).mix();
            if (job.mix(mix).isEmpty()) {
                String all =
                        String.join(", ", job.mixes().stream().map(Mix::name).toList());
                at(
                        "lifts[" + i + "].mix",
                        "no mix is named " + mix,
                        all.isEmpty() ? "a mix under mixes" : "one of " + all);
            }
        }
        for (int i = 0; i < job.pulls().size(); i++) {
            Job.Pull pull = job.pulls().get(i);
            String path = "pulls[" + i + "]";
            if (job.lift(pull.lift()).isEmpty()) {
                at(path + ".lift", "no lift has number " + pull.lift(), "the number of one under lifts");
            }
            if (pull.width().value().signum() <= 0) {
                at(path, "pull " + pull.name() + " is " + pull.width().text() + " wide", "right greater than left");
            }
        }
        wanted(job.checks().others());
        planning(job);
    }

    /** A check without a rhythm would never be asked for. */
    private void wanted(List<Wanted> all) {
        for (int i = 0; i < all.size(); i++) {
            Wanted each = all.get(i);
            String path = "checks.others[" + i + "]";
            boolean counted = each.each() != null || each.of() != null;
            if (counted && (each.each() == null || each.of() == null)) {
                at(path, path + " has each without of, or of without each", "both: each 200 of tons");
            } else if (counted && each.each().signum() <= 0) {
                at(path + ".each", path + ".each is " + each.each().toPlainString(), "more than 0");
            } else if (!counted && each.change() == null) {
                at(path, path + " does not say how often", "each and of, or change");
            }
        }
    }

    private void planning(Job job) {
        for (int i = 0; i < job.planning().haul().size(); i++) {
            Planning.Haul haul = job.planning().haul().get(i);
            String path = "haul[" + i + "]";
            if (job.plant(haul.plant()).isEmpty()) {
                at(path + ".plant", "no plant is named " + haul.plant(), "the name of one under plants");
            }
            if (haul.mix() != null && job.mix(haul.mix()).isEmpty()) {
                at(path + ".mix", "no mix is named " + haul.mix(), "the name of one under mixes");
            }
            if (haul.loss().value().signum() < 0) {
                at(path, "the loss of heat is " + haul.loss().text(), "0 or more");
            }
        }
        for (int i = 0; i < job.planning().work().size(); i++) {
            Planning.Period period = job.planning().work().get(i);
            if (period.to().isBefore(period.from())) {
                at("work[" + i + "].to", "to " + period.to() + " is before " + period.from(), "from or a later day");
            }
        }
        for (int i = 0; i < job.planning().planned().size(); i++) {
            Planning.Stretch stretch = job.planning().planned().get(i);
            if (job.pull(stretch.pull(), stretch.lift()).isEmpty()) {
                at(
                        "planned[" + i + "]",
                        "lift " + stretch.lift() + " has no pull " + stretch.pull(),
                        "the name and lift of one under pulls");
            }
        }
    }

    private static String nearest(String path) {
        String key = path.substring(path.lastIndexOf('.') + 1);
        return keys().stream()
                .filter(known -> known.startsWith(key) || key.startsWith(known) || distance(known, key) <= 2)
                .min(Comparator.comparing(known -> distance(known, key)))
                .orElse("");
    }

    /** Every key that a job file may have, in either system of units. */
    private static Set<String> keys() {
        Set<String> keys = new TreeSet<>();
        keys(Job.class, keys);
        return keys;
    }

    private static void keys(Class<? extends Record> type, Set<String> keys) {
        for (Field field : Fields.of(type)) {
            keys.add(field.key(UnitSystem.US));
            keys.add(field.key(UnitSystem.METRIC));
            Class<?> inner = field.element().orElse(field.type());
            if (Fields.areIn(inner)) {
                keys(inner.asSubclass(Record.class), keys);
            }
        }
    }

    /** How many letters have to be put in, taken out or changed (Levenshtein). */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int corner = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = corner + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                corner = row[j];
                row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }

    private void at(String path, String said, String right) {
        doubts.add(new Doubt(path, said, right));
    }
}
