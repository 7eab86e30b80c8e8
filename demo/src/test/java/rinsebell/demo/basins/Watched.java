package rinsebell.demo.basins;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rinsebell.demo.basins.Happened.What;

/** What is impossible about a day, by its log alone. */
record Watched(Day day, List<Happened> log) {
    /** Somebody mixes for five minutes and puts it on for ten. */
    private static final long STYLIST = 15 * 60;

    /** @param until after it ended */
    private record Span(long from, long until) {}

    List<String> impossible() {
        var wrong = new ArrayList<String>();
        if (!log.stream()
                .map(Happened::at)
                .sorted()
                .toList()
                .equals(log.stream().map(Happened::at).toList())) {
            wrong.add("not in the order of time");
        }
        day.heads().forEach(head -> wrong.addAll(wrong(head)));
        crowd("hands", day.hands(), day.heads().stream().flatMap(this::handsOn)).ifPresent(wrong::add);
        crowd("stylists", day.stylists(), spans(head -> new Span(at(What.MIXES, head), at(What.MIXES, head) + STYLIST)))
                .ifPresent(wrong::add);
        crowd("chairs", day.chairs(), spans(head -> new Span(at(What.SEATED, head), at(What.WATER, head))))
                .ifPresent(wrong::add);
        IntStream.rangeClosed(0, day.basins() + 1)
                .forEach(basin -> crowd("basin " + basin, basin >= 1 && basin <= day.basins() ? 1 : 0, there(basin))
                        .ifPresent(wrong::add));
        return wrong;
    }

    private List<String> wrong(Head head) {
        var wrong = new ArrayList<String>();
        var on = at(What.ON, head);
        var water = at(What.WATER, head);
        if (on < head.arrives() || on != at(What.MIXES, head) + 5 * 60) {
            wrong.add("on too early: " + head);
        }
        if (water < on + head.ready()) {
            wrong.add("rinsed before it may be: " + head);
        }
        if (at(What.BEGINS, head) < on || water < at(What.BEGINS, head) + head.before()) {
            wrong.add("the work before the basin was not done: " + head);
        }
        var stay = head.parts().stream().mapToLong(part -> part).sum();
        if (at(What.LEAVES, head) < water + stay) {
            wrong.add("left before it was done: " + head);
        }
        return wrong;
    }

    private long at(What what, Head head) {
        var all = log.stream()
                .filter(one -> one.what() == what && one.head() == head.number())
                .toList();
        if (all.size() != 1) {
            throw new AssertionError(all.size() + " times " + what + ": " + head);
        }
        return all.get(0).at();
    }

    private interface Taking {
        Span by(Head head);
    }

    private Stream<Span> spans(Taking taking) {
        return day.heads().stream().map(taking::by);
    }

    private Stream<Span> there(int basin) {
        return log.stream()
                .filter(one -> one.what() == What.WATER && one.basin() == basin)
                .map(one -> day.heads().get(one.head() - 1))
                .map(head -> new Span(at(What.WATER, head), at(What.LEAVES, head)));
    }

    /** By what is true of a head, not by when the log says that hands came free. */
    private Stream<Span> handsOn(Head head) {
        var begins = at(What.BEGINS, head);
        var before = new Span(begins, begins + head.before());
        var water = at(What.WATER, head);
        var left = at(What.LEAVES, head);
        if (head.parts().size() == 1) {
            return Stream.of(before, new Span(water, left));
        }
        var off = water + head.parts().get(0) + head.parts().get(1);
        return Stream.of(
                before, new Span(water, off), new Span(left - head.parts().get(3), left));
    }

    private static Optional<String> crowd(String what, int most, Stream<Span> spans) {
        var all = spans.toList();
        return all.stream()
                .filter(span -> all.stream()
                                .filter(other -> other.from() <= span.from() && span.from() < other.until())
                                .count()
                        > most)
                .findFirst()
                .map(span -> "more than " + most + " " + what + " at second " + span.from());
    }
}
