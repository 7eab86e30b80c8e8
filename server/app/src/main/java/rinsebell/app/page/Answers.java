package rinsebell.app.page;

import io.javalin.http.Context;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.app.desk.Outcome;
import rinsebell.app.door.Numbered;
import rinsebell.db.Rebuild;
import rinsebell.floor.Asked;
import rinsebell.floor.Fact;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.command.Mix;
import rinsebell.floor.salon.StaffId;
import rinsebell.web.Codes;
import rinsebell.web.board.DoneTelling;
import rinsebell.web.board.Moment;
import rinsebell.web.board.ReasonTelling;
import rinsebell.web.form.FaultWords;
import rinsebell.web.form.FieldError;
import rinsebell.web.form.Fields;
import rinsebell.web.view.Answer;
import rinsebell.web.view.Press;

/** What a screen says after a press: done and undo, or refused and the two answers to that. */
public final class Answers {
    /** The part of an address that names the facts of the last press. */
    private static final String DONE = "done";

    private static final DateTimeFormatter DATE = DateTimeFormatter.ISO_LOCAL_DATE;

    private static final int MOST_FACTS = 20;

    /** The field that says whether something is only intended. */
    private static final String INTENT = "intent";

    private static final String AT = "at";

    /** How the instant in {@code at} is known: an instant that a screen reckoned is not one that somebody typed. */
    private static final String TOLD = "told";

    /** What the second answer to a refusal says in its own way, or anew. */
    private static final Set<String> SAID_ANEW = Set.of(INTENT, AT, TOLD, "minutesAgo");

    /**
     * A press as it was sent.
     *
     * @param address where to
     * @param typed everything that was typed
     * @param about how it was asked, and about which instant
     */
    public record Sent(String address, Fields typed, Asked about) {}

    private static final Duration TELLS_OF_REBUILD = Duration.ofDays(14);

    private final @Nullable Rebuild rebuilt;
    private final Supplier<Optional<Instant>> copiesFailingSince;

    public Answers() {
        this(null, Optional::empty);
    }

    /**
     * Tells the log of the day what it must know of the disk.
     *
     * @param rebuilt how the tables were made again the last time; null for never
     * @param copiesFailingSince since when no copy of them could be made
     */
    public Answers(@Nullable Rebuild rebuilt, Supplier<Optional<Instant>> copiesFailingSince) {
        this.rebuilt = rebuilt;
        this.copiesFailingSince = copiesFailingSince;
    }

    /** What the page that the last press led to says of it, by the numbers of its facts in the address. */
    Optional<Answer> of(Context ctx, Moment moment) {
        var facts = Stream.of(
                        Objects.requireNonNullElse(ctx.queryParam(DONE), "").split(",", MOST_FACTS))
                .flatMap(number -> Numbered.number(number).stream())
                .flatMap(seq -> moment.floor().fact(seq).stream())
                .filter(moment.floor()::stands)
                .map(Fact::seq)
                .toList();
        var telling = DoneTelling.of(facts, moment);
        return facts.isEmpty()
                ? onDay(ctx, moment)
                : Optional.of(new Answer(Answer.Kind.DONE, telling.text(), cautions(facts, moment), telling.presses()));
    }

    private Optional<Answer> onDay(Context ctx, Moment moment) {
        return ctx.path().equals("/day") ? ofDisk(moment) : Optional.empty();
    }

    private Optional<Answer> ofDisk(Moment moment) {
        var told = Stream.of(noCopies(moment), lost(moment), lacking(moment))
                .flatMap(Optional::stream)
                .toList();
        return told.stream()
                .findFirst()
                .map(first -> new Answer(
                        Answer.Kind.NOT_SAVED,
                        first,
                        told.stream()
                                .skip(1)
                                .map(rest -> new Answer.Reason(rest, "", ""))
                                .toList(),
                        List.of()));
    }

    private Optional<String> noCopies(Moment moment) {
        return copiesFailingSince
                .get()
                .map(since -> moment.say("answer.no_copies", date(since, moment), moment.clock(since)));
    }

    /** For a fortnight the log of the day says what may be missing, and why. */
    private Optional<String> lost(Moment moment) {
        return recent(moment).map(made -> {
            var until = Objects.requireNonNullElse(made.copied(), made.at());
            return moment.say(
                    "answer.rebuilt." + made.source().name().toLowerCase(Locale.ROOT),
                    date(made.at(), moment),
                    moment.clock(made.at()),
                    date(until, moment),
                    moment.clock(until));
        });
    }

    private Optional<String> lacking(Moment moment) {
        return recent(moment)
                .filter(made -> made.lacking() > 0)
                .map(made -> moment.say("answer.rebuilt.lacking", made.lacking()));
    }

    private Optional<Rebuild> recent(Moment moment) {
        return Optional.ofNullable(rebuilt)
                .filter(made -> made.at().plus(TELLS_OF_REBUILD).isAfter(moment.now()));
    }

    private static String date(Instant at, Moment moment) {
        return DATE.format(at.atZone(moment.time().zone()));
    }

    /** What to mind of the bowls that were mixed. */
    private static List<Answer.Reason> cautions(List<Long> facts, Moment moment) {
        return facts.stream()
                .flatMap(seq -> moment.floor().bowl(new BowlId(seq)).stream())
                .flatMap(bowl -> Mix.cautions(moment.floor(), bowl).stream())
                .map(caution -> ReasonTelling.told(caution, moment))
                .toList();
    }

