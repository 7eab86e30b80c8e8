package rinsebell.web.board;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Stage;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Visit;
import rinsebell.web.view.BellStrip;
import rinsebell.web.view.Due;
import rinsebell.web.view.Urgency;

/** Tells bells: to staff as they are, to the wall without anything that is private or alarms a client. */
final class BellTelling {
    private static final int SHOWN = 3;
    private static final int ALONE = 6;

    private final Moment moment;
    private final boolean wall;

    BellTelling(Moment moment, boolean wall) {
        this.moment = moment;
        this.wall = wall;
    }

    /** The loudest first; of equals those that nobody has seen, then what does harm, then the one that rings longest. */
    Comparator<Bell> loudestFirst() {
        return Comparator.comparing((Bell bell) -> urgency(bell))
                .reversed()
                .thenComparing(bell -> bell.isSeen(moment.now()))
                .thenComparing(bell -> harm(bell.kind()))
                .thenComparing(Bell::since);
    }

    /** What has to come off goes before what has to be looked at. */
    private static int harm(BellKind kind) {
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
        var words = words(bell);
        return wall || bell.key().isSaved() ? words : moment.say("bell.unsaved", words);
    }

    private String words(Bell bell) {
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
        var step = bell.at(moment.now()).map(Stage::step).orElse(Stage.Step.SOON);
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

    /** What a screen that has lost the server rings by itself. */
    List<Due.Alone> alone(List<Bell> bells) {
        return bells.stream()
                .flatMap(bell -> bell.stages().stream())
                .filter(stage -> stage.priority().compareTo(Priority.MEDIUM) >= 0)
                .filter(stage -> stage.from().isAfter(moment.now()))
                .sorted()
                .limit(ALONE)
                .map(stage -> new Due.Alone(stage.from(), urgency(stage.priority())))
                .toList();
    }

    /** The strip of bells that ring or ask now. */
    BellStrip strip(List<Bell> bells) {
        var ringing = bells.stream()
                .filter(bell -> urgency(bell).rings())
                .sorted(loudestFirst())
                .toList();
        var shown = ringing.stream().limit(SHOWN).map(this::shown).toList();
        var loudest = ringing.stream()
                .filter(bell -> !bell.isSeen(moment.now()))
                .map(this::urgency)
                .max(Comparator.naturalOrder())
                .orElse(Urgency.CALM);
        return new BellStrip(shown, ringing.size() - shown.size(), loudest, missed());
    }

    /** Every bell that rings or asks now. */
    List<rinsebell.web.view.Bell> all(List<Bell> bells) {
        return bells.stream()
                .filter(bell -> urgency(bell) != Urgency.CALM)
                .sorted(loudestFirst())
                .map(this::shown)
                .toList();
    }

    private rinsebell.web.view.Bell shown(Bell bell) {
        var key = bell.key();
        var id = "bell-" + key.kind().name().toLowerCase(Locale.ROOT) + "-" + key.subject() + "-" + key.anchor();
        var visit = visit(bell);
        var where = visit.map(moment::whereabouts).orElse(moment.say("bowls"));
        var href = visit.map(known -> "/visits/" + known.id().value()).orElse("/bowls");
        return new rinsebell.web.view.Bell(
                id,
                where,
                what(bell) + which(bell, visit),
                urgency(bell),
                counts(bell),
                href,
                bell.isSeen(moment.now()),
                wall || bell.isSeen(moment.now()) ? null : hear(bell));
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
        var key = bell.key();
        return "/bells/acknowledge?kind=" + key.kind() + "&subject=" + key.subject() + "&anchor=" + key.anchor();
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
