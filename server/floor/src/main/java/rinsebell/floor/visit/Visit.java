package rinsebell.floor.visit;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.TextId;
import rinsebell.floor.salon.Place;

/**
 * One client from arrival to leaving: the fold of the visit's facts.
 *
 * @param id its name
 * @param stay where they are and with whom
 * @param gate the answers before anything goes on
 * @param applications everything put on, in the order of first-on
 * @param heats heat on the head, oldest first
 * @param scalpChecks looks at the scalp, oldest first
 * @param complaints discomfort, oldest first
 * @param round what was said after rinsing
 * @param services what they came for
 */
public record Visit(
        VisitId id,
        Stay stay,
        Gate gate,
        List<Application> applications,
        List<HeatSpan> heats,
        List<ScalpCheck> scalpChecks,
        List<Complaint> complaints,
        Round round,
        Services services) {
    public Visit {
        applications = List.copyOf(applications);
        heats = List.copyOf(heats);
        scalpChecks = List.copyOf(scalpChecks);
        complaints = List.copyOf(complaints);
    }

    /**
     * What was said after rinsing.
     *
     * @param towelDriedAt when the hair was last towel-dried; null for not since the last bowl went on
     * @param lift whether the last round was enough; null for not judged since then
     * @param stoppedAt when it was decided to stop here; null for not
     */
    public record Round(
            @Nullable Instant towelDriedAt,
            @Nullable Lift lift,
            @Nullable Instant stoppedAt) {
        static final Round NONE = new Round(null, null, null);
    }

    /** A visit of which only the stay is known. */
    public static Visit beginning(VisitId id, Stay stay) {
        return new Visit(
                id, stay, Gate.UNANSWERED, List.of(), List.of(), List.of(), List.of(), Round.NONE, Services.NONE);
    }

    public TextId label() {
        return stay.label();
    }

    public Place place() {
        return stay.place();
    }

    /** When it began: the arrival, or what was on before anybody wrote the arrival down. */
    public Instant begin() {
        return applications.stream()
                .map(Application::firstOn)
                .filter(firstOn -> firstOn.isBefore(stay.arrivedAt()))
                .min(Instant::compareTo)
                .orElse(stay.arrivedAt());
    }

    /** Until they left and nothing is on them: whoever is said to have left with something on still has clocks. */
    public boolean isOpen() {
        return stay.leftAt() == null || !onHair().isEmpty();
    }

    public Optional<Application> application(ApplicationId which) {
        return applications.stream().filter(one -> one.id().equals(which)).findFirst();
    }

    /** Applications that are on and that nothing has ended. */
    public List<Application> live() {
        return applications.stream().filter(Application::isLive).toList();
    }

    /** Applications of which some is still on the hair, covered ones too. */
    public List<Application> onHair() {
        return applications.stream().filter(Application::isOnHair).toList();
    }

    /** The same head, had the last of everything that still goes on been on by then. */
    public Visit supposingLastOn(Instant at) {
        var supposed = applications.stream()
                .map(one -> one.isLive() && one.lastOn() == null ? one.lastOnAt(at) : one)
                .toList();
        return new Visit(id, stay, gate, supposed, heats, scalpChecks, complaints, round, services);
    }

    /** The heat that is on now. */
    public Optional<HeatSpan> heat() {
        return heats.stream().filter(HeatSpan::isOn).reduce((first, second) -> second);
    }

    public Optional<ScalpCheck> lastScalpCheck() {
        return scalpChecks.isEmpty() ? Optional.empty() : Optional.of(scalpChecks.get(scalpChecks.size() - 1));
    }

    /** When product last came off the hair. */
    public Optional<Ending> lastOff() {
        return endings().filter(Ending::isOff).max((one, other) -> one.at().compareTo(other.at()));
    }

    private Stream<Ending> endings() {
        return applications.stream().map(Application::ending).flatMap(Stream::ofNullable);
    }

    /** Discomfort that asks for the product to come off at once. */
    public Stream<Complaint> severeComplaints() {
        return complaints.stream().filter(complaint -> complaint.grade().isOffAtOnce());
    }
}
