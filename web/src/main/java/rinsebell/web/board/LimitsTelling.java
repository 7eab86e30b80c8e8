package rinsebell.web.board;

import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.product.Allowance;
import rinsebell.floor.product.Cover;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Limits;
import rinsebell.web.view.Rule;

/** Tells what heat and what cover directions forbid and allow. */
public final class LimitsTelling {
    private static final Set<Cover> COVERS = EnumSet.complementOf(EnumSet.of(Cover.OPEN));

    private final Moment moment;

    public LimitsTelling(Moment moment) {
        this.moment = moment;
    }

    public List<Rule> forbidden(Limits limits) {
        var all = new ArrayList<Rule>();
        forbid(all, "rule.heat", EnumSet.allOf(Heat.class), limits::heat);
        forbid(all, "rule.cover", COVERS, limits::cover);
        return all;
    }

    /** @param heats of which it is told */
    List<Rule> allowed(Limits limits, Set<Heat> heats) {
        var all = new ArrayList<Rule>();
        allow(all, "rule.heat", heats, limits::heat);
        allow(all, "rule.cover", COVERS, limits::cover);
        return all;
    }

    /** All that is forbidden of one sort in one line, so that the list can be read at a glance. */
    private <T extends Enum<T>> void forbid(List<Rule> all, String key, Set<T> whole, Function<T, Allowance> limits) {
        var no = whole.stream()
                .filter(one -> !limits.apply(one).allowed())
                .map(moment::say)
                .toList();
        if (no.size() == whole.size()) {
            all.add(new Rule(Rule.Kind.FORBIDDEN, moment.say(key + ".none"), ""));
        } else if (!no.isEmpty()) {
            all.add(new Rule(Rule.Kind.FORBIDDEN, moment.say(key + ".no", moment.listed("list.or", no)), ""));
        }
    }

    private <T extends Enum<T>> void allow(List<Rule> all, String key, Set<T> whole, Function<T, Allowance> limits) {
        for (var one : whole) {
            if (limits.apply(one).allowed()) {
                all.add(new Rule(
                        Rule.Kind.ALLOWED,
                        allowed(key, moment.say(one), limits.apply(one).upTo()),
                        ""));
            }
        }
    }

    private String allowed(String key, String what, @Nullable Duration longest) {
        var sentence = capital(what);
        return longest == null
                ? moment.say(key + ".yes", sentence)
                : moment.say(key + ".up_to", sentence, longest.toMinutes());
    }

    static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.UK) + words.substring(1);
    }
}
