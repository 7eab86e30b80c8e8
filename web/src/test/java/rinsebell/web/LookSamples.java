package rinsebell.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.testing.Saturday;
import rinsebell.floor.testing.Story;
import rinsebell.web.board.Moment;
import rinsebell.web.form.Fields;
import rinsebell.web.form.LookInForms;
import rinsebell.web.form.LookInsPage;
import rinsebell.web.form.LookInsPage.Fresh;
import rinsebell.web.form.LookInsTelling;
import rinsebell.web.view.Look;
import rinsebell.web.view.LookPage;
import rinsebell.web.view.Nav;

/** A phone that looks in, and the page on which such links are made. */
final class LookSamples {
    private static final String ADDRESS = "http://salon.test:8460/look/AAECAwQFBgcICQoLDA0ODxAR";

    private LookSamples() {}

    static LookPage page() {
        return new LookPage(
                "Chairs at Pepperbox Yard",
                "As of 14:22",
                "Not connected since 14:22. What stands here may not be so any more.",
                "The computer’s clock was set. Check the time.",
                List.of(
                        new LookPage.Row("Chair 1", "likely free 15:05", "almost surely by 15:25"),
                        new LookPage.Row("Chair 2", "taken, not known until when", ""),
                        new LookPage.Row("Chair 3", "free now", "")),
                "2 wait on the bench.");
    }

    static LookInsPage links() {
        return page(null, Fields.of("name", "x".repeat(1_000)));
    }

    static LookInsPage made() {
        var fresh = telling().fresh("Ada’s phone", ADDRESS, ADDRESS + "/chairs.ics", true);
        return page(fresh, Fields.of("name", "Ada’s phone"));
    }

    private static LookInsPage page(@Nullable Fresh fresh, Fields typed) {
        var errors = LookInForms.name(moment(), typed).errors();
        var rows = List.of(
                telling().row(2, "Ada’s phone", Samples.at("14:20"), null),
                telling().row(1, "calendar of the back room", Samples.at("09:10"), Samples.at("14:22")));
        return telling()
                .page(
                        Samples.shell("Links that look in", Nav.DESK, Look.LIGHT, "bells"),
                        rows,
                        telling().name(typed, errors),
                        fresh);
    }

    private static LookInsTelling telling() {
        return new LookInsTelling(moment());
    }

    private static Moment moment() {
        var floor = Story.begins().floor();
        return new Moment(floor, id -> "text " + id.seq(), floor.bells(), Saturday.TEN, Words.british());
    }
}
