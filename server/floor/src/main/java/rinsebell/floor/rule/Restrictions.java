package rinsebell.floor.rule;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.clock.HeadTiming;
import rinsebell.floor.clock.Terms;
import rinsebell.floor.clock.Timing;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Directions;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Limits;
import rinsebell.floor.product.Zone;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.HeatSpan;
import rinsebell.floor.visit.Visit;

/** What a head's directions, gate and history forbid. */
public final class Restrictions {
    /** In place of the number of an application, for one that is not on yet. */
    private static final long ONLY_PLANNED = 0;

    private final Floor floor;
    private final Visit visit;

    public Restrictions(Floor floor, Visit visit) {
        this.floor = floor;
        this.visit = visit;
    }

    /**
     * A bowl that somebody wants to put on.
     *
     * @param bowl which
     * @param zone where
     * @param cover what will lie over it
     * @param at when
     */
    public record Putting(BowlId bowl, Zone zone, Cover cover, Instant at) {}

    /** What this head may have while this is on it; empty with nothing on. */
    public Optional<WhileOn> whileOn() {
        var on = visit.onHair();
        return on.isEmpty()
                ? Optional.empty()
                : Optional.of(new WhileOn(
                        terms().allMatch(Terms::known),
                        on.stream().anyMatch(this::isAnotherRound),
                        terms().map(Terms::limits).reduce(Limits.FREE, Limits::and)));
    }

    /** Everything that forbids putting this on, in the order of harm. */
    public List<Reason> against(Putting putting) {
        var bowl = floor.bowl(putting.bowl());
        var terms = Terms.of(bowl.orElse(null), floor.salon());
        var found = new ArrayList<Reason>();
        if (!terms.known()) {
            found.add(Reason.of(ReasonCode.RECIPE_UNKNOWN));
        }
        found.addAll(zone(bowl, terms, putting.zone(), putting.at(), ONLY_PLANNED));
        found.addAll(GateRules.judgePlan(visit.gate(), terms, putting.zone(), putting.at(), floor.salon()));
        cover(terms, putting.cover()).ifPresent(found::add);
        visit.heat().flatMap(span -> heat(terms, span.heat())).ifPresent(found::add);
        pastUse(bowl, terms, putting.at()).ifPresent(found::add);
        bowl.ifPresent(known -> found.addAll(mixture(known)));
        return found.stream().distinct().sorted().toList();
    }

    /** Everything on this head that forbids a heat. */
    public List<Reason> against(Heat heat) {
        return terms().map(
                        terms -> terms.known() ? heat(terms, heat) : Optional.of(Reason.of(ReasonCode.RECIPE_UNKNOWN)))
                .flatMap(Optional::stream)
                .distinct()
                .sorted()
                .toList();
    }

    /** What forbids this cover over an application. */
    public List<Reason> against(Application application, Cover cover) {
        var terms = termsOf(application);
        return terms.known() ? cover(terms, cover).stream().toList() : List.of(Reason.of(ReasonCode.RECIPE_UNKNOWN));
    }

    /**
     * What an application that is on the hair breaks, whoever allowed it; the zone, the mixture and what heat or cover
     * lie over it. What lies over a bowl that another has covered is that one's matter. An unknown recipe breaks nothing but the rest that a scalp gets after severe discomfort.
     */
    public List<Reason> brokenBy(Application application) {
        var bowl = floor.bowl(application.bowl());
        var terms = termsOf(application);
        if (!terms.known()) {
            return afterDiscomfort(application.zone(), application.firstOn());
        }
        var found = new ArrayList<>(
                zone(
                                bowl,
                                terms,
                                application.zone(),
                                application.firstOn(),
                                application.id().value())
                        .stream()
                        .filter(reason -> reason.code().isRestriction())
                        .toList());
        if (application.isLive()) {
            cover(terms, application.cover().cover()).ifPresent(found::add);
        }
        visit.heat().map(HeatSpan::heat).flatMap(heat -> heat(terms, heat)).ifPresent(found::add);
        pastUse(bowl, terms, application.firstOn()).ifPresent(found::add);
        bowl.ifPresent(known -> found.addAll(mixture(known)));
        return found.stream().distinct().sorted().toList();
    }

    private List<Reason> mixture(Bowl bowl) {
        return MixtureRules.judge(bowl.portions(), floor.salon()).stream()
                .filter(reason -> reason.code().isRestriction())
                .toList();
    }

    /** What the gate refuses of an application that is on; of an unknown recipe only what it refuses of everything. */
    public List<Reason> gatePassedBy(Application application) {
        return GateRules.judge(
                visit.gate(), termsOf(application), application.zone(), application.firstOn(), floor.salon());
    }

