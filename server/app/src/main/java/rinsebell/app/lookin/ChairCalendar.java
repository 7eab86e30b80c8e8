package rinsebell.app.lookin;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.ParameterList;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.component.Standard;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.component.VTimeZone;
import net.fortuna.ical4j.model.parameter.Value;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.LastModified;
import net.fortuna.ical4j.model.property.Name;
import net.fortuna.ical4j.model.property.Organizer;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.RefreshInterval;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.TzId;
import net.fortuna.ical4j.model.property.TzOffsetFrom;
import net.fortuna.ical4j.model.property.TzOffsetTo;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableMethod;
import net.fortuna.ical4j.model.property.immutable.ImmutableTransp;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import rinsebell.web.board.ChairTime;
import rinsebell.web.board.LookTelling;
import rinsebell.web.board.Moment;

/**
 * When chairs come free, as a calendar (RFC 5545, with RFC 7986): for each taken chair whose time is known an event from
 * likely to almost surely. It names nobody, and takes up nobody's time. The same floor gives the same bytes.
 */
final class ChairCalendar {
    private static final String PROGRAM = "-//Rinsebell//Chairs//EN";

    /** Nothing is told more finely than that. */
    private static final Duration REFRESH = Duration.ofMinutes(5);

    private final Revisions revisions = new Revisions();

    /** @param link by which others differ, so that no two salons' events are ever taken for one another */
    byte[] of(Moment moment, String link) {
        var events = revisions.of(ChairTime.all(moment), moment.now()).stream()
                .map(event -> event(moment, link, event))
                .toList();
        var calendar = new Calendar(head(moment), new ComponentList<>(events.isEmpty() ? List.of(utc()) : events));
        return Folding.folded(calendar.toString()).getBytes(StandardCharsets.UTF_8);
    }

    private static PropertyList head(Moment moment) {
        return new PropertyList(List.of(
                ImmutableVersion.VERSION_2_0,
                new ProdId(PROGRAM),
                ImmutableMethod.PUBLISH,
                new Name(new LookTelling(moment).title()),
                new RefreshInterval(new ParameterList(List.of(Value.DURATION)), REFRESH)));
    }

    /** A calendar must hold something (section 3.6): where nothing is to be said, that is the zone it would be said in. */
    private static VTimeZone utc() {
        var always = new Standard(new PropertyList(List.of(
                new DtStart<>(LocalDateTime.of(1970, 1, 1, 0, 0)),
                new TzOffsetFrom(ZoneOffset.UTC),
                new TzOffsetTo(ZoneOffset.UTC))));
        return new VTimeZone(new PropertyList(List.of(new TzId("UTC"))), new ComponentList<>(List.of(always)));
    }

    private static VEvent event(Moment moment, String link, Revisions.Event event) {
        var free = event.revision().free();
        var since = event.revision().since();
        Stream<Property> said = Stream.of(
                new Uid(uuid(link + " " + event.visit().id().value() + " "
                                + event.chair().chair())
                        .toString()),
                // With a method in the calendar, this is when it came to say so, not when it was sent (3.8.7.2).
                new DtStamp(since),
                new LastModified(since),
                new Sequence(event.revision().number()),
                // Whoever publishes must be named (RFC 5546, section 3.2.1); there is no address to write to.
                new Organizer(URI.create("urn:uuid:" + uuid(link))),
                new DtStart<>(free.likely()),
                new Summary(LookTelling.summary(moment, event.chair())),
                ImmutableTransp.TRANSPARENT);
        // An event without an end is over as it begins; an end must be later (3.8.2.2).
        Stream<Property> end =
                free.latest().isAfter(free.likely()) ? Stream.of(new DtEnd<>(free.latest())) : Stream.empty();
        return new VEvent(new PropertyList(Stream.concat(said, end).toList()));
    }

    private static UUID uuid(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }
}
