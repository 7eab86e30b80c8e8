package rinsebell.web.view;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A form, as it is first shown or with everything that was typed and all that is wrong with it.
 *
 * @param title may be empty
 * @param intro what this is for, or a caution; may be empty
 * @param preview where the form's values are sent while they are typed, to show what they mean; none for most
 */
public record Form(
        String id,
        String title,
        String intro,
        String action,
        List<Group> groups,
        String submit,
        String back,
        @Nullable String preview)
        implements Fragment {

    /** Fields that belong together. The title may be empty. */
    public record Group(String title, List<Field> fields) {}

    @Override
    public String template() {
        return "part/form.jte";
    }

    /** The same below a title that a page has already. */
    public Form untitled() {
        return new Form(id, "", intro, action, groups, submit, back, preview);
    }

    public Optional<String> previewing() {
        return Optional.ofNullable(preview);
    }

    public List<Field> wrong() {
        return groups.stream()
                .flatMap(group -> group.fields().stream())
                .filter(Field::wrong)
                .toList();
    }
}
