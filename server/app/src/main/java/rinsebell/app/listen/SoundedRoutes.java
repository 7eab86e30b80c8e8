package rinsebell.app.listen;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rinsebell.app.door.Browser;
import rinsebell.app.door.Matter;
import rinsebell.app.door.Problem;
import rinsebell.app.door.ProblemCode;
import rinsebell.app.door.Routes;
import rinsebell.app.page.FormBody;
import rinsebell.floor.bell.BellKey;
import rinsebell.floor.bell.BellKind;
import rinsebell.floor.report.Sounded;
import rinsebell.floor.report.Turned;
import rinsebell.web.Codes;
import rinsebell.web.board.EarCode;

/**
 * {@code POST /sounded}: a page says which turns of bells it sounded. Anybody may say so; it is believed only as far as it
 * can be true, and only where the report finds that such a bell rang.
 */
public final class SoundedRoutes implements Routes {
    /** A bell's id on the page, the instant from which its turn is, for whom, when it sounded, since when it could. */
    private static final Pattern LINE = Pattern.compile(
            "bell-([a-z_]{1,40})-(\\d{1,18})-(-?\\d{1,18}) (\\d{1,15}) (\\S{1,40}) (\\d{1,15}) (\\d{1,15})");

    private static final int MOST = 50;
    /** A device that was away for longer has nothing to tell that anybody asks about. */
    private static final Duration OLDEST = Duration.ofDays(1);
    /** So far a device's time may be ahead. */
    private static final Duration AHEAD = Duration.ofSeconds(10);

    private final Consumer<Sounded> log;
    private final Supplier<Instant> clock;

    /** @param clock the salon's */
    public SoundedRoutes(Consumer<Sounded> log, Supplier<Instant> clock) {
        this.log = log;
        this.clock = clock;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.post("/sounded", this::sounded, Matter.SIGNAL);
    }

    /** All or nothing is read; of what was read, what can't be true is left out. */
    private void sounded(Context ctx) {
        var device = Browser.of(ctx).orElse("");
        var lines = FormBody.read(ctx).all("sounded");
        var read = lines.stream().flatMap(line -> read(line, device).stream()).toList();
        if (lines.isEmpty() || lines.size() > MOST || read.size() < lines.size()) {
            throw Problem.of(ProblemCode.UNREADABLE_BODY).thrown();
        }
        possible(read).forEach(log);
        ctx.status(204);
    }

    private static Optional<Sounded> read(String line, String device) {
        var match = LINE.matcher(line);
        return match.matches()
                ? Codes.choice(BellKind.class, match.group(1))
                        .filter(kind -> EarCode.read(match.group(5)).isPresent())
                        .map(kind -> read(match, kind, device))
                : Optional.empty();
    }

    private static Sounded read(Matcher match, BellKind kind, String device) {
        var bell = new BellKey(kind, Long.parseLong(match.group(2)), Long.parseLong(match.group(3)));
        return new Sounded(
                new Turned(bell, instant(match.group(4))),
                device,
                match.group(5),
                instant(match.group(6)),
                instant(match.group(7)));
    }

    private static Instant instant(String millis) {
        return Instant.ofEpochMilli(Long.parseLong(millis));
    }

    private List<Sounded> possible(List<Sounded> read) {
        var now = clock.get();
        return read.stream()
                .filter(one -> !one.at().isAfter(now.plus(AHEAD)) && one.at().isAfter(now.minus(OLDEST)))
                .filter(one -> !one.turn().from().isAfter(one.at().plus(AHEAD))
                        && !one.awake().isAfter(one.at()))
                .toList();
    }
}
