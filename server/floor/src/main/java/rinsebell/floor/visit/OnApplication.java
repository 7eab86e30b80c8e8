package rinsebell.floor.visit;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import rinsebell.floor.Reason;

/** What events about one application have in common: it has to be on, and they hang on the fact that put it on. */
public sealed interface OnApplication extends VisitEvent
        permits WorkEvent.LastOn,
                WorkEvent.CoverChanged,
                WorkEvent.Planned,
                WorkEvent.FoilsOut,
                WorkEvent.Emulsified,
                LookEvent.StrandChecked {
    ApplicationId subject();

    @Override
    default Set<Long> hangsOn() {
        return Set.of(subject().value());
    }

    @Override
    default List<Reason> objections(Situation situation) {
        return situation.unlessOn(subject());
    }

    @Override
    default Instant notBefore(Situation situation) {
        return situation.firstOn(subject());
    }
}
