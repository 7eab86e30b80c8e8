package rinsebell.demo.basins;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

/** Some days that are always the same. That every plan can be carried out is checked as each is made. */
class SaturdaysTest {
    /** Of full days with 8 to 17 chairs. */
    private static final List<Long> SEEDS = List.of(5L, 6L, 8L);

    @ParameterizedTest
    @EnumSource(mode = Mode.EXCLUDE, names = "SOLVER")
    void nothingImpossibleHappens(Ways way) {
        for (var band : List.of(Band.QUIET, Band.FULL)) {
            var day = Day.of(band, 8);
            assertThat(new Watched(day, World.live(day, way.way())).impossible())
                    .as("%s, %s", band, way)
                    .isEmpty();
        }
    }

    @Test
    void theBasinsAreInUseAsMuchAsWasWanted() {
        for (var band : Band.values()) {
            for (var seed : SEEDS) {
                var day = Day.of(band, seed);
                var stays = day.heads().stream().mapToLong(Head::stay).sum();
                assertThat(stays / (double) (day.basins() * Day.OPEN)).isBetween(band.from(), band.until() + 0.04);
                assertThat(day.chairs()).isBetween(8, 40);
            }
        }
    }

    @Test
    void theSameSeedsMakeTheSameTable() {
        var ways = List.of(Ways.FIRST_COME, Ways.EARLIEST, Ways.AS_SOON, Ways.PLAN, Ways.ASKED);
        var table = Table.of(Band.QUIET, ways, List.of(4L));
        assertThat(table).hasToString(Table.of(Band.QUIET, ways, List.of(4L)).toString());
        assertThat(table.toString()).contains("the plan loses 0 of 1 days");
    }

    /** What the README says of many days. */
    @Test
    void atFullUseThePlanAtLeastHalvesThoseWhoAreLate() {
        var table = Table.of(Band.FULL, List.of(Ways.FIRST_COME, Ways.EARLIEST, Ways.PLAN), SEEDS);
        assertThat(2 * table.late(Ways.PLAN))
                .isPositive()
                .isLessThanOrEqualTo(table.late(Ways.FIRST_COME))
                .isLessThanOrEqualTo(table.late(Ways.EARLIEST));
    }

    @Test
    void whatCanNotBeDoneEndsTheDay() {
        var day = Day.of(Band.QUIET, 1);
        Way tooSoon = sight -> Optional.of(new Way.Step(1, 1));
        assertThatThrownBy(() -> World.live(day, tooSoon)).hasMessageContaining("can't be done");
    }
}
