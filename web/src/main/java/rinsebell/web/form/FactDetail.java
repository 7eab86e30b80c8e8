package rinsebell.web.form;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Event;
import rinsebell.floor.Fact;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.bowl.Portion;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.OnApplication;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;
import rinsebell.floor.visit.WorkEvent;
import rinsebell.web.board.FindingTelling;
import rinsebell.web.board.LeftTelling;
import rinsebell.web.board.Moment;

/** Tells what a fact says besides its name: which area, how many grams, what was seen. */
final class FactDetail {
    private final Moment moment;

    FactDetail(Moment moment) {
        this.moment = moment;
    }

    /** In one phrase; empty where the name says all. */
    String of(Fact fact) {
        var event = fact.event();
        var parts =
                Stream.of(area(fact), told(fact, event)).flatMap(part -> part).filter(part -> !part.isEmpty());
        return parts.collect(Collectors.joining(", "));
    }

    private Stream<String> area(Fact fact) {
        return fact.event() instanceof OnApplication on ? area(fact, on.subject()) : Stream.empty();
    }

    private Stream<String> area(Fact fact, ApplicationId id) {
        return application(fact, id).stream().map(Application::area).map(moment::say);
    }

    private Optional<Application> application(Fact fact, ApplicationId id) {
        return visit(fact).flatMap(visit -> visit.application(id));
    }

    private Optional<Visit> visit(Fact fact) {
        return fact.stream() instanceof rinsebell.floor.Stream.OfVisit of
                ? moment.floor().visit(of.visit())
                : Optional.empty();
    }

    private Stream<String> told(Fact fact, Event event) {
        if (event instanceof StayEvent stay) {
            return stay(fact, stay);
        }
        if (event instanceof WorkEvent work) {
            return work(fact, work);
        }
        if (event instanceof LookEvent look) {
            return look(look);
        }
        if (event instanceof SalonEvent.RecipeKept kept) {
            return recipe(kept.portions());
        }
        if (event instanceof SalonEvent.RecipeRevised revised) {
            return recipe(revised.portions());
        }
        return event instanceof DayEvent day ? day(day) : Stream.empty();
    }

    private Stream<String> stay(Fact fact, StayEvent event) {
        if (event instanceof StayEvent.Arrived arrived) {
            return Stream.concat(
                    Stream.of(moment.place(arrived.place())),
                    Stream.of(moment.name(arrived.stylist()), helps(moment.name(arrived.helper()))));
        }
        if (event instanceof StayEvent.Moved moved) {
            return Stream.of(moment.place(moved.place()));
        }
        if (event instanceof StayEvent.HandedOver handed) {
            return Stream.of(moment.name(handed.stylist()), helps(moment.name(handed.helper())));
        }
        if (event instanceof StayEvent.ServicesListed listed) {
            return listed.services().stream().map(moment::say);
        }
        if (event instanceof StayEvent.ServiceBegan began) {
            return Stream.of(moment.say(began.service()));
        }
        if (event instanceof StayEvent.ServiceEnded ended) {
            return Stream.of(moment.say(ended.service()));
        }
        if (event instanceof StayEvent.EndTold told) {
            return Stream.of(moment.clock(fact.happened().plus(told.in())));
        }
        return event instanceof StayEvent.GateAnswered gate ? gate(gate.answers()) : Stream.empty();
    }

    private String helps(String name) {
        return name.isEmpty() ? "" : moment.say("staff.helps", name);
    }

    /** What was answered, question by question. */
    Stream<String> gate(Gate answers) {
        var test = answers.skinTest();
        return Stream.of(
                        answer("skintest", test == null ? null : test.result()),
                        Stream.ofNullable(test == null ? null : test.applied()).map(Object::toString),
                        answer("scalp", answers.scalp()),
                        answer("earlierreaction", answers.earlierReaction()),
                        answer("metal", answers.metal()),
                        answer("under16", answers.under16()))
                .flatMap(part -> part);
    }

    private Stream<String> answer(String field, @Nullable Enum<?> given) {
        return Stream.ofNullable(given)
                .map(one -> moment.say("fact.answer", moment.say("fact.gate." + field), word(one)));
    }

    private String word(Enum<?> given) {
        return given instanceof Gate.YesNo yes ? moment.say(yes.name().toLowerCase(Locale.ROOT)) : moment.say(given);
    }

