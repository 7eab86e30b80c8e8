package rinsebell.web.board;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.bell.Bell;
import rinsebell.floor.bell.Ear;
import rinsebell.floor.salon.StaffId;
import rinsebell.floor.salon.StaffMember;
import rinsebell.floor.visit.Visit;
import rinsebell.web.view.BellStrip;
import rinsebell.web.view.Fragment;
import rinsebell.web.view.HeadCard;
import rinsebell.web.view.HeadList;
import rinsebell.web.view.Press;
import rinsebell.web.view.Press.Weight;

/** "My clients" for one person's phone; everybody's while nobody is chosen. */
public final class PocketBoard {
    private final Moment moment;
    private final @Nullable StaffId who;

    public PocketBoard(Moment moment, @Nullable StaffId who) {
        this.moment = moment;
        this.who = who;
    }

    public List<Fragment> fragments() {
        return List.of(strip(), mine());
    }

    public BellStrip strip() {
        return new BellTelling(moment, false)
                .strip(moment.bells().stream()
                        .filter(bell -> isMine(bell) || calls(bell))
                        .toList());
    }

    private boolean isMine(Bell bell) {
        return Optional.ofNullable(bell.visit())
                .flatMap(moment.floor()::visit)
                .map(this::isMine)
                .orElse(who == null);
    }

    /** Of another's client, because everybody is called, or because nobody answered. */
    private boolean calls(Bell bell) {
        return who != null
                && bell.ring(moment.now())
                        .filter(ring -> ring.reach().reaches(new Ear.Of(who)))
                        .isPresent();
    }

    public List<Press> people() {
        var everybody = Press.opens(moment.say("pocket.everybody"), "", "/pocket?staff=")
                .as(who == null ? Weight.MAIN : Weight.PLAIN);
        return Stream.concat(
                        Stream.of(everybody),
                        moment.floor().salon().working().stream().map(this::person))
                .toList();
    }

    private Press person(StaffMember member) {
        return Press.opens(
                        moment.name(member.id()),
                        "",
                        "/pocket?staff=" + member.id().value())
                .as(member.id().equals(who) ? Weight.MAIN : Weight.PLAIN);
    }

    /** Whoever needs somebody first comes first, in the order of the bells. */
    public HeadList mine() {
        var basins = new BasinRows(moment);
        var cards = moment.floor().openVisits().stream()
                .filter(this::isMine)
                .map(visit -> new HeadTelling(moment, visit, false))
                .map(head -> new Mine(HeadCards.of(head, new HeadPresses(head, basins).main()), harm(head)))
                .sorted(Comparator.comparing((Mine one) -> one.card.due().urgency())
                        .reversed()
                        .thenComparing(Mine::harm)
                        .thenComparing(one -> one.card.due().instant().orElse(Instant.MAX)))
                .map(Mine::card)
                .toList();
        var title = who == null ? moment.say("pocket.all") : moment.say("pocket.of", moment.name(who));
        return new HeadList("pocket", title, cards, moment.say("pocket.none"));
    }

    private record Mine(HeadCard card, int harm) {}

    /** What has to come off goes before what has to be looked at for longer. */
    private static int harm(HeadTelling head) {
        return new HeadNext(head)
                .asking().stream()
                        .findFirst()
                        .map(bell -> BellTelling.harm(bell.kind()))
                        .orElse(Integer.MAX_VALUE);
    }

    private boolean isMine(Visit visit) {
        return who == null
                || who.equals(visit.stay().stylist())
                || who.equals(visit.stay().helper());
    }
}
