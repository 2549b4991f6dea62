package screedbook.diary;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The files for people as text: JSON with a head of comments, short things in one line, long ones in several. */
final class JobPaper {
    private static final int WIDTH = 100;

    /** What stands at the head of a job file that was written at the desk. */
    static final String JOB_HEAD = """
            // What was agreed before paving, as last written at the desk. It may be edited with any editor;
            // comments do not survive the next edit at the desk, which keeps the old file beside this one.
            // Every accepted revision is kept in job.jsonl.
            """;

    static final String PEOPLE_HEAD = """
            // Phones and addresses of the people on the job, apart from the record, so that they can be deleted.
            // Nothing of this file is ever copied into a diary. Keys are the initials used there.
            """;

    private JobPaper() {}

    /** The bytes of a file for people. */
    static byte[] bytes(String head, Map<String, ?> values) {
        StringBuilder text = new StringBuilder(head);
        broken(values, "", text);
        return text.append('\n').toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void value(Object value, String indent, int before, StringBuilder text) {
        String inline = inline(value);
        boolean fits = indent.length() + before + inline.length() <= WIDTH;
        boolean flat = !(value instanceof Map) && !(value instanceof List<?> list && !list.isEmpty());
        if (fits || flat) {
            text.append(inline);
        } else {
            broken(value, indent, text);
        }
    }

    private static void broken(Object value, String indent, StringBuilder text) {
        String inner = indent + "  ";
        boolean map = value instanceof Map;
        text.append(map ? "{" : "[");
        String separator = "\n";
        if (value instanceof Map<?, ?> object) {
            for (Map.Entry<?, ?> each : object.entrySet()) {
                String key = scalar(each.getKey().toString()) + ": ";
                text.append(separator).append(inner).append(key);
                value(each.getValue(), inner, key.length(), text);
                separator = ",\n";
            }
        } else {
            for (Object each : (List<?>) value) {
                text.append(separator).append(inner);
                value(each, inner, 0, text);
                separator = ",\n";
            }
        }
        text.append('\n').append(indent).append(map ? "}" : "]");
    }

    private static String inline(Object value) {
        List<String> parts = new ArrayList<>();
        if (value instanceof Map<?, ?> map) {
            map.forEach((k, v) -> parts.add(scalar(k.toString()) + ": " + inline(v)));
            return "{" + String.join(", ", parts) + "}";
        }
        if (value instanceof List<?> list) {
            list.forEach(each -> parts.add(inline(each)));
            return "[" + String.join(", ", parts) + "]";
        }
        return scalar(value);
    }

    private static String scalar(Object value) {
        String text = new String(Json.write(java.util.Collections.singletonMap("v", value)), StandardCharsets.UTF_8);
        return text.substring(5, text.length() - 1);
    }

    /** Whether a text in JSON holds a comment that is not the desk's own head. */
    static boolean commented(byte[] utf8) {
        String text = new String(utf8, StandardCharsets.UTF_8);
        String rest = text.startsWith(JOB_HEAD) ? text.substring(JOB_HEAD.length()) : text;
        boolean quoted = false;
        for (int i = 0; i < rest.length(); i++) {
            char c = rest.charAt(i);
            if (quoted && c == '\\') {
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && c == '/') {
                return true;
            }
        }
        return false;
    }
}
