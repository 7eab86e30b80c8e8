package rinsebell.app.privacy;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rinsebell.db.ClientFile;
import rinsebell.floor.Fact;
import rinsebell.floor.Stream;
import rinsebell.floor.bowl.Bowl;
import rinsebell.floor.visit.Application;
import rinsebell.floor.visit.Visit;
import rinsebell.web.board.Moment;
import rinsebell.web.form.EverythingPage;

/** The visits of a client's file, each on the floor of then, with all that was written down about it. */
public final class Stays {
    private Stays() {}

    /** Each visit with the floor of then and all that is known of it. */
    public static List<EverythingPage.Stay> of(ClientFile file, Moment now) {
        return file.stays().stream()
                .flatMap(stay -> stay.floor().visit(stay.visit()).stream()
                        .map(visit -> stay(
                                new Moment(
                                        stay.floor(),
                                        id -> file.texts().getOrDefault(id, ""),
                                        List.of(),
                                        now.now(),
                                        now.words()),
                                visit)))
                .toList();
    }

    private static EverythingPage.Stay stay(Moment then, Visit visit) {
        var bowls = bowls(then, visit).stream().map(bowl -> bowl.id().value()).toList();
        return new EverythingPage.Stay(then, visit, facts(then, visit, new HashSet<>(bowls)));
    }

    /** What was mixed for them or put on them. */
    public static List<Bowl> bowls(Moment then, Visit visit) {
        var used = new HashSet<>(
                visit.applications().stream().map(Application::bowl).toList());
        return then.floor().day().bowls().stream()
                .filter(bowl -> used.contains(bowl.id()) || visit.id().equals(bowl.forVisit()))
                .toList();
    }

    /** A bowl is a fact of the day; what else is said of it hangs on that. */
    private static List<Fact> facts(Moment then, Visit visit, Set<Long> bowls) {
        var own = Stream.visit(visit.id());
        return then.floor().facts().stream()
                .filter(fact -> fact.stream().equals(own)
                        || bowls.contains(fact.seq())
                        || fact.stream() instanceof Stream.OfDay
                                && fact.event().hangsOn().stream().anyMatch(bowls::contains))
                .toList();
    }
}
