package rinsebell.web.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.web.Codes;
import rinsebell.web.view.Field;
import rinsebell.web.view.Field.Kind;
import rinsebell.web.view.Field.Option;
import rinsebell.web.view.Form;

/**
 * A form that is being put together: each field keeps what was typed, or begins with what is given here, and carries
 * what is wrong with it.
 */
final class FormDraft {
    private final PageAsk ask;
    private final String key;
    private final List<Form.Group> groups = new ArrayList<>();
    private final List<Field> fields = new ArrayList<>();
    private String group = "";
    private boolean row;
    private Form.@Nullable Preview preview;

    /** @param key of the form's words: its title, and below it {@code intro} and {@code submit} */
    FormDraft(PageAsk ask, String key) {
        this.ask = ask;
        this.key = "form." + key;
    }

    /** What follows belongs together, under this title. */
    FormDraft group(String title) {
        close();
        group = title;
        return this;
    }

    /** What follows stands in one row where there is room. */
    FormDraft row() {
        close();
        row = true;
        return this;
    }

    /** Behind the fields of this group stands what all values mean. */
    FormDraft preview(Form.Preview shown) {
        preview = shown;
        return this;
    }

    private void close() {
        if (!fields.isEmpty()) {
            groups.add(new Form.Group(group, row, List.copyOf(fields), preview));
            fields.clear();
        }
        group = "";
        row = false;
        preview = null;
    }

    FormDraft text(String name, String unlessTyped) {
        return plain(Kind.TEXT, name, label(name), unlessTyped);
    }

    FormDraft number(String name, String unlessTyped) {
        return plain(Kind.NUMBER, name, label(name), unlessTyped);
    }

    FormDraft number(String name, String label, String unlessTyped) {
        return plain(Kind.NUMBER, name, label, unlessTyped);
    }

    FormDraft plain(Kind kind, String name, String label, String unlessTyped) {
        fields.add(field(kind, name, label, ask.value(name, unlessTyped), List.of()));
        return this;
    }

    FormDraft hidden(String name, String value) {
        fields.add(field(Kind.HIDDEN, name, name, value, List.of()));
        return this;
    }

    /** Each of these opens the page again with all that is typed, and with itself as well. */
    FormDraft reopens(String name, List<Choice> choices) {
        if (!choices.isEmpty()) {
            fields.add(field(Kind.OPENS, name, "", "", options(choices, List.of())));
        }
        return this;
    }

    /** Opens another page with all that is typed. */
    FormDraft opens(String address, String label) {
        fields.add(new Field(Kind.OPENS, "", label, address, List.of(new Option("", label, false)), "", ""));
        return this;
    }

    /** One of a few that are always the same. */
    <E extends Enum<E>> FormDraft choice(String name, Class<E> type, @Nullable E unlessTyped) {
        return choice(name, label(name), type, unlessTyped);
    }

    <E extends Enum<E>> FormDraft choice(String name, String label, Class<E> type, @Nullable E unlessTyped) {
        var choices = Arrays.stream(type.getEnumConstants())
                .map(one -> new Choice(Codes.of(one), ask.moment().say(one)));
        return choice(Kind.CHOICE, name, label, choices.toList(), unlessTyped == null ? "" : Codes.of(unlessTyped));
    }

    /** Yes or no. */
    FormDraft yesNo(String name, String label, @Nullable Boolean unlessTyped) {
        var choices = List.of(new Choice("yes", ask.say("yes")), new Choice("no", ask.say("no")));
        return choice(Kind.CHOICE, name, label, choices, unlessTyped == null ? "" : unlessTyped ? "yes" : "no");
    }

    /** @param value what is sent */
    record Choice(String value, String label) {}

    FormDraft tiles(String name, List<Choice> choices, String unlessTyped) {
        return tiles(name, label(name), choices, unlessTyped);
    }

    FormDraft tiles(String name, String label, List<Choice> choices, String unlessTyped) {
        return choice(Kind.CHOICE, name, label, choices, unlessTyped);
    }

    FormDraft list(String name, List<Choice> choices, String unlessTyped) {
        return choice(Kind.LIST, name, label(name), choices, unlessTyped);
    }

    /** The salon's time zone, which shares its name with what touches a scalp. */
    FormDraft zone(List<Choice> choices, String unlessTyped) {
        return choice(Kind.LIST, "zone", ask.say("field.zone_of_salon"), choices, unlessTyped);
    }

    /** Any of a few. */
    FormDraft some(String name, List<Choice> choices, List<String> unlessTyped) {
        var chosen = ask.values(name, unlessTyped);
        fields.add(field(Kind.CHOICES, name, label(name), "", options(choices, chosen)));
        return this;
    }

    private FormDraft choice(Kind kind, String name, String label, List<Choice> choices, String unlessTyped) {
        var value = ask.value(name, unlessTyped);
        fields.add(field(kind, name, label, value, options(choices, List.of(value))));
        return this;
    }

    private static List<Option> options(List<Choice> choices, List<String> chosen) {
        return choices.stream()
                .map(choice -> new Option(
                        choice.value(), choice.label(), chosen.stream().anyMatch(choice.value()::equalsIgnoreCase)))
                .toList();
    }

    private Field field(Kind kind, String name, String label, String value, List<Option> options) {
        return new Field(
                kind, name, label, value, options, ask.sayIfKnown(wordsKey(name) + ".hint"), ask.problem(name));
    }

    private String label(String name) {
        return ask.say(wordsKey(name));
    }

    /** Rows of the same form share their words. */
    private static String wordsKey(String name) {
        return "field."
                + name.replaceAll("\\.\\d+", "").toLowerCase(Locale.ROOT).replace('-', '_');
    }

    /** When it happened and who says so; nobody needs to touch these for now. */
    FormDraft whenAndWho() {
        group(ask.say("form.when"));
        number("minutesAgo", "");
        return who();
    }

    FormDraft who() {
        return list("by", Choices.recording(ask), "").plain(Kind.LONG_TEXT, "note", label("note"), "");
    }

    Form form(String action, String back) {
        faultsOfNoField();
        close();
        return new Form(
                "form-" + key.substring("form.".length()).replace('.', '-'),
                title(),
                ask.sayIfKnown(key + ".intro"),
                action,
                List.copyOf(groups),
                ask.say(key + ".submit"),
                back);
    }

    String title() {
        var head = ask.head();
        return head.isEmpty() || !action(key) ? ask.say(key) : head + ": " + ask.say(key);
    }

    private static boolean action(String key) {
        return key.startsWith("form.visits.");
    }

    /** A fault of something that this form does not ask still has to be told. */
    private void faultsOfNoField() {
        var names = Stream.concat(groups.stream().flatMap(one -> one.fields().stream()), fields.stream())
                .map(Field::name)
                .toList();
        ask.errors().stream()
                .map(FieldError::field)
                .filter(name -> !names.contains(name))
                .distinct()
                .forEach(name -> fields.add(field(Kind.HIDDEN, name, name, "", List.of())));
    }
}
