package rinsebell.app.shelf;

import java.util.List;
import java.util.stream.Stream;
import rinsebell.floor.product.Directions;

/**
 * The directions of an invented house of products, one or more of every kind that a colour station uses, so that a new
 * salon has something to try. A salon replaces them by what the leaflets in its own boxes say.
 *
 * <p>What each kind may and may not be mixed with, the hour of active life, equal weights of developer, and what covers
 * and heats are allowed are common practice, no source. Every other figure is made up to be plausible.
 */
public final class InventedProducts {
    public static final Directions MILD_CREAM = Lighteners.mildCream();
    public static final Directions STRONG_CREAM = Lighteners.strongCream();
    public static final Directions POWDER = Lighteners.powder();
    public static final Directions HIGH_LIFT = Colours.highLift();
    public static final Directions DARK_BROWN = Colours.permanent("Brimmow permanent 4 dark brown");
    public static final Directions BEIGE = Colours.permanent("Brimmow permanent 8 beige");
    public static final Directions TONER = Colours.toner();
    public static final Directions REMOVER = Others.remover();
    public static final Directions CLEAR = Others.clear();
    public static final Directions DEVELOPER_10 = Others.developer(10);
    public static final Directions DEVELOPER_20 = Others.developer(20);
    public static final Directions DEVELOPER_30 = Others.developer(30);
    public static final Directions DEVELOPER_40 = Others.developer(40);
    public static final Directions DEVELOPER_BASE = Others.developerBase();

    private InventedProducts() {}

    /** All of them, in the order in which they stand on the shelf. */
    public static List<Directions> all() {
        return Stream.concat(toPutOn(), toMixWith()).toList();
    }

    private static Stream<Directions> toPutOn() {
        return Stream.of(MILD_CREAM, STRONG_CREAM, POWDER, HIGH_LIFT, DARK_BROWN, BEIGE, TONER, REMOVER);
    }

    private static Stream<Directions> toMixWith() {
        return Stream.of(CLEAR, DEVELOPER_10, DEVELOPER_20, DEVELOPER_30, DEVELOPER_40, DEVELOPER_BASE);
    }
}
