package rinsebell.floor.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import rinsebell.floor.Floor;
import rinsebell.floor.bell.Audience;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Stage;

/** What rings on a floor. */
public final class Ringing {
    private Ringing() {}

    public static List<Bell> bells(Floor floor, BellKind kind) {
        return floor.bells().stream().filter(bell -> bell.kind() == kind).toList();
    }

    /** The one bell of a kind. */
    public static Bell bell(Floor floor, BellKind kind) {
        var found = bells(floor, kind);
        assertThat(found).as("bells of the kind %s", kind).hasSize(1);
        return found.get(0);
    }

    public static void assertQuiet(Floor floor, BellKind kind) {
        assertThat(bells(floor, kind)).as("bells of the kind %s", kind).isEmpty();
    }

    /**
     * The one bell of a kind has these stages, and each begins exactly then: it is not in it a millisecond before, and
     * is in it at its instant and a millisecond later.
     *
     * @param stages such as "10:15 DUE LOW STYLIST"
     */
    public static void assertRings(Floor floor, BellKind kind, String... stages) {
        assertStages(bell(floor, kind), stages);
    }

    public static void assertStages(Bell bell, String... stages) {
        var expected = Stream.of(stages).map(Ringing::stage).toList();
        assertThat(bell.stages()).as("stages of %s", bell.key()).isEqualTo(expected);
        for (var stage : expected) {
            assertThat(bell.at(stage.from().minusMillis(1)))
                    .isEqualTo(inForce(expected, stage.from().minusMillis(1)));
            assertThat(bell.at(stage.from())).isEqualTo(inForce(expected, stage.from()));
            assertThat(bell.at(stage.from().plusMillis(1))).isEqualTo(inForce(expected, stage.from()));
        }
    }

    private static java.util.Optional<Stage> inForce(List<Stage> stages, Instant at) {
        return stages.stream().filter(stage -> !stage.from().isAfter(at)).reduce((first, second) -> second);
    }

    private static Stage stage(String told) {
        var words = told.split(" ");
        return new Stage(
                Saturday.at(words[0]),
                Stage.Step.valueOf(words[1]),
                Priority.valueOf(words[2]),
                Audience.valueOf(words[3]));
    }
}
