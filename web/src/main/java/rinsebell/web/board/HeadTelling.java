package rinsebell.web.board;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.rule.Restrictions;
import rinsebell.floor.rule.WhileOn;
import rinsebell.floor.salon.Place;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Visit;
import rinsebell.web.view.Due;
import rinsebell.web.view.Urgency;

/** Tells one head: what is on, and what comes next. */
final class HeadTelling {
    final Moment moment;
    final Visit visit;
    final HeadTiming timing;
    final BellTelling bells;
    private final boolean wall;

    HeadTelling(Moment moment, Visit visit, boolean wall) {
        this.moment = moment;
        this.visit = visit;
        this.timing = HeadTiming.of(moment.floor(), visit);
        this.bells = new BellTelling(moment, wall);
        this.wall = wall;
    }

    /** What comes next: the loudest bell; else what is asked; else what is coming; else where the client is. */
    Due due() {
        var next = new HeadNext(this);
        var loudest = next.asking().stream().findFirst();
        return bad(loudest)
                .or(() -> loudest.map(
                        bell -> new Due(bells.what(bell), bells.counts(bell), bells.urgency(bell), aside(bell))))
                .or(() -> next.coming().stream().findFirst().map(this::due))
                .orElseGet(() -> new Due(restingOrIdle(), null, Urgency.CALM, ""));
    }

    /** Staff read what was seen and must come off before all but what hurts already. */
    private Optional<Due> bad(Optional<Bell> loudest) {
        return wall || loudest.filter(bell -> hurts(bell.kind())).isPresent()
                ? Optional.empty()
                : new HeadFindings(visit)
                        .bad()
                        .map(seen -> new Due(
                                moment.say("due.off_now", moment.say(seen.key())),
                                seen.at(),
                                Urgency.HIGH,
                                aside(seen.at())));
    }

    private Due due(HeadNext.Coming coming) {
        return new Due(moment.say(coming.key()), coming.at(), Urgency.CALM, aside(coming.at()));
    }

    private String aside(Bell bell) {
        return bell.kind() == BellKind.BOWL_WAITING
                ? moment.say("due.usable", moment.clock(bells.counts(bell)))
                : aside(bells.counts(bell));
    }

    /** After a rinse staff read what is left to do; the wall says where the client is. */
    private String restingOrIdle() {
        return wall ? idle() : new AfterRinse(this).words().orElseGet(this::idle);
    }

    /** The rinse alone: the bell for it, burning and hot foil among them; else its instant. Empty while nothing is on. */
    Optional<Due> rinse() {
        var own = own();
        return own.stream()
                .filter(bell -> isRinse(bell.kind()) && bells.urgency(bell) != Urgency.CALM)
                .min(bells.loudestFirst())
                .map(bell -> new Due(bells.what(bell), bells.counts(bell), bells.urgency(bell), ""))
                .or(() -> timing.rinseBy().map(limit -> new Due(moment.say("due.rinse"), limit.at(), Urgency.CALM, "")))
                .map(due -> new Due(due.what(), due.at(), due.urgency(), asideOf(due)));
    }

    private static boolean isRinse(BellKind kind) {
        return kind == BellKind.RINSE || hurts(kind);
    }

    private static boolean hurts(BellKind kind) {
        return kind == BellKind.BURNING || kind == BellKind.HOT_FOIL;
    }

    private String asideOf(Due due) {
        return due.instant().map(this::aside).orElse("");
    }

    /** What this head may have while this is on it; empty with nothing on. */
    Optional<WhileOn> whileOn() {
        return new Restrictions(moment.floor(), visit).whileOn();
    }

    List<Bell> own() {
        return moment.bells().stream()
                .filter(bell -> visit.id().equals(bell.visit()))
                .toList();
    }

    /** Clock times beside the count, so that people can copy them to paper when the power goes. */
    private String aside(Instant due) {
        var clocks = Stream.concat(
                timing.rinseBy().filter(limit -> limit.at().equals(due)).isPresent()
                        ? Stream.of()
                        : Stream.of(moment.clock(due)),
                Stream.concat(foilsBefore(due), rinseByClock()));
        return clocks.collect(Collectors.joining(" · "));
    }

    private Stream<String> rinseByClock() {
        return timing.rinseBy().map(limit -> moment.say("due.aside", moment.clock(limit.at()))).stream();
    }

    /** Staff read beside the rinse when its work begins; the wall has no room for it. */
    private Stream<String> foilsBefore(Instant due) {
        return wall
                ? Stream.of()
                : new HeadNext(this)
                                .foilsOut()
                                .filter(at -> !at.equals(due))
                                .map(at -> moment.say("due.aside.foils", moment.clock(at)))
                                .stream();
    }

    private String idle() {
        if (isBowlWaiting()) {
            return moment.say("due.not_on");
        }
        if (visit.place() instanceof Place.Basin basin) {
            return moment.say("due.at_basin", basin.letter());
        }
        if (visit.place() instanceof Place.Bench) {
            return moment.say("due.on_bench");
        }
        return moment.say(timing.isAnythingOn() ? "due.on" : "due.seated");
    }

    boolean isBowlWaiting() {
        return moment.floor().waitingBowls().stream()
                .anyMatch(bowl -> visit.id().equals(bowl.forVisit()));
    }

    /** What is on, in a line: "Powder lightener · foils, all round". */
    String state() {
        var on = visit.live().stream().map(this::what).toList();
        if (on.isEmpty()) {
            return idle();
        }
        return on.get(0) + (on.size() > 1 ? moment.say("head.more", on.size() - 1) : "");
    }

    String what(Application application) {
        return moment.say(
                "head.on",
                moment.bowl(moment.floor().bowl(application.bowl())),
                moment.say(application.area()),
                moment.say(application.zone()));
    }

    /** The same for the desk, where neither scalp nor hair is anybody's business. */
    String stage() {
        return visit.live().stream().findFirst().map(this::brief).orElseGet(this::idle);
    }

    /** The same in fewer words, for a drawing. */
    String brief(Application application) {
        return moment.say(
                "head.brief", moment.bowl(moment.floor().bowl(application.bowl())), moment.say(application.area()));
    }

    /** The urgency of this visit's bell of a kind; calm when none rings. */
    Urgency urgency(BellKind kind, long subject) {
        return own().stream()
                .filter(bell -> bell.kind() == kind && bell.key().subject() == subject)
                .map(bells::urgency)
                .max(Comparator.naturalOrder())
                .orElse(Urgency.CALM);
    }

    RibbonDrawing ribbon() {
        return new RibbonDrawing(this);
    }

    @Nullable
    Instant rinseBy() {
        return timing.rinseBy().map(limit -> limit.at()).orElse(null);
    }
}
