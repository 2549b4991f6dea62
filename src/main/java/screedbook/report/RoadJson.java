package screedbook.report;

import java.io.IOException;
import screedbook.job.Job;
import screedbook.job.Road;
import screedbook.tally.Cover;
import screedbook.tally.Roadwork;
import screedbook.tally.Stretch;
import screedbook.unit.Amount;
import screedbook.unit.Measure;

/** What was done where on the road, as JSON: stretches by pull and lift with the entries that tell of them. */
final class RoadJson {
    private final Json json;
    private final Job job;
    private final Road road;

    RoadJson(Json json, Job job) {
        this.json = json;
        this.job = job;
        this.road = Road.of(job);
    }

    void write(Roadwork work) throws IOException {
        json.list("road", work.lanes().stream().filter(Roadwork.Lane::now).toList(), this::lane);
    }

    private void lane(Roadwork.Lane lane) throws IOException {
        json.text("pull", lane.pull());
        if (lane.lift() != null) {
            json.number("lift", lane.lift());
        }
        cover("tacked", lane.tacked());
        cover("faces_tacked", lane.faces());
        cover("paved", lane.paved());
        cover("paved_twice", lane.paved().times(2));
        cover("paved_without_tack", lane.bare());
        json.list("places", lane.places(), this::place);
    }

    private void cover(String key, Cover cover) throws IOException {
        json.list(key, cover.joined(), this::stretch);
    }

    private void stretch(Stretch on) throws IOException {
        json.text("from_sta", road.station(on.low()).text());
        json.text("to_sta", road.station(on.high()).text());
        json.amount("length", new Amount(on.length(), Measure.WIDTH.unit(job.system())));
        json.refs("entries", on.by());
    }

    private void place(Roadwork.Place place) throws IOException {
        json.text("entry", place.on().by().get(0).toString());
        json.text("kind", place.kind().word());
        json.text("what", place.what().word());
        json.text("from_sta", road.station(place.on().low()).text());
        if (place.on().length().signum() > 0) {
            json.text("to_sta", road.station(place.on().high()).text());
        }
    }
}
