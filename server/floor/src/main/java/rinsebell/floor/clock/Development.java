package rinsebell.floor.clock;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.product.Allowance;
import rinsebell.floor.product.Develops;
import rinsebell.floor.product.Heat;
import rinsebell.floor.product.Span;
import rinsebell.floor.unit.Instants;
import rinsebell.floor.visit.HeatSpan;

/**
 * When a figure of development is reached on a head that was warmed for a while. A heated minute counts as the plain
 * figure divided by the heated one; heat without a figure of its own, or that is not allowed, changes nothing. Heat that
 * is on is taken to stay on.
 */
final class Development {
    private final Develops develops;
    private final Function<Heat, Allowance> allowed;
    private final List<HeatSpan> heats;

    Development(Develops develops, Function<Heat, Allowance> allowed, List<HeatSpan> heats) {
        this.develops = develops;
        this.allowed = allowed;
        this.heats = heats;
    }

    /**
     * @param start where counting begins
     * @param figure how much time without heat
     * @param of which figure of a span is meant, to find its heated twin
     */
    Instant reached(Instant start, Duration figure, Function<Span, Duration> of) {
        var left = figure.toMillis();
        var at = start;
        for (var span : heats) {
            if (span.until() != null && !span.until().isAfter(at)) {
                continue;
            }
            var from = Instants.later(span.from(), at);
            var plain = Duration.between(at, from).toMillis();
            if (left <= plain) {
                return at.plusMillis(left);
            }
            left -= plain;
            at = from;
            var rate = new Rate(of.apply(develops.plain()), heatedFigure(span.heat(), of));
            var warm = span.until() == null ? null : Duration.between(from, span.until());
            if (warm == null || rate.reaches(left, warm)) {
                return at.plusMillis(rate.wallMillis(left));
            }
            left -= rate.progressMillis(warm);
            at = from.plus(warm);
        }
        return at.plusMillis(left);
    }

    private @Nullable Duration heatedFigure(Heat heat, Function<Span, Duration> of) {
        var heated = develops.heated().get(heat);
        return heated == null || !allowed.apply(heat).allowed() ? null : of.apply(heated);
    }

    /** Plain time per heated time, kept as a fraction; where it does not divide, the earlier millisecond is taken. */
    private record Rate(long plainMillis, long heatedMillis) {
        Rate(Duration plain, @Nullable Duration heated) {
            this(
                    heated == null || heated.isZero() ? 1 : Math.max(1, plain.toMillis()),
                    heated == null || heated.isZero() ? 1 : heated.toMillis());
        }

        boolean reaches(long left, Duration warm) {
            return progressMillis(warm) >= left;
        }

        long progressMillis(Duration warm) {
            return -Math.floorDiv(-Math.multiplyExact(warm.toMillis(), plainMillis), heatedMillis);
        }

        long wallMillis(long left) {
            return Math.multiplyExact(left, heatedMillis) / plainMillis;
        }
    }
}
