package screedbook.entry;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The kinds of entry in the order in which they are listed, with the record that holds each. */
public enum Kind implements Word {
    OPENING(Opening.class),
    NO_WORK(NoWork.class),
    WEATHER(Weather.class),
    SURFACE(Surface.class),
    TICKET(Ticket.class),
    PART(Part.class),
    WASTE(Waste.class),
    TACK(Tack.class),
    REFILL(Refill.class),
    NOTE(Note.class),
    ANSWER(Answer.class),
    NUMBER(Number.class),
    STRIKE(Strike.class),
    AMEND(Amend.class),
    CLOCK(Clock.class),
    PLAN(Plan.class),
    HAND_OVER(HandOver.class),
    SET_ASIDE(SetAside.class),
    CLOSING(Closing.class),
    REVIEW(Review.class),
    DRAW(Draw.class),
    DEPTH(Depth.class),
    YIELD(Yield.class),
    MAT(Mat.class),
    PROFILE(Profile.class),
    ROLLING(Rolling.class),
    JOINT(Joint.class),
    STRAIGHTEDGE(Straightedge.class),
    AREA(Area.class),
    GAUGE(Gauge.class),
    CORE(Core.class),
    SAMPLE(Sample.class),
    CUSTODY(Custody.class),
    RESULT(Result.class),
    STOP(Stop.class),
    RESTART(Restart.class),
    TRUCK(Truck.class),
    PLANT_TOTAL(PlantTotal.class),
    PLANT_LIST(PlantList.class),
    CREW(Crew.class),
    INSTRUMENT(InstrumentCheck.class),
    SAFETY(Safety.class);

    private static final Map<String, Kind> BY_WORD =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Kind::word, kind -> kind));

    private final Class<? extends Record> type;
    private final String word;

    Kind(Class<? extends Record> type) {
        this.type = type;
        this.word = Word.super.word();
    }

    @Override
    public String word() {
        return word;
    }

    /** The record that holds an entry of this kind; it implements {@link Entry}. */
    public Class<? extends Record> type() {
        return type;
    }

    /** The blanks of this kind in order. */
    public List<Field> fields() {
        return Fields.of(type);
    }

    /** The kind that a record class holds. */
    static Kind of(Class<?> type) {
        for (Kind kind : values()) {
            if (kind.type == type) {
                return kind;
            }
        }
        throw new IllegalArgumentException(type.getName() + " is no kind of entry");
    }

    /** The kind of a word in a line, if this program knows it. */
    public static Optional<Kind> ofWord(String word) {
        return word == null ? Optional.empty() : Optional.ofNullable(BY_WORD.get(word));
    }
}
