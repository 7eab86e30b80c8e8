package rinsebell.web;

import static rinsebell.web.Samples.shell;

import java.util.List;
import rinsebell.web.view.Answer;
import rinsebell.web.view.Field;
import rinsebell.web.view.Field.Kind;
import rinsebell.web.view.Field.Option;
import rinsebell.web.view.Form;
import rinsebell.web.view.FormPage;
import rinsebell.web.view.Look;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Press;
import rinsebell.web.view.Press.Hidden;
import rinsebell.web.view.Press.Weight;
import rinsebell.web.view.Shell;

/** Sample forms and answers. */
final class FormSamples {
    private FormSamples() {}

    static FormPage check() {
        var look = new Form.Group(
                "",
                List.of(
                        choice("level", "Level", "darker", "orange", "pale orange", "yellow", "pale yellow"),
                        choice("tone", "Tone", "warm", "even", "patchy"),
                        choice("stretch", "Stretch", "stretches well", "stretches and stays long", "breaks"),
                        choice("dryness", "Dryness", "moist", "drying", "dry"),
                        choice(
                                "decision",
                                "Then",
                                "look again in 3 min",
                                "look again in 5 min",
                                "look again in 10 min",
                                "rinse")));
        return new FormPage(
                shell("Strand check", Nav.FLOOR, Look.LIGHT, ""),
                new Form(
                        "form-check",
                        "Chair 1 · M. A. · strand check",
                        "Rinse a little strand clean and look at it in daylight.",
                        "/visits/71/checks",
                        List.of(look),
                        "Record",
                        "/chairs/1"));
    }

    static FormPage wrongBowl() {
        var bowl = new Form.Group(
                "Portions",
                List.of(
                        new Field(
                                Kind.LIST,
                                "product-1",
                                "Product",
                                "4",
                                List.of(
                                        new Option("4", "Powder lightener, off scalp", true),
                                        new Option("5", "Cream lightener", false)),
                                "",
                                ""),
                        new Field(
                                Kind.NUMBER,
                                "grams-1",
                                "Grams",
                                "-60",
                                List.of(),
                                "grams, such as 60 or 7.5",
                                "An amount is more than 0 g."),
                        new Field(
                                Kind.LIST,
                                "product-2",
                                "Product",
                                "9",
                                List.of(new Option("9", "Developer 30 volumes", true)),
                                "",
                                ""),
                        new Field(
                                Kind.NUMBER,
                                "grams-2",
                                "Grams",
                                "12o",
                                List.of(),
                                "grams, such as 60 or 7.5",
                                "“12o” is not a number.")));
        var reason = new Form.Group(
                "",
                List.of(
                        choice("reason", "What for", "first", "refill", "next area", "another round", "tone"),
                        new Field(Kind.TIME, "mixed", "Mixed at", "14:20", List.of(), "leave it as it is for now", ""),
                        new Field(Kind.LONG_TEXT, "note", "Note", "", List.of(), "", "")));
        return new FormPage(
                shell("Mix a bowl", Nav.BOWLS, Look.LIGHT, ""),
                new Form(
                        "form-bowl",
                        "Mix a bowl for chair 1 · M. A.",
                        "",
                        "/bowls",
                        List.of(bowl, reason),
                        "Mixed",
                        "/chairs/1"));
    }

    private static Field choice(String name, String label, String... options) {
        return new Field(
                Kind.CHOICE,
                name,
                label,
                options[1],
                java.util.Arrays.stream(options)
                        .map(option -> new Option(option, option, option.equals(options[1])))
                        .toList(),
                "",
                "");
    }

    static Shell answered(Shell shell, Answer answer) {
        return new Shell(
                shell.salon(),
                shell.title(),
                shell.here(),
                shell.look(),
                shell.ear(),
                shell.board(),
                shell.bells(),
                shell.clock(),
                answer);
    }

    static Answer done() {
        return new Answer(
                Answer.Kind.DONE,
                "Put on 14:22",
                List.of(),
                List.of(
                        Press.sends("Undo", "", "/facts/1041/withdrawal"),
                        Press.opens("Change the time", "", "/facts/1041/time")));
    }

    static Answer refused() {
        return new Answer(
                Answer.Kind.REFUSED,
                "Put a dryer on: this is not allowed now. Was it done?",
                List.of(new Answer.Reason(
                        "No dryer heat with this powder.", "Heat makes it swell and burn.", "directions of 3 Nov")),
                List.of(
                        Press.sends(
                                        "Not done",
                                        "nothing is recorded",
                                        "/visits/71/heat",
                                        new Hidden("answer", "not-done"))
                                .as(Weight.MAIN),
                        Press.sends(
                                "Already done",
                                "it is recorded, and rings",
                                "/visits/71/heat",
                                new Hidden("answer", "done"))));
    }
}
