package screedbook.entry;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import screedbook.unit.Amount;

/** An entry told in one line, as lists on screen and page have it: {@code ticket 48218  13+53 to 15+05  T118  22.31 T}. */
public final class Told {
    private final List<String> words = new ArrayList<>();

    private Told() {}

    /** The kind's name as people say it: {@code no work}, {@code hand-over}. */
    public static String kind(Kind kind) {
        return switch (kind) {
            case NO_WORK -> "no work";
            case NUMBER -> "ticket number";
            case SET_ASIDE -> "set aside";
            case DRAW -> "random place";
            case PLANT_TOTAL -> "plant's total";
            case PLANT_LIST -> "plant's list";
            case INSTRUMENT -> "instrument check";
            case ROLLING -> "roller";
            case PROFILE -> "thermal profile";
            case YIELD -> "yield check";
            case MAT -> "mat temperature";
            case GAUGE -> "density";
            default -> kind.word();
        };
    }

    /** The entry in one line, safe to look at. */
    public static String line(Entry entry) {
        Told told = new Told();
        told.add(kind(entry.kind()));
        if (entry instanceof Ticket t) {
            told.ticket(t);
        } else if (entry instanceof Tack t) {
            told.tack(t);
        } else if (entry instanceof Weather w) {
            told.weather(w);
        } else if (entry instanceof Surface s) {
            told.add(s.place()).add(s.surface()).add(s.light()).add(pullLift(s.pull(), s.lift()));
        } else if (entry instanceof Opening o) {
            told.add(o.program()).add(o.sheet());
        } else if (entry instanceof Note n) {
            told.add(n.tags() == null ? null : String.join(", ", n.tags())).add(n.text());
        } else if (entry instanceof Draw d) {
            told.draw(d);
        } else if (entry instanceof Closing c) {
            told.add(
                    c.theirs().agreed() == null
                            ? null
                            : "agreed: " + c.theirs().agreed().word());
        } else if (!told.site(entry)) {
            told.others((Record) entry);
        }
        return Shown.text(String.join("  ", told.words));
    }

    private void ticket(Ticket t) {
        words.set(
                0,
                "ticket "
                        + (t.paper().number() == null
                                ? "without number"
                                : t.paper().number()));
        add(run(t.spot().from(), t.spot().to()))
                .add(t.spot().place())
                .add(t.paper().truck());
        add(t.weights().net()).add(t.heat().paver());
        if (t.heat().paver() == null && t.heat().plant() != null) {
            add("plant " + t.heat().plant().text());
        }
        if (t.fate().fate() != null && t.fate().fate() != Ticket.End.PLACED) {
            add(t.fate().fate().word());
        }
        if (t.fate().returned() != null) {
            add("not placed " + t.fate().returned().text());
        }
    }

    private void tack(Tack t) {
        add(t.product().product()).add(run(t.target().from(), t.target().to()));
        add(
                t.target().face() == null
                        ? word(t.target().surface())
                        : word(t.target().face()));
        Tack.Gauge g = t.gauge();
        add(span(g.before(), g.after()))
                .add(span(g.depthBefore(), g.depthAfter()))
                .add(g.used())
                .add(g.material());
    }

    private void draw(Draw d) {
        Draw.Reached r = d.reached();
        add(d.step()).add(d.mix());
        add(numbered("lot ", d.lot())).add(numbered("sublot ", r.sublot())).add(numbered("draw ", r.nth()));
        add(r.into()).add(r.of());
        add(r.pull() == null ? null : pullLift(r.pull(), r.lift())).add(r.place());
        add(r.fromLeft() == null ? null : r.fromLeft().text() + " from left edge");
    }

    private static String numbered(String what, Integer number) {
        return number == null ? null : what + number;
    }

    private void weather(Weather w) {
        add(w.air());
        add(w.humidity());
        if (w.wind() != null) {
            add("wind " + w.wind().value().toPlainString()
                    + (w.windFrom() == null ? "" : " " + w.windFrom().name()));
        }
        add(w.sky());
        if (w.precipitation() != null && w.precipitation() != Weather.Precipitation.NONE) {
            add(w.precipitation());
        }
        if (w.road() != null) {
            add("road " + w.road().word());
        }
        if (w.engineerCall() != null && w.engineerCall() != Weather.Call.NONE_RECORDED) {
            add("engineer: " + w.engineerCall().word());
        }
    }

    private boolean site(Entry entry) {
        List<String> parts = new ArrayList<>(SiteTold.parts(entry));
        parts.addAll(SampleTold.parts(entry));
        parts.addAll(PlantTold.parts(entry));
        words.addAll(parts);
        return !parts.isEmpty();
    }

    private void others(Record record) {
        for (Field field : Fields.of(record.getClass())) {
            Object value = field.get(record);
            if (value != null && !field.name().contains("sha256") && !hash(value)) {
                add(value(value));
            }
        }
    }

    /** A hash tells a reader nothing in a list. */
    private static boolean hash(Object value) {
        return value instanceof String text && text.matches("[0-9a-f]{64}");
    }

    /** {@code 12+03 to 13+53}; one end where only one is known; null where none is. */
    public static String run(Station from, Station to) {
        if (from == null && to == null) {
            return null;
        }
        return (from == null ? "?" : from.text()) + " to " + (to == null ? "?" : to.text());
    }

    private static String span(Amount before, Amount after) {
        if (before == null && after == null) {
            return null;
        }
        Amount unit = before == null ? after : before;
        return (before == null ? "?" : before.value().toPlainString()) + " to "
                + (after == null ? "?" : after.value().toPlainString()) + " "
                + unit.unit().symbol();
    }

    private static String pullLift(String pull, Integer lift) {
        return pull == null ? null : "pull " + pull + (lift == null ? "" : " lift " + lift);
    }

    private static String word(Word word) {
        return word == null ? null : word.word();
    }

    private Told add(Object value) {
        String text = value == null ? "" : value(value);
        if (!text.isEmpty()) {
            words.add(text);
        }
        return this;
    }

    /** One value as people read it, not yet made safe to look at. */
    public static String value(Object value) {
        if (value instanceof Amount a) {
            return a.text();
        }
        if (value instanceof Word w) {
            return w.word();
        }
        if (value instanceof OffsetDateTime t) {
            return Moment.clock(t);
        }
        if (value instanceof BigDecimal d) {
            return d.toPlainString();
        }
        if (value instanceof List<?> list) {
            return String.join(", ", list.stream().map(Told::value).toList());
        }
        if (value instanceof Map<?, ?> map) {
            List<String> pairs = new ArrayList<>();
            map.forEach((k, v) -> pairs.add(k + " " + (v == null ? "taken away" : value(v))));
            return String.join(", ", pairs);
        }
        if (value instanceof Record r && !(value instanceof Station) && !(value instanceof Ref)) {
            List<String> parts = new ArrayList<>();
            Fields.plain(r).values().forEach(v -> parts.add(value(v)));
            return String.join(" ", parts);
        }
        return value.toString();
    }
}
