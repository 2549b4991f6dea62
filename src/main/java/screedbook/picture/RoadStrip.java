package screedbook.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import screedbook.entry.Shown;
import screedbook.entry.Station;
import screedbook.job.Job;
import screedbook.job.Road;
import screedbook.tally.Roadwork;
import screedbook.tally.Roadwork.Lane;
import screedbook.unit.UnitSystem;

/**
 * The road by pull and station: what was tacked and paved, and over it letters where something was looked at. One column
 * is so many feet or metres; higher stations lie at the right.
 */
public final class RoadStrip {
    /** What of a column has to be so before its sign is drawn: less is not seen at this scale. */
    private static final BigDecimal SEEN = BigDecimal.TEN;

    /** Letters of a pull's name that are drawn. */
    private static final int NAME = 16;

    private static final int TICK = 10;
    private static final int MOST = 5000;
    private static final int[] US = {100, 200};
    private static final int[] METRIC = {25, 50};

    private final Job job;
    private final Road road;
    private final int step;
    private final long first;
    private final int columns;
    private final int margin;
    private final List<Row> rows = new ArrayList<>();
    private final Set<String> grounds = new LinkedHashSet<>();
    private final Set<String> letters = new LinkedHashSet<>();

    /** One line over the stations. */
    private record Row(String label, char[] cells) {}

    private RoadStrip(Roadwork work, Job job, List<LotEnd> ends, int step) {
        this.job = job;
        this.road = Road.of(job);
        List<BigDecimal> places = places(work);
        this.step = wide(places, step);
        this.first = places.isEmpty() ? 0 : index(places.get(0));
        this.columns = places.isEmpty() ? 0 : (int) (last(places.get(places.size() - 1)) - first);
        this.margin = 1
                + work.lanes().stream()
                        .filter(RoadStrip::drawn)
                        .mapToInt(l -> label(l).length())
                        .max()
                        .orElse(0);
        for (Lane lane : work.lanes()) {
            if (drawn(lane)) {
                draw(lane, ends.stream().filter(e -> e.of(lane)).toList());
            }
        }
    }

    /** The strip in which a column is 100 ft, or 25 m. */
    public static RoadStrip of(Roadwork work, Job job, List<LotEnd> ends) {
        return new RoadStrip(work, job, ends, steps(job)[0]);
    }

    /** The strip in the finest scale in which it is not wider than so many columns; the coarsest where none is. */
    public static RoadStrip fitted(Roadwork work, Job job, List<LotEnd> ends, int width) {
        RoadStrip fine = of(work, job, ends);
        return fine.margin + fine.columns <= width ? fine : new RoadStrip(work, job, ends, steps(job)[1]);
    }

    /** One station among the others that nobody can mean does not make the strip longer than can be gone along. */
    private static int wide(List<BigDecimal> places, int step) {
        int wide = step;
        while (!places.isEmpty()
                && places.get(places.size() - 1)
                                .subtract(places.get(0))
                                .divide(BigDecimal.valueOf(wide), 0, RoundingMode.CEILING)
                                .compareTo(BigDecimal.valueOf(MOST))
                        > 0) {
            wide *= 10;
        }
        return wide;
    }

    private static int[] steps(Job job) {
        return job.system() == UnitSystem.US ? US : METRIC;
    }

    private static boolean drawn(Lane lane) {
        return !lane.paved().empty() || !lane.tacked().empty() || !lane.places().isEmpty();
    }

    /** Where this shift did something, lowest first; earlier shifts are drawn as far as these reach. */
    private static List<BigDecimal> places(Roadwork work) {
        return work.lanes().stream()
                .flatMap(l -> Stream.of(
                                l.paved().stretches().stream(),
                                l.tacked().stretches().stream(),
                                l.places().stream().map(Roadwork.Place::on))
                        .flatMap(s -> s))
                .flatMap(s -> Stream.of(s.low(), s.high()))
                .sorted()
                .toList();
    }

    /** The column in which a distance lies, counted from the zero of the road. */
    private long index(BigDecimal at) {
        return at.divide(BigDecimal.valueOf(step), 0, RoundingMode.FLOOR).longValueExact();
    }

    /** The column behind the last one that a distance needs. */
    private long last(BigDecimal at) {
        boolean whole = BigDecimal.valueOf(index(at) * step).compareTo(at) == 0;
        return Math.max(index(at) + (whole ? 0 : 1), first + 1);
    }

    private BigDecimal from(int column) {
        return BigDecimal.valueOf((first + column) * step);
    }

    /** {@code A lift 2 >}: the sign says to which side it is paved. */
    private String label(Lane lane) {
        Job.Direction direction = job.pull(lane.pull(), lane.lift())
                .map(Job.Pull::direction)
                .orElse(job.stationing().direction());
        String name = Shown.text(lane.name());
        return name.substring(0, Math.min(name.length(), NAME)) + (direction == Job.Direction.DOWN ? " <" : " >");
    }