    private Stream<String> work(Fact fact, WorkEvent event) {
        if (event instanceof WorkEvent.PutOn put) {
            var bowl = moment.bowl(moment.floor().bowl(put.bowl()));
            return Stream.of(bowl, moment.say(put.area()), moment.say(put.zone()), moment.say(put.cover()));
        }
        if (event instanceof WorkEvent.TakenOff off) {
            return Stream.concat(
                    Stream.of(moment.say(off.how())),
                    off.applications().stream().flatMap(id -> area(fact, id)));
        }
        if (event instanceof WorkEvent.HeatOn heat) {
            return Stream.of(moment.say(heat.heat()));
        }
        if (event instanceof WorkEvent.Planned plan) {
            return Stream.ofNullable(plan.time()).map(time -> moment.say("fact.minutes", time.toMinutes()));
        }
        return event instanceof WorkEvent.CoverChanged cover ? Stream.of(moment.say(cover.cover())) : Stream.empty();
    }

    private Stream<String> look(LookEvent event) {
        if (event instanceof LookEvent.StrandChecked check) {
            return Stream.of(FindingTelling.strand(moment, check.finding(), check.decision()));
        }
        if (event instanceof LookEvent.ScalpChecked check) {
            return Stream.concat(
                    Stream.of(moment.say(check.finding())), FindingTelling.decided(moment, check.decision()));
        }
        if (event instanceof LookEvent.LiftJudged lift) {
            return Stream.of(moment.say(lift.reached() ? "fact.lift.reached" : "fact.lift.not"));
        }
        return event instanceof LookEvent.Complained told ? Stream.of(moment.say(told.grade())) : Stream.empty();
    }

    private Stream<String> day(DayEvent event) {
        if (event instanceof DayEvent.Mixed mixed) {
            return Stream.concat(recipe(mixed.portions()), Stream.of(moment.say(mixed.reason())));
        }
        if (event instanceof DayEvent.RecipeFilled filled) {
            return recipe(filled.portions());
        }
        if (event instanceof DayEvent.ThrownAway thrown) {
            return Stream.ofNullable(thrown.left()).map(left -> LeftTelling.say(moment, left));
        }
        if (event instanceof DayEvent.LeftTold told) {
            return Stream.of(LeftTelling.say(moment, told.left()));
        }
        return peopleAndRooms(event);
    }

    private Stream<String> peopleAndRooms(DayEvent event) {
        if (event instanceof DayEvent.BreakBegan away) {
            return Stream.of(moment.name(away.staff()));
        }
        if (event instanceof DayEvent.BreakEnded back) {
            return Stream.of(moment.name(back.staff()));
        }
        return room(event);
    }

    private Stream<String> pinned(DayEvent.TurnPinned pin) {
        var basin = Stream.ofNullable(pin.basin()).map(number -> moment.place(Place.basin(number)));
        var before = Stream.ofNullable(pin.before())
                .flatMap(other -> moment.floor().visit(other).stream())
                .map(other -> moment.say("fact.before", moment.label(other)));
        return Stream.of(who(pin.visit()), basin, before).flatMap(part -> part);
    }

    private Stream<String> who(VisitId visit) {
        return moment.floor().visit(visit).map(moment::label).stream();
    }

    private Stream<String> room(DayEvent event) {
        if (event instanceof DayEvent.TurnPinned pin) {
            return pinned(pin);
        }
        if (event instanceof DayEvent.TurnUnpinned free) {
            return who(free.visit());
        }
        if (event instanceof DayEvent.BasinClosed closed) {
            return Stream.of(moment.place(Place.basin(closed.basin())));
        }
        if (event instanceof DayEvent.BasinOpened opened) {
            return Stream.of(moment.place(Place.basin(opened.basin())));
        }
        if (event instanceof DayEvent.Outage gap) {
            return Stream.of(moment.say("sheet.gap", moment.clock(gap.from()), moment.clock(gap.until())));
        }
        return event instanceof DayEvent.ClockConfirmed confirmed
                ? Stream.of(moment.say("fact.seconds", confirmed.by().toSeconds()))
                : Stream.empty();
    }

    /** Such as "60 g powder + 64 g developer"; nothing when nobody knows it. */
    Stream<String> recipe(Collection<Portion> portions) {
        var told = portions.stream()
                .map(portion -> moment.say(
                        "fact.portion",
                        portion.grams().amount().toPlainString(),
                        moment.floor()
                                .salon()
                                .product(portion.product())
                                .map(product ->
                                        product.directions(portion.edition()).name())
                                .orElse("")))
                .collect(Collectors.joining(" + "));
        return told.isEmpty() ? Stream.of(moment.say("bowl.unknown")) : Stream.of(told);
    }
}
