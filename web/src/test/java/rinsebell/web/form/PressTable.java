package rinsebell.web.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Floor;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.client.ClientBook;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Zone;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Scoop;
import rinsebell.floor.testing.Shelf;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.VisitId;
import rinsebell.floor.visit.WorkEvent;

/** A small salon at ten o'clock with one head on which a bowl is, and the forms read against it. */
final class PressTable {
    private static final Presses PRESSES = Presses.all(List.of());

    final Story story = Story.stocked();
    final VisitId visit;
    final BowlId bowl;
    final ApplicationId on;
    final ClientBook clients = new FewClients();

    PressTable() {
        story.at("09:50");
        visit = story.arrivesFine().id();
        bowl = story.mixes(Scoop.g(60, Shelf.MILD_CREAM), Scoop.g(60, Shelf.DEV20));
        story.at("09:55");
        var put = new WorkEvent.PutOn(bowl, Area.REGROWTH, Zone.ON_SCALP, Cover.OPEN, null);
        on = new ApplicationId(story.tells(rinsebell.floor.Stream.visit(visit), put));
    }

    Floor floor() {
        return story.floor();
    }

    Reading read(String resource, String press, long id, Fields fields) {
        var target = new Target(floor(), text -> "text " + text.seq(), Saturday.TEN, id, clients);
        return PRESSES.find(resource, press).orElseThrow().read(target, fields);
    }

    Reading onVisit(String press, String... namesAndValues) {
        return read("visits", press, visit.value(), Fields.of(namesAndValues));
    }

    static Command command(Reading reading) {
        assertThat(reading).isInstanceOf(Reading.Read.class);
        return ((Reading.Read) reading).command();
    }

    static Asked asked(Reading reading) {
        assertThat(reading).isInstanceOf(Reading.Read.class);
        return ((Reading.Read) reading).asked();
    }

    /** Every fault by its field. */
    static Map<String, Fault> faults(Reading reading) {
        assertThat(reading).isInstanceOf(Reading.Wrong.class);
        return ((Reading.Wrong) reading)
                .errors().stream()
                        .collect(java.util.stream.Collectors.toMap(
                                FieldError::field, FieldError::code, (first, second) -> first));
    }
}
