package rinsebell.db.codec;

import java.util.List;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Service;
import rinsebell.floor.visit.StayEvent.Arrived;
import rinsebell.floor.visit.StayEvent.ClientLinked;
import rinsebell.floor.visit.StayEvent.EndTold;
import rinsebell.floor.visit.StayEvent.GateAnswered;
import rinsebell.floor.visit.StayEvent.HandedOver;
import rinsebell.floor.visit.StayEvent.Left;
import rinsebell.floor.visit.StayEvent.Moved;
import rinsebell.floor.visit.StayEvent.Relabelled;
import rinsebell.floor.visit.StayEvent.ServiceBegan;
import rinsebell.floor.visit.StayEvent.ServiceEnded;
import rinsebell.floor.visit.StayEvent.ServicesListed;

/** Where a client is, and with whom. */
final class StayEventKinds {

    static final List<EventKind<?>> ALL = List.of(
            EventKind.first(
                    "arrived",
                    Arrived.class,
                    (event, out) -> out.object("place", event.place(), StayEventKinds::writePlace)
                            .number("stylist", Ids.of(event.stylist()))
                            .number("helper", Ids.of(event.helper()))
                            .number("client", Ids.of(event.client())),
                    in -> new Arrived(
                            in.object("place", StayEventKinds::readPlace),
                            Ids.staff(in, "stylist"),
                            Ids.staff(in, "helper"),
                            Ids.client(in, "client"))),
            EventKind.bare("relabelled", Relabelled.class, Relabelled::new),
            EventKind.first(
                    "client-linked",
                    ClientLinked.class,
                    (event, out) -> out.number("client", Ids.of(event.client())),
                    in -> new ClientLinked(Ids.client(in, "client"))),
            EventKind.first(
                    "gate-answered",
                    GateAnswered.class,
                    (event, out) -> out.object("answers", event.answers(), GateJson::write),
                    in -> new GateAnswered(in.object("answers", GateJson::read))),
            EventKind.first(
                    "moved",
                    Moved.class,
                    (event, out) -> out.object("place", event.place(), StayEventKinds::writePlace),
                    in -> new Moved(in.object("place", StayEventKinds::readPlace))),
            EventKind.first(
                    "handed-over",
                    HandedOver.class,
                    (event, out) ->
                            out.number("stylist", Ids.of(event.stylist())).number("helper", Ids.of(event.helper())),
                    in -> new HandedOver(Ids.staff(in, "stylist"), Ids.staff(in, "helper"))),
            EventKind.first(
                    "services-listed",
                    ServicesListed.class,
                    (event, out) -> out.inOrder("services", event.services()),
                    in -> new ServicesListed(in.maybeConstants("services", Service.class))),
            EventKind.first(
                    "service-began",
                    ServiceBegan.class,
                    (event, out) -> out.constant("service", event.service()),
                    in -> new ServiceBegan(in.constant("service", Service.class))),
            EventKind.first(
                    "service-ended",
                    ServiceEnded.class,
                    (event, out) -> out.constant("service", event.service()),
                    in -> new ServiceEnded(in.constant("service", Service.class))),
            EventKind.first(
                    "end-told",
                    EndTold.class,
                    (event, out) -> out.duration("in", event.in()),
                    in -> new EndTold(in.duration("in"))),
            EventKind.bare("left", Left.class, Left::new));

    private StayEventKinds() {}

    private static void writePlace(Place place, Writing out) {
        if (place instanceof Place.Chair chair) {
            out.whole("chair", chair.number());
        } else if (place instanceof Place.Basin basin) {
            out.whole("basin", basin.number());
        } else {
            out.flag("bench", true);
        }
    }

    private static Place readPlace(Reading in) {
        return in.maybeWhole("chair")
                .map(Place::chair)
                .or(() -> in.maybeWhole("basin").map(Place::basin))
                .orElseGet(() -> bench(in));
    }

    private static Place bench(Reading in) {
        in.flag("bench");
        return Place.BENCH;
    }
}
