package rinsebell.web.board;

import org.jspecify.annotations.Nullable;
import rinsebell.floor.bell.Crowd;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.Visit;
import rinsebell.web.Codes;
import rinsebell.web.view.Answer;
import rinsebell.web.view.BasinsPage;
import rinsebell.web.view.BellStrip;
import rinsebell.web.view.BellsPage;
import rinsebell.web.view.ChairPage;
import rinsebell.web.view.DeskPage;
import rinsebell.web.view.DevicePage;
import rinsebell.web.view.FloorPage;
import rinsebell.web.view.Look;
import rinsebell.web.view.Nav;
import rinsebell.web.view.PocketPage;
import rinsebell.web.view.Shell;

/**
 * The whole pages of the live screens.
 *
 * @param moment the floor to show
 * @param look chosen by the device; null for the page's own
 * @param answer what came of the last press of a browser without script; null for none
 */
public record LivePages(
        Moment moment, @Nullable Look look, @Nullable Answer answer) {
    public FloorPage floor() {
        var board = new FloorBoard(moment);
        return new FloorPage(
                shell(moment.say("nav.floor"), Nav.FLOOR, Look.DARK, Codes.of(Crowd.WALL), Boards.FLOOR, board.strip()),
                board.axis(),
                board.chairs(),
                board.basins(),
                board.ears());
    }

    public ChairPage visit(Visit visit) {
        var board = new ChairBoard(moment, visit);
        var title = moment.label(visit) + " · " + moment.place(visit.place());
        return new ChairPage(
                shell(title, Nav.FLOOR, Look.LIGHT, ear(visit), Boards.visit(visit.id()), board.strip()),
                board.panel());
    }

    public BasinsPage basins() {
        var board = new BasinBoard(moment);
        return new BasinsPage(
                shell(
                        moment.say("nav.basins"),
                        Nav.BASINS,
                        Look.LIGHT,
                        Codes.of(Crowd.ASSISTANTS),
                        Boards.BASINS,
                        board.strip()),
                board.axis(),
                new TurnTelling(moment).troubles(),
                board.next(),
                board.basins());
    }

    public DeskPage desk() {
        var board = new DeskBoardTelling(moment);
        return new DeskPage(
                shell(moment.say("nav.desk"), Nav.DESK, Look.LIGHT, Codes.of(Crowd.DESK), Boards.DESK, board.strip()),
                new TurnTelling(moment).troubles(),
                board.board());
    }

    public PocketPage pocket(@Nullable StaffId who) {
        var board = new PocketBoard(moment, who);
        var name = who == null ? Boards.POCKET : Boards.pocket(who);
        return new PocketPage(
                shell(
                        moment.say("nav.pocket"),
                        Nav.POCKET,
                        Look.LIGHT,
                        who == null ? EarCode.ALL : EarCode.of(who),
                        name,
                        board.strip()),
                board.people(),
                board.mine());
    }

    /** The tablet of the chair, also while its client is at a basin. */
    private static String ear(Visit visit) {
        var chair = visit.stay().chair();
        return Codes.of(chair == null ? visit.place() : chair);
    }

    public DevicePage device() {
        var ears = new EarsTelling(moment);
        return new DevicePage(
                shell(
                        moment.say("device"),
                        Nav.FLOOR,
                        Look.LIGHT,
                        "",
                        Boards.DEVICE,
                        new DeskBoardTelling(moment).strip()),
                ears.choices(),
                ears.ears());
    }

    public BellsPage bells() {
        var board = new BellBoard(moment);
        return new BellsPage(
                shell(moment.say("bells.title"), Nav.FLOOR, Look.LIGHT, "", Boards.ALL_BELLS, board.strip()),
                board.list());
    }

    /** The shell of a page that stands still but for its bells. */
    public Shell still(String title, Nav here) {
        return shell(title, here, Look.LIGHT, "", Boards.BELLS, new DeskBoardTelling(moment).strip());
    }

    private Shell shell(String title, Nav here, Look own, String ear, String board, BellStrip bells) {
        return new Shell(
                moment.salon(),
                title,
                here,
                look == null ? own : look,
                ear,
                board,
                bells,
                moment.around().clocks().trust(),
                answer);
    }
}