    private void draw(Lane lane, List<LotEnd> ends) {
        char[] ground = GroundSigns.line(lane, first, columns, step, share());
        rows.add(new Row(label(lane), ground));
        Letters under = new Letters(columns);
        ends.forEach(end -> under.put(column(end.at()), '|', "a sublot ends"));
        for (Roadwork.Place each : lane.places()) {
            under.put(column(each.on().low()), each);
            if (column(each.on().high()) != column(each.on().low())) {
                under.put(column(each.on().high()), each);
            }
        }
        under.rows().forEach(row -> rows.add(new Row("", row)));
        grounds.addAll(GroundSigns.told(ground));
        letters.addAll(under.told());
    }

    private BigDecimal share() {
        return BigDecimal.valueOf(step).divide(SEEN);
    }

    private int column(BigDecimal at) {
        return (int) Math.max(0, Math.min(columns - 1L, index(at) - first));
    }

    public boolean empty() {
        return rows.isEmpty();
    }

    /** Columns of road, the margin not counted. */
    public int columns() {
        return columns;
    }

    /** Lines over the scale. */
    public int height() {
        return rows.size();
    }

    /** Columns that the names of the pulls take at the left. */
    public int margin() {
        return margin;
    }

    /** What the signs that are drawn mean, and how long a column is, in lines of a width; no phrase is broken. */
    public List<String> legend(int width) {
        List<String> phrases = new ArrayList<>(grounds);
        phrases.addAll(letters);
        phrases.add("a column is " + step + (job.system() == UnitSystem.US ? " ft" : " m"));
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String each : phrases) {
            if (!line.isEmpty() && line.length() + 3 + each.length() > width) {
                lines.add(line);
                line = "";
            }
            line = line.isEmpty() ? each : line + "   " + each;
        }
        lines.add(line);
        return List.copyOf(lines);
    }

    /**
     * A window on the strip, the stations under it.
     *
     * @param column the first column of road in it
     * @param row the first line in it
     * @param width columns of the window, the margin counted
     * @param height lines of the window, the two of the scale counted
     */
    public List<String> window(int column, int row, int width, int height) {
        int wide = Math.min(columns - column, width - margin);
        if (wide < 1 || height < 3 || rows.isEmpty()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        for (Row each : rows.subList(Math.min(row, rows.size()), Math.min(rows.size(), row + height - 2))) {
            lines.add(padded(each.label()) + new String(each.cells(), column, wide));
        }
        lines.add(padded("") + ticks(column, wide));
        lines.add(stations(column, wide, width));
        return List.copyOf(lines);
    }

    /** {@code 12+00 to 83+00 of 12+00 to 112+00}: what a window shows of the road. */
    public String span(int column, int width) {
        int wide = Math.max(0, Math.min(columns - column, width - margin));
        String all = station(0) + " to " + station(columns);
        return wide >= columns ? all : station(column) + " to " + station(column + wide) + " of " + all;
    }

    private String station(int column) {
        return road.station(from(column)).text();
    }

    private String padded(String label) {
        return label + " ".repeat(margin - label.length());
    }

    private boolean tick(int column) {
        return Math.floorMod(first + column, TICK) == 0;
    }

    /** A plus at every tenth column, a caret where the figures jump. */
    private String ticks(int column, int wide) {
        char[] line = new char[wide];
        Arrays.fill(line, '-');
        IntStream.range(0, wide).filter(i -> tick(column + i)).forEach(i -> line[i] = '+');
        for (Job.Equation each : job.stationing().equations()) {
            long at = index(road.along(each.back())) - first - column;
            if (at >= 0 && at < wide) {
                line[(int) at] = '^';
            }
        }
        return new String(line);
    }

    /** The stations of the ticks, under their plus, as many as there is room for; the first column's where none is. */
    private String stations(int column, int wide, int width) {
        char[] line = new char[Math.max(width, margin + wide)];
        Arrays.fill(line, ' ');
        int free = 0;
        boolean any = false;
        for (int i = 0; i < wide; i++) {
            if (tick(column + i)) {
                int end = put(line, free, margin + i, width, column + i);
                any |= end > free;
                free = end;
            }
        }
        if (!any) {
            put(line, 0, margin, width, column);
        }
        return new String(line).stripTrailing();
    }

    private int put(char[] line, int free, int at, int width, int column) {
        String text = station(column);
        int from = Math.max(0, at - text.indexOf('+'));
        if (from < free || from + text.length() > width) {
            return free;
        }
        text.getChars(0, text.length(), line, from);
        return from + text.length() + 1;
    }

    /** The whole strip in windows of a width one after the other, those left out in which nothing is. */
    public List<List<String>> pieces(int width) {
        List<List<String>> pieces = new ArrayList<>();
        int wide = width - margin;
        for (int column = 0; wide > 0 && column < columns; column += wide) {
            int from = column;
            int to = Math.min(columns, column + wide);
            boolean any = rows.stream().anyMatch(r -> IntStream.range(from, to).anyMatch(i -> r.cells()[i] != ' '));
            if (any) {
                pieces.add(window(column, 0, width, rows.size() + 2));
            }
        }
        return List.copyOf(pieces);
    }

    /** The column in which a station lies; the nearest one of the strip. */
    public int column(Station station) {
        return column(road.along(station));
    }
}
