package rinsebell.floor.bell;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toUnmodifiableSet;

import java.util.Map;
import java.util.Set;
import rinsebell.floor.Floor;

/** What people did about bells, by bell. */
final class Answers {
    private final Map<BellKey, Set<Seen>> seen;
    private final Map<Long, Set<Seen>> seenOfSubject;
    private final Map<BellKey, Set<Shelved>> shelved;

    Answers(Floor floor) {
        var all = floor.acknowledged();
        seen = all.stream().collect(groupingBy(one -> one.what().bell(), toUnmodifiableSet()));
        seenOfSubject = all.stream().collect(groupingBy(one -> one.what().bell().subject(), toUnmodifiableSet()));
        shelved = floor.shelved().stream().collect(groupingBy(one -> one.what().bell(), toUnmodifiableSet()));
    }

    Set<Seen> seen(BellKey bell) {
        return seen.getOrDefault(bell, Set.of());
    }

    /** Of whatever bells about a subject. */
    Set<Seen> seenOf(long subject) {
        return seenOfSubject.getOrDefault(subject, Set.of());
    }

    Set<Shelved> shelved(BellKey bell) {
        return shelved.getOrDefault(bell, Set.of());
    }
}
