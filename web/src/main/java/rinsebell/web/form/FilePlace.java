package rinsebell.web.form;

import java.util.regex.Pattern;
import rinsebell.web.Words;

/**
 * Where something stands in a file of recipes.
 *
 * @param field as programs name it, counted from 0
 */
record FilePlace(String field) {
    private static final Pattern RECIPE = Pattern.compile("recipes\\.(\\d+)\\.(?:portions\\.(\\d+)\\.)?(\\w+)");

    /** As people count. */
    String told(Words words) {
        var place = RECIPE.matcher(field);
        if (!place.matches()) {
            return words.knows("file." + field) ? words.say("file." + field) : field;
        }
        var part =
                words.knows("file.part." + place.group(3)) ? words.say("file.part." + place.group(3)) : place.group(3);
        return place.group(2) == null
                ? words.say("file.recipe", counted(place.group(1)), part)
                : words.say("file.portion", counted(place.group(1)), counted(place.group(2)), part);
    }

    private static String counted(String fromZero) {
        return String.valueOf(Long.parseLong(fromZero) + 1);
    }
}