    /** Whatever is in the bowl. */
    private List<Reason> afterDiscomfort(Zone zone, Instant at) {
        return zone == Zone.ON_SCALP && restsAt(at)
                ? List.of(Reason.of(ReasonCode.NO_CHEMICAL_ON_SCALP_TODAY))
                : List.of();
    }

    /** Whether the scalp rests from chemicals on that day, after burning, swelling, severe itch or a hot foil before. */
    public boolean restsAt(Instant at) {
        return headsOfClient()
                .flatMap(Visit::severeComplaints)
                .anyMatch(complaint -> complaint.at().isBefore(at) && isSameDay(complaint.at(), at));
    }

    private List<Reason> zone(Optional<Bowl> bowl, Terms terms, Zone zone, Instant at, long itself) {
        if (zone != Zone.ON_SCALP) {
            return List.of();
        }
        var found = new ArrayList<>(afterDiscomfort(zone, at));
        if (terms.isLightener() && isAnotherRound(bowl, at, itself)) {
            found.add(Reason.of(ReasonCode.ROUND_OFF_SCALP_ONLY));
        }
        bowl.ifPresent(known -> found.addAll(MixtureRules.judgeOnScalp(known.portions(), floor.salon())));
        return found;
    }

    /**
     * Another lightening round on a scalp that was lightened today: product was taken off since, or the bowl was mixed
     * as another round. A fresh bowl for a scalp that nothing has touched yet is none, nor is a refill.
     */
    private boolean isAnotherRound(Optional<Bowl> bowl, Instant at, long itself) {
        var saysSo =
                bowl.filter(known -> known.reason() == BowlReason.ANOTHER_ROUND).isPresent();
        return headsOfClient()
                .flatMap(head -> head.applications().stream())
                .filter(one -> one.id().value() != itself
                        && one.isOnScalp()
                        && one.firstOn().isBefore(at))
                .filter(one -> isSameDay(one.firstOn(), at) && lightened(one, itself == ONLY_PLANNED))
                .anyMatch(one -> saysSo || isTakenOffBefore(one, at));
    }

    /** Whether this, which is on, is another lightening round: it keeps off the scalp. */
    public boolean isAnotherRound(Application application) {
        return termsOf(application).isLightener()
                && isAnotherRound(floor.bowl(application.bowl()), application.firstOn(), ONLY_PLANNED);
    }

    /** What nobody knows may have been lightener: that refuses a plan, and rings nothing. */
    private boolean lightened(Application application, boolean orMayHave) {
        var terms = termsOf(application);
        return terms.isLightener() || (orMayHave && !terms.known());
    }

    private static boolean isTakenOffBefore(Application application, Instant at) {
        var ending = application.ending();
        return ending != null && ending.isOff() && !ending.at().isAfter(at);
    }

    /** This visit, and the same client's other visits that are known today. */
    private Stream<Visit> headsOfClient() {
        var client = visit.stay().client();
        return client == null
                ? Stream.of(visit)
                : floor.visits().stream()
                        .filter(other -> other.id().equals(visit.id())
                                || client.equals(other.stay().client()));
    }

    private boolean isSameDay(Instant one, Instant other) {
        return floor.salon().dayOf(one).equals(floor.salon().dayOf(other));
    }

    private static Optional<Reason> cover(Terms terms, Cover cover) {
        return terms.known() && !terms.limits().cover(cover).allowed()
                ? Optional.of(Reason.of(
                        ReasonCode.COVER_NOT_ALLOWED,
                        names(terms, limits -> !limits.cover(cover).allowed()),
                        cover))
                : Optional.empty();
    }

    private static Optional<Reason> heat(Terms terms, Heat heat) {
        return terms.known() && !terms.limits().heat(heat).allowed()
                ? Optional.of(Reason.of(
                        ReasonCode.HEAT_NOT_ALLOWED,
                        names(terms, limits -> !limits.heat(heat).allowed()),
                        heat))
                : Optional.empty();
    }

    private static Optional<Reason> pastUse(Optional<Bowl> bowl, Terms terms, Instant at) {
        return bowl.flatMap(known -> terms.usableUntil(known.mixedAt())
                .filter(end -> !at.isBefore(end))
                .map(end -> Reason.of(ReasonCode.BOWL_PAST_USE, end)));
    }

    private Terms termsOf(Application application) {
        return Terms.of(floor.bowl(application.bowl()).orElse(null), floor.salon());
    }

    private Stream<Terms> terms() {
        return HeadTiming.of(floor, visit).timings().stream().map(Timing::terms);
    }

    /** Those of a mixture whose directions say so; what goes along with them is not named. */
    private static String names(Terms terms, Predicate<Limits> saySo) {
        return terms.directions().stream()
                .filter(one -> saySo.test(one.limits()))
                .map(Directions::name)
                .collect(Collectors.joining(", "));
    }
}
