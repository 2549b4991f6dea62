package screedbook.diary;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import screedbook.entry.Person;
import screedbook.entry.ShiftId;
import screedbook.job.Job;
import screedbook.job.Planning;

/**
 * What the first screen shows of a job's folder, looked at quickly while the whole is still to be read: nothing is checked.
 *
 * @param job its name, contract, place, zone, limit sheet and people; whatever else it says is absent here
 */
public record FirstLook(Job job, Map<ShiftId, Glance> shifts) {
    private static final Set<String> KEYS = Set.of("name", "contract", "place", "zone", "sheet", "people");

    /** The head of a job file; empty when any of it is not as it should be, which the whole reading then tells. */
    static Optional<Job> head(byte[] bytes) {
        try {
            Map<String, Object> values = Json.some(JobText.withoutMark(bytes), KEYS);
            return values.get("name") instanceof String name
                            && values.get("zone") instanceof String zone
                            && values.get("sheet") instanceof String sheet
                    ? Optional.of(job(name, zone, sheet, values))
                    : Optional.empty();
        } catch (Json.NotJson | DateTimeException odd) {
            return Optional.empty();
        }
    }

    private static Job job(String name, String zone, String sheet, Map<String, Object> values) {
        Job.Place place =
                values.get("place") instanceof Map<?, ?> map ? new Job.Place(text(map, "name"), null, null) : null;
        List<Person> people = values.get("people") instanceof List<?> list ? people(list) : List.of();
        return new Job(
                null,
                name,
                text(values, "contract"),
                null,
                null,
                place,
                ZoneId.of(zone),
                null,
                null,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                null,
                null,
                null,
                null,
                sheet,
                people,
                List.of(),
                Planning.NONE);
    }

    private static String text(Map<?, ?> values, String key) {
        return values.get(key) instanceof String text ? text : null;
    }

    private static List<Person> people(List<?> values) {
        List<Person> people = new ArrayList<>();
        for (Object each : values) {
            if (each instanceof Map<?, ?> person && person.get("initials") instanceof String initials) {
                people.add(new Person(initials, text(person, "name"), text(person, "role"), null));
            }
        }
        return people;
    }
}
