package rinsebell.db;

import static org.assertj.core.api.Assertions.assertThat;
import static rinsebell.db.StoreSample.with;
import static rinsebell.floor.testing.Saturday.at;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.report.Sounded;
import rinsebell.floor.report.Turned;
import rinsebell.floor.testing.Story;

/** What devices sounded is kept beside everything else, and rests on nothing. */
final class SoundingsTest {

    @TempDir
    Path path;

    private static Sounded sounded(String device, String turn, String at) {
        return new Sounded(
                new Turned(new BellKey(BellKind.RINSE, 7, -9), at(turn)), device, "chair-3", at(at), at("09:00"));
    }

    @Test
    void itComesBackAsItWasTold() throws Exception {
        Sounded late = sounded("a", "10:02", "10:02:01");
        Sounded first = sounded("b", "10:00", "10:00:00.250");
        with(path, store -> store.soundings().add(List.of(late, first)));
        with(
                path,
                store -> assertThat(store.soundings().between(at("09:00"), at("11:00")))
                        .containsExactly(first, late));
    }

    /** From the first instant, which counts, to the last, which does not. */
    @Test
    void ofAStretchOfTime() throws Exception {
        Sounded one = sounded("a", "10:00", "10:00:01");
        with(path, store -> {
            store.soundings().add(List.of(one));
            assertThat(store.soundings().between(at("10:00:01"), at("10:00:01.001")))
                    .containsExactly(one);
            assertThat(store.soundings().between(at("10:00:01.001"), at("11:00")))
                    .isEmpty();
            assertThat(store.soundings().between(at("09:00"), at("10:00:01"))).isEmpty();
        });
    }

    @Test
    void theFirstTimeOfEachDeviceCounts() throws Exception {
        Sounded first = sounded("a", "10:00", "10:00:01");
        Sounded other = sounded("b", "10:00", "10:00:02");
        with(path, store -> {
            assertThat(store.soundings().add(List.of(first))).isEqualTo(1);
            assertThat(store.soundings().add(List.of(sounded("a", "10:00", "10:00:00"), other)))
                    .isEqualTo(1);
            assertThat(store.soundings().add(List.of(sounded("a", "10:00", "10:00:09"))))
                    .isZero();
            assertThat(store.soundings().between(at("09:00"), at("11:00"))).containsExactly(first, other);
        });
    }

    /** A device that heard no answer tells again, and both may wait to be written. */
    @Test
    void whatIsToldTwiceAtOnceIsWrittenOnce() throws Exception {
        Sounded first = sounded("a", "10:00", "10:00:01");
        Sounded other = sounded("b", "10:00", "10:00:02");
        with(path, store -> {
            assertThat(store.soundings().add(List.of(first, other, first))).isEqualTo(2);
            assertThat(store.soundings().between(at("09:00"), at("11:00"))).containsExactly(first, other);
        });
    }

    @Test
    void itIsForgotten() throws Exception {
        Sounded kept = sounded("a", "10:00", "10:00:01");
        Sounded muchLater = new Sounded(
                kept.turn(),
                "c",
                "all",
                kept.at().plus(Soundings.KEPT),
                kept.at().plus(Soundings.KEPT));
        with(path, store -> {
            store.soundings().add(List.of(kept, sounded("b", "10:00", "10:00:00.999")));
            store.soundings().add(List.of(muchLater));
            assertThat(store.soundings().between(at("09:00"), at("11:00"))).containsExactly(kept);
        });
    }

    /** The floor, and the journal that it comes from, are the same with it and without. */
    @Test
    void noFactRestsOnIt() throws Exception {
        Story story = Story.begins();
        story.at("09:30").arrivesFine();
        with(path, store -> {
            Told.save(store, story.facts());
            store.soundings().add(List.of(sounded("a", "10:00", "10:00:01")));
            assertThat(store.load()).isEqualTo(story.facts());
            assertThat(store.lastSeq()).isEqualTo(story.facts().size());
        });
    }
}
