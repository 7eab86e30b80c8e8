package rinsebell.web.access;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.salon.StaffMember;
import rinsebell.web.Codes;
import rinsebell.web.board.Moment;
import rinsebell.web.form.SheetPage.Part;
import rinsebell.web.form.SheetPage.Row;
import rinsebell.web.view.Field;
import rinsebell.web.view.Field.Option;
import rinsebell.web.view.Press;
import rinsebell.web.view.Table;

/** Words for who may come in: the devices, what each is for, people's PINs, and the table of rights. */
public final class AccessTelling {
    public static final String DEVICES = "/devices";
    public static final String PROGRAMS = "/devices/programs";
    public static final String PINS = "/pins";
    public static final String UNLOCK = "/unlock";
    public static final String LOCK = "/lock";
    public static final String RIGHTS = "/rights";
    public static final String ME = "/me";

    /** What a device can be for, besides a chair. */
    private static final List<String> SHARED = List.of("basins", "desk", "wall", "pocket");

    private final Moment moment;

    public AccessTelling(Moment moment) {
        this.moment = moment;
    }

    /** Whether devices may come over plain HTTP. */
    public PlainPage.Sent plain(boolean may) {
        var options = List.of(
                new Option("no", moment.say("devices.plain.no"), !may),
                new Option("yes", moment.say("devices.plain.yes"), may));
        var hint = moment.say("devices.plain.cost");
        var field = new Field(Field.Kind.CHOICE, "plain", moment.say("devices.plain.what"), "", options, hint, "");
        return new PlainPage.Sent(
                moment.say("devices.plain"),
                DEVICES + "/plain",
                List.of(field),
                List.of(),
                moment.say("devices.plain.keep"));
    }

    /**
     * For a program that is to ask by itself.
     *
     * @param scopes the codes of what its key can be for
     */
    public PlainPage.Sent program(List<String> scopes, Typed typed) {
        var options = scopes.stream()
                .map(scope -> new Option(scope, purpose(scope), scope.equals(typed.scope)))
                .toList();
        var name = text(
                Field.Kind.TEXT, "program", "devices.name", typed.name, moment.say("programs.hint"), typed.problem);
        var scope = new Field(
                Field.Kind.CHOICE, "scope", moment.say("programs.scope"), "", options, "", typed.scopeProblem);
        return new PlainPage.Sent(
                moment.say("programs.add"), PROGRAMS, List.of(name, scope), List.of(), moment.say("programs.make"));
    }

    /** What was typed, and what is wrong with it; nothing at first. */
    public record Typed(String name, String scope, String problem, String scopeProblem) {
        public static final Typed NOTHING = new Typed("", "", "", "");
    }

    /** @param seen when it asked for something last; null for not since the server started */
    public Row device(long id, String name, String purpose, Instant joined, @Nullable Instant seen) {
        var joinedAt = moment.say("devices.joined", moment.time().day(joined), moment.clock(joined));
        var detail = purpose(purpose) + " · " + joinedAt
                + (seen == null ? "" : " · " + moment.say("devices.seen", moment.clock(seen)));
        var out = Press.sends(moment.say("devices.out", name), "", DEVICES + "/" + id + "/throw-out");
        return new Row("", name, detail, false, List.of(out));
    }

    /** Every code of what a device can be for in this salon. */
    public List<String> purposes() {
        var chairs = IntStream.rangeClosed(1, moment.floor().salon().rooms().chairs())
                .mapToObj(number -> Codes.of(Place.chair(number)));
        return Stream.concat(chairs, SHARED.stream()).toList();
    }

    private String purpose(String code) {
        return Codes.place(code).map(moment::place).orElseGet(() -> moment.say("devices.purpose." + code));
    }

    /** What a device will be. */
    public String willBe(String name, String purpose) {
        return moment.say("join.will_be", name, purpose(purpose));
    }

    public Field purposeField(String chosen, String problem) {
        var options = purposes().stream()
                .map(code -> new Option(code, purpose(code), code.equals(chosen)))
                .toList();
        return new Field(Field.Kind.LIST, "purpose", moment.say("devices.purpose"), "", options, "", problem);
    }

    public Field nameField(String typed, String problem) {
        return text(Field.Kind.TEXT, "name", "devices.name", typed, moment.say("devices.name.hint"), problem);
    }

    private Field text(Field.Kind kind, String name, String key, String typed, String hint, String problem) {
        return new Field(kind, name, moment.say(key), typed, List.of(), hint, problem);
    }

    /** A PIN is never shown again, not even to whoever typed it. */
    public Field pinField(String name, String hint, String problem) {
        return text(Field.Kind.PIN, name, "pins." + name, "", hint, problem);
    }

    /** Everybody who could give a PIN here. */
    public Field people(List<StaffId> people, @Nullable StaffId chosen) {
        return person(people.stream().map(id -> option(id, chosen)));
    }

    /** Everybody who could work here, and nobody. */
    public Field names(List<StaffId> people, @Nullable StaffId chosen) {
        var nobody = new Option("", moment.say("me.nobody"), chosen == null);
        return person(Stream.concat(people.stream().map(id -> option(id, chosen)), Stream.of(nobody)));
    }

    private Option option(StaffId person, @Nullable StaffId chosen) {
        return new Option(String.valueOf(person.value()), moment.name(person), person.equals(chosen));
    }

    private Field person(Stream<Option> options) {
        return new Field(Field.Kind.CHOICE, "person", moment.say("unlock.person"), "", options.toList(), "", "");
    }

    /** One of the staff, with what can be done about their PIN. */
    public Row pin(StaffMember member, boolean has, boolean may) {
        var key = has ? "pins.change" : "pins.choose";
        var presses = may
                ? List.of(Press.opens(
                        moment.say(key, moment.name(member.id())),
                        "",
                        PINS + "/" + member.id().value()))
                : List.<Press>of();
        var detail = moment.say(member.role()) + " · " + moment.say(has ? "pins.has" : "pins.none");
        return new Row("", moment.name(member.id()), detail, false, presses);
    }

    /** How long whoever guessed must wait. */
    public String wait(Duration left) {
        var minutes = Math.max(1, (left.toSeconds() + 59) / 60);
        return moment.say("unlock.wait", minutes);
    }

    /**
     * The table of rights.
     *
     * @param matters the keys of their names, in the order of the table
     * @param allows whether somebody with that role may
     * @param isPrivate whether it asks for a PIN
     */
    public Table rights(List<String> matters, BiPredicate<String, Role> allows, Predicate<String> isPrivate) {
        var heads = new ArrayList<String>();
        heads.add(moment.say("rights.what"));
        for (var role : Role.values()) {
            heads.add(moment.say(role));
        }
        heads.add(moment.say("rights.pin"));
        var rows = matters.stream()
                .map(matter -> {
                    var cells = new ArrayList<String>();
                    cells.add(moment.say(matter));
                    for (var role : Role.values()) {
                        cells.add(moment.say(allows.test(matter, role) ? "rights.may" : "rights.may_not"));
                    }
                    cells.add(moment.say(isPrivate.test(matter) ? "rights.asks" : "rights.never"));
                    return new Table.Row(cells, false);
                })
                .toList();
        return new Table(moment.say("rights.title"), heads, rows, false);
    }

    public Part part(String key, List<Row> rows) {
        return new Part(moment.say(key), rows, List.of());
    }

    public Part links(String key, List<Press> presses) {
        return new Part(moment.say(key), List.of(), presses);
    }
}
