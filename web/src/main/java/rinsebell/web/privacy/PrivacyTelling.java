package rinsebell.web.privacy;

import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.salon.Policy.Keeping;
import rinsebell.floor.salon.Role;
import rinsebell.web.access.AccessTelling;
import rinsebell.web.access.PlainPage;
import rinsebell.web.board.Moment;
import rinsebell.web.form.SheetPage.Part;
import rinsebell.web.form.SheetPage.Row;
import rinsebell.web.view.Press;
import rinsebell.web.view.Shell;

/** The page about what is kept of people: plain words, the salon's own numbers, and no legal advice. */
public final class PrivacyTelling {
    public static final String PRIVACY = "/privacy";

    /** ISO 8601, so that no month is taken for a day. */
    private static final DateTimeFormatter DATE = DateTimeFormatter.ISO_LOCAL_DATE;

    private static final List<String> WHERE =
            List.of("computer", "journal", "database", "copies", "screens", "elsewhere");
    private static final List<String> HEALTH = List.of("which", "answers", "left", "decides");
    private static final List<String> RIGHTS = List.of("copy", "correction", "erasing", "restriction", "complaint");
    private static final List<String> ERASING = List.of("gone", "file", "stays", "guess");

    private final Moment moment;
    private final Map<String, List<Role>> allowed;
    private final Past past;

    /**
     * What was done until now.
     *
     * @param runs when what was past its time was erased, the newest first
     * @param compacted when the database's file was written anew last; null for never
     * @param due whether something was erased since
     * @param times that are the program's own
     */
    public record Past(List<Run> runs, @Nullable Instant compacted, boolean due, Times times) {}

    /**
     * How long what is kept that no house decides of.
     *
     * @param soundings what devices sounded
     * @param trail who looked at what
     */
    public record Times(Duration soundings, Duration trail) {}

    /** @param until the time that was reckoned with */
    public record Run(Instant at, Instant until, int records, int texts, int soundings, int steps) {}

    /** @param allowed who may, by the key of each matter; everybody on a device that is in where it asks for no PIN */
    public PrivacyTelling(Moment moment, Map<String, List<Role>> allowed, Past past) {
        this.moment = moment;
        this.allowed = allowed;
        this.past = past;
    }

    public PlainPage page(Shell shell) {
        var parts = Stream.of(
                        Stream.of(links(), kept()),
                        Stream.of(told("health", HEALTH), told("where", WHERE), told("rights", RIGHTS), erasing()),
                        Stream.of(log(), told("law", List.of("advice", "ground"))))
                .flatMap(part -> part)
                .toList();
        return new PlainPage(shell, moment.say("privacy.intro", moment.salon()), "", null, parts, null, List.of());
    }

    private Part links() {
        return new Part(
                "",
                List.of(),
                List.of(
                        Press.opens(moment.say("rights.title"), "", AccessTelling.RIGHTS),
                        Press.opens(moment.say("form.policy"), "", "/policy")));
    }

    private Part kept() {
        var rows = Arrays.stream(Kept.values()).map(this::row).toList();
        return new Part(moment.say("privacy.kept"), rows, List.of());
    }

    private Row row(Kept kept) {
        var detail = moment.say(
                "privacy.kept.more", kept.why(moment), kept.time(moment, keeping(), past.times()), who(kept));
        return new Row("", kept.what(moment), detail, false, List.of());
    }

    private Keeping keeping() {
        return moment.floor().salon().policy().keeping();
    }

    /** Who sees it, by the one table of rights. */
    private String who(Kept kept) {
        return kept.matters().stream()
                .map(matter -> moment.say("privacy.who", moment.say(matter), roles(matter)))
                .collect(Collectors.joining("; "));
    }

    private String roles(String matter) {
        var roles = Objects.requireNonNull(allowed.get(matter), matter);
        return roles.isEmpty()
                ? moment.say("privacy.who.everybody")
                : moment.say("privacy.who.pin", roles.stream().map(moment::say).collect(Collectors.joining(", ")));
    }

    private Part told(String part, List<String> rows) {
        return new Part(
                moment.say("privacy." + part),
                rows.stream()
                        .map(row -> row(
                                "privacy." + part + "." + row,
                                Keeping.COPIES.toDays(),
                                keeping().recordMonths()))
                        .toList(),
                List.of());
    }

    private Row row(String key, Object... arguments) {
        return new Row("", moment.say(key), moment.say(key + ".more", arguments), false, List.of());
    }

    private Part erasing() {
        var rows = Stream.concat(told("erasing", ERASING).rows().stream(), Stream.of(compacted()));
        return new Part(moment.say("privacy.erasing"), rows.toList(), List.of());
    }

    /** Copies from before it was compacted may hold what was erased. */
    private Row compacted() {
        var last = past.compacted();
        var what = moment.say("privacy.erasing.copies");
        if (past.due()) {
            return new Row(
                    "", what, moment.say("privacy.erasing.copies.due", Keeping.COPIES.toDays()), false, List.of());
        }
        var until = last == null
                ? moment.say("privacy.erasing.copies.never")
                : moment.say("privacy.erasing.copies.until", day(last.plus(Keeping.COPIES)), day(last));
        return new Row("", what, until, false, List.of());
    }

    private Part log() {
        var rows = past.runs().stream().map(this::row).toList();
        var title = moment.say(rows.isEmpty() ? "privacy.log.none" : "privacy.log");
        return new Part(title, rows, List.of());
    }

    private Row row(Run run) {
        var isBehind = run.until().isBefore(run.at());
        var behind = isBehind ? " " + moment.say("privacy.log.behind", day(run.until())) : "";
        return new Row(
                day(run.at()),
                moment.say("privacy.log.run", run.records(), run.texts(), run.soundings(), run.steps()),
                moment.clock(run.at()) + behind,
                false,
                List.of());
    }

    private String day(Instant at) {
        return DATE.format(at.atZone(moment.time().zone()));
    }
}
