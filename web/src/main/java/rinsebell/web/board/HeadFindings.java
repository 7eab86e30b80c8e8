package rinsebell.web.board;

import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StrandCheck;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.Visit;

/** What was seen at the looks at a head. */
final class HeadFindings {
    private final Visit visit;

    HeadFindings(Visit visit) {
        this.visit = visit;
    }

    /**
     * Something seen that asks for what is on to come off.
     *
     * @param key of its words
     */
    record Bad(String key, Instant at) {}

    /** What was seen last, where it asks for what is on to come off. */
    Optional<Bad> bad() {
        return snapped()
                .flatMap(application -> stretched(application).stream())
                .findFirst()
                .map(check -> new Bad("line.snaps", check.at()))
                .or(() -> sore().map(check -> new Bad("line.sore", check.at())));
    }

    /** What is on hair that snapped when it was last stretched. */
    Stream<Application> snapped() {
        return visit.live().stream()
                .filter(application -> stretched(application)
                        .filter(check -> check.finding().stretch() == StrandFinding.Stretch.GIVES_WAY)
                        .isPresent());
    }

    /** The last look at which this was stretched. */
    static Optional<StrandCheck> stretched(Application application) {
        return application.checks().stream()
                .filter(check -> check.finding().stretch() != null)
                .reduce((first, second) -> second);
    }

    /** The last look at the scalp, where it was sore and something is on it. */
    Optional<ScalpCheck> sore() {
        return visit.lastScalpCheck()
                .filter(check -> check.finding() == ScalpCheck.Finding.SORE
                        && visit.onHair().stream().anyMatch(Application::isOnScalp));
    }

    /** The last look at a strand that says what it looked like. */
    static Optional<StrandCheck> read(Application application) {
        return application.checks().stream()
                .filter(check -> !check.finding().equals(StrandFinding.NOTHING_SAID))
                .reduce((first, second) -> second);
    }
}
