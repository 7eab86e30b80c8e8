package rinsebell.app.feed;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A board {@code floor} with two chairs and a board {@code basins}, changed by hand. */
final class TwoBoards implements FeedSource {

    static final long NOW = 1_772_877_600_000L;

    private final Map<String, String> floor = new LinkedHashMap<>(Map.of());
    private long number = 1;
    private int drawings;
    private int boardsAsked;
    private @Nullable Board drawnAhead;
    private @Nullable Board now;
    private String broken = "(none)";

    TwoBoards() {
        floor.put("chair-1", "free");
        floor.put("chair-2", "free");
    }

    synchronized void show(String id, String text) {
        timeChanges(id, text);
        number++;
    }

    /** What changes although nothing happens. */
    synchronized void timeChanges(String id, String text) {
        floor.put(id, text);
    }

    synchronized void breakBoard(String board) {
        broken = board;
    }

    synchronized int drawings() {
        return drawings;
    }

    @Override
    public boolean knows(String board) {
        return board.equals("floor") || board.equals("basins");
    }

    /** How often a board was asked for as it is now. */
    synchronized int boardsAsked() {
        return boardsAsked;
    }

    @Override
    public synchronized Optional<Board> draw(String board) {
        boardsAsked++;
        if (board.equals(broken)) {
            throw new IllegalStateException("a template that fails");
        }
        return switch (board) {
            case "floor" -> Optional.of(now == null || now.number() != number ? new Board(number, fragments()) : now);
            case "basins" -> Optional.of(new Board(number, List.of(fragment("basin-a", "free"))));
            default -> Optional.empty();
        };
    }

    @Override
    public synchronized Optional<Board> drawAhead(String board, Instant due) {
        if (!board.equals("floor")) {
            return Optional.empty();
        }
        var ahead = new ArrayList<>(fragments());
        ahead.replaceAll(one -> one.id().equals("chair-2") ? fragment("chair-2", "due at " + due) : one);
        drawnAhead = new Board(number + 1, ahead);
        return Optional.of(drawnAhead);
    }

    /** What was drawn ahead is so now. */
    synchronized void fallsDue() {
        number++;
        now = drawnAhead;
    }

    @Override
    public synchronized Beat beat() {
        return new Beat("run1", number, NOW, 1, "agrees", 0);
    }

    private List<Fragment> fragments() {
        List<Fragment> all = new ArrayList<>();
        floor.forEach((id, text) -> all.add(fragment(id, text)));
        return all;
    }

    private Fragment fragment(String id, String text) {
        return new Fragment(id, text, () -> html(text));
    }

    private synchronized String html(String text) {
        drawings++;
        return "<p>" + text + "</p>";
    }
}
