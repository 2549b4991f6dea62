package screedbook.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import screedbook.unit.Amount;
import screedbook.unit.UnitSystem;

/** The list of kinds and the keys of their lines; the words that keys must not be are the record's own rule. */
class KindTest {
    private static final List<String> HEADER = List.of(
            "n", "kind", "job", "shift", "book", "time", "keyed", "who", "source", "seen_by", "photos", "remark",
            "prev");
    private static final List<String> RESERVED = List.of("at", "by", "from", "to", "end", "order");

    @Test
    void theOrderedListHoldsEveryKindThatMayBeWrittenAndNoOther() {
        List<Class<?>> listed = new ArrayList<>();
        Stream.of(Kind.values()).forEach(kind -> listed.add(kind.type()));
        assertThat(listed).doesNotHaveDuplicates();
        assertThat(new LinkedHashSet<>(listed)).isEqualTo(Set.of(Entry.class.getPermittedSubclasses()));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void aKindIsFoundByItsWordAndItsRecordKnowsItsKind(Kind kind) {
        assertThat(Kind.ofWord(kind.word())).contains(kind);
        assertThat(((Entry) Fields.build(kind.type(), Map.of()).value()).kind()).isEqualTo(kind);
        assertThat(kind.word()).matches("[a-z]+(-[a-z]+)?");
    }

    @Test
    void aWordThatNoKindHasIsNotFound() {
        assertThat(Kind.ofWord("Ticket")).isEmpty();
        assertThat(Kind.ofWord("moon")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void everyComponentIsABlankOrAGroupOfBlanks(Kind kind) {
        assertThat(bare(kind.type())).isEmpty();
        assertThat(kind.fields()).isNotEmpty().allSatisfy(f -> {
            assertThat(f.label()).isNotBlank();
            assertThat(f.width()).isPositive();
        });
    }

    private static List<String> bare(Class<?> type) {
        List<String> bare = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
            if (!component.isAnnotationPresent(Blank.class)) {
                bare.addAll(
                        component.getType().isRecord()
                                ? bare(component.getType())
                                : List.of(type.getSimpleName() + "." + component.getName()));
            }
        }
        return bare;
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void keysAreUniqueInALineAndNoneIsAKeyOfItsHeader(Kind kind) {
        for (UnitSystem system : UnitSystem.values()) {
            List<String> keys = new ArrayList<>(HEADER);
            kind.fields().forEach(f -> keys.add(f.key(system)));
            assertThat(keys).doesNotHaveDuplicates();
            assertThat(keys).doesNotContainAnyElementsOf(RESERVED);
            assertThat(keys).allMatch(k -> k.matches("[a-z][a-z0-9]*(_[a-zA-Z0-9]+)*"));
        }
    }

    @Test
    void noTwoKeysOfTheRecordDifferByCaseOnly() {
        Set<String> all = new LinkedHashSet<>(HEADER);
        for (Kind kind : Kind.values()) {
            for (UnitSystem system : UnitSystem.values()) {
                kind.fields().forEach(f -> all.add(f.key(system)));
            }
        }
        Map<String, String> folded = new HashMap<>();
        all.forEach(key -> assertThat(folded.put(key.toLowerCase(Locale.ROOT), key))
                .as(key)
                .isNull());
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void oneUnitHasOneKeyWhicheverSystemTheJobHas(Kind kind) {
        kind.fields().forEach(f -> {
            String us = f.key(UnitSystem.US);
            String metric = f.key(UnitSystem.METRIC);
            boolean sameUnit = f.measure()
                    .map(m -> m.unit(UnitSystem.US) == m.unit(UnitSystem.METRIC))
                    .orElse(true);
            assertThat(us.equals(metric)).as(f.name()).isEqualTo(sameUnit);
            f.measure()
                    .ifPresent(m -> assertThat(us)
                            .isEqualTo(f.name() + "_" + m.unit(UnitSystem.US).suffix()));
        });
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void onlyAFigureWithAUnitIsAnAmount(Kind kind) {
        kind.fields()
                .forEach(f -> assertThat(f.measure().isPresent()).as(f.name()).isEqualTo(f.type() == Amount.class));
    }
}
