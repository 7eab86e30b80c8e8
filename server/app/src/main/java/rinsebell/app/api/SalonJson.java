package rinsebell.app.api;

import java.util.List;
import java.util.Optional;
import rinsebell.floor.salon.StaffMember;
import rinsebell.web.Codes;
import rinsebell.web.board.Moment;

/**
 * The set-up.
 *
 * @param setUp false before anybody said how many chairs there are
 * @param zone where its clock hangs, a name of the IANA time zone database
 */
record SalonJson(
        boolean setUp,
        String name,
        int chairs,
        int basins,
        int bench,
        String zone,
        boolean twentyFourHours,
        List<StaffJson> staff) {

    record StaffJson(long id, String name, String role, boolean working, boolean onBreak) {
        static StaffJson of(StaffMember member, Moment moment) {
            return new StaffJson(
                    member.id().value(),
                    moment.texts().apply(member.name()),
                    Codes.of(member.role()),
                    member.working(),
                    moment.isOnBreak(member.id()));
        }
    }

    static SalonJson of(Moment moment) {
        var salon = moment.floor().salon();
        var rooms = salon.rooms();
        return new SalonJson(
                salon.isSetUp(),
                Optional.ofNullable(salon.name()).map(moment.texts()).orElse(""),
                rooms.chairs(),
                rooms.basins(),
                rooms.bench(),
                rooms.zone().getId(),
                rooms.twentyFourHours(),
                salon.staff().stream()
                        .map(member -> StaffJson.of(member, moment))
                        .toList());
    }
}
