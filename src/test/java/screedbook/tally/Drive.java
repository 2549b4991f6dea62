package screedbook.tally;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import screedbook.entry.Kind;
import screedbook.entry.Ref;
import screedbook.job.Job;

/** A shift being driven and keyed. */
final class Drive {
    /** What lies on every foot of one lane. */
    static final class Lane {
        final List<List<Ref>> paved = feet();
        final List<List<Ref>> tacked = feet();
        final List<List<Ref>> faces = feet();
        final List<String> places = new ArrayList<>();

        static List<List<Ref>> feet() {
            List<List<Ref>> feet = new ArrayList<>();
            for (int i = 0; i < Stakes.FEET; i++) {
                feet.add(new ArrayList<>());
            }
            return feet;
        }

        static void over(List<List<Ref>> feet, int a, int b, Ref by) {
            for (int i = Math.min(a, b); i < Math.max(a, b); i++) {
                feet.get(i).add(by);
            }
        }
    }

    private final Random random;
    private final Stakes stakes;
    final Shift shift;
    final Map<String, Lane> lanes = new TreeMap<>();
    private final Map<String, Integer> at = new HashMap<>();
    private int minute;

    Drive(Random random, Stakes stakes, String id) {
        this.random = random;
        this.stakes = stakes;
        this.shift = new Shift(id, "paver");
    }

    private String clock() {
        minute += 2;
        return String.format("%02d:%02d", 7 + minute / 60, minute % 60);
    }

    private Ref next() {
        return new Ref("paver", shift.lines().size() + 1);
    }

    private Lane lane(String pull, int lift) {
        return lanes.computeIfAbsent(pull + " lift " + lift, n -> new Lane());
    }

    Drive write() {
        for (int i = random.nextInt(5, 40); i > 0; i--) {
            String pull = random.nextBoolean() ? "A" : "B";
            int lift = random.nextInt(1, 3);
            switch (random.nextInt(10)) {
                case 0, 1 -> tack(pull, lift);
                case 2 -> struck(pull, lift);
                case 3 -> amended(pull, lift);
                case 4 -> rejected(pull, lift);
                case 5 -> shared(pull, lift);
                case 6 -> probed(pull, lift);
                default -> convoy(pull, lift);
            }
        }
        return this;
    }

    private boolean down(String pull, int lift) {
        Job.Pull planned = stakes.job.pull(pull, lift).orElseThrow();
        Job.Direction direction =
                planned.direction() == null ? stakes.job.stationing().direction() : planned.direction();
        return direction == Job.Direction.DOWN;
    }

    /** Where the paver goes on: as a rule where it is, now and then somewhere else. */
    private int begins(String lane) {
        int somewhere = random.nextInt(Stakes.FEET + 1);
        return random.nextInt(5) == 0 ? somewhere : at.getOrDefault(lane, somewhere);
    }

    private int onward(int from, String pull, int lift) {
        int by = random.nextInt(0, 90);
        return down(pull, lift) ? Math.max(0, from - by) : Math.min(Stakes.FEET, from + by);
    }

    /** Loads one behind the other; all but the last may leave their end to the next one's start. */
    private void convoy(String pull, int lift) {
        String name = pull + " lift " + lift;
        int from = begins(name);
        int loads = random.nextInt(1, 5);
        for (int i = 1; i <= loads; i++) {
            int to = onward(from, pull, lift);
            Lane.over(lane(pull, lift).paved, from, to, next());
            ticket(pull, lift, from, i == loads || random.nextBoolean() ? to : -1);
            from = to;
        }
        at.put(name, from);
    }

    private void ticket(String pull, int lift, int from, int to, String... more) {
        List<String> pairs =
                new ArrayList<>(List.of("pull", pull, "lift", "" + lift, "from_sta", stakes.figures.get(from)));
        if (to >= 0) {
            pairs.addAll(List.of("to_sta", stakes.figures.get(to)));
        }
        pairs.addAll(List.of(more));
        shift.ticket(clock(), "" + (1000 + shift.lines().size()), "20.00", pairs.toArray(String[]::new));
    }

