package rinsebell.web.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rinsebell.floor.bell.Crowd;
import rinsebell.floor.bell.Reach;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.salon.StaffMember;
import rinsebell.floor.visit.Visit;
import rinsebell.web.Codes;
import rinsebell.web.view.DevicePage.Choice;
import rinsebell.web.view.Ears;

/** Tells which devices would ring for whom right now, and for whom none would. */
final class EarsTelling {
    /** Stylists have each their own; a screen for all of them is one more. */
    private static final List<Crowd> SHARED = List.of(Crowd.ASSISTANTS, Crowd.DESK, Crowd.WALL);

    private final Moment moment;

    EarsTelling(Moment moment) {
        this.moment = moment;
    }

    /** Whoever has somebody with something on first; then those who share a screen. */
    Ears ears() {
        var rows = new ArrayList<Ears.Row>();
        busy().forEach(person -> rows.add(row(moment.name(person), calling(person))));
        for (var crowd : SHARED) {
            rows.add(row(moment.say(crowd), List.of(new Reach(members(crowd), Set.of(crowd), null, false))));
        }
        return new Ears(moment.say("ears"), together(rows));
    }

    /** Those for whom nothing would be heard are named in one breath, first. */
    private static List<Ears.Row> together(List<Ears.Row> rows) {
        var told = new ArrayList<Ears.Row>();
        rows.stream()
                .filter(Ears.Row::missing)
                .collect(Collectors.groupingBy(Ears.Row::told, TreeMap::new, Collectors.toList()))
                .forEach((what, of) -> told.add(
                        new Ears.Row(of.stream().map(Ears.Row::who).collect(Collectors.joining(", ")), what, true)));
        rows.stream().filter(row -> !row.missing()).forEach(told::add);
        return told;
    }

    private Stream<StaffId> busy() {
        return moment.floor().openVisits().stream()
                .filter(visit -> !visit.onHair().isEmpty())
                .flatMap(visit -> Stream.ofNullable(visit.stay().stylist()))
                .filter(person -> !moment.isOnBreak(person))
                .distinct();
    }

    private Ears.Row row(String who, List<Reach> calls) {
        var devices = moment.listening().stream()
                .filter(device -> calls.stream().anyMatch(reach -> reach.reaches(device.ear())))
                .toList();
        var heard = devices.stream().filter(Listening::isHeard).toList();
        var unchecked = heard.stream().filter(one -> !one.checked()).count();
        if (heard.isEmpty()) {
            return new Ears.Row(who, moment.say(devices.isEmpty() ? "ears.none" : "ears.silent"), true);
        }
        var silent = devices.size() - heard.size();
        var told = Moment.joined(
                ", ",
                moment.say("ears.ring", heard.size()),
                silent == 0 ? "" : moment.say("ears.more_silent", silent),
                unchecked == 0 ? "" : moment.say("ears.unchecked"));
        return new Ears.Row(who, told, false);
    }

    /** Where each of their clients is: their own phone, the tablet there, the stylists' screen. */
    private List<Reach> calling(StaffId person) {
        return moment.floor().openVisits().stream()
                .map(Visit::stay)
                .filter(stay -> person.equals(stay.stylist()))
                .map(stay -> new Reach(Set.of(person), Set.of(Crowd.STYLISTS), stay.place(), false))
                .toList();
    }

    private Set<StaffId> members(Crowd crowd) {
        return moment.floor().salon().staff().stream()
                .filter(member -> role(crowd).filter(member.role()::equals).isPresent())
                .map(StaffMember::id)
                .collect(Collectors.toSet());
    }

    private static Optional<Role> role(Crowd crowd) {
        return switch (crowd) {
            case ASSISTANTS -> Optional.of(Role.ASSISTANT);
            case STYLISTS -> Optional.of(Role.STYLIST);
            case DESK -> Optional.of(Role.DESK);
            case WALL -> Optional.empty();
        };
    }

    /** For whom a device of this salon may ring; first, for whom its page is. */
    List<Choice> choices() {
        var salon = moment.floor().salon();
        var rooms = salon.rooms();
        var places = Stream.concat(
                IntStream.rangeClosed(1, rooms.chairs()).mapToObj(Place::chair),
                IntStream.rangeClosed(1, rooms.basins()).mapToObj(Place::basin));
        return Stream.of(
                        Stream.of(new Choice("", moment.say("device.ear.page"))),
                        salon.working().stream().map(one -> new Choice(EarCode.of(one.id()), moment.name(one.id()))),
                        Stream.of(Crowd.values()).map(one -> new Choice(Codes.of(one), moment.say(one))),
                        places.map(place -> new Choice(Codes.of(place), moment.place(place))),
                        Stream.of(new Choice(EarCode.ALL, moment.say("device.ear.all"))))
                .flatMap(all -> all)
                .toList();
    }
}