    /** The address of a page that tells what a press led to. */
    public static String told(String page, List<Long> facts) {
        var numbers = facts.stream().limit(MOST_FACTS).map(String::valueOf).collect(Collectors.joining(","));
        return numbers.isEmpty() ? page : page + (page.contains("?") ? "&" : "?") + DONE + "=" + numbers;
    }

    /** Recorded, and can be undone whole. */
    public Answer done(List<Long> facts, List<Outcome.Said> cautions, Moment moment) {
        var telling = DoneTelling.of(facts, moment);
        return new Answer(Answer.Kind.DONE, telling.text(), reasons(cautions, moment), telling.presses());
    }

    /** Refused: all reasons, and where it may have been done all the same, "not done" and "already done". */
    public Answer refused(Outcome outcome, Sent sent, Moment moment) {
        var presses = new ArrayList<Press>();
        if (outcome.canBeFact()) {
            presses.add(Press.opens(moment.say("answer.not_done"), "", back(sent.address())));
            presses.add(Press.sends(
                    moment.say("answer.already_done"),
                    moment.say("answer.already_done.hint"),
                    sent.address(),
                    asFact(sent)));
        }
        return new Answer(
                Answer.Kind.REFUSED, moment.say("answer.refused"), reasons(outcome.reasons(), moment), presses);
    }

    /** Who pressed? Whoever is touched is named there from then on, and what was pressed counts from when it was. */
    public Answer who(String address, Fields typed, Moment moment) {
        var presses = moment.floor().salon().working().stream()
                .map(member -> Press.sends(moment.name(member.id()), "", address, as(member.id(), typed, moment)))
                .toList();
        return new Answer(Answer.Kind.REFUSED, moment.say("answer.who"), List.of(), presses);
    }

    private static Press.Hidden[] as(StaffId who, Fields typed, Moment moment) {
        var hidden = new ArrayList<>(typed(typed, FormBody.OF_SENDING));
        if (typed.first(AT).isEmpty() && typed.first("minutesAgo").isEmpty()) {
            hidden.add(new Press.Hidden(AT, moment.now().toString()));
        }
        hidden.add(new Press.Hidden(Who.NAME, String.valueOf(who.value())));
        return hidden.toArray(Press.Hidden[]::new);
    }

    private static List<Press.Hidden> typed(Fields typed, Set<String> but) {
        return typed.names().stream()
                .filter(name -> !but.contains(name))
                .flatMap(name -> typed.all(name).stream().map(value -> new Press.Hidden(name, value)))
                .toList();
    }

    private static String back(String address) {
        var end = address.lastIndexOf('/');
        return end <= 0 ? "/" : address.substring(0, end);
    }

    /** It was done when it was first pressed, however long the refusal and the second answer took. */
    private static Press.Hidden[] asFact(Sent sent) {
        var said = new HashSet<>(SAID_ANEW);
        said.addAll(FormBody.OF_SENDING);
        var hidden = new ArrayList<>(typed(sent.typed(), said));
        hidden.add(new Press.Hidden(AT, sent.about().happened().toString()));
        if (sent.about().told() != Asked.Told.NOW) {
            hidden.add(new Press.Hidden(TOLD, Codes.of(sent.about().told())));
        }
        hidden.add(new Press.Hidden(INTENT, "fact"));
        return hidden.toArray(Press.Hidden[]::new);
    }

    /** Something typed is wrong; the form still holds it. */
    public Answer wrong(List<FieldError> errors, Moment moment) {
        var reasons = errors.stream()
                .map(error -> new Answer.Reason(moment.say("answer.field", error.field(), says(error, moment)), "", ""))
                .collect(Collectors.toList());
        return new Answer(Answer.Kind.REFUSED, moment.say("answer.wrong"), reasons, List.of());
    }

    /** What is wrong with a field, in a sentence. */
    public static String says(FieldError error, Moment moment) {
        return new FaultWords(moment.words()).say(error);
    }

    /** Still being written. */
    public Answer notKnown(Moment moment) {
        return new Answer(Answer.Kind.NOT_SAVED, moment.say("answer.not_known"), List.of(), List.of());
    }

    /** The id of a form was used for something else: a page from the browser's memory that was filled in anew. */
    public Answer reused(Moment moment) {
        return new Answer(Answer.Kind.NOT_SAVED, moment.say("answer.reused"), List.of(), List.of());
    }

    /** @param rings whether it rings on every screen all the same */
    public Answer notSaved(boolean rings, Moment moment) {
        var key = rings ? "answer.not_saved_rings" : "answer.not_saved";
        return new Answer(Answer.Kind.NOT_SAVED, moment.say(key), List.of(), List.of());
    }

    /** The same answer with a press that sends again what was typed: there is no page to give it back on. */
    public Answer holding(Answer answer, String address, Fields typed, Moment moment) {
        var hidden = typed(typed, FormBody.OF_SENDING).toArray(Press.Hidden[]::new);
        var again = Press.sends(moment.say("answer.again"), "", address, hidden).as(Press.Weight.MAIN);
        return new Answer(answer.kind(), answer.text(), answer.reasons(), List.of(again));
    }

    private static List<Answer.Reason> reasons(List<Outcome.Said> said, Moment moment) {
        return said.stream()
                .map(reason -> ReasonTelling.told(reason.text(), reason.basis(), moment))
                .toList();
    }
}
