package screedbook.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import screedbook.check.Finding;
import screedbook.check.ListLoads;
import screedbook.entry.Field;
import screedbook.entry.Fields;
import screedbook.entry.Kind;
import screedbook.entry.ListColumns;
import screedbook.entry.Shown;
import screedbook.entry.Source;
import screedbook.job.Job;
import screedbook.tally.Figure;
import screedbook.tally.ListPair;
import screedbook.unit.Amount;
import screedbook.unit.Measure;
import screedbook.unit.Unit;

/** What the keys do while a plant's own list is brought in, and with a load that it has and that is not here. */
final class PlantKeys {
    private static final String NOT_HERE = "list-load-not-here";

    private PlantKeys() {}

    /** From the shift: whose list, and where it lies. */
    static Step begin(Model model) {
        if (!model.shift().writable()) {
            return ShiftKeys.lookedAt(model);
        }
        List<String> plants = plants(model);
        String last = Forms.before(model, Kind.TICKET).getOrDefault("plant", plants.isEmpty() ? "" : plants.get(0));
        return Step.of(model.push(new Screen.PlantFile(last, "")));
    }

    private static List<String> plants(Model model) {
        return model.shift().job().plants().stream().map(Job.Plant::name).toList();
    }

    static Step nextPlant(Model model) {
        Screen.PlantFile file = (Screen.PlantFile) model.top();
        List<String> plants = plants(model);
        if (plants.size() < 2) {
            return Step.of(model.say("the job names no other plant"));
        }
        String next = plants.get((plants.indexOf(file.plant()) + 1) % plants.size());
        return Step.of(model.top(new Screen.PlantFile(next, file.typed())));
    }

    static Step read(Model model) {
        Screen.PlantFile file = (Screen.PlantFile) model.top();
        if (file.typed().isBlank()) {
            return Step.of(model.say("type the path of the list; a file dropped on the window types it"));
        }
        return Step.of(
                model.writing(true).say("reading"),
                new Effect.BringList(file.plant(), file.typed().strip(), null));
    }

    /** The disk has read the list, and the job does not say how it is read. */
    static Model asked(Model model, Msg.ListAsked asked) {
        Map<String, String> known = texts(asked.known());
        Map<String, String> chosen = new HashMap<>();
        for (Field field : fields()) {
            String text = known.get(field.name());
            if (text != null && (field.type().isEnum() || asked.heading().contains(text))) {
                chosen.put(field.name(), text);
            }
        }
        return model.writing(false)
                .with(Notice.NONE)
                .push(new Screen.PlantColumns(asked, Map.copyOf(chosen), Walk.FIRST))
                .say("which column is which? it is asked once, and the job keeps it");
    }

    static List<Field> fields() {
        return Fields.of(ListColumns.class);
    }

    /** The columns as texts under the names of their blanks. */
    static Map<String, String> texts(ListColumns columns) {
        Map<String, String> texts = new LinkedHashMap<>();
        Fields.plain(columns).forEach((name, value) -> texts.put(name, value.toString()));
        return texts;
    }

    /** What may stand in a row: a column of the list, or one of the fixed words. */
    static List<String> choices(Screen.PlantColumns screen, Field field) {
        return field.type().isEnum() ? field.words() : screen.asked().heading();
    }

    static Field field(Screen.PlantColumns screen) {
        return fields().get(Math.max(0, screen.walk().at()));
    }

    private static Step with(Model model, String text) {
        Screen.PlantColumns screen = (Screen.PlantColumns) model.top();
        Map<String, String> chosen = new HashMap<>(screen.chosen());
        if (text.isEmpty()) {
            chosen.remove(field(screen).name());
        } else {
            chosen.put(field(screen).name(), text);
        }
        return Step.of(model.top(new Screen.PlantColumns(screen.asked(), Map.copyOf(chosen), screen.walk())));
    }

    /** The choice before or behind the one that stands in the row; none lies before the first. */
    static Step turn(Model model, int by) {
        Screen.PlantColumns screen = (Screen.PlantColumns) model.top();
        List<String> all = new ArrayList<>(List.of(""));
        all.addAll(choices(screen, field(screen)));
        int at = all.indexOf(screen.chosen().getOrDefault(field(screen).name(), ""));
        return with(model, all.get(Math.floorMod(at + by, all.size())));
    }

    static Step numbered(Model model, Key key) {
        Screen.PlantColumns screen = (Screen.PlantColumns) model.top();
        List<String> all = choices(screen, field(screen));
        int at = Integer.parseInt(key.text()) - 1;
        return at < 0 || at >= all.size()
                ? Step.of(model.say("there is no choice of this number here"))
                : with(model, all.get(at));
    }

