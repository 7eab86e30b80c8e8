package rinsebell.web.board;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.bell.Crowd;
import rinsebell.floor.bell.Ear;
import rinsebell.floor.bell.Reach;
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

    public static String of(Ear ear) {
        if (ear instanceof Ear.Of one) {
            return of(one.person());
        }
        if (ear instanceof Ear.At at) {
            return Codes.of(at.place());
        }
        return ear instanceof Ear.Shared shared ? Codes.of(shared.crowd()) : ALL;
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
                .or(() -> Codes.place(code).map(Ear.At::new));
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
                        reach.crowds().stream().sorted().map(Codes::of),
                        Stream.ofNullable(reach.place()).map(Codes::of))
                .flatMap(all -> all)
                .toList();
    }
}
