package rinsebell.floor.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rinsebell.floor.Correction;
import rinsebell.floor.Correction.SetBack;
import rinsebell.floor.Correction.Withdrawn;
import rinsebell.floor.Fact;
import rinsebell.floor.Floor;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.bowl.DayEvent.ClockShifted;
import rinsebell.floor.bowl.DayEvent.Mixed;
import rinsebell.floor.report.UseReport;
import rinsebell.floor.unit.Fraction;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.ApplicationId;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.LookEvent.Complained;
import rinsebell.floor.visit.LookEvent.ScalpChecked;
import rinsebell.floor.visit.LookEvent.StrandChecked;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StayEvent.Left;
import rinsebell.floor.visit.StrandCheck;
import rinsebell.floor.visit.Visit;
import rinsebell.floor.visit.WorkEvent.LastOn;
import rinsebell.floor.visit.WorkEvent.PutOn;
import rinsebell.floor.visit.WorkEvent.TakenOff;

/**
 * What facts say, told from the first of them on by other means than the floor's own: by looking through all of them for
 * each question, with nothing kept in between. It knows little of a head, but that it knows for itself.
 */
final class Replay {
    private final Map<Long, Fact> bySeq = new HashMap<>();
    private final Map<Long, Instant> happened = new HashMap<>();

    Replay(Collection<Fact> facts) {
        facts.forEach(fact -> bySeq.put(fact.seq(), fact));
        facts.stream()
                .filter(fact -> stands(fact) && !(fact.event() instanceof Correction))
                .forEach(fact -> happened.put(fact.seq(), happened(fact)));
    }

    /** A withdrawal that stands takes away what it names; one that was withdrawn itself does not. */
    private boolean stands(Fact fact) {
        return bySeq.values().stream()
                .noneMatch(
                        other -> other.event() instanceof Withdrawn gone && gone.of() == fact.seq() && stands(other));
    }

    /** Where the last set-back that stands says so, or as it was recorded; and the clock was put right since. */
    private Instant happened(Fact fact) {
        return bySeq.values().stream()
                .filter(other -> other.event() instanceof SetBack back && back.of() == fact.seq() && stands(other))
                .max(Comparator.comparingLong(Fact::seq))
                .map(back -> ((SetBack) back.event()).to().plus(shiftedSince(back)))
                .orElseGet(() -> fact.happened().plus(shiftedSince(fact)));
    }

    private Duration shiftedSince(Fact fact) {
        return bySeq.values().stream()
                .filter(other -> other.event() instanceof ClockShifted && other.seq() > fact.seq() && stands(other))
                .map(other -> ((ClockShifted) other.event()).by())
                .reduce(Duration.ZERO, Duration::plus);
    }

    void agreesWith(Floor floor) {
        var streams = bySeq.values().stream().map(Fact::stream).collect(Collectors.toSet());
        streams.forEach(stream -> assertThat(instants(floor.standing(stream)))
                .as("what stands of %s", stream)
                .isEqualTo(standing(stream).stream().map(this::instant).toList()));
        bowls(floor);
        use(floor);
        streams.stream()
                .filter(Stream.OfVisit.class::isInstance)
                .forEach(stream -> head((Stream.OfVisit) stream, floor));
    }

    private record At(long seq, Instant instant) {}

    private At instant(long seq) {
        return new At(seq, at(seq));
    }

    private Instant at(long seq) {
        return java.util.Objects.requireNonNull(happened.get(seq));
    }

    private static List<At> instants(List<Fact> facts) {
        return facts.stream().map(fact -> new At(fact.seq(), fact.happened())).toList();
    }

