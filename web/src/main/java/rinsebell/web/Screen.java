package rinsebell.web;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rinsebell.web.view.Ribbon;

/**
 * What a template knows besides its view: the words, where assets lie, how time is written, and the instant.
 *
 * @param now the instant that this rendering shows; views hold none, so that an unchanged view stays equal
 * @param stamp the feed's process and counter at this rendering, such as {@code k3f9-1041}: a screen drops older ones
 * @param press the press id that a whole page embeds for a browser without script; none in shared fragments
 */
public record Screen(
        Words words,
        Assets assets,
        TimeStyle time,
        Instant now,
        String stamp,
        @Nullable String press) {

    public String say(String key, Object... arguments) {
        return words.say(key, arguments);
    }

    public String asset(String path) {
        return assets.url(path);
    }

    public String clock(Instant instant) {
        return time.clock(instant);
    }

    public String left(Instant due) {
        return time.left(due, now);
    }

    /** The time left as part of a line, such as {@code in 07:12}; past the instant just {@code +01:12}. */
    public String leftIn(Instant due) {
        return due.isAfter(now) ? say("line.in", left(due)) : left(due);
    }

    public long nowMillis() {
        return now.toEpochMilli();
    }

    public Optional<String> pressId() {
        return Optional.ofNullable(press);
    }

    /** Where this ribbon's seconds lie on the screen at this instant. */
    public Ruler ruler(Ribbon ribbon) {
        return Ruler.of(ribbon, now);
    }
}
