package rinsebell.web.form;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.stream.Stream;
import rinsebell.floor.Command;
import rinsebell.floor.command.Arrange;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.salon.Service;
import rinsebell.floor.visit.StayEvent;
import rinsebell.web.Codes;

/** Reads what a client came for, and how long that takes here. */
final class ServiceForm {
    static final int LONGEST_MINUTES = 240;

    /** More than these nobody has done in one visit. */
    private static final int MOST = 8;

    /** Those that somebody says are begun or over; of a bowl and a toner the hair tells. */
    static final List<Service> TOLD = List.of(Service.CUT, Service.BLOW_DRY);

    static final String UNTIL = "until";

    private ServiceForm() {}

    /** Those that have a length of their own. */
    static Stream<Service> timed() {
        return Arrays.stream(Service.values()).filter(Service::isTimed);
    }

    static String field(Service service) {
        return "times." + Codes.of(service);
    }

    static StayEvent.ServicesListed listed(Entries entries) {
        return new StayEvent.ServicesListed(some(entries));
    }

    /** By when they were told to be done. */
    static StayEvent.EndTold told(Entries entries) {
        var from = EntryTimes.happened(entries).happened();
        var until = entries.needed(UNTIL, EntryTimes.coming(entries, UNTIL, from), from);
        return new StayEvent.EndTold(Duration.between(from, until));
    }

    static List<Service> some(Entries entries) {
        var services = new ArrayList<Service>();
        for (var typed : entries.all("services")) {
            var code = Typed.tidy(typed);
            if (!code.isEmpty()) {
                entries.known("services", Codes.choice(Service.class, code), Fault.NOT_A_CHOICE)
                        .ifPresent(services::add);
            }
        }
        if (services.size() > MOST) {
            entries.fault("services", Fault.TOO_MANY, MOST);
        }
        // They are done in one order, however they were ticked.
        return services.stream().sorted().toList();
    }

    static Service service(Entries entries) {
        var said = entries.choice("service", Service.class)
                .flatMap(service -> entries.known(
                        "service", java.util.Optional.of(service).filter(TOLD::contains), Fault.NOT_A_CHOICE));
        return entries.needed("service", said, Service.CUT);
    }

    static Command times(Entries entries) {
        var now = entries.floor().salon().times();
        var next = new EnumMap<Service, Duration>(Service.class);
        timed().forEach(service -> next.put(
                service, entries.minutes(field(service), 1, LONGEST_MINUTES).orElse(now.of(service))));
        return new Arrange(new SalonEvent.ServiceTimesSet(next), null);
    }
}
