package rinsebell.floor.bell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rinsebell.floor.bell.AlarmState.Happening;

class AlarmStateTest {

    /**
     * Every state against everything that can happen to it. Source: the transitions of ISA-18.2-2016 as public
     * reproductions and the alarm state machine of OPC 10000-9, section 4.8, give them (condition true, acknowledge,
     * condition clears, shelve, and back by itself); ringing again after an interval is that standard's re-alarming. A
     * dot stands for "as it was".
     */
    private static final String TABLE = """
                                    RAISED          SEEN          AGAIN           SHELVED  SHELF_OVER      RETURNED                ACTED
            NORMAL                  UNACKNOWLEDGED  .             .               .        .               .                       .
            UNACKNOWLEDGED          .               ACKNOWLEDGED  .               SHELVED  .               RETURNED_UNACKNOWLEDGED NORMAL
            ACKNOWLEDGED            UNACKNOWLEDGED  .             UNACKNOWLEDGED  SHELVED  .               NORMAL                  NORMAL
            RETURNED_UNACKNOWLEDGED UNACKNOWLEDGED  NORMAL        .               .        .               .                       NORMAL
            SHELVED                 UNACKNOWLEDGED  ACKNOWLEDGED  .               .        UNACKNOWLEDGED  NORMAL                  NORMAL
            """;

    @Test
    void everyTransitionIsThatOfTheStandard() {
        assertThat(found()).isEqualTo(expected());
    }

    private static Map<AlarmState, Map<Happening, AlarmState>> found() {
        var table = new EnumMap<AlarmState, Map<Happening, AlarmState>>(AlarmState.class);
        for (var state : AlarmState.values()) {
            var row = new EnumMap<Happening, AlarmState>(Happening.class);
            Arrays.stream(Happening.values()).forEach(happening -> row.put(happening, state.after(happening)));
            table.put(state, row);
        }
        return table;
    }

    private static Map<AlarmState, Map<Happening, AlarmState>> expected() {
        var lines = TABLE.strip().lines().map(line -> line.strip().split(" +")).toList();
        var table = new EnumMap<AlarmState, Map<Happening, AlarmState>>(AlarmState.class);
        lines.stream().skip(1).forEach(cells -> {
            var state = AlarmState.valueOf(cells[0]);
            var row = new EnumMap<Happening, AlarmState>(Happening.class);
            for (var i = 1; i < cells.length; i++) {
                row.put(
                        Happening.valueOf(lines.get(0)[i - 1]),
                        cells[i].equals(".") ? state : AlarmState.valueOf(cells[i]));
            }
            table.put(state, row);
        });
        return table;
    }
}
