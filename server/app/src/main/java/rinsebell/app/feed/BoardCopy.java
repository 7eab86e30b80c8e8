package rinsebell.app.feed;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What the screens of one board were last sent, kept to find what changed. Belongs to the feed's thread. */
final class BoardCopy {

    private final String run;
    private Map<String, Sent> sent = new LinkedHashMap<>();

    BoardCopy(String run) {
        this.run = run;
    }

    /** Takes a newer drawing and answers the one batch that brings every screen up to it; empty when none is needed. */
    byte[] update(Board board) {
        boolean samePieces = sent.isEmpty() || sent.keySet().equals(ids(board));
        List<byte[]> changed = take(board);
        return samePieces ? joined(changed) : Events.redraw(run, board.number());
    }

    /** Everything on the board, for a screen that has just come. */
    byte[] whole() {
        return joined(sent.values().stream().map(Sent::event).toList());
    }

    private List<byte[]> take(Board board) {
        Map<String, Sent> next = new LinkedHashMap<>();
        List<byte[]> changed = new ArrayList<>();
        for (Fragment fragment : board.fragments()) {
            Sent last = sent.get(fragment.id());
            if (last != null && last.shown().equals(fragment.shown())) {
                next.put(fragment.id(), last);
            } else {
                Sent current = newlySent(board.number(), fragment);
                next.put(fragment.id(), current);
                changed.add(current.event());
            }
        }
        sent = next;
        return changed;
    }

    private Sent newlySent(long number, Fragment fragment) {
        return new Sent(fragment.shown(), Events.fragment(run, number, fragment));
    }

    private static Set<String> ids(Board board) {
        return board.fragments().stream().map(Fragment::id).collect(Collectors.toSet());
    }

    static byte[] joined(List<byte[]> events) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        events.forEach(out::writeBytes);
        return out.toByteArray();
    }

    private record Sent(Object shown, byte[] event) {}
}
