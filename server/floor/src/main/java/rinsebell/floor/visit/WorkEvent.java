package rinsebell.floor.visit;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Fact;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.BowlId;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Zone;
import rinsebell.floor.rule.Restrictions;

/** What is done to a head. */
public sealed interface WorkEvent extends VisitEvent {
    /**
     * The first of a bowl went on. A bowl that is on the same area is covered by it.
     *
     * @param planned the time the stylist plans, counted as the directions count development; null for none
     */
    record PutOn(
            BowlId bowl,
            Area area,
            Zone zone,
            Cover cover,
            @Nullable Duration planned) implements WorkEvent {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.putOn(new Application(
                    new ApplicationId(fact.seq()),
                    bowl,
                    area,
                    zone,
                    fact.happened(),
                    null,
                    List.of(new CoverSpan(fact.seq(), cover, fact.happened())),
                    planned,
                    List.of(),
                    List.of(),
                    null));
        }

        @Override
        public Set<Long> hangsOn() {
            return Set.of(bowl.value());
        }

        @Override
        public List<Reason> objections(Situation situation) {
            var known = situation.floor().bowl(bowl);
            if (known.isEmpty()) {
                return List.of(Reason.of(ReasonCode.NOT_KNOWN));
            }
            var gone = known.get().thrownAwayAt();
            return Reason.unless(gone == null || situation.at().isBefore(gone), ReasonCode.BOWL_GONE);
        }

        @Override
        public List<Reason> restrictions(Situation situation) {
            return situation.restrictions().against(new Restrictions.Putting(bowl, zone, cover, situation.at()));
        }

        @Override
        public Instant notBefore(Situation situation) {
            return situation
                    .floor()
                    .bowl(bowl)
                    .map(Bowl::mixedAt)
                    .orElse(situation.visit().begin());
        }
    }

    /** The last of it is on. */
    record LastOn(ApplicationId application) implements WorkEvent, OnApplication {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.change(application, one -> one.lastOnAt(fact.happened()));
        }

        @Override
        public ApplicationId subject() {
            return application;
        }
    }

    record CoverChanged(ApplicationId application, Cover cover) implements WorkEvent, OnApplication {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.change(application, one -> one.covered(fact.seq(), cover, fact.happened()));
        }

        @Override
        public List<Reason> restrictions(Situation situation) {
            return situation.visit().application(application).stream()
                    .flatMap(one -> situation.restrictions().against(one, cover).stream())
                    .toList();
        }

        @Override
        public ApplicationId subject() {
            return application;
        }
    }

    /** The time planned was changed; null for none. */
    record Planned(ApplicationId application, @Nullable Duration time) implements WorkEvent, OnApplication {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.plan(application, time);
        }

        @Override
        public ApplicationId subject() {
            return application;
        }
    }

    /** Heat on the whole head; another heat ends it. */
    record HeatOn(Heat heat) implements WorkEvent {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.heatOn(fact.seq(), heat, fact.happened());
        }

        @Override
        public List<Reason> restrictions(Situation situation) {
            return situation.restrictions().against(heat);
        }
    }

    record HeatOff() implements WorkEvent {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.heatOff(fact.happened());
        }

        /** Not before the heat that it ends: what was on at that instant, or went on later. */
        @Override
        public List<Reason> objections(Situation situation) {
            var heat = situation.visit().heats().stream()
                    .filter(span -> !span.isOverAt(situation.at()))
                    .map(HeatSpan::from)
                    .min(Instant::compareTo);
            return heat.map(from -> Reason.unless(!situation.at().isBefore(from), ReasonCode.TOO_EARLY, from))
                    .orElse(List.of(Reason.of(ReasonCode.HEAT_NOT_ON)));
        }
    }

    /** Some foils were taken out; the clocks run on. */
    record FoilsOut(ApplicationId application) implements WorkEvent, OnApplication {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.change(application, one -> one.foilsOutAt(fact.happened()));
        }

        @Override
        public ApplicationId subject() {
            return application;
        }
    }

    /** Worked up with a little water; the clocks run on. */
    record Emulsified(ApplicationId application) implements WorkEvent, OnApplication {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            // A fact for the day sheet alone: no clock follows from it.
        }

        @Override
        public ApplicationId subject() {
            return application;
        }
    }

    /**
     * Product came off.
     *
     * @param applications which; never empty
     * @param how rinsed or wiped off
     */
    record TakenOff(Set<ApplicationId> applications, Ending.How how) implements WorkEvent {
        public TakenOff {
            applications = Set.copyOf(applications);
            if (applications.isEmpty() || how == Ending.How.COVERED) {
                throw new IllegalArgumentException("something is rinsed or wiped off: " + applications + ", " + how);
            }
        }

        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.end(applications, new Ending(fact.seq(), how, fact.happened()));
            // Nobody rinses under a dryer: whoever goes back under it says so again.
            if (how == Ending.How.RINSED) {
                fold.heatOff(fact.happened());
            }
        }

        @Override
        public Set<Long> hangsOn() {
            return applications.stream().map(ApplicationId::value).collect(Collectors.toUnmodifiableSet());
        }

        @Override
        public List<Reason> objections(Situation situation) {
            return applications.stream()
                    .flatMap(one -> situation.unlessOn(one).stream())
                    .distinct()
                    .toList();
        }

        @Override
        public Instant notBefore(Situation situation) {
            return applications.stream()
                    .map(situation::firstOn)
                    .max(Instant::compareTo)
                    .orElse(situation.visit().begin());
        }
    }

    record TowelDried() implements WorkEvent {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.towelDried(fact.happened());
        }
    }
}
