package rinsebell.db;

import rinsebell.floor.Fact;

/**
 * A fact, and how it came in.
 *
 * @param press the id of the press that wrote it
 * @param device which device pressed: {@code own}, {@code device-4}; empty when not known, and for what the program told
 *     itself
 */
public record Pressed(Fact fact, String press, String device) {}
