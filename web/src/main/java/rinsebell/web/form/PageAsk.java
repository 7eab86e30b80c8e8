package rinsebell.web.form;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.client.ClientBook;
import rinsebell.floor.salon.Salon;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.VisitId;
import rinsebell.web.board.Moment;
import rinsebell.web.view.Answer;
import rinsebell.web.view.BellStrip;
import rinsebell.web.view.Look;
import rinsebell.web.view.Nav;
import rinsebell.web.view.Shell;

/**
 * What a form page is made of.
 *
 * @param moment the floor and its words
 * @param id the number in the address; 0 where it has none
 * @param typed what was typed so far, or what the address says beforehand
 * @param errors what is wrong with it
 * @param look light or dark
 * @param bells the strip on top
 * @param answer what came of the last press; null for none
 * @param site under which browsers reach this server, such as "http://salon.local:8460"
 * @param clients records of people who come again
 */
public record PageAsk(
        Moment moment,
        long id,
        Fields typed,
        List<FieldError> errors,
        Look look,
        BellStrip bells,
        @Nullable Answer answer,
        String site,
        ClientBook clients) {
    public PageAsk {
        errors = List.copyOf(errors);
    }

    PageAsk with(Fields others) {
        return new PageAsk(moment, id, others, errors, look, bells, answer, site, clients);
    }

    /** What an address holds was typed before, though it was not sent as a press. */
    PageAsk opened() {
        return errors.isEmpty() ? with(typed.without("press")) : this;
    }

    /** What is typed on the page is read against this. */
    Target target() {
        return new Target(moment.floor(), moment.texts(), moment.now(), id, clients);
    }

    String say(String key, Object... args) {
        return moment.say(key, args);
    }

    /** The text under a key that need not be there. */
    String sayIfKnown(String key) {
        return moment.words().knows(key) ? say(key) : "";
    }

    Salon salon() {
        return moment.floor().salon();
    }

    Optional<Visit> visit() {
        return moment.floor().visit(new VisitId(id));
    }

    /** Where and who, such as "chair 3 · M. A."; empty when the visit is not known. */
    String head() {
        return visit().map(visit -> moment.place(visit.place()) + " · " + moment.label(visit))
                .orElse("");
    }

    Shell shell(String title, Nav here) {
        return new Shell(
                moment.salon(),
                title,
                here,
                look,
                "",
                "",
                bells,
                moment.around().clocks().trust(),
                answer);
    }

    /** Whether this is what came back, rather than a page that is opened. */
    boolean isBack() {
        return typed.first("press").isPresent() || !errors.isEmpty();
    }

    /** The number of something that the address names. */
    Optional<Long> number(String field) {
        return typed.first(field)
                .flatMap(text -> Typed.number(Typed.tidy(text)))
                .map(Number::longValue);
    }

    /** What a field shows. */
    String value(String field, String unlessTyped) {
        return typed.first(field).orElse(isBack() ? "" : unlessTyped);
    }

    List<String> values(String field, List<String> unlessTyped) {
        return typed.all(field).isEmpty() && !isBack() ? unlessTyped : typed.all(field);
    }

    /** What is wrong with a field, in words; empty when nothing is. */
    String problem(String field) {
        return errors.stream()
                .filter(error -> error.field().equals(field))
                .map(error -> new FaultWords(moment.words()).say(error))
                .distinct()
                .collect(Collectors.joining(" "));
    }
}
