package rinsebell.web.form;

import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rinsebell.floor.salon.House;
import rinsebell.floor.salon.Place;
import rinsebell.web.Codes;

/** Reads places by their codes, as this salon has them. */
final class EntryPlaces {
    private EntryPlaces() {}

    static Stream<Place> all(House house) {
        return Stream.concat(Stream.concat(chairs(house), basins(house)), Stream.of(Place.BENCH));
    }

    static Stream<Place> chairs(House house) {
        return IntStream.rangeClosed(1, house.chairs()).mapToObj(Place::chair);
    }

    static Stream<Place> basins(House house) {
        return IntStream.rangeClosed(1, house.basins()).mapToObj(Place::basin);
    }

    static Place needed(Entries entries, String field) {
        return entries.needed(field, place(entries, field), Place.BENCH);
    }

    static Optional<Place> place(Entries entries, String field) {
        return entries.value(field)
                .flatMap(code -> entries.known(
                        field,
                        all(entries.floor().salon().rooms())
                                .filter(place -> Codes.of(place).equalsIgnoreCase(code))
                                .findFirst(),
                        Fault.NOT_KNOWN));
    }

    /** A basin by its letter, or by its code. */
    static Optional<Place.Basin> basin(Entries entries, String field) {
        return entries.value(field)
                .flatMap(code -> entries.known(
                        field,
                        basins(entries.floor().salon().rooms())
                                .filter(place -> isCalled(place, code))
                                .map(Place.Basin.class::cast)
                                .findFirst(),
                        Fault.NOT_KNOWN));
    }

    private static boolean isCalled(Place basin, String code) {
        return Codes.of(basin).equalsIgnoreCase(code) || Codes.of(basin).equalsIgnoreCase("basin-" + code);
    }
}
