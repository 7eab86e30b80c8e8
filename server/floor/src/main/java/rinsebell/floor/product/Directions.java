package rinsebell.floor.product;

/**
 * What the leaflet of a product allows, as the salon typed it in. One edition: a change makes a new one.
 *
 * @param name the salon's name for the product
 * @param kind what sort of product it is
 * @param times how long it is usable, develops, may stay
 * @param limits zone, covers, heats
 * @param mixing ratios, developer strengths, what it may meet in a bowl
 * @param checks how often to look
 * @param contents dye, peroxide, ammonia
 */
public record Directions(
        String name, Kind kind, Times times, Limits limits, Mixing mixing, Checks checks, Contents contents) {}