    static Step none(Model model) {
        return with(model, "");
    }

    /** What is offered for a row; empty where nothing is, or where it stands there already. */
    static Optional<String> offered(Screen.PlantColumns screen, Field field) {
        return Optional.ofNullable(texts(screen.asked().guess()).get(field.name()))
                .filter(text -> !text.equals(screen.chosen().get(field.name())));
    }

    static Step offer(Model model) {
        Screen.PlantColumns screen = (Screen.PlantColumns) model.top();
        Optional<String> offered = offered(screen, field(screen));
        return offered.isEmpty()
                ? Step.of(down(model).say("nothing was offered there"))
                : Step.of(down(with(model, offered.get()).model()));
    }

    private static Model down(Model model) {
        Screen.PlantColumns screen = (Screen.PlantColumns) model.top();
        Walk walk = screen.walk().by(1, fields().size());
        return model.top(new Screen.PlantColumns(screen.asked(), screen.chosen(), walk));
    }

    /** On to the next row; from the last one the list is brought in. */
    static Step enter(Model model) {
        Screen.PlantColumns screen = (Screen.PlantColumns) model.top();
        return screen.walk().at() < fields().size() - 1 ? Step.of(down(model)) : bring(model);
    }

    static Step bring(Model model) {
        Screen.PlantColumns screen = (Screen.PlantColumns) model.top();
        ListColumns columns =
                Fields.build(ListColumns.class, new HashMap<>(screen.chosen())).value();
        if (!columns.enough()) {
            return Step.of(model.alert("number, net and what the list weighs in have to be settled first"));
        }
        return Step.of(
                model.writing(true).say("writing"),
                new Effect.BringList(screen.asked().plant(), screen.asked().path(), columns));
    }

    /** What was asked for the list is taken off the desk. */
    static Model done(Model model) {
        Model back = model;
        while (back.top() instanceof Screen.PlantFile || back.top() instanceof Screen.PlantColumns) {
            back = back.pop();
        }
        return back;
    }

    /** From the findings: a ticket filled from the list, to be looked at and written by hand. */
    static Step ticket(Model model, Finding finding) {
        if (!finding.rule().equals(NOT_HERE)) {
            return Step.of(model.say("this finding names no load of a plant's list that is not here"));
        }
        Optional<ListLoads.Load> load = ListLoads.notHere(
                        model.shift().day(), model.shift().job(), finding)
                .stream()
                .findFirst();
        if (load.isEmpty()) {
            return Step.of(model.say("the list cannot be read any more"));
        }
        Step step = ShiftKeys.begin(model.with(Source.NOTES), Kind.TICKET, given(model, load.get()));
        if (!(step.model().top() instanceof Screen.Keying keying)) {
            return step;
        }
        Form form = keying.form();
        Form begun = new Form(form.kind(), Source.NOTES, null, form.inputs(), form.at(), form.before(), Map.of());
        return Step.of(step.model()
                .with(model.source())
                .top(new Screen.Keying(begun))
                .say("from " + Shown.text(load.get().from()) + "; look at it, Ctrl-S writes it"));
    }

    private static Map<String, String> given(Model model, ListLoads.Load load) {
        Map<String, String> given = new HashMap<>();
        given.put("number", load.row().number());
        given.put("remark", "from " + load.from());
        List.of("from_sta", "received_by", "kept").forEach(unseen -> given.put(unseen, ""));
        put(given, "plant", load.plant());
        put(given, "truck", truck(model, load.row().truck()));
        put(given, "mix", load.mix());
        if (load.row().hour() != null) {
            given.put("loaded", load.row().hour().toString());
        }
        if (load.row().net() != null) {
            Unit unit = Measure.LOAD.unit(model.shift().job().system());
            Amount net = load.row().net().unit() == unit
                    ? load.row().net()
                    : load.row().net().to(unit).shown(2);
            given.put("net_" + unit.suffix(), net.value().toPlainString());
        }
        return given;
    }

    private static void put(Map<String, String> given, String name, String text) {
        if (text != null) {
            given.put(name, text);
        }
    }

    /** The job's own name for a truck that the list calls otherwise. */
    private static String truck(Model model, String theirs) {
        return theirs == null
                ? null
                : model.shift().job().trucks().stream()
                        .map(Job.Truck::number)
                        .filter(ours -> ListPair.sameTruck(theirs, ours))
                        .findFirst()
                        .orElse(theirs);
    }

    /** How the newest list lies beside the record, for the echo. */
    static String echo(Shift shift, String plant) {
        return shift.totals()
                .figure("plant-list." + (plant == null ? "plant not noted" : plant))
                .map(Figure::text)
                .orElse("");
    }
}
