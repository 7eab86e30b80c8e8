package rinsebell.floor.visit;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Fact;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.TextId;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Service;
import rinsebell.floor.salon.StaffId;

/** Where a client is, and with whom. */
public sealed interface StayEvent extends VisitEvent {
    /**
     * The client came; the fact's text is the short label.
     *
     * @param place where they were put
     * @param stylist whose client; null for nobody yet
     * @param helper who helps; null for nobody
     * @param client whose record; null when nobody known
     */
    record Arrived(
            Place place,
            @Nullable StaffId stylist,
            @Nullable StaffId helper,
            @Nullable ClientId client) implements StayEvent {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            var at = fact.happened();
            var chair = place instanceof Place.Chair seat ? seat : null;
            fold.arrive(new Stay(new TextId(fact.seq()), client, place, at, chair, stylist, helper, at, null));
        }
    }

    /** The label was put right; the fact's text is the new one. */
    record Relabelled() implements StayEvent {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.stay(stay -> stay.labelled(new TextId(fact.seq())));
        }
    }

    /** @param client whose record this visit belongs to; null to unlink */
    record ClientLinked(@Nullable ClientId client) implements StayEvent {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.stay(stay -> stay.linked(client));
        }
    }

    /** Questions of the gate were answered; what is null here stays as it was. */
    record GateAnswered(Gate answers) implements StayEvent {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.answer(answers);
        }
    }

    record Moved(Place place) implements StayEvent {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.stay(stay -> stay.movedTo(place, fact.happened()));
        }

        @Override
        public List<Reason> objections(Situation situation) {
            return situation.unlessFree(place);
        }
    }

    /**
     * Somebody else looks after the client.
     *
     * @param stylist null for nobody
     * @param helper null for nobody
     */
    record HandedOver(@Nullable StaffId stylist, @Nullable StaffId helper) implements StayEvent {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.stay(stay -> stay.with(stylist, helper));
        }

        @Override
        public List<Reason> objections(Situation situation) {
            var known = Stream.of(Optional.ofNullable(stylist), Optional.ofNullable(helper))
                    .flatMap(Optional::stream)
                    .allMatch(id -> situation.floor().salon().staffMember(id).isPresent());
            return Reason.unless(known, ReasonCode.NOT_KNOWN);
        }
    }

    /** What this client came for, in this order; what was said before counts no more. */
    record ServicesListed(List<Service> services) implements StayEvent {
        public ServicesListed {
            services = List.copyOf(services);
        }

        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.services(services -> services.listing(this.services));
        }
    }

    /** A service that is no bowl was begun. */
    record ServiceBegan(Service service) implements StayEvent {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.services(services -> services.begun(service, fact.happened()));
        }
    }

    /** A service that is no bowl is over. */
    record ServiceEnded(Service service) implements StayEvent {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.services(services -> services.ended(service, fact.happened()));
        }
    }

    /**
     * The client was told when they will be done.
     *
     * @param in how long from then
     */
    record EndTold(Duration in) implements StayEvent {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.services(services -> services.told(fact.happened().plus(in)));
        }
    }

    /** The client went. */
    record Left() implements StayEvent {
        @Override
        public void applyTo(VisitFold fold, Fact fact) {
            fold.stay(stay -> stay.leftAt(fact.happened()));
        }

        @Override
        public List<Reason> restrictions(Situation situation) {
            return Reason.unless(situation.visit().onHair().isEmpty(), ReasonCode.STILL_ON);
        }

        /** Whatever was put on or came off was before. */
        @Override
        public Instant notBefore(Situation situation) {
            var applications = situation.visit().applications().stream();
            return applications
                    .flatMap(one -> Stream.concat(
                            Stream.of(one.firstOn()),
                            Stream.ofNullable(one.ending()).map(Ending::at)))
                    .max(Instant::compareTo)
                    .orElse(situation.visit().begin());
        }
    }
}
