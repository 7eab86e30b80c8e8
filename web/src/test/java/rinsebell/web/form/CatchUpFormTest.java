package rinsebell.web.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rinsebell.floor.command.CatchUp;
import rinsebell.floor.command.CatchUp.Missed;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.WorkEvent;

class CatchUpFormTest {
    private final PageTable pages = new PageTable();
    private final PressTable table = pages.table;
    private final long visit = table.visit.value();
    private final long on = table.on.value();

    @Test
    void everyHeadIsOnOnePage() {
        assertThat(pages.html("day", "caught-up", 0, Fields.NONE))
                .contains("name=\"strand." + on + "\"")
                .contains("name=\"lastOn." + on + "\"")
                .contains("name=\"scalp." + visit + "\"")
                .contains("name=\"rinsed." + visit + "\"")
                .contains("name=\"left." + visit + "\"")
                .contains("action=\"/day/caught-up\"");
    }

    @Test
    void aTimeIsWhatHappenedAndNothingIsNothing() {
        var read = read("strand." + on, "09:58", "lastOn." + on, "09:57", "rinsed." + visit, "");
        assertThat(PressTable.command(read))
                .isEqualTo(new CatchUp(List.of(
                        new Missed(table.visit, new WorkEvent.LastOn(table.on), Saturday.at("09:57")),
                        new Missed(
                                table.visit,
                                new LookEvent.StrandChecked(table.on, StrandFinding.NOTHING_SAID, null),
                                Saturday.at("09:58")))));
        assertThat(PressTable.command(read())).isEqualTo(new CatchUp(List.of()));
    }

    @Test
    void aLookAtAScalpSaysWhatWasSeenAndWhen() {
        var looked = read("scalp." + visit, "09:58", "finding." + visit, "pink");
        assertThat(PressTable.command(looked))
                .isEqualTo(new CatchUp(List.of(new Missed(
                        table.visit,
                        new LookEvent.ScalpChecked(ScalpCheck.Finding.PINK, null),
                        Saturday.at("09:58")))));
        assertThat(wrong(read("scalp." + visit, "09:58"))).containsExactly("finding." + visit);
        assertThat(wrong(read("finding." + visit, "pink"))).containsExactly("scalp." + visit);
        assertThat(wrong(read("strand." + on, "soon", "left." + visit, "25:00")))
                .containsExactlyInAnyOrder("strand." + on, "left." + visit);
    }

    private Reading read(String... typed) {
        return table.read("day", "caught-up", 0, Fields.of(typed));
    }

    private static List<String> wrong(Reading reading) {
        return ((Reading.Wrong) reading)
                .errors().stream().map(FieldError::field).toList();
    }
}
