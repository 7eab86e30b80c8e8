package rinsebell.app.desk;

import static rinsebell.floor.testing.Saturday.TEN;
import static rinsebell.floor.testing.Scoop.g;
import static rinsebell.floor.testing.Shelf.DEV20;
import static rinsebell.floor.testing.Shelf.MILD_CREAM;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Floor;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.command.Mix;
import rinsebell.floor.command.OnDay;
import rinsebell.floor.command.Report;
import rinsebell.floor.command.Weighed;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.testing.Head;
import rinsebell.floor.testing.Story;
import rinsebell.floor.visit.Complaint.Grade;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.VisitId;

/** A desk with a ledger whose disk a test fills, holds or breaks, and one client in the chair. */
abstract class DeskAtWork {

    static final Grade BURNING = Grade.BURNING;

    final LedgerByHand ledger = new LedgerByHand();
    final List<Snapshot> published = new CopyOnWriteArrayList<>();
    final AtomicInteger stops = new AtomicInteger();
    final Story story = Story.stocked();
    final Head head = story.arrivesFine();
    final Weighed cream =
            new Weighed(story.product(MILD_CREAM), g(60, MILD_CREAM).grams());
    final Weighed developer = new Weighed(story.product(DEV20), g(60, DEV20).grams());
    final FloorDesk desk = desk(story.floor());

    FloorDesk desk(Floor floor) {
        PressMemory memory = new PressMemory(id -> Optional.empty());
        return new FloorDesk(
                Snapshot.of(floor, Map.of()),
                new FloorDesk.Tools(
                        ledger,
                        memory,
                        (reason, on, texts) -> reason.code().name(),
                        facts -> {},
                        published::add,
                        stops::incrementAndGet));
    }

    @AfterEach
    void closeDesk() {
        ledger.letGo();
        desk.close();
    }

    static List<Bell> burning(Snapshot snapshot) {
        return snapshot.bells().stream()
                .filter(bell -> bell.kind() == BellKind.BURNING)
                .toList();
    }

    Command complains(Grade grade) {
        return Report.of(head.id(), new LookEvent.Complained(grade));
    }

    Command mix() {
        return new Mix(List.of(cream, developer), BowlReason.FIRST, head.id());
    }

    static Command moved(VisitId visit, Place place) {
        return Report.of(visit, new StayEvent.Moved(place));
    }

    static Command breakOf(StaffId staff) {
        return new OnDay(new DayEvent.BreakBegan(staff));
    }

    Press press(String id, Command command) {
        return new Press(id, "tablet", "hash of " + id, command, Asked.at(TEN));
    }

    static Answer got(CompletableFuture<Answer> answer) throws Exception {
        return answer.get(10, TimeUnit.SECONDS);
    }
}
