package rinsebell.web;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.salon.Role;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Story;
import rinsebell.web.access.AccessTelling;
import rinsebell.web.access.JoinPage;
import rinsebell.web.access.PlainPage;
import rinsebell.web.access.PlainPage.Sent;
import rinsebell.web.access.PlainPage.Shown;
import rinsebell.web.board.Moment;
import rinsebell.web.form.SheetPage.Part;
import rinsebell.web.form.TrailTelling;
import rinsebell.web.view.LeadPage;
import rinsebell.web.view.Look;
import rinsebell.web.view.Nav;
import rinsebell.web.view.QrCode;
import rinsebell.web.view.Shell;
import rinsebell.web.view.Table;

/** Pages about who may come in. */
final class AccessSamples {
    private static final String CODE = "K3M9-04TZ-QW7A";

    private AccessSamples() {}

    static JoinPage stranger() {
        return JoinPage.wrong("There is no such invitation. It may have been used, or be older than ten minutes.");
    }

    static JoinPage invited() {
        return JoinPage.invited(CODE, telling().willBe("Tablet at chair 3", "chair-3"));
    }

    static JoinPage plainly() {
        return JoinPage.ASKING.plainly(false);
    }

    static PlainPage devices() {
        var telling = telling();
        var rows = List.of(
                telling.device(1, "Tablet at chair 3", "chair-3", Samples.at("09:10"), Samples.at("14:20")),
                telling.device(2, "x".repeat(40), "pocket", Samples.at("09:12"), null));
        var shown = new Shown(
                "For Tablet at chair 3",
                "It lets one device in, within ten minutes.",
                QrCode.of("https://salon.test:8461/join#" + CODE),
                CODE);
        var form = new Sent(
                "Let a device in",
                AccessTelling.DEVICES,
                List.of(telling.nameField("", "Please fill this in."), telling.purposeField("desk", "")),
                List.of(),
                "Show the code");
        return page("Devices", "", shown, List.of(new Part("Devices that are in", rows, List.of())), null, form);
    }

    /** A program's key is for no device to read. */
    static PlainPage key() {
        var shown = new Shown("Key for till", "It is shown this once.", null, "q".repeat(24));
        var form = telling().program(List.of("program-reads", "program-acts"), AccessTelling.Typed.NOTHING);
        return page("Devices", "", shown, List.of(), null, form);
    }

    static LeadPage trail() {
        var floor = Story.begins();
        floor.at("09:00").arrivesFine();
        var moment = new Moment(floor.floor(), id -> "text " + id.seq(), List.of(), Saturday.TEN, Words.british());
        var recorded = floor.facts().stream()
                .map(fact -> new TrailTelling.Recorded(fact, "press", "device-1"))
                .toList();
        var steps = List.of(
                step("matter.history", "GET /clients/{id}", 7L, 200),
                step("matter.unlocking", "POST /unlock", 1L, 403),
                step("matter.reports", "GET /lead", null, 403),
                step("matter.devices", "POST /devices", null, 200));
        Shell shell = Samples.shell("Who did what", Nav.SETUP, Look.LIGHT, "bells");
        return new TrailTelling(moment, code -> "Tablet at chair 3")
                .page(shell, Saturday.TEN.atZone(java.time.ZoneOffset.UTC).toLocalDate(), recorded, steps);
    }

    private static TrailTelling.Step step(String matter, String route, @Nullable Long subject, int status) {
        return new TrailTelling.Step(
                Saturday.TEN, null, "device-1", matter, route, route.startsWith("GET "), subject, status);
    }

    static PlainPage unlock() {
        var people =
                moment().floor().salon().working().stream().map(one -> one.id()).toList();
        var form = new Sent(
                "",
                AccessTelling.UNLOCK,
                List.of(telling().people(people, people.get(0)), telling().pinField("pin", "", "")),
                List.of(),
                "Unlock");
        return page("Who is it?", "That is not the PIN of Ada.", null, List.of(), null, form);
    }

    static PlainPage rights() {
        var table = telling()
                .rights(
                        List.of("matter.signal", "matter.floor", "matter.history", "matter.erasing"),
                        (matter, role) ->
                                Set.of("matter.signal", "matter.floor").contains(matter) || role == Role.MANAGER,
                        matter -> matter.equals("matter.history") || matter.equals("matter.erasing"));
        return page("Who may do what", "", null, List.of(), table);
    }

    private static PlainPage page(
            String title,
            String notice,
            @Nullable Shown shown,
            List<Part> parts,
            @Nullable Table table,
            Sent... forms) {
        Shell shell = Samples.shell(title, Nav.SETUP, Look.LIGHT, "bells");
        return new PlainPage(shell, "What this is for.", notice, shown, parts, table, List.of(forms));
    }

    private static AccessTelling telling() {
        return new AccessTelling(moment());
    }

    private static Moment moment() {
        var floor = Story.begins().floor();
        return new Moment(floor, id -> "text " + id.seq(), floor.bells(), Saturday.TEN, Words.british());
    }
}
