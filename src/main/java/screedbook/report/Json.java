package screedbook.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import screedbook.check.Finding;
import screedbook.entry.Answer;
import screedbook.entry.Moment;
import screedbook.entry.Ref;
import screedbook.entry.Shown;
import screedbook.entry.Standing;
import screedbook.unit.Amount;

/** JSON being written in order: every character of a text that has no shape of its own as an escape, numbers as plain decimals, what is absent left out. */
final class Json {
    private static final JsonFactory FACTORY = ((JsonFactoryBuilder) JsonFactory.builder())
            .characterEscapes(new Escapes())
            .build();

    /** Something that writes into a generator. */
    interface Part {
        void write(Json json) throws IOException;
    }

    private final JsonGenerator out;

    private Json(JsonGenerator out) {
        this.out = out;
    }

    /** One object, indented, with a line feed behind it. */
    static String object(Part part) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = FACTORY.createGenerator(text)) {
            out.useDefaultPrettyPrinter();
            out.writeStartObject();
            part.write(new Json(out));
            out.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().replace(System.lineSeparator(), "\n") + "\n";
    }

    /** One object in one line, with a line feed behind it. */
    static String line(Part part) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = FACTORY.createGenerator(text)) {
            out.writeStartObject();
            part.write(new Json(out));
            out.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text + "\n";
    }

    void text(String key, String text) throws IOException {
        if (text != null) {
            out.writeStringField(key, text);
        }
    }

    void number(String key, int number) throws IOException {
        out.writeNumberField(key, number);
    }

    void number(String key, BigDecimal number) throws IOException {
        if (number != null) {
            out.writeFieldName(key);
            out.writeNumber(number.toPlainString());
        }
    }

    void yes(String key, boolean yes) throws IOException {
        out.writeBooleanField(key, yes);
    }

    void time(String key, OffsetDateTime time) throws IOException {
        text(key, time == null ? null : Moment.text(time));
    }

    /** An amount under a key that ends with its unit. */
    void amount(String key, Amount amount) throws IOException {
        if (amount != null) {
            number(key + "_" + amount.unit().suffix(), amount.value());
        }
    }

    void refs(String key, List<Ref> refs) throws IOException {
        texts(key, refs.stream().map(Ref::toString).toList());
    }

    void texts(String key, List<String> texts) throws IOException {
        out.writeArrayFieldStart(key);
        for (String each : texts) {
            out.writeString(each);
        }
        out.writeEndArray();
    }

    <T> void list(String key, List<T> of, Each<T> each) throws IOException {
        out.writeArrayFieldStart(key);
        for (T one : of) {
            out.writeStartObject();
            each.write(one);
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    /** Writes one element of a list. */
    interface Each<T> {
        void write(T one) throws IOException;
    }

    void object(String key, Part part) throws IOException {
        out.writeObjectFieldStart(key);
        part.write(this);
        out.writeEndObject();
    }

    void findings(List<Finding> findings) throws IOException {
        list("findings", findings, f -> {
            text("rule", f.rule());
            text("sort", f.sort().text());
            refs("entries", f.of());
            text("seen", f.seen());
            text("limit", f.limit());
            text("clause", f.clause());
            text("inside", f.inside());
            text("working", f.working());
            list("answers", f.answers(), this::answer);
        });
    }

    private void answer(Standing<Answer> answer) throws IOException {
        text("entry", answer.ref().toString());
        text("who", answer.line().who());
        time("time", answer.time());
        text("text", answer.entry().text());
        text("decided_by", answer.entry().decidedBy());
        text("told_to", answer.entry().toldTo());
    }

    /** What {@link Shown} makes visible elsewhere is written as an escape here, so that the text comes back as it was. */
    private static final class Escapes extends CharacterEscapes {
        private static final long serialVersionUID = 1;
        private static final int[] ASCII = ascii();

        private static int[] ascii() {
            int[] escapes = standardAsciiEscapesForJSON();
            escapes[0x7F] = ESCAPE_STANDARD;
            return escapes;
        }

        @Override
        public int[] getEscapeCodesForAscii() {
            return ASCII;
        }

        @Override
        public SerializableString getEscapeSequence(int c) {
            return Shown.hidden(c) ? new SerializedString(String.format("\\u%04x", c)) : null;
        }
    }
}
