package rinsebell.web.view;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A form, as it is first shown or with everything that was typed and all that is wrong with it.
 *
 * @param title may be empty
 * @param intro what this is for, or a caution; may be empty
 */
public record Form(String id, String title, String intro, String action, List<Group> groups, String submit, String back)
        implements Fragment {

    /**
     * Fields that belong together.
     *
     * @param title may be empty
     * @param row they stand beside each other where there is room
     * @param preview what the form's values mean, shown behind these while they are typed; null for most
     */
    public record Group(
            String title,
            boolean row,
            List<Field> fields,
            @Nullable Preview preview) {
        public Group(String title, List<Field> fields) {
            this(title, false, fields, null);
        }

        public Optional<Preview> previewing() {
            return Optional.ofNullable(preview);
        }
    }

    /**
     * What the values of a form mean.
     *
     * @param address where they are sent to find out
     * @param asks what a browser without script is asked to press for it
     * @param shown what those that stand here mean
     */
    public record Preview(String address, String asks, Shown shown) {}

    /** What a form's values mean, in one of these ways. */
    public sealed interface Shown extends View permits TimesExample, Judged, MixtureSheet {}

    /** What the values mean; empty where a form does not say. */
    public Optional<Shown> shown() {
        return groups.stream()
                .flatMap(group -> group.previewing().stream())
                .map(Preview::shown)
                .findFirst();
    }

    /** Whether it opens pages with what is typed: then that is what the enter key does, and nothing is recorded. */
    public boolean opens() {
        return groups.stream()
                .flatMap(group -> group.fields().stream())
                .anyMatch(field -> field.kind() == Field.Kind.OPENS);
    }

    @Override
    public String template() {
        return "part/form.jte";
    }

    /** The same below a title that a page has already. */
    public Form untitled() {
        return new Form(id, "", intro, action, groups, submit, back);
    }

    public List<Field> wrong() {
        return groups.stream()
                .flatMap(group -> group.fields().stream())
                .filter(Field::wrong)
                .toList();
    }
}
