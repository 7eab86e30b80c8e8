package rinsebell.web.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.floor.Event;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Story;
import rinsebell.web.Words;
import rinsebell.web.board.Moment;
import rinsebell.web.form.TrailTelling.Recorded;
import rinsebell.web.form.TrailTelling.Step;

/** Whatever can be recorded can be told. */
class TrailTellingTest {

    static Stream<Class<?>> everyKindOfFact() {
        return kinds(Event.class);
    }

    private static Stream<Class<?>> kinds(Class<?> kind) {
        return kind.isSealed()
                ? Stream.of(kind.getPermittedSubclasses()).flatMap(TrailTellingTest::kinds)
                : Stream.of(kind);
    }

    @ParameterizedTest
    @MethodSource
    void everyKindOfFact(Class<?> kind) {
        assertThat(Words.british().say(FactRows.key(kind))).isNotBlank();
    }

    @Test
    void aCorrectionSaysWhichFactItPutsRight() {
        var story = Story.begins();
        var head = story.at("09:00").arrivesFine();
        long arrived = head.id().value();
        story.at("09:10");
        story.setsBack(arrived, "08:50");
        var facts = story.facts().stream()
                .map(fact -> new Recorded(fact, "press", "device-1"))
                .toList();
        var moment = new Moment(story.floor(), id -> "", List.of(), Saturday.TEN, Words.british());
        var table = new TrailTelling(moment, code -> code).csv(facts, List.<Step>of());
        assertThat(table).contains("put to another time", "fact " + arrived + ", to 08:50");
    }
}
