package rinsebell.web.form;

import java.util.function.Function;
import java.util.function.IntFunction;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.command.OnDay;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.StaffId;

/** Presses about the salon's day: breaks, basins, catching up. */
final class DayForms {
    private static final String DAY = "day";

    private DayForms() {}

    static void enter(Presses presses) {
        presses.enter(DAY, "break", ofStaff(DayEvent.BreakBegan::new));
        presses.enter(DAY, "back", ofStaff(DayEvent.BreakEnded::new));
        presses.enter(DAY, "basin-closed", ofBasin(DayEvent.BasinClosed::new));
        presses.enter(DAY, "basin-opened", ofBasin(DayEvent.BasinOpened::new));
        presses.enter(DAY, "caught-up", PressForm.asking(CatchUpForm::read));
    }

    private static PressForm ofStaff(Function<StaffId, DayEvent> event) {
        return PressForm.asking(
                entries -> new OnDay(event.apply(entries.needed("staff", entries.staff("staff"), new StaffId(0)))));
    }

    private static PressForm ofBasin(IntFunction<DayEvent> event) {
        return PressForm.asking(entries -> {
            var basin = EntryPlaces.basin(entries, "basin").map(Place.Basin::number);
            return new OnDay(event.apply(entries.needed("basin", basin, 1)));
        });
    }
}
