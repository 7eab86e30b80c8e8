package rinsebell.web.view;

import java.util.List;

/**
 * One bowl: its tag, to be read on a screen or printed and put on the bowl, and what can be pressed about it.
 *
 * @param tag what is printed
 * @param presses about the bowl
 * @param ask what is left in it
 * @param left the answers
 * @param papers on what it can be printed
 */
public record BowlPage(Shell shell, Tag tag, List<Press> presses, String ask, List<Press> left, List<Paper> papers)
        implements View {

    /**
     * What stands on a bowl.
     *
     * @param place where it belongs, such as "chair 3"; may be empty
     * @param whom for whom
     * @param name what is in it
     * @param portions what was weighed, portion by portion
     * @param mixed when it was mixed, in a sentence
     * @param usable until when it can be put on, in a sentence; may be empty
     * @param rules what it must not get
     * @param cautions the usual ones
     * @param code whose link opens this page
     */
    public record Tag(
            String place,
            String whom,
            String name,
            List<String> portions,
            String mixed,
            String usable,
            List<String> rules,
            List<String> cautions,
            QrCode code) {}

    /**
     * A sheet of paper.
     *
     * @param address of this page for it
     * @param chosen whether this page is for it
     * @param css its class
     */
    public record Paper(String label, String address, boolean chosen, String css) {}

    /** The class of the page's body. */
    public String css() {
        return papers.stream().filter(Paper::chosen).findFirst().map(Paper::css).orElse("");
    }

    @Override
    public String template() {
        return "bowl.jte";
    }
}
