package rinsebell.web.board;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rinsebell.floor.Floor;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.VisitId;
import rinsebell.web.view.Fragment;
import rinsebell.web.view.Shell;

/** Every board by its name, as the feed and the pages call it. */
public final class Boards {
    public static final String FLOOR = "floor";
    public static final String BASINS = "basins";
    public static final String DESK = "desk";
    public static final String POCKET = "pocket";
    /** The bells alone, for pages that show nothing else that lives. */
    public static final String BELLS = Shell.BELLS_ONLY;
    /** Every bell, one below the other. */
    public static final String ALL_BELLS = "all-bells";

    /** The bells, and who would be rung for. */
    public static final String DEVICE = "device";

    private static final Pattern NUMBERED = Pattern.compile("(visit|pocket)-(\\d{1,18})");

    private Boards() {}

    public static String visit(VisitId visit) {
        return "visit-" + visit.value();
    }

    public static String pocket(StaffId staff) {
        return "pocket-" + staff.value();
    }

    /** Whether there is such a board. */
    public static boolean isKnown(String name, Floor floor) {
        return drawing(name, floor).isPresent();
    }

    /** The fragments of a board at a moment; empty when there is no such board. */
    public static Optional<List<Fragment>> fragments(String name, Moment moment) {
        return drawing(name, moment.floor()).map(drawing -> drawing.apply(moment));
    }

    private static Optional<Function<Moment, List<Fragment>>> drawing(String name, Floor floor) {
        return switch (name) {
            case FLOOR -> Optional.of(moment -> new FloorBoard(moment).fragments());
            case BASINS -> Optional.of(moment -> new BasinBoard(moment).fragments());
            case DESK -> Optional.of(moment -> new DeskBoardTelling(moment).fragments());
            case POCKET -> Optional.of(moment -> new PocketBoard(moment, null).fragments());
            case BELLS -> Optional.of(moment -> List.of(new DeskBoardTelling(moment).strip()));
            case DEVICE ->
                Optional.of(moment -> List.of(new DeskBoardTelling(moment).strip(), new EarsTelling(moment).ears()));
            case ALL_BELLS -> Optional.of(moment -> new BellBoard(moment).fragments());
            default -> numbered(NUMBERED.matcher(name), floor);
        };
    }

    private static Optional<Function<Moment, List<Fragment>>> numbered(Matcher name, Floor floor) {
        if (!name.matches()) {
            return Optional.empty();
        }
        var number = Long.parseLong(name.group(2));
        return name.group(1).equals("pocket")
                ? floor.salon()
                        .staffMember(new StaffId(number))
                        .map(member -> moment -> new PocketBoard(moment, member.id()).fragments())
                : floor.visit(new VisitId(number)).map(visit -> moment -> new ChairBoard(moment, visit).fragments());
    }
}
