package rinsebell.web.form;

import java.util.List;
import java.util.stream.Stream;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.salon.Place;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Visit;
import rinsebell.web.Codes;
import rinsebell.web.form.FormDraft.Choice;

/** What can be chosen on this floor now. */
final class Choices {
    private Choices() {}

    private static Choice nobody(PageAsk ask) {
        return new Choice("", ask.say("choice.nobody"));
    }

    /** Everybody who works here, and nobody. */
    static List<Choice> working(PageAsk ask) {
        return Stream.concat(Stream.of(nobody(ask)), staff(ask)).toList();
    }

    /** Everybody who can have recorded something; it need not be said. */
    static List<Choice> recording(PageAsk ask) {
        return Stream.concat(Stream.of(new Choice("", ask.say("choice.not_said"))), staff(ask))
                .toList();
    }

    private static Stream<Choice> staff(PageAsk ask) {
        return ask.salon().working().stream()
                .map(member ->
                        new Choice(number(member.id().value()), ask.moment().name(member.id())));
    }

    /** Places that are free, and the one where somebody is. */
    static List<Choice> places(PageAsk ask) {
        return EntryPlaces.all(ask.salon().rooms())
                .filter(place -> isOpenFor(ask, place))
                .map(place -> new Choice(Codes.of(place), ask.moment().place(place)))
                .toList();
    }

    private static boolean isOpenFor(PageAsk ask, Place place) {
        var closed = place instanceof Place.Basin basin
                && ask.moment().floor().day().closedBasins().containsKey(basin.number());
        return !closed
                && (place instanceof Place.Bench
                        || ask.moment().floor().at(place).isEmpty());
    }

    static List<Choice> basins(PageAsk ask) {
        var basins = EntryPlaces.basins(ask.salon().rooms())
                .map(Place.Basin.class::cast)
                .map(basin -> new Choice(basin.letter(), ask.moment().place(basin)));
        return Stream.concat(Stream.of(new Choice("", ask.say("choice.here"))), basins)
                .toList();
    }

    /** Bowls that still stand, those for this visit first. */
    static List<Choice> bowls(PageAsk ask) {
        return standing(ask)
                .sorted((one, other) -> Boolean.compare(isFor(ask, other), isFor(ask, one)))
                .map(bowl -> new Choice(number(bowl.id().value()), bowl(ask, bowl)))
                .toList();
    }

    static Stream<Bowl> standing(PageAsk ask) {
        return ask.moment().floor().day().bowls().stream().filter(bowl -> !bowl.isThrownAway());
    }

    private static boolean isFor(PageAsk ask, Bowl bowl) {
        return bowl.forVisit() != null && bowl.forVisit().value() == ask.id();
    }

    static String bowl(PageAsk ask, Bowl bowl) {
        return ask.say(
                "bowl.named",
                ask.moment().bowl(java.util.Optional.of(bowl)),
                ask.moment().clock(bowl.mixedAt()));
    }

    /** What is on this head. */
    static List<Choice> applications(PageAsk ask) {
        return ask.visit().map(Visit::onHair).orElse(List.of()).stream()
                .map(one -> new Choice(number(one.id().value()), application(ask, one)))
                .toList();
    }

    static String application(PageAsk ask, Application one) {
        return ask.say(
                "application.named", ask.moment().say(one.area()), ask.moment().clock(one.firstOn()));
    }

    /** Everybody who is here, and nobody yet. */
    static List<Choice> visits(PageAsk ask) {
        var here = ask.moment().floor().openVisits().stream()
                .map(visit -> new Choice(
                        number(visit.id().value()),
                        ask.moment().place(visit.place()) + " · " + ask.moment().label(visit)));
        return Stream.concat(Stream.of(nobody(ask)), here).toList();
    }

    static String number(long value) {
        return String.valueOf(value);
    }
}
