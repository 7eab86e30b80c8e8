package rinsebell.web.board;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.bell.Crowd;
import rinsebell.floor.bell.Ear;
import rinsebell.floor.bell.Reach;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.StaffId;
import rinsebell.web.Codes;

/** How a page says for whom a device listens, and whom a bell reaches: {@code staff-4}, {@code chair-3}, {@code wall}. */
public final class EarCode {
    /** What an ear for everything is called, and a bell that reaches everyone. */
    public static final String ALL = "all";

    private EarCode() {}

    public static String of(StaffId person) {
        return "staff-" + person.value();
    }

    public static String of(Place place) {
        return Codes.of(place);
    }

    public static String of(Crowd crowd) {
        return Codes.of(crowd);
    }

    public static String of(Ear ear) {
        if (ear instanceof Ear.Of one) {
            return of(one.person());
        }
        if (ear instanceof Ear.At at) {
            return of(at.place());
        }
        return ear instanceof Ear.Shared shared ? of(shared.crowd()) : ALL;
    }

    /** The ear of a code; empty when there is no such ear. */
    public static Optional<Ear> read(String code) {
        if (code.equals(ALL)) {
            return Optional.of(new Ear.Everything());
        }
        if (code.matches("staff-\\d{1,18}")) {
            return Optional.of(new Ear.Of(new StaffId(Long.parseLong(code.substring("staff-".length())))));
        }
        return Codes.choice(Crowd.class, code)
                .<Ear>map(Ear.Shared::new)
                .or(() -> place(code).map(Ear.At::new));
    }

    private static Optional<Place> place(String code) {
        if (code.matches("chair-\\d{1,3}")) {
            return Optional.of(Place.chair(Integer.parseInt(code.substring("chair-".length()))));
        }
        if (code.matches("basin-[A-Z]")) {
            return Optional.of(Place.basin(code.charAt(code.length() - 1) - 'A' + 1));
        }
        return code.equals(of(Place.BENCH)) ? Optional.of(Place.BENCH) : Optional.empty();
    }

    /** Every ear that hears it, with commas between; {@code all} for everyone. */
    static String of(Reach reach) {
        return String.join(",", all(reach));
    }

    /** Every ear that hears it; {@code all} for everyone. */
    public static List<String> all(Reach reach) {
        if (reach.everyone()) {
            return List.of(ALL);
        }
        return Stream.of(
                        reach.people().stream().map(EarCode::of).sorted(),
                        reach.crowds().stream().sorted().map(EarCode::of),
                        Stream.ofNullable(reach.place()).map(EarCode::of))
                .flatMap(all -> all)
                .toList();
    }
}
