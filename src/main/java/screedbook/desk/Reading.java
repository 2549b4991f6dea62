package screedbook.desk;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import screedbook.entry.Aside;
import screedbook.entry.Entry;
import screedbook.entry.Field;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.Moment;
import screedbook.entry.Opening;
import screedbook.entry.Ref;
import screedbook.entry.Source;
import screedbook.entry.Standing;
import screedbook.entry.Station;
import screedbook.entry.Ticket;
import screedbook.entry.Typed;
import screedbook.entry.Word;
import screedbook.job.Road;
import screedbook.unit.Amount;
import screedbook.unit.Unit;
import screedbook.unit.UnitSystem;

/**
 * A form read as values: what every blank says, what cannot be read, and what may have been meant.
 *
 * @param plain values under the keys of a line
 * @param shown the reading of a blank where it is not what was typed: {@code 12+50} for 1250
 * @param troubles sentences for blanks that cannot be read, by name
 * @param could other readings, by name
 */
record Reading(
        Form form,
        Map<String, Object> plain,
        OffsetDateTime time,
        Map<String, String> shown,
        Map<String, String> troubles,
        Map<String, List<String>> could) {

    /** The blank for the time of kinds that have no time of their own. */
    static final String TIME = "time";

    static Reading of(Form form, Model model) {
        return new Reader(form, model).read();
    }

    boolean readable() {
        return troubles.isEmpty();
    }

    /** The entry as far as it is typed. */
    Entry entry() {
        return (Entry) Fields.build(form.kind().type(), plain).value();
    }

    Aside aside() {
        return Fields.build(Aside.class, plain).value();
    }

    /** Reads one form. */
    private static final class Reader {
        private final Form form;
        private final Model model;
        private final UnitSystem system;
        private final Map<String, Object> plain = new LinkedHashMap<>();
        private final Map<String, String> shown = new LinkedHashMap<>();
        private final Map<String, String> troubles = new LinkedHashMap<>();
        private final Map<String, List<String>> could = new LinkedHashMap<>();
        private OffsetDateTime time;

        Reader(Form form, Model model) {
            this.form = form;
            this.model = model;
            this.system = model.shift().job().system();
        }

        Reading read() {
            form.inputs().forEach(this::input);
            settleTime();
            return new Reading(form, plain, time, shown, troubles, could);
        }

        /** A ticket's time is its discharge, else its arrival; live and untouched it is now. */
        private void settleTime() {
            if (form.kind() == Kind.TICKET && form.amends() == null) {
                if (form.source() == Source.LIVE
                        && !plain.containsKey("discharged")
                        && form.text("discharged").isEmpty()) {
                    plain.put("discharged", Moment.text(model.now()));
                }
                Object happened = plain.getOrDefault("discharged", plain.get("arrived"));
                time = happened == null ? null : OffsetDateTime.parse((String) happened);
            } else if (time == null
                    && form.source() == Source.LIVE
                    && form.amends() == null
                    && form.text(TIME).isEmpty()) {
                time = model.now();
            }
        }

        private void input(Input input) {
            String text = input.text().strip();
            if (text.equals(".") && form.before().containsKey(input.name())) {
                text = form.before().get(input.name());
                shown.put(input.name(), text);
            }
            if (!text.isEmpty()) {
                value(input, text);
            }
        }

        private void value(Input input, String text) {
            Field field = input.field();
            Class<?> type = field.type();
            if (type == Amount.class || type == BigDecimal.class) {
                number(field, text);
            } else if (type == Integer.class) {
                put(field, Typed.whole(text), v -> BigDecimal.valueOf(v), Object::toString, text);
            } else if (type == Station.class) {
                put(
                        field,
                        place(Typed.station(
                                text, model.shift().job().stationing().base())),
                        Station::text,
                        Station::text,
                        text);
            } else if (type == OffsetDateTime.class) {
                time(field, text);
            } else if (type.isEnum()) {
                word(field, text);
            } else if (type == List.class) {
                List<String> parts = List.of(text.split("\\s*,\\s*"));
                plain.put(field.name(), parts);
            } else if (type == Ref.class) {
                ref(field, text);
            } else {
                picked(field, text);
            }
        }

        /** Where an equation leaves two places or none for the figures, that is said before they are kept. */
        private Typed<Station> place(Typed<Station> typed) {
            if (typed.value() == null) {
                return typed;
            }
            return Road.of(model.shift().job())
                    .doubt(typed.value())
                    .map(said -> new Typed<Station>(null, said, typed.could()))
                    .orElse(typed);
        }

        private void number(Field field, String text) {
            Typed<BigDecimal> typed =
                    step(field, text).or(() -> otherUnit(field, text)).orElseGet(() -> Typed.decimal(text));
            put(field, typed, v -> v, BigDecimal::toPlainString, text);
        }

        /** A number with a unit behind it: the blank's own may stand there, of another nothing is converted unseen. */
        private Optional<Typed<BigDecimal>> otherUnit(Field field, String text) {
            java.util.regex.Matcher with = java.util.regex.Pattern.compile("(-?\\d[\\d.]*) ?(°?[A-Za-z][A-Za-z0-9/²]*)")
                    .matcher(text);
            if (field.measure().isEmpty() || !with.matches()) {
                return Optional.empty();
            }
            String unit = field.measure().get().unit(system).symbol();
            String typed = with.group(2).replace("°", "");
            if (Arrays.stream(Unit.values())
                    .noneMatch(u -> typed.equalsIgnoreCase(u.symbol().replace("°", "")))) {
                return Optional.empty();
            }
            return Optional.of(
                    typed.equalsIgnoreCase(unit.replace("°", ""))
                            ? Typed.decimal(with.group(1))
                            : new Typed<>(
                                    null, "\"" + text + "\" is not in " + unit + ", key the number alone", List.of()));
        }

        /** {@code 3-} is three less than last time, {@code 3+} three more. */
        private Optional<Typed<BigDecimal>> step(Field field, String text) {
            String last = form.before().get(field.key(system));
            if (last == null || !text.matches("\\d{1,6}(\\.\\d{1,3})?[-+]")) {
                return Optional.empty();
            }
            BigDecimal by = new BigDecimal(text.substring(0, text.length() - 1));
            Typed<BigDecimal> from = Typed.decimal(last);
            if (from.value() == null) {
                return Optional.empty();
            }
            BigDecimal now = text.endsWith("-")
                    ? from.value().subtract(by)
                    : from.value().add(by);
            return Optional.of(Typed.decimal(now.toPlainString()));
        }

        private void time(Field field, String text) {
            Typed<OffsetDateTime> typed = Typed.time(text, clock());
            put(field, typed, Moment::text, Moment::clock, text);
            if (typed.value() == null && typed.could().size() == 2) {
                String hour = Moment.clock(typed.could().get(0));
                could.put(field.key(system), List.of(hour + "a", hour + "b"));
            }
            if (field.name().equals(TIME)) {
                plain.remove(TIME);
                time = typed.value();
            }
        }

        /** A time means the shift's; after the close the clock has run on, so the last hour that may be meant is 18 h in. */
        private Typed.Clock clock() {
            OffsetDateTime opening = model.shift()
                    .day()
                    .opening()
                    .map(Standing<Opening>::line)
                    .map(l -> l.keyed())
                    .orElse(model.now());
            OffsetDateTime begun = model.shift()
                    .day()
                    .opening()
                    .map(Standing::time)
                    .filter(t -> t.isBefore(opening))
                    .orElse(opening);
            OffsetDateTime end = begun.plusHours(18);
            OffsetDateTime latest = model.now().isBefore(end) ? model.now() : end;
            return new Typed.Clock(begun, latest, model.shift().job().zone());
        }

        private void word(Field field, String text) {
            List<Object> constants = List.of(field.type().getEnumConstants());
            Typed<Object> typed = Typed.word(text, constants, c -> ((Word) c).word());
            put(field, typed, c -> ((Word) c).word(), c -> ((Word) c).word(), text);
        }

        private void ref(Field field, String text) {
            String line = text.matches("\\d{1,9}") ? model.shift().page().book() + "/" + text : text;
            String whole = ticket(text).map(Ref::toString).orElse(line);
            try {
                Ref ref = Ref.of(whole);
                plain.put(field.name(), ref.toString());
                shown.put(field.name(), ref.toString());
            } catch (IllegalArgumentException e) {
                troubles.put(field.name(), "\"" + text + "\" names no entry; right would be 17 or paver/17");
            }
        }

        /** Where the entry is a ticket, the number that stands on the paper names it before the number of a line does. */
        private Optional<Ref> ticket(String text) {
            if (form.kind() != Kind.PART && form.kind() != Kind.WASTE) {
                return Optional.empty();
            }
            List<Standing<Ticket>> tickets = model.shift().day().standing(Ticket.class);
            return numbered(tickets, text::equalsIgnoreCase)
                    .or(() -> numbered(tickets, n -> text.matches("\\d{3,}") && n.endsWith(text)));
        }

        private static Optional<Ref> numbered(List<Standing<Ticket>> tickets, Predicate<String> named) {
            List<Ref> found = tickets.stream()
                    .filter(t -> Optional.ofNullable(t.entry().paper().number())
                            .filter(named)
                            .isPresent())
                    .map(Standing::ref)
                    .toList();
            return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
        }

        /** A list of the job is a help, never a limit: what is not in it stands as typed. */
        private void picked(Field field, String text) {
            String found = Picks.match(model, form.kind(), field, text).orElse(text);
            plain.put(field.name(), found);
            if (!found.equals(text)) {
                shown.put(field.name(), found);
            }
        }

        private <T> void put(
                Field field, Typed<T> typed, Function<T, Object> as, Function<T, String> say, String text) {
            if (!typed.read()) {
                troubles.put(field.key(system), typed.trouble());
            } else if (typed.value() != null) {
                plain.put(field.key(system), as.apply(typed.value()));
                String said = say.apply(typed.value());
                if (!said.equals(text.toLowerCase(Locale.ROOT))) {
                    shown.put(field.key(system), said);
                }
            }
            List<String> others = new ArrayList<>();
            typed.could().forEach(c -> others.add(say.apply(c)));
            if (!others.isEmpty()) {
                could.put(field.key(system), others);
            }
        }
    }
}
