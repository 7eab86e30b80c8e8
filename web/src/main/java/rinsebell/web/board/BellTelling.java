package rinsebell.web.board;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Returned;
import rinsebell.floor.bell.Ring;
import rinsebell.floor.bell.Stage;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Visit;
import rinsebell.web.Codes;
import rinsebell.web.view.BellStrip;
import rinsebell.web.view.Press;
import rinsebell.web.view.Rung;
import rinsebell.web.view.Urgency;

/** Tells bells: to staff as they are, to the wall without anything that is private or alarms a client. */
final class BellTelling {
    private static final int SHOWN = 3;

    private final Moment moment;
    private final boolean wall;

    BellTelling(Moment moment, boolean wall) {
        this.moment = moment;
        this.wall = wall;
    }

    /**
     * The loudest first; of equals what does harm, whoever has seen it, for seen is not done; then those that nobody has
     * seen, then the one that rings longest.
     */
    Comparator<Bell> loudestFirst() {
        return Comparator.comparing((Bell bell) -> urgency(bell))
                .reversed()
                .thenComparing(bell -> harm(bell.kind()))
                .thenComparing(bell -> bell.isSeen(moment.now()))
                .thenComparing(Bell::since);
    }

    /** What has to come off goes before what has to be looked at. */
    static int harm(BellKind kind) {
        return switch (kind) {
            case BURNING, HOT_FOIL -> 0;
            case RINSE,
                    LEFT_WITH_IT_ON,
                    FORBIDDEN_HEAT,
                    FORBIDDEN_COVER,
                    FORBIDDEN_ZONE,
                    FORBIDDEN_MIXTURE,
                    PASSED_GATE -> 1;
            default -> 2;
        };
    }

    Urgency urgency(Bell bell) {
        return bell.at(moment.now())
                .map(Stage::priority)
                .map(BellTelling::urgency)
                .orElse(Urgency.CALM);
    }

    static Urgency urgency(Priority priority) {
        return switch (priority) {
            case SILENT -> Urgency.ASKED;
            case LOW -> Urgency.LOW;
            case MEDIUM -> Urgency.MEDIUM;
            case HIGH -> Urgency.HIGH;
        };
    }

    /** In a few words, such as "rinse now"; staff also read when it could not be saved. */
    String what(Bell bell) {
        return what(bell, bell.at(moment.now()).map(Stage::step).orElse(Stage.Step.SOON));
    }

    private String what(Bell bell, Stage.Step step) {
        var words = words(bell, step);
        return wall || bell.key().isSaved() ? words : moment.say("bell.unsaved", words);
    }

    private String words(Bell bell, Stage.Step step) {
        var kind = bell.kind().name().toLowerCase(Locale.ROOT);
        var atWall = "wall." + kind;
        if (wall && moment.words().knows(atWall)) {
            return moment.say(atWall);
        }
        if (bell.kind() == BellKind.PASSED_GATE) {
            return passedGate(bell);
        }
        if (!wall && isOffAndUnseen(bell)) {
            return moment.say("bell.off_at_once.off");
        }
        var withStep = "bell." + kind + "." + step.name().toLowerCase(Locale.ROOT);
        return moment.words().knows(withStep) ? moment.say(withStep) : moment.say("bell." + kind);
    }

    /** What hurt is off by now; what is left to do is to look at the scalp. */
    private boolean isOffAndUnseen(Bell bell) {
        return (bell.kind() == BellKind.BURNING || bell.kind() == BellKind.HOT_FOIL)
                && visit(bell).filter(visit -> visit.onHair().isEmpty()).isPresent();
    }

    private String passedGate(Bell bell) {
        return visit(bell)
                .flatMap(visit -> bell.reasons().stream().findFirst().map(new GateTelling(moment, visit)::takeOff))
                .orElse(moment.say("bell.passed_gate"));
    }

    /** The instant it counts to, or from. */
    Instant counts(Bell bell) {
        if (bell.kind() == BellKind.RINSE) {
            return bell.stages().stream()
                    .filter(stage -> stage.step() == Stage.Step.DUE)
                    .map(Stage::from)
                    .findFirst()
                    .orElse(bell.since());
        }
        if (bell.kind() == BellKind.BOWL_WAITING) {
            return bell.stages().get(bell.stages().size() - 1).from();
        }
        var isCheck = bell.kind() == BellKind.STRAND_CHECK || bell.kind() == BellKind.SCALP_CHECK;
        return isCheck ? bell.stages().get(0).from() : bell.since();
    }

    private Optional<Visit> visit(Bell bell) {
        return Optional.ofNullable(bell.visit()).flatMap(moment.floor()::visit);
    }

    /** The strip of bells that ring or ask now, and all that the device needs to ring by itself. */
    BellStrip strip(List<Bell> shown) {
        var ringing = rounds(shown.stream().filter(bell -> urgency(bell).rings()));
        var first = ringing.stream().limit(SHOWN).map(this::shown).toList();
        return new BellStrip(first, ringing.size() - first.size(), again(), rung(), missed());
    }

    /** Every bell that rings or asks now. */
    List<rinsebell.web.view.Bell> all(List<Bell> bells) {
        return rounds(bells.stream().filter(bell -> urgency(bell) != Urgency.CALM)).stream()
                .map(this::shown)
                .toList();
    }

    /** What is one round to a person, and asks as much in the same state, is told as one; the loudest round first. */
    private List<List<Bell>> rounds(Stream<Bell> bells) {
        var rounds = new LinkedHashMap<List<Object>, List<Bell>>();
        bells.sorted(loudestFirst())
                .forEach(bell -> rounds.computeIfAbsent(
                                List.of(bell.round(), urgency(bell), bell.state(moment.now())),
                                key -> new ArrayList<>())
                        .add(bell));
        return List.copyOf(rounds.values());
    }

