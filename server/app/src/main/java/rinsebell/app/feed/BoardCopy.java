package rinsebell.app.feed;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What the screens of one board were last sent, kept to find what changed. Belongs to the feed's thread. */
final class BoardCopy {

    private final String run;
    private Map<String, Sent> sent = new LinkedHashMap<>();
    private @Nullable Step ahead;

    BoardCopy(String run) {
        this.run = run;
    }

    /**
     * From one drawing to another.
     *
     * @param from what was sent before
     * @param board the newer drawing
     * @param to what is sent then
     * @param batch what brings every screen from the one to the other; empty when none is needed
     */
    private record Step(Map<String, Sent> from, Board board, Map<String, Sent> to, byte[] batch) {}

    /** Takes a newer drawing and answers the one batch that brings every screen up to it; empty when none is needed. */
    byte[] update(Board board) {
        Step step = ahead != null && ahead.board == board && ahead.from == sent ? ahead : step(board);
        if (step.batch.length > 0) {
            sent = step.to;
        }
        return step.batch;
    }

    /** Makes the batch for a drawing that will stand soon, so that it only has to be sent then. */
    void prepare(Board board) {
        ahead = step(board);
    }

    private Step step(Board board) {
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
        boolean samePieces = sent.isEmpty() || sent.keySet().equals(next.keySet());
        return new Step(sent, board, next, samePieces ? joined(changed) : Events.redraw(run, board.number()));
    }

    /** Everything on the board, for a screen that has just come. */
    byte[] whole() {
        return joined(sent.values().stream().map(Sent::event).toList());
    }

    private Sent newlySent(long number, Fragment fragment) {
        return new Sent(fragment.shown(), Events.fragment(run, number, fragment));
    }

    static byte[] joined(List<byte[]> events) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        events.forEach(out::writeBytes);
        return out.toByteArray();
    }

    private record Sent(Object shown, byte[] event) {}
}
