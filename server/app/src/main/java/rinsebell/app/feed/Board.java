package rinsebell.app.feed;

import java.util.List;

/**
 * Every live piece of one kind of screen, drawn from one state of the floor.
 *
 * @param number the number of that state; a later state has a greater one
 * @param fragments the pieces, each id once
 */
public record Board(long number, List<Fragment> fragments) {
    public Board {
        fragments = List.copyOf(fragments);
    }
}
