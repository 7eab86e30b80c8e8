package rinsebell.web.form;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import rinsebell.floor.Command;
import rinsebell.floor.command.Arrange;
import rinsebell.floor.salon.House;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.salon.StaffId;

/** Presses that set the salon up: rooms, people, house policy. */
final class SalonForms {
    static final int LONGEST_NAME = 40;
    static final int MOST_ON_BENCH = 50;

    private SalonForms() {}

    static void enter(Presses presses) {
        presses.enter("salon", Presses.PLAIN, PressForm.asking(SalonForms::salon));
        presses.enter("staff", Presses.PLAIN, PressForm.asking(SalonForms::staff));
        presses.enter("staff", Presses.CHANGE, PressForm.asking(SalonForms::change));
        presses.enter("staff", "hours", PressForm.asking(HoursForm::hours));
        presses.enter("times", Presses.PLAIN, PressForm.asking(ServiceForm::times));
        presses.enter(
                "policy",
                Presses.PLAIN,
                PressForm.asking(entries -> new Arrange(new SalonEvent.PolicySet(PolicyForm.policy(entries)), null)));
    }

    private static Command salon(Entries entries) {
        var house = new House(
                entries.neededWhole("chairs", 1, House.MOST_CHAIRS),
                entries.neededWhole("basins", 0, House.MOST_BASINS),
                entries.whole("bench", 0, MOST_ON_BENCH).orElse(0),
                zone(entries),
                entries.yesNo("twentyFourHours").orElse(true));
        return new Arrange(new SalonEvent.HouseSet(house), entries.neededText("name", LONGEST_NAME));
    }

    private static ZoneId zone(Entries entries) {
        var zone = entries.value("zone").flatMap(name -> entries.known("zone", zone(name), Fault.NOT_A_ZONE));
        return entries.needed("zone", zone, ZoneOffset.UTC);
    }

    private static Optional<ZoneId> zone(String name) {
        return ZoneId.getAvailableZoneIds().contains(name) ? Optional.of(ZoneId.of(name)) : Optional.empty();
    }

    private static Command staff(Entries entries) {
        return new Arrange(
                new SalonEvent.StaffEntered(entries.choice("role", Role.class, Role.STYLIST)),
                entries.neededText("name", LONGEST_NAME));
    }

    private static Command change(Entries entries) {
        var known = entries.floor().salon().staffMember(new StaffId(entries.id()));
        var role = entries.choice("role", Role.class).or(() -> known.map(member -> member.role()));
        var working = entries.yesNo("working").or(() -> known.map(member -> member.working()));
        return new Arrange(
                new SalonEvent.StaffChanged(new StaffId(entries.id()), role.orElse(Role.STYLIST), working.orElse(true)),
                entries.neededText("name", LONGEST_NAME));
    }
}
