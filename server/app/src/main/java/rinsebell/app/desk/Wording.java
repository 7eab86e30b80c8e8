package rinsebell.app.desk;

import java.util.Map;
import rinsebell.floor.Floor;
import rinsebell.floor.Reason;
import rinsebell.floor.TextId;

/** Puts a reason into words for people. */
@FunctionalInterface
public interface Wording {
    /**
     * The words.
     *
     * @param floor on which it was decided: names and zone come from it
     * @param texts erasable texts as they stand
     */
    String say(Reason reason, Floor floor, Map<TextId, String> texts);
}
