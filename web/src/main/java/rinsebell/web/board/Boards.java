package rinsebell.web.board;

import java.util.List;
import java.util.Optional;
import java.util.Set;
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

    private static final Set<String> PLAIN = Set.of(FLOOR, BASINS, DESK, POCKET, BELLS, ALL_BELLS, DEVICE);
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
        var numbered = NUMBERED.matcher(name);
        if (!numbered.matches()) {
            return PLAIN.contains(name);
        }
        var number = Long.parseLong(numbered.group(2));
        return numbered.group(1).equals("pocket")
                ? floor.salon().staffMember(new StaffId(number)).isPresent()
                : floor.visit(new VisitId(number)).isPresent();
    }

    /** The fragments of a board at a moment; empty when there is no such board. */
    public static Optional<List<Fragment>> fragments(String name, Moment moment) {
        return switch (name) {
            case FLOOR -> Optional.of(new FloorBoard(moment).fragments());
            case BASINS -> Optional.of(new BasinBoard(moment).fragments());
            case DESK -> Optional.of(new DeskBoardTelling(moment).fragments());
            case POCKET -> Optional.of(new PocketBoard(moment, null).fragments());
            case BELLS -> Optional.of(List.of(new DeskBoardTelling(moment).strip()));
            case DEVICE -> Optional.of(List.of(new DeskBoardTelling(moment).strip(), new EarsTelling(moment).ears()));
            case ALL_BELLS -> Optional.of(new BellBoard(moment).fragments());
            default -> numbered(NUMBERED.matcher(name), moment);
        };
    }

    private static Optional<List<Fragment>> numbered(Matcher name, Moment moment) {
        if (!name.matches()) {
            return Optional.empty();
        }
        var number = Long.parseLong(name.group(2));
        if (name.group(1).equals("pocket")) {
            return moment.floor()
                    .salon()
                    .staffMember(new StaffId(number))
                    .map(member -> new PocketBoard(moment, member.id()).fragments());
        }
        return moment.floor().visit(new VisitId(number)).map(visit -> new ChairBoard(moment, visit).fragments());
    }
}
