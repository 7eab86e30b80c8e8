package rinsebell.web.form;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Floor;
import rinsebell.floor.Intent;
import rinsebell.floor.TextId;
import rinsebell.floor.client.ClientCard;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.visit.ClientId;
import rinsebell.web.Codes;

/**
 * One reading of one form: hands out entries by name, and notes whatever is wrong with them. For a wrong entry it hands
 * out a stand-in of the right type, so that reading goes on and every fault is found at once.
 */
final class Entries {
    static final int LONGEST_LABEL = 40;
    static final int LONGEST_NOTE = 500;

    private static final Map<String, Boolean> YES_NO =
            Map.of("yes", true, "true", true, "on", true, "no", false, "false", false);

    private final Target target;
    private final Fields fields;
    private final List<FieldError> errors = new ArrayList<>();
    private final Set<String> asked = new HashSet<>();

    Entries(Target target, Fields fields) {
        this.target = target;
        this.fields = fields;
    }

    Floor floor() {
        return target.floor();
    }

    long id() {
        return target.id();
    }

    Instant now() {
        return target.now();
    }

    Optional<ClientCard> card(ClientId client) {
        return target.clients().card(client);
    }

    /** A label or a name; empty for one that was erased. */
    String written(TextId text) {
        return target.texts().apply(text);
    }

    /** The names of all that was typed. */
    Set<String> names() {
        return fields.names();
    }

    /** Everything typed under a name, as it was typed. */
    List<String> all(String field) {
        asked.add(field);
        return fields.all(field);
    }

    /** Whether an entry that stands for nothing is a fault: in a form it is only one that nobody used. */
    boolean everyEntryCounts() {
        return fields.everyNameCounts();
    }

    void fault(String field, Fault fault, Object... args) {
        errors.add(new FieldError(field, fault, Arrays.asList(args)));
    }

    /** Whether something is wrong with this field, as far as was read. */
    boolean isWrong(String field) {
        return errors.stream().anyMatch(error -> error.field().equals(field));
    }

    /** All that is wrong, once everything has been read. */
    List<FieldError> errors() {
        if (fields.everyNameCounts()) {
            names().stream().filter(name -> !asked.contains(name)).forEach(name -> fault(name, Fault.NOT_A_FIELD));
        }
        return List.copyOf(errors);
    }

    Reading reading(Command command) {
        var when = asked();
        var all = errors();
        return all.isEmpty() ? new Reading.Read(command, when) : new Reading.Wrong(all);
    }

    private Asked asked() {
        var intent = choice("intent", Intent.class, Intent.PLAN);
        var by = staff("by").orElse(null);
        var asked = EntryTimes.happened(this).by(by);
        return intent == Intent.FACT ? asked.asFact() : asked;
    }

    /** The one value of a field, tidied; empty when nothing was typed. */
    Optional<String> value(String field) {
        var typed = all(field).stream()
                .map(Typed::tidy)
                .filter(text -> !text.isEmpty())
                .distinct()
                .toList();
        if (typed.size() > 1) {
            fault(field, Fault.TWO_ANSWERS);
        }
        return typed.stream().findFirst();
    }

    Optional<String> text(String field, int longest) {
        return value(field).filter(text -> !Typed.isBlank(text)).map(text -> line(field, text, longest));
    }

    String neededText(String field, int longest) {
        return needed(field, text(field, longest), "");
    }

    /** The only text that may have lines. */
    @Nullable
    String note() {
        return value("note")
                .filter(text -> !Typed.isBlank(text))
                .map(text -> checked("note", text, LONGEST_NOTE))
                .orElse(null);
    }

    private String line(String field, String text, int longest) {
        if (Typed.hasLines(text)) {
            fault(field, Fault.UNPRINTABLE);
        }
        return checked(field, text, longest);
    }

    private String checked(String field, String text, int longest) {
        if (!Typed.isPrintable(text)) {
            fault(field, Fault.UNPRINTABLE);
        }
        if (text.codePointCount(0, text.length()) > longest) {
            fault(field, Fault.TOO_LONG, longest);
        }
        return text;
    }

    /** Notes a missing entry, unless something else is wrong with it already. */
    <T> T needed(String field, Optional<T> entry, T standIn) {
        if (entry.isEmpty() && errors.stream().noneMatch(error -> error.field().equals(field))) {
            fault(field, Fault.MISSING);
        }
        return entry.orElse(standIn);
    }