    private void struck(String pull, int lift) {
        ticket(pull, lift, random.nextInt(Stakes.FEET + 1), random.nextInt(Stakes.FEET + 1));
        shift.strike(shift.lines().size(), "keyed twice");
    }

    /** Keyed with another end and perhaps in another pull, and put right afterwards. */
    private void amended(String pull, int lift) {
        int from = begins(pull + " lift " + lift);
        int to = onward(from, pull, lift);
        Lane.over(lane(pull, lift).paved, from, to, next());
        String keyed = random.nextBoolean() ? pull : pull.equals("A") ? "B" : "A";
        ticket(keyed, lift, from, random.nextInt(Stakes.FEET + 1));
        int n = shift.lines().size();
        shift.amend(n, "to_sta", stakes.figures.get(to), "read again");
        if (!keyed.equals(pull)) {
            shift.amend(n, "pull", pull, "the other pull");
        }
        at.put(pull + " lift " + lift, to);
    }

    /** A load of which a part went into another pull, each with its own stations; now and then the part is struck. */
    private void shared(String pull, int lift) {
        int from = begins(pull + " lift " + lift);
        int to = onward(from, pull, lift);
        Lane.over(lane(pull, lift).paved, from, to, next());
        Ref ticket = next();
        ticket(pull, lift, from, to);
        at.put(pull + " lift " + lift, to);
        String other = pull.equals("A") ? "B" : "A";
        int a = random.nextInt(Stakes.FEET + 1);
        int b = random.nextInt(Stakes.FEET + 1);
        boolean struck = random.nextInt(4) == 0;
        if (!struck) {
            Lane.over(lane(other, lift).paved, a, b, next());
        }
        shift.key(
                Kind.PART,
                null,
                "of",
                ticket.toString(),
                "share_ston",
                "4.00",
                "pull",
                other,
                "lift",
                "" + lift,
                "from_sta",
                stakes.figures.get(a),
                "to_sta",
                stakes.figures.get(b));
        if (struck) {
            shift.strike(shift.lines().size(), "keyed for another load");
        }
    }

    private void probed(String pull, int lift) {
        int foot = random.nextInt(Stakes.FEET + 1);
        Kind kind = random.nextBoolean() ? Kind.DEPTH : Kind.SAMPLE;
        boolean struck = random.nextInt(4) == 0;
        if (!struck) {
            lane(pull, lift).places.add(kind + " " + foot + " " + next());
        }
        shift.key(kind, clock(), "pull", pull, "lift", "" + lift, "place_sta", stakes.figures.get(foot));
        if (struck) {
            shift.strike(shift.lines().size(), "keyed twice");
        }
    }

    private void rejected(String pull, int lift) {
        ticket(pull, lift, random.nextInt(Stakes.FEET + 1), random.nextInt(Stakes.FEET + 1), "fate", "rejected");
    }

    private void tack(String pull, int lift) {
        int from = random.nextInt(Stakes.FEET + 1);
        int to = random.nextInt(Stakes.FEET + 1);
        List<String> pairs = new ArrayList<>(
                List.of("pull", pull, "from_sta", stakes.figures.get(from), "to_sta", stakes.figures.get(to)));
        boolean everyLift = random.nextInt(4) == 0;
        boolean face = random.nextInt(4) == 0;
        boolean struck = random.nextInt(5) == 0;
        if (!everyLift) {
            pairs.addAll(List.of("lift", "" + lift));
        }
        if (face) {
            pairs.addAll(List.of("face", "longitudinal-joint"));
        }
        if (!struck) {
            for (int each = 1; each <= 2; each++) {
                if (everyLift || each == lift) {
                    Lane lane = lane(pull, each);
                    Lane.over(face ? lane.faces : lane.tacked, from, to, next());
                }
            }
        }
        shift.key(Kind.TACK, clock(), pairs.toArray(String[]::new));
        if (struck) {
            shift.strike(shift.lines().size(), "another job's");
        }
    }
}
