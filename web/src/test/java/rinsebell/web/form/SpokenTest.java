package rinsebell.web.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rinsebell.floor.BellAcknowledged;
import rinsebell.floor.Reason;
import rinsebell.floor.ReasonCode;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.bell.Priority;
import rinsebell.floor.bell.Stage;
import rinsebell.floor.bowl.BowlReason;
import rinsebell.floor.bowl.DayEvent;
import rinsebell.floor.clock.Limit;
import rinsebell.floor.product.Active;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Develops;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Kind;
import rinsebell.floor.product.Pairing;
import rinsebell.floor.product.Zone;
import rinsebell.floor.salon.Place;
import rinsebell.floor.salon.Role;
import rinsebell.floor.salon.SalonEvent;
import rinsebell.floor.unit.Grams;
import rinsebell.floor.visit.Area;
import rinsebell.floor.visit.Complaint;
import rinsebell.floor.visit.Ending;
import rinsebell.floor.visit.Gate;
import rinsebell.floor.visit.LookEvent;
import rinsebell.floor.visit.ScalpCheck;
import rinsebell.floor.visit.StayEvent;
import rinsebell.floor.visit.StrandFinding;
import rinsebell.floor.visit.WorkEvent;
import rinsebell.web.Words;
import rinsebell.web.board.ReasonTelling;

/** Everything that people are shown has its words. */
class SpokenTest {
    private static final List<Class<? extends Enum<?>>> SHOWN = List.of(
            Stage.Step.class,
            Priority.class,
            BowlReason.class,
            Limit.Why.class,
            Active.AtEnd.class,
            Cover.class,
            Develops.Counted.class,
            Heat.class,
            Kind.class,
            Pairing.Rule.class,
            Zone.class,
            Role.class,
            Area.class,
            Complaint.Grade.class,
            Ending.How.class,
            Gate.Scalp.class,
            Gate.Metal.class,
            Gate.SkinTest.Result.class,
            ScalpCheck.Finding.class,
            StrandFinding.Tone.class,
            StrandFinding.Stretch.class,
            StrandFinding.Dryness.class);

    private final Words words = Words.british();

    @Test
    void everyChoiceHasItsWords() {
        var missing = SHOWN.stream()
                .flatMap(type -> Arrays.stream(type.getEnumConstants()).map(Enum.class::cast))
                .map(one -> (one.getDeclaringClass().getSimpleName() + "." + one.name()).toLowerCase(Locale.ROOT))
                .filter(key -> !words.knows(key));
        assertThat(missing).isEmpty();
    }

    @Test
    void everyReasonBellAndFaultHasItsWords() {
        var keys = new ArrayList<String>();
        Arrays.stream(ReasonCode.values()).map(ReasonTelling::key).forEach(keys::add);
        Arrays.stream(ReasonCode.Basis.values())
                .map(basis -> "basis." + basis.name().toLowerCase(Locale.ROOT))
                .forEach(keys::add);
        Arrays.stream(BellKind.values())
                .map(kind -> "bell." + kind.name().toLowerCase(Locale.ROOT))
                .forEach(keys::add);
        Arrays.stream(Fault.values()).map(FaultWords::key).forEach(keys::add);
        assertThat(keys).allMatch(words::knows);
    }

    @Test
    void everyFactHasItsWords() {
        var kinds = Stream.of(SalonEvent.class, DayEvent.class, StayEvent.class, WorkEvent.class, LookEvent.class)
                .flatMap(family -> Arrays.stream(family.getPermittedSubclasses()))
                .filter(kind -> !kind.isInterface());
        assertThat(Stream.concat(kinds, Stream.of(BellAcknowledged.class)).map(FactRows::key))
                .allMatch(words::knows);
    }

    @Test
    void reasonsNameWhatTheySpeakOf() {
        var moment = new PageTable().moment();
        assertThat(ReasonTelling.say(Reason.of(ReasonCode.NO_SKIN_TEST, Duration.ofHours(48), 7), moment))
                .isEqualTo("No dye on skin: there is no skin test that counts. It is applied at least 2 days before,"
                        + " shows no reaction, and counts for 7 days.");
        assertThat(ReasonTelling.say(
                        Reason.of(ReasonCode.TOO_MUCH_ADDED, "powder", Kind.CLEAR_ADDITIVE, Grams.of(7)), moment))
                .isEqualTo("powder takes at most 7 g of clear additive for 60 g.");
        assertThat(ReasonTelling.say(Reason.of(ReasonCode.PLACE_TAKEN, Place.basin(2)), moment))
                .isEqualTo("Somebody is in this place: basin B.");
    }
}
