package rinsebell.web.form;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Fact;
import rinsebell.floor.client.ClientNote;
import rinsebell.floor.salon.KeptRecipe;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.ClientId;
import rinsebell.floor.visit.Visit;
import rinsebell.web.board.Moment;
import rinsebell.web.form.SheetPage.Part;
import rinsebell.web.form.SheetPage.Row;
import rinsebell.web.view.Press;
import rinsebell.web.view.Shell;

/** Everything that is kept about a client, in plain words, to be printed and taken along. */
public final class EverythingPage {
    /** ISO 8601, so that no month is taken for a day. */
    private static final DateTimeFormatter DATE = DateTimeFormatter.ISO_LOCAL_DATE;

    private final Moment moment;
    private final Client record;

    /**
     * The record.
     *
     * @param met by when it was there; null when nobody looked yet
     * @param notes tests and reactions told of outside a visit
     * @param visits all of them, the newest first
     * @param looks who looked at it, the newest first
     */
    public record Client(
            ClientId id,
            String label,
            @Nullable Instant met,
            List<ClientNote> notes,
            List<Stay> visits,
            List<Look> looks) {}

    /**
     * Somebody looked at the record, or did something to it.
     *
     * @param person null for nobody who was named
     * @param matter the bundle key of what it was about
     * @param did whether more was done than looked
     */
    public record Look(Instant at, @Nullable StaffId person, String matter, boolean did) {}

    /**
     * A visit.
     *
     * @param moment the floor of then, with the words to tell it
     * @param facts every fact about it and about its bowls
     */
    public record Stay(Moment moment, Visit visit, List<Fact> facts) {}

    public EverythingPage(Moment moment, Client record) {
        this.moment = moment;
        this.record = record;
    }

    public SheetPage page(Shell shell) {
        var parts = new ArrayList<Part>();
        parts.add(presses());
        parts.add(told());
        parts.add(recipes());
        record.visits().forEach(stay -> parts.add(visit(stay)));
        if (record.visits().isEmpty()) {
            parts.add(new Part(moment.say("everything.visits.none"), List.of(), List.of()));
        }
        if (!record.looks().isEmpty()) {
            var looks = record.looks().stream().map(this::look).toList();
            parts.add(new Part(moment.say("everything.looks"), looks, List.of()));
        }
        var intro = moment.say("everything.intro", moment.salon(), record.label(), date(moment.now()));
        return new SheetPage(shell, moment.say("everything.title"), intro, parts, List.of());
    }

    private Part presses() {
        var file = "/api/clients/" + record.id().value() + "/export";
        return new Part(
                "",
                List.of(),
                List.of(
                        Press.opens(moment.say("everything.file"), "", file),
                        Press.opens(moment.say("privacy.title"), "", "/privacy"),
                        Press.opens(
                                moment.say("form.back"),
                                "",
                                "/clients/" + record.id().value())));
    }

    private Part told() {
        var rows = new ArrayList<Row>();
        rows.add(row(moment.say("everything.label"), record.label()));
        rows.add(row(moment.say("everything.number"), String.valueOf(record.id().value())));
        Stream.ofNullable(record.met()).forEach(met -> rows.add(row(moment.say("everything.met"), date(met))));
        record.notes().forEach(note -> rows.add(row(moment.say(note.kind()), DATE.format(note.on()))));
        return new Part(moment.say("everything.record"), rows, List.of());
    }

    private Part recipes() {
        var rows = moment.floor().salon().recipesOf(record.id()).stream()
                .flatMap(recipe -> recipe.versions().stream().map(version -> recipe(recipe, version)))
                .toList();
        return new Part(moment.say(rows.isEmpty() ? "everything.recipes.none" : "everything.recipes"), rows, List.of());
    }

    private Row recipe(KeptRecipe recipe, KeptRecipe.Version version) {
        var portions = version.portions().stream()
                .map(portion -> moment.say(
                        "fact.portion",
                        portion.grams().amount().toPlainString(),
                        moment.floor()
                                .salon()
                                .product(portion.product())
                                .map(product ->
                                        product.directions(portion.edition()).name())
                                .orElse("")))
                .collect(Collectors.joining(" + "));
        return new Row("", moment.texts().apply(version.name()), portions, recipe.dropped(), List.of());
    }

    private Part visit(Stay stay) {
        var served = Stream.of(
                        stay.visit().stay().stylist(), stay.visit().stay().helper())
                .map(stay.moment()::name)
                .filter(name -> !name.isEmpty())
                .collect(Collectors.joining(", "));
        var rows = new ArrayList<>(new FactRows(stay.moment()).toRead(stay.facts().stream()));
        rows.add(
                0, row(stay.moment().label(stay.visit()), served.isEmpty() ? "" : moment.say("everything.by", served)));
        return new Part(moment.say("everything.visit", date(stay.visit().stay().arrivedAt())), rows, List.of());
    }

    private Row look(Look look) {
        var what = moment.say(look.did() ? "trail.did" : "trail.looked", moment.say(look.matter()));
        return new Row(date(look.at()), what, moment.name(look.person()), false, List.of());
    }

    private static Row row(String what, String detail) {
        return new Row("", what, detail, false, List.of());
    }

    private String date(Instant at) {
        return DATE.format(at.atZone(moment.time().zone()));
    }
}
