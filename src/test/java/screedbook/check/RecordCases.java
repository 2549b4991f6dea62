package screedbook.check;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import screedbook.entry.Amend;
import screedbook.entry.Ref;
import screedbook.entry.SetAside;

/** The cases of the rules about the record itself and who wrote it. */
final class RecordCases {
    private RecordCases() {}

    static void add() {
        RuleCases.shifts(
                "no-opening",
                "",
                Sort.MISSING,
                "book paver has no opening",
                Shift.unopened().at("19:40", "note text=a"),
                Shift.night());
        RuleCases.rule(
                "late-line",
                "12, 93",
                Sort.LOOK_AGAIN,
                "note keyed 22:11, the book was closed 22:01",
                s -> s.at("22:00", "closing agreed=yes").at("22:10", "note text=a"),
                s -> s.at("21:50", "note text=a").at("22:00", "closing agreed=yes"));
        RuleCases.rule(
                "late-line",
                "93",
                Sort.LOOK_AGAIN,
                "amend keyed 22:02",
                s -> s.load("21:00", "1001", "")
                        .at("22:00", "closing agreed=yes")
                        .with(amend(4, "net_ston", "22.13")),
                s -> s.load("21:00", "1001", "")
                        .with(amend(4, "net_ston", "22.13"))
                        .at("22:00", "closing agreed=yes"));
        RuleCases.shifts(
                "line-not-read",
                "90",
                Sort.LOOK_AGAIN,
                "line 4 of book paver cannot be read: no JSON",
                Shift.night().unreadable("no JSON"),
                Shift.night());
        RuleCases.shifts(
                "line-not-read",
                "98",
                Sort.LOOK_AGAIN,
                "line 4 of book paver is of a kind that this program does not know",
                Shift.night().foreign(),
                Shift.night());
        RuleCases.rule(
                "set-aside",
                "88",
                Sort.LOOK_AGAIN,
                "37 bytes behind the last whole line were set aside in a.torn-120",
                s -> s.with(new SetAside("a.torn-120", new BigDecimal("120"), new BigDecimal("37"), null)),
                s -> s);
        RuleCases.rule(
                "adrift",
                "92",
                Sort.LOOK_AGAIN,
                "strike",
                s -> s.at("21:00", "strike of=paver/40 reason=twice"),
                s -> s.at("21:00", "strike of=paver/2 reason=twice"));
        RuleCases.rule(
                "adrift",
                "92",
                Sort.LOOK_AGAIN,
                "amend",
                s -> s.with(amend(40, "net_ston", "22.13")),
                s -> s.load("21:00", "1001", "")
                        .with(amend(4, "net_ston", "22.13"))
                        .with(amend(5, "reason", "slip")));
        RuleCases.rule(
                "amendment-not-read",
                "92",
                Sort.LOOK_AGAIN,
                "amended loaded is \"9 pm\"",
                s -> s.load("21:00", "1001", "").with(amend(4, "loaded", "9 pm")),
                s -> s.load("21:00", "1001", "").with(amend(4, "silo", "3")));
        RuleCases.rule(
                "other-units",
                "65",
                Sort.LOOK_AGAIN,
                "net 20.24 t",
                s -> s.load("21:00", "1001", "net_ston= net_t=20.24"),
                s -> s.load("21:00", "1001", ""));
        RuleCases.rule(
                "writer-changed",
                "19",
                Sort.MISSING,
                "written by TB, the line before by RK",
                s -> s.by("TB", "21:00", "note text=a"),
                s -> s.at("20:59", "hand-over next_who=TB text=pull~B~to~15+00").by("TB", "21:00", "note text=a"));
        RuleCases.rule(
                "reviewed-by-writer",
                "97",
                Sort.LOOK_AGAIN,
                "reviewed by RK, who wrote lines of this shift",
                s -> s.at("22:00", "closing agreed=yes").at("22:10", "review says=seen"),
                s -> s.at("22:00", "closing agreed=yes").by("SV", "22:10", "review says=seen"));
        RuleCases.shifts(
                "instrument-due",
                "",
                Sort.OUTSIDE,
                "instrument IR1 used on 2026-06-03, its check was due 2026-06-02",
                Shift.night(instrument("2026-06-02")).load("21:00", "1001", "instrument=IR1"),
                Shift.night(instrument("2026-06-03")).load("21:00", "1001", "instrument=IR1"));
    }

    private static Map<String, Object> instrument(String due) {
        return Map.of("instruments", List.of(Shift.map("id=IR1 kind=infrared due=" + due)));
    }

    private static Amend amend(int of, String key, String value) {
        Map<String, Object> set = new LinkedHashMap<>();
        set.put(key, value.matches("[0-9.]+") && key.contains("_") ? new BigDecimal(value) : value);
        return new Amend(new Ref("paver", of), set, "misread");
    }
}
