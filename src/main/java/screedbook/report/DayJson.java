package screedbook.report;

import java.io.IOException;
import java.util.Optional;
import screedbook.check.Cautions;
import screedbook.entry.Damage;
import screedbook.entry.Seal;
import screedbook.spec.SpecSheet;
import screedbook.tally.Due;
import screedbook.tally.Figure;
import screedbook.tally.Load;
import screedbook.tally.Reckoned;
import screedbook.tally.Section;
import screedbook.tally.Share;
import screedbook.tally.Shot;
import screedbook.tally.Working;

/** A shift's page as JSON: figures with their workings, loads, shots, checks and findings; its form is in {@code schema/day.json}. */
public final class DayJson {
    private final DayPaper paper;
    private final Json json;

    private DayJson(DayPaper paper, Json json) {
        this.paper = paper;
        this.json = json;
    }

    /** One object; units stand in the keys. */
    public static String text(DayPaper paper) {
        return Json.object(json -> new DayJson(paper, json).write());
    }

    private void write() throws IOException {
        json.text("form", "screedbook day 1");
        json.text("job", paper.jobId());
        json.text("name", paper.jobName());
        json.text("shift", paper.day().shift().toString());
        json.number("page_revision", paper.revision());
        if (!paper.whole()) {
            json.yes("without_remarks", true);
        }
        json.yes("closed", paper.day().closed());
        if (paper.agreed().isPresent()) {
            json.number("job_revision", paper.agreed().get().revision());
            json.text("job_sha256", paper.agreed().get().sha256());
        }
        Optional<SpecSheet> sheet = paper.sheet();
        json.text("sheet", sheet.map(SpecSheet::name).orElse(null));
        json.text("sheet_sha256", sheet.map(SpecSheet::sha256).orElse(null));
        json.list("seals", paper.seals(), this::seal);
        json.list("damages", paper.damages(), this::damage);
        json.list("sections", paper.totals().sections(), this::section);
        json.list("loads", paper.totals().loads(), this::load);
        json.list("shots", paper.totals().shots(), this::shot);
        if (paper.job().isPresent()) {
            new RoadJson(json, paper.job().get()).write(paper.totals().road());
        }
        json.list("checks", paper.totals().dues(), this::due);
        json.list("left_out", paper.totals().left(), l -> {
            json.text("entry", l.of().toString());
            json.text("why", l.why());
        });
        json.findings(paper.findings());
        json.text("governs", Cautions.GOVERNS);
    }

    private void damage(Damage damage) throws IOException {
        json.text("file", damage.file());
        if (damage.row() > 0) {
            json.number("line", damage.row());
        }
        json.text("said", damage.said());
    }

    private void seal(Seal seal) throws IOException {
        json.text("book", seal.book());
        json.text("sha256", seal.sha256());
        json.number("lines", seal.lines());
    }

    private void section(Section section) throws IOException {
        json.text("section", section.id());
        json.text("heading", section.heading());
        json.list("figures", section.figures(), this::figure);
    }

    private void figure(Figure figure) throws IOException {
        json.text("figure", figure.id());
        json.text("label", figure.label());
        json.text("shown", figure.text());
        json.number(figure.unit().isEmpty() ? "value" : "value_" + figure.unit(), figure.value());
        json.object("working", j -> working(figure.working()));
    }

    private void working(Working working) throws IOException {
        json.text("formula", working.formula());
        json.texts("steps", working.put());
        json.refs("entries", working.entries());
        json.text("source", working.source());
    }

    private void load(Load load) throws IOException {
        json.text("entry", load.ticket().ref().toString());
        json.text("ticket", load.ticket().entry().paper().number());
        json.time("time", load.ticket().time());
        json.text("mix", load.ticket().entry().paper().mix());
        json.text("fate", load.fate().word());
        json.amount("received", load.received());
        json.amount("placed", load.placed());
        json.amount("pay", load.pay());
        json.list("shares", load.shares(), this::share);
        json.text("left", load.left().isEmpty() ? null : load.left());
    }

    private void share(Share share) throws IOException {
        json.text("entry", share.of().toString());
        json.text("pull", share.pull());
        if (share.lift() != null) {
            json.number("lift", share.lift());
        }
        json.text("from_sta", share.from() == null ? null : share.from().text());
        json.text("to_sta", share.to() == null ? null : share.to().text());
        json.text("place", share.elsewhere());
        json.amount("weight", share.weight());
    }

    private void shot(Shot shot) throws IOException {
        json.text("entry", shot.tack().ref().toString());
        json.text("of", shot.name());
        json.time("time", shot.tack().time());
        json.number("factor", shot.factor());
        reckoned("volume", shot.volume());
        reckoned("volume_at_base", shot.at60());
        reckoned("area", shot.area());
        reckoned("applied", shot.applied());
        json.yes("applied_corrected", shot.corrected());
        reckoned("residual", shot.residual());
        json.texts("steps", shot.put());
    }

    private void reckoned(String key, Reckoned reckoned) throws IOException {
        json.amount(key, reckoned.amount());
        json.text(key + "_why_not", reckoned.known() ? null : reckoned.why());
    }

    private void due(Due due) throws IOException {
        json.text("check", due.id());
        json.text("what", due.what());
        json.text("next", due.when());
        json.yes("now", due.now());
        json.number("done", due.done());
        json.number("asked", due.asked());
    }
}
