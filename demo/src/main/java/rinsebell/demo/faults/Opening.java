package rinsebell.demo.faults;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rinsebell.app.shelf.InventedProducts;
import rinsebell.db.codec.PressLines;
import rinsebell.db.journal.JournalPress;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Decision;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Ledger;
import rinsebell.floor.command.Arrange;
import rinsebell.floor.salon.House;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.SalonEvent;

/** What was written down before a day with faults begins: how the salon was set up, and who is there by then. */
final class Opening {
    /** A zone with summer time. */
    static final ZoneId ZONE = ZoneId.of("Europe/Berlin");

    static final int CHAIRS = 12;
    static final int BASINS = 3;

    private static final Instant SET_UP = Instant.parse("2026-01-05T09:00:00Z");
    private static final List<Role> STAFF =
            List.of(Role.MANAGER, Role.STYLIST, Role.STYLIST, Role.STYLIST, Role.ASSISTANT, Role.DESK);
    private static final Opening SALON = new Opening().setUp();

    private final List<JournalPress> presses = new ArrayList<>();
    private Floor floor = Floor.EMPTY;

    private Opening() {}

    /** The salon's morning: most chairs are taken, and something is on. Decided press by press, as it would have been. */
    static List<JournalPress> morning(Dice dice, Instant begin) {
        var opening = new Opening();
        opening.presses.addAll(SALON.presses);
        opening.floor = SALON.floor;
        opening.clientsCome(new Hands(dice), dice, begin);
        return opening.presses;
    }

    private void clientsCome(Hands hands, Dice dice, Instant begin) {
        var day = LocalDate.ofInstant(begin, ZONE);
        for (var chair = 1; chair <= CHAIRS - 2; chair++) {
            press(hands.welcome(floor, chair, day), begin.minusSeconds(2_400 - 20L * chair));
        }
        for (var visit : floor.openVisits()) {
            press(hands.mix(floor, visit), begin.minusSeconds(1_500 - visit.id().value()));
        }
        for (var bowl : floor.waitingBowls()) {
            if (!dice.onceIn(5)) {
                hands.putOn(floor, bowl)
                        .ifPresent(on ->
                                press(on, begin.minusSeconds(1_000 - bowl.id().value())));
            }
        }
    }

    private Opening setUp() {
        arrange(new SalonEvent.HouseSet(new House(CHAIRS, BASINS, 4, ZONE, true)), "Harrowmere Hair");
        STAFF.forEach(role -> arrange(new SalonEvent.StaffEntered(role), role.name()));
        InventedProducts.all().forEach(one -> arrange(new SalonEvent.ProductEntered(one), null));
        return this;
    }

    private void arrange(SalonEvent event, @Nullable String text) {
        press(new Arrange(event, text), SET_UP);
    }

    /** What the floor refuses is left out. */
    private void press(Command command, Instant when) {
        var asked = Asked.at(when);
        if (command.decide(floor, asked) instanceof Decision.Accepted accepted) {
            var facts = new ArrayList<Fact>();
            accepted.drafts().forEach(draft -> facts.add(draft.numbered(floor.lastSeq() + 1 + facts.size(), asked)));
            floor = floor.with(facts);
            var entry = new Ledger.Entry("opening-" + presses.size(), "", "opening", "{}", facts, Map.of());
            presses.add(new JournalPress(PressLines.of(entry)));
        }
    }
}
