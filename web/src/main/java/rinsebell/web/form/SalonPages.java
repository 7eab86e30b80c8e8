package rinsebell.web.form;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.product.Kind;
import rinsebell.floor.salon.House;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.salon.StaffMember;
import rinsebell.web.Codes;
import rinsebell.web.form.FormDraft.Choice;
import rinsebell.web.form.SheetPage.Part;
import rinsebell.web.form.SheetPage.Row;
import rinsebell.web.view.Form;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Press;
import rinsebell.web.view.View;

/** Pages that set the salon up. */
final class SalonPages {
    private static final String SETUP = "/setup";

    private SalonPages() {}

    static void enter(FormPages pages) {
        pages.enter("salon", Presses.PLAIN, SalonPages::setup);
        pages.enter("staff", Presses.PLAIN, SalonPages::staff);
        pages.enter("staff", Presses.CHANGE, Nav.SETUP, SalonPages::change);
        pages.enter("staff", "hours", Nav.SETUP, SalonPages::hours);
        pages.enter("times", Presses.PLAIN, Nav.SETUP, SalonPages::times);
        pages.enter("policy", Presses.PLAIN, Nav.SETUP, SalonPages::policy);
    }

    /** An empty salon begins with its rooms; a salon that is set up finds everything else from here. */
    private static View setup(PageAsk ask) {
        var title = ask.say("form.salon");
        var presses = ask.salon().isSetUp()
                ? List.of(
                        Press.opens(ask.say("sheet.staff"), "", "/staff"),
                        Press.opens(ask.say("sheet.products"), "", "/products"),
                        Press.opens(ask.say("form.policy"), "", "/policy"),
                        Press.opens(ask.say("form.times"), "", "/times"),
                        Press.opens(ask.say("sheet.clients"), "", "/clients"),
                        Press.opens(ask.say("devices.title"), "", "/devices"),
                        Press.opens(ask.say("pins.title"), "", "/pins"),
                        Press.opens(ask.say("rights.title"), "", "/rights"),
                        Press.opens(ask.say("privacy.title"), "", "/privacy"))
                : List.<Press>of();
        var intro = ask.salon().isSetUp() ? "" : ask.say("form.salon.first");
        var parts = presses.isEmpty() ? List.<Part>of() : List.of(new Part("", List.of(), presses));
        return new SheetPage(
                ask.shell(title, Nav.SETUP),
                title,
                "",
                parts,
                List.of(rooms(ask).untitled()));
    }

    private static Form rooms(PageAsk ask) {
        var house = Optional.ofNullable(ask.salon().house());
        var name = ask.salon().isSetUp() ? ask.moment().salon() : "";
        return new FormDraft(ask, "salon")
                .text("name", name)
                .number("chairs", house.map(House::chairs).map(String::valueOf).orElse(""))
                .number("basins", house.map(House::basins).map(String::valueOf).orElse(""))
                .number("bench", house.map(House::bench).map(String::valueOf).orElse(""))
                .zone(
                        zones(ask),
                        house.map(House::zone).orElse(ZoneId.systemDefault()).getId())
                .yesNo(
                        "twentyFourHours",
                        ask.say("field.twentyfourhours"),
                        house.map(House::twentyFourHours).orElse(true))
                .form("/salon", ask.salon().isSetUp() ? "/" : SETUP);
    }

    private static List<Choice> zones(PageAsk ask) {
        return ZoneId.getAvailableZoneIds().stream()
                .filter(name -> name.contains("/") && !name.startsWith("SystemV/"))
                .sorted()
                .map(name -> new Choice(name, name.replace('_', ' ')))
                .toList();
    }

    private static View staff(PageAsk ask) {
        var title = ask.say("sheet.staff");
        var rows = ask.salon().staff().stream().map(member -> row(ask, member)).toList();
        var add = new FormDraft(ask, "staff")
                .text("name", "")
                .choice("role", Role.class, Role.STYLIST)
                .form("/staff", SETUP);
        return new SheetPage(
                ask.shell(title, Nav.SETUP), title, "", List.of(new Part("", rows, List.of())), List.of(add));
    }

