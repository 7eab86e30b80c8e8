package rinsebell.demo.kill;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Five kills -9 of the real program in the middle of presses over HTTP. A run that failed is tried again with
 * {@code -Drinsebell.seed=}number; as many as there is time for are made by {@link Kills}.
 */
@Tag("long")
class KillsIT {
    private static final int KILLS = 5;
    private static final Path JAR =
            Path.of("main", "target", "rinsebell-demo.jar").toAbsolutePath();

    @Test
    void whatWasAnsweredIsThereAfterwards() throws Exception {
        var seed = Long.getLong("rinsebell.seed", new Random().nextLong());
        System.out.println("kills -9, seed " + seed);
        var tally = Kills.run(JAR, KILLS, seed);
        assertThat(tally.kills()).isEqualTo(KILLS);
        assertThat(tally.answered()).as("enough was pressed to prove something").isGreaterThan(5L * KILLS);
        assertThat(tally.queued()).as("some of them late").isPositive();
    }
}
