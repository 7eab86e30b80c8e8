package rinsebell.web.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rinsebell.floor.bell.Crowd;
import rinsebell.floor.bell.Ear;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.salon.StaffMember;
import rinsebell.floor.visit.Visit;
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
        busy().forEach(person -> rows.add(row(moment.name(person), listening -> hears(listening.ear(), person))));
        for (var crowd : SHARED) {
            rows.add(row(moment.say(crowd), listening -> hears(listening.ear(), crowd)));
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

    private Ears.Row row(String who, Predicate<Listening> whose) {
        var devices = moment.listening().stream().filter(whose).toList();
        var heard = devices.stream().filter(Listening::isHeard).toList();
        var unchecked = heard.stream().filter(one -> !one.checked()).count();
        if (heard.isEmpty()) {
            return new Ears.Row(who, moment.say(devices.isEmpty() ? "ears.none" : "ears.silent"), true);
        }
        var silent = devices.size() - heard.size();
        var told = Stream.of(
                        moment.say("ears.ring", heard.size()),
                        silent == 0 ? "" : moment.say("ears.more_silent", silent),
                        unchecked == 0 ? "" : moment.say("ears.unchecked"))
                .filter(part -> !part.isEmpty())
                .toList();
        return new Ears.Row(who, String.join(", ", told), false);
    }

    /** Their own phone, the tablet where one of their clients is, the stylists' screen, or one that rings for all. */
    private boolean hears(Ear ear, StaffId person) {
        return ear instanceof Ear.Of one && one.person().equals(person)
                || ear instanceof Ear.At at && isWithClientOf(person, at.place())
                || ear.equals(new Ear.Shared(Crowd.STYLISTS))
                || ear instanceof Ear.Everything;
    }

    private boolean isWithClientOf(StaffId person, Place place) {
        return moment.floor().at(place).stream().map(Visit::stay).anyMatch(stay -> person.equals(stay.stylist()));
    }

    private boolean hears(Ear ear, Crowd crowd) {
        return ear.equals(new Ear.Shared(crowd))
                || ear instanceof Ear.Everything
                || ear instanceof Ear.Of one
                        && role(crowd)
                                .equals(moment.floor()
                                        .salon()
                                        .staffMember(one.person())
                                        .map(StaffMember::role));
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
                        Stream.of(Crowd.values()).map(one -> new Choice(EarCode.of(one), moment.say(one))),
                        places.map(place -> new Choice(EarCode.of(place), moment.place(place))),
                        Stream.of(new Choice(EarCode.ALL, moment.say("device.ear.all"))))
                .flatMap(all -> all)
                .toList();
    }
}
