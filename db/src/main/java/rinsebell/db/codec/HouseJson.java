package rinsebell.db.codec;

import java.time.ZoneId;
import rinsebell.floor.salon.House;

/** The rooms and the clock of the salon. */
final class HouseJson {

    private HouseJson() {}

    static void write(House house, Writing out) {
        out.whole("chairs", house.chairs())
                .whole("basins", house.basins())
                .whole("bench", house.bench())
                .text("zone", house.zone().getId())
                .flag("twenty_four_hours", house.twentyFourHours());
    }

    static House read(Reading in) {
        return new House(
                in.whole("chairs"),
                in.whole("basins"),
                in.whole("bench"),
                ZoneId.of(in.text("zone")),
                in.flag("twenty_four_hours"));
    }
}
