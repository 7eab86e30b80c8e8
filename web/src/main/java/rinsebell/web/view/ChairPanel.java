package rinsebell.web.view;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One head and all that is on it, as the stylist at the chair sees it.
 *
 * @param id of the panel: the visit's, since the client may move
 * @param place the chair's number, or a basin's letter
 * @param aid what to do first; only after burning, swelling, severe itch or hot foil
 * @param mind answers and restrictions that hold whatever is done next, each in a few words
 * @param presses what can be recorded or opened now, the likeliest first
 * @param discomfort tingling, burning, hot foil; empty while nothing is on
 */
public record ChairPanel(
        String id,
        String place,
        String who,
        String staff,
        String state,
        List<String> mind,
        Due due,
        Ribbon ribbon,
        List<Line> lines,
        Rules rules,
        @Nullable FirstAid aid,
        List<Press> presses,
        List<Press> discomfort)
        implements Fragment {

    /**
     * What is forbidden and allowed on this head now.
     *
     * @param source where the rules come from
     * @param cautions the usual cautions that fit what is on
     */
    public record Rules(List<Rule> all, String source, List<String> cautions) {}

    @Override
    public String template() {
        return "part/chair-panel.jte";
    }

    public Optional<FirstAid> firstAid() {
        return Optional.ofNullable(aid);
    }
}
