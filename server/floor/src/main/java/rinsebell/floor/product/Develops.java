package rinsebell.floor.product;

import java.util.Map;

/**
 * How long a mixture develops, and from when the leaflet counts.
 *
 * @param counted the start of counting
 * @param plain the figures without heat
 * @param heated the leaflet's own shorter figures under a heat it allows; a heat without an entry changes nothing
 */
public record Develops(Counted counted, Span plain, Map<Heat, Span> heated) {
    /** From when a development time counts. */
    public enum Counted {
        FROM_MIXING,
        FROM_FIRST_ON,
        FROM_LAST_ON
    }

    public Develops {
        heated = Map.copyOf(heated);
    }
}