    private static Row row(PageAsk ask, StaffMember member) {
        var id = member.id().value();
        var away = ask.moment().isOnBreak(member.id());
        var rest = Press.sends(
                ask.say(away ? "form.day.back" : "form.day.break"),
                "",
                away ? "/day/back" : "/day/break",
                new Press.Hidden("staff", Choices.number(id)));
        var change = Press.opens(ask.say("form.staff.change"), "", "/staff/" + id);
        var hours = Press.opens(ask.say("form.staff.hours"), "", "/staff/" + id + "/hours");
        return new Row(
                "",
                ask.moment().name(member.id()),
                ask.moment().say(member.role()),
                !member.working(),
                member.working() ? List.of(change, hours, rest) : List.of(change));
    }

    private static Form change(PageAsk ask) {
        var member = ask.salon().staffMember(new StaffId(ask.id()));
        return new FormDraft(ask, "staff.change")
                .text("name", member.map(known -> ask.moment().name(known.id())).orElse(""))
                .choice("role", Role.class, member.map(StaffMember::role).orElse(null))
                .yesNo(
                        "working",
                        ask.say("field.working"),
                        member.map(StaffMember::working).orElse(true))
                .form("/staff/" + ask.id(), "/staff");
    }

    private static Form hours(PageAsk ask) {
        var shifts = ask.salon().basinHours().of(new StaffId(ask.id()));
        var draft = new FormDraft(ask, "staff.hours");
        for (var day : DayOfWeek.values()) {
            draft.text(HoursForm.field(day), HoursForm.written(shifts, day));
        }
        return draft.form("/staff/" + ask.id() + "/hours", "/staff");
    }

    private static Form times(PageAsk ask) {
        var times = ask.salon().times();
        var draft = new FormDraft(ask, "times");
        ServiceForm.timed()
                .forEach(service -> draft.number(
                        ServiceForm.field(service), ask.moment().say(service), minutes(times.of(service))));
        return draft.form("/times", SETUP);
    }

    private static Form policy(PageAsk ask) {
        var policy = ask.salon().policy();
        var draft = new FormDraft(ask, "policy")
                .number("applying", minutes(policy.applying()))
                .number("working.walk", minutes(policy.working().walk()))
                .number("working.foilsOut", minutes(policy.working().foilsOut()))
                .number("working.rinsing", minutes(policy.working().rinsing()))
                .number("working.soon", minutes(policy.working().soon()))
                .number("bowl.question", minutes(policy.bowl().question()))
                .number("bowl.low", minutes(policy.bowl().low()))
                .number("checks.medium", minutes(policy.checks().medium()))
                .number("checks.high", minutes(policy.checks().high()))
                .number("checks.highSooner", minutes(policy.checks().highSooner()))
                .number("checks.round", minutes(policy.checks().round()))
                .number(
                        "ringing.widerHighSeconds",
                        String.valueOf(policy.ringing().widerHigh().toSeconds()))
                .number("ringing.widerMedium", minutes(policy.ringing().widerMedium()))
                .number("ringing.againHigh", minutes(policy.ringing().againHigh()))
                .number("ringing.againMedium", minutes(policy.ringing().againMedium()))
                .number("ringing.againLow", minutes(policy.ringing().againLow()))
                .number("ringing.longestShelved", minutes(policy.ringing().longestShelved()))
                .number(
                        "skinTest.beforeHours",
                        String.valueOf(policy.skinTest().before().toHours()))
                .number("skinTest.validDays", String.valueOf(policy.skinTest().validDays()))
                .number("weighingSlackGrams", String.valueOf(policy.weighingSlackGrams()))
                .number("keeping.recordMonths", String.valueOf(policy.keeping().recordMonths()))
                .number("keeping.textDays", String.valueOf(policy.keeping().textDays()))
                .number("keeping.nameMinutes", String.valueOf(policy.keeping().nameMinutes()))
                .group(ask.say("form.policy.longest"));
        for (var kind : Kind.values()) {
            var house = Optional.ofNullable(policy.longestOn().get(kind)).map(SalonPages::minutes);
            draft.number("longestOn." + Codes.of(kind), ask.moment().say(kind), house.orElse(""));
        }
        return draft.form("/policy", SETUP);
    }

    static String minutes(Duration time) {
        return String.valueOf(time.toMinutes());
    }
}