    Optional<Boolean> yesNo(String field) {
        return value(field).flatMap(code -> known(field, Optional.ofNullable(YES_NO.get(code)), Fault.NOT_A_CHOICE));
    }

    <E extends Enum<E>> Optional<E> choice(String field, Class<E> type) {
        return value(field).flatMap(code -> known(field, Codes.choice(type, code), Fault.NOT_A_CHOICE));
    }

    <E extends Enum<E>> E choice(String field, Class<E> type, E unlessSaid) {
        return choice(field, type).orElse(unlessSaid);
    }

    <E extends Enum<E>> E neededChoice(String field, Class<E> type) {
        return needed(field, choice(field, type), type.getEnumConstants()[0]);
    }

    /** Notes a fault when what was typed means nothing. */
    <T> Optional<T> known(String field, Optional<T> meaning, Fault otherwise) {
        if (meaning.isEmpty()) {
            fault(field, otherwise);
        }
        return meaning;
    }

    Optional<Integer> whole(String field, int least, int most) {
        return decimal(field, new Bounds(BigDecimal.valueOf(least), BigDecimal.valueOf(most), 0))
                .map(BigDecimal::intValue);
    }

    int neededWhole(String field, int least, int most) {
        return needed(field, whole(field, least, most), least);
    }

    /** @param places how many decimal places are allowed */
    record Bounds(BigDecimal least, BigDecimal most, int places) {}

    Optional<BigDecimal> decimal(String field, Bounds bounds) {
        return value(field)
                .flatMap(text -> known(field, Typed.number(text), Fault.NOT_A_NUMBER)
                        .map(number -> within(field, number, bounds))
                        .map(number -> unambiguous(field, text, number)));
    }

    private BigDecimal unambiguous(String field, String text, BigDecimal number) {
        if (!fields.everyNameCounts() && Typed.isAmbiguous(text) && !isWrong(field)) {
            fault(field, Fault.THOUSANDS);
        }
        return number;
    }

    private BigDecimal within(String field, BigDecimal number, Bounds bounds) {
        if (number.stripTrailingZeros().scale() > bounds.places()) {
            fault(field, bounds.places() == 0 ? Fault.NOT_WHOLE : Fault.TOO_FINE, bounds.places());
            return bounds.least();
        }
        if (number.compareTo(bounds.least()) < 0) {
            fault(field, Fault.TOO_SMALL, bounds.least());
            return bounds.least();
        }
        if (number.compareTo(bounds.most()) > 0) {
            fault(field, Fault.TOO_LARGE, bounds.most());
            return bounds.most();
        }
        return number;
    }

    /** A length of time typed in whole minutes. */
    Optional<Duration> minutes(String field, int least, int most) {
        return whole(field, least, most).map(Duration::ofMinutes);
    }

    @Nullable
    Duration minutesOrNull(String field, int least, int most) {
        return minutes(field, least, most).orElse(null);
    }

    /** The number of a fact that names something. */
    Optional<Long> number(String field) {
        return value(field).flatMap(text -> number(field, text));
    }

    /** Every number typed under a name. */
    List<Long> numbers(String field) {
        return all(field).stream()
                .map(Typed::tidy)
                .filter(text -> !text.isEmpty())
                .flatMap(text -> number(field, text).stream())
                .distinct()
                .toList();
    }

    /** The number of a fact that a bell counts from; below zero for one that could not be saved. */
    Optional<Long> anchor(String field) {
        return value(field).flatMap(text -> number(field, Typed.number(text)));
    }

    private Optional<Long> number(String field, String text) {
        return number(field, Typed.number(text).filter(one -> one.signum() > 0));
    }

    private Optional<Long> number(String field, Optional<BigDecimal> typed) {
        var whole = typed.filter(one -> one.stripTrailingZeros().scale() <= 0);
        return known(field, whole.map(BigDecimal::longValue), Fault.NOT_KNOWN);
    }

    Optional<StaffId> staff(String field) {
        return number(field)
                .map(StaffId::new)
                .flatMap(staff ->
                        known(field, floor().salon().staffMember(staff).map(member -> member.id()), Fault.NOT_KNOWN));
    }
}