    /** The numbers of the facts of a stream that stand, in the order in which they happened. */
    private List<Long> standing(Stream stream) {
        return happened.keySet().stream()
                .filter(seq -> fact(seq).stream().equals(stream))
                .sorted(Comparator.comparing(this::at).thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    private Fact fact(long seq) {
        return java.util.Objects.requireNonNull(bySeq.get(seq));
    }

    private void bowls(Floor floor) {
        var mixed = happened.keySet().stream()
                .filter(seq -> fact(seq).event() instanceof Mixed)
                .collect(Collectors.toMap(seq -> seq, this::at));
        var known = floor.day().bowls().stream()
                .filter(bowl -> bowl.root().equals(bowl.id()))
                .collect(Collectors.toMap(bowl -> bowl.id().value(), Bowl::mixedAt));
        assertThat(known).as("when bowls were mixed").isEqualTo(mixed);
    }

    /** However bowls were divided and whatever was said of them: what was used is what was mixed, and no more is left. */
    private static void use(Floor floor) {
        var days = floor.day().bowls().stream()
                .collect(Collectors.groupingBy(bowl -> floor.salon().dayOf(bowl.mixedAt())));
        days.forEach((day, bowls) -> {
            var report = UseReport.of(day, floor, floor.salon());
            var sum = report.total();
            var mixed = bowls.stream()
                    .filter(bowl -> bowl.root().equals(bowl.id()))
                    .map(Bowl::mixed)
                    .reduce(Grams.NONE, Grams::plus);
            assertThat(sum.mixed()).as("used on %s", day).isEqualTo(Fraction.of(mixed.amount()));
            assertThat(sum.told()).isBetween(sum.left(), sum.mixed());
            assertThat(report.bowls().size() + report.unknown()).isEqualTo(bowls.size());
        });
    }

    private void head(Stream.OfVisit stream, Floor floor) {
        var told = new Head(standing(stream));
        var visit = floor.visit(stream.visit());
        assertThat(visit.isPresent())
                .as("%s is there", stream)
                .isEqualTo(happened.containsKey(stream.visit().value()));
        visit.ifPresent(told::agreesWith);
    }

    /** One head, as the facts about it say in their order. */
    private final class Head {
        private final List<Long> order;

        Head(List<Long> order) {
            this.order = order;
        }

        void agreesWith(Visit visit) {
            assertThat(visit.isOpen())
                    .as("%s is open", visit.id())
                    .isEqualTo(of(Left.class).isEmpty() || !onHair().isEmpty());
            assertThat(onHair(visit)).as("on the hair of %s", visit.id()).isEqualTo(onHair());
            visit.applications().forEach(this::agreesWith);
            assertThat(visit.scalpChecks().stream().map(ScalpCheck::at).toList())
                    .as("looks at the scalp of %s", visit.id())
                    .isEqualTo(times(of(ScalpChecked.class)));
            assertThat(visit.complaints().stream().map(Complaint::at).toList())
                    .as("complaints of %s", visit.id())
                    .isEqualTo(times(of(Complained.class)));
        }

        private void agreesWith(Application application) {
            var seq = application.id().value();
            assertThat(application.firstOn())
                    .as("first on of %s", application.id())
                    .isEqualTo(at(seq));
            var lasts = after(seq, of(LastOn.class)).stream()
                    .filter(last -> ((LastOn) fact(last).event()).application().value() == seq)
                    .toList();
            assertThat(application.lastOn())
                    .as("last on of %s", application.id())
                    .isEqualTo(lasts.isEmpty() ? null : at(lasts.get(lasts.size() - 1)));
            var looks = after(seq, of(StrandChecked.class)).stream()
                    .filter(look ->
                            ((StrandChecked) fact(look).event()).application().value() == seq)
                    .toList();
            assertThat(application.checks().stream().map(StrandCheck::at).toList())
                    .as("looks at %s", application.id())
                    .isEqualTo(times(looks));
        }

        private List<Long> of(Class<?> kind) {
            return order.stream()
                    .filter(seq -> kind.isInstance(fact(seq).event()))
                    .toList();
        }

        private List<Long> after(long seq, List<Long> some) {
            return some.stream()
                    .filter(one -> order.indexOf(one) > order.indexOf(seq))
                    .toList();
        }

        private List<Instant> times(List<Long> seqs) {
            return seqs.stream().map(Replay.this::at).toList();
        }

        private static Set<Long> onHair(Visit visit) {
            return visit.onHair().stream()
                    .map(Application::id)
                    .map(ApplicationId::value)
                    .collect(Collectors.toSet());
        }

        /** What was put on, and was not taken off since, nor anything that went over it. */
        private Set<Long> onHair() {
            var on = new HashSet<>(of(PutOn.class));
            on.removeIf(put -> after(put, of(TakenOff.class)).stream().anyMatch(off -> reaches(off, put)));
            return on;
        }

        /** Whoever takes off what lies above takes what lies under it; what went on over it stays until it is named. */
        private boolean reaches(long off, long put) {
            return ((TakenOff) fact(off).event())
                    .applications().stream()
                            .map(ApplicationId::value)
                            .filter(named -> after(named, List.of(off)).size() == 1 && order.contains(named))
                            .anyMatch(named -> area(named) == area(put) && order.indexOf(put) <= order.indexOf(named));
        }

        private Object area(long put) {
            return ((PutOn) fact(put).event()).area();
        }
    }
}
