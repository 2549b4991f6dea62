package screedbook.desk;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import screedbook.entry.Instrument;
import screedbook.entry.InstrumentCheck;
import screedbook.entry.Joint;
import screedbook.entry.Kind;
import screedbook.entry.Profile;
import screedbook.entry.Word;
import screedbook.job.Job;

/** What forms of the mat, the joints, stops and instruments begin with, and which of their blanks are not asked. */
final class SiteForms {
    /** The blanks of an instrument's check that one way of checking asks for; the others it does not. */
    private static final Map<InstrumentCheck.Against, Set<String>> ASKED = Map.of(
            InstrumentCheck.Against.ICE_BATH, Set.of("shows"),
            InstrumentCheck.Against.BOILING_WATER, Set.of("shows", "known"),
            InstrumentCheck.Against.OTHER_INSTRUMENT, Set.of("shows", "known"),
            InstrumentCheck.Against.STANDARD_COUNT, Set.of("density_count"));

    private static final Set<String> MEASURED = Set.of("shows", "known", "density_count");

    /** Kinds whose figures are read off a thermometer or a camera. */
    private static final Set<Kind> HEAT = Set.of(Kind.TICKET, Kind.SURFACE, Kind.MAT, Kind.PROFILE);

    private SiteForms() {}

    /** The job's instruments that may have been used: no thickness is read off a thermometer, and no heat off a gauge. */
    static List<String> instruments(Job job, Kind kind) {
        return job.instruments().stream()
                .filter(i -> kind == Kind.INSTRUMENT || heat(i) == null || heat(i) == HEAT.contains(kind))
                .map(Instrument::id)
                .toList();
    }

    /** Whether an instrument reads heat, by the words for what it is; null where they do not say. */
    private static Boolean heat(Instrument instrument) {
        String kind = Objects.toString(instrument.kind(), "").toLowerCase(Locale.ROOT);
        if (Stream.of("thermo", "infrared", "camera", "imaging", "probe").anyMatch(kind::contains)) {
            return true;
        }
        return Stream.of("gauge", "density", "straightedge", "ruler", "tape", "weather")
                        .anyMatch(kind::contains)
                ? Boolean.FALSE
                : null;
    }

    /** A stop is where the last load ended; a length that is watched without a break begins where the last one ended. */
    static void carried(Model model, Kind kind, Map<String, String> before, Map<String, String> carried) {
        if (kind == Kind.STOP) {
            String end = Forms.before(model, Kind.TICKET).get("to_sta");
            if (end != null) {
                carried.put("place_sta", end);
            }
        }
        if (kind == Kind.PROFILE) {
            sublot(model, carried);
        }
        boolean on = kind == Kind.JOINT && Joint.Run.LONGITUDINAL.word().equals(before.get("run"))
                || kind == Kind.PROFILE && Profile.Method.CONTINUOUS.word().equals(before.get("method"))
                || kind == Kind.ROLLING;
        if (on && before.containsKey("to_sta")) {
            carried.put("from_sta", before.get("to_sta"));
        }
    }

    /** The sublot that the newest load of the mix lies in; what is laid now lies there as a rule. */
    private static void sublot(Model model, Map<String, String> carried) {
        String mix = Forms.before(model, Kind.TICKET).get("mix");
        model.shift().totals().samples().filling().newest(mix).ifPresent(where -> {
            carried.put("lot", Integer.toString(where.lot()));
            carried.put("sublot", Integer.toString(where.sublot()));
        });
    }

    /** Whether a blank that is asked as a rule says nothing here: the end of a joint across, a count of a thermometer. */
    static boolean idle(Form form, Input input) {
        String name = input.field().name();
        if (form.kind() == Kind.JOINT && (name.equals("to_sta") || name.equals("below"))) {
            return is(form, "run", Joint.Run.TRANSVERSE);
        }
        if (form.kind() == Kind.INSTRUMENT && MEASURED.contains(name)) {
            return ASKED.entrySet().stream()
                    .noneMatch(e -> e.getValue().contains(name) && is(form, "against", e.getKey()));
        }
        return false;
    }

    /** Whether a blank of words reads as one of them: by its number, or by its beginning where no other begins so. */
    private static boolean is(Form form, String blank, Enum<?> word) {
        Object[] all = word.getDeclaringClass().getEnumConstants();
        String text = form.text(blank).strip().toLowerCase(Locale.ROOT).replace(' ', '-');
        if (text.isEmpty()) {
            return false;
        }
        if (text.matches("[1-9]\\d?")) {
            return word.ordinal() == Integer.parseInt(text) - 1;
        }
        List<Word> like = Arrays.stream(all)
                .map(Word.class::cast)
                .filter(w -> w.word().startsWith(text))
                .toList();
        return like.contains(word) && (like.size() == 1 || ((Word) word).word().equals(text));
    }
}