    /** What rang and is gone, unseen: silent, and listed until somebody says that they have seen it. */
    List<rinsebell.web.view.Bell> gone(List<Returned> returned) {
        return returned.stream().map(this::gone).toList();
    }

    private rinsebell.web.view.Bell gone(Returned one) {
        return new rinsebell.web.view.Bell(
                id(one.key()),
                where(one.bell()),
                what(one.bell(), one.stage().step()),
                Urgency.ASKED,
                null,
                href(one.bell()),
                false,
                moment.say("bell.gone", moment.clock(one.stage().from()), moment.clock(one.gone())),
                hear(one.bell()),
                null);
    }

    private rinsebell.web.view.Bell shown(List<Bell> round) {
        var bell = round.get(0);
        var isQuiet = !bell.isRinging(moment.now());
        return new rinsebell.web.view.Bell(
                id(bell.key()),
                round.stream().map(this::where).distinct().collect(Collectors.joining(", ")),
                what(round),
                urgency(bell),
                counts(bell),
                href(bell),
                bell.isSeen(moment.now()),
                wall ? "" : new AnsweredTelling(moment).aside(bell),
                wall || isQuiet ? null : hear(bell),
                wall ? null : further(bell));
    }

    /** Why something was put on in spite of the gate, which ends its ringing; or that what is less urgent has to wait. */
    private @Nullable Press further(Bell bell) {
        if (bell.kind() == BellKind.PASSED_GATE) {
            return Press.opens(moment.say("bells.why"), "", at("acknowledge", bell));
        }
        var waits = bell.isRinging(moment.now()) && urgency(bell) != Urgency.HIGH;
        return waits ? Press.opens(moment.say("bells.shelve"), "", at("shelve", bell)) : null;
    }

    private String what(List<Bell> round) {
        var first = round.get(0);
        var isOfOneKind = round.stream().allMatch(bell -> bell.kind() == first.kind());
        return round.size() == 1
                ? what(first) + which(first, visit(first))
                : isOfOneKind ? what(first) : moment.say("bell.looks");
    }

    private Map<Urgency, Duration> again() {
        var house = moment.floor().salon().policy().ringing();
        return Stream.of(Priority.LOW, Priority.MEDIUM, Priority.HIGH)
                .collect(Collectors.toMap(BellTelling::urgency, priority -> priority.again(house)));
    }

    /** Every bell of the floor with what it will do: a device rings by this, whatever becomes of the server. */
    private List<Rung> rung() {
        return moment.bells().stream().map(this::rung).toList();
    }

    private Rung rung(Bell bell) {
        return new Rung(
                id(bell.key()),
                id(bell.round()),
                where(bell),
                counts(bell),
                href(bell),
                harm(bell.kind()),
                spoken(bell),
                wall ? null : hear(bell),
                bell.rings().stream().map(ring -> turn(bell, ring)).toList());
    }

    private Rung.Turn turn(Bell bell, Ring ring) {
        var how = switch (ring.state()) {
            case NORMAL, RETURNED_UNACKNOWLEDGED -> Rung.How.ASKS;
            case UNACKNOWLEDGED -> Rung.How.RINGS;
            case ACKNOWLEDGED -> Rung.How.HEARD;
            case SHELVED -> Rung.How.SHELVED;
        };
        var what = what(bell, ring.stage().step());
        return new Rung.Turn(ring.from(), what, urgency(ring.stage().priority()), how, EarCode.of(ring.reach()));
    }

    static String id(BellKey key) {
        return "bell-" + key.kind().name().toLowerCase(Locale.ROOT) + "-" + key.subject() + "-" + key.anchor();
    }

    private String where(Bell bell) {
        return visit(bell).map(moment::whereabouts).orElse(moment.say("bowls"));
    }

    /** Where and what, in one line. */
    String told(Bell bell) {
        return where(bell) + " · " + what(bell) + which(bell, visit(bell));
    }

    private String href(Bell bell) {
        return visit(bell).map(known -> "/visits/" + known.id().value()).orElse("/bowls");
    }

    /** Clients hear it: a place and a please, never whose it is or what for. */
    private String spoken(Bell bell) {
        return moment.say(
                "bell.spoken",
                visit(bell).map(visit -> moment.place(visit.place())).orElse(moment.say("bowls.spoken")));
    }

    /** Of several on one head, which one is to be looked at. */
    private String which(Bell bell, Optional<Visit> visit) {
        return visit.filter(head ->
                        bell.kind() == BellKind.STRAND_CHECK && head.live().size() > 1)
                .flatMap(head -> head.application(new ApplicationId(bell.key().subject())))
                .map(application -> moment.say("bell.which", moment.say(application.area())))
                .orElse("");
    }

    private static String hear(Bell bell) {
        return at("acknowledge", bell);
    }

    private static String at(String press, Bell bell) {
        var key = bell.key();
        return "/bells/" + press + "?kind=" + Codes.of(key.kind()) + "&subject=" + key.subject() + "&anchor="
                + key.anchor();
    }

    /** Since when and until when no server ran, while nobody has caught up on it; over all such times. */
    private @Nullable String missed() {
        var gaps = moment.floor().day().gaps();
        return gaps.isEmpty()
                ? null
                : moment.say(
                        "sheet.gaps.link",
                        moment.clock(gaps.get(0).from()),
                        moment.clock(gaps.get(gaps.size() - 1).until()));
    }
}
