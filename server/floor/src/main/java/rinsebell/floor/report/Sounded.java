package rinsebell.floor.report;

import java.time.Instant;

/**
 * That a device sounded a turn of a bell for the first time, as it says itself.
 *
 * @param turn which
 * @param device a number that the device was given; it names nobody
 * @param ear for whom it listened, as a code
 * @param at when, in the salon's time
 * @param awake since when it could know of it: its start, or when it last woke
 */
public record Sounded(Turned turn, String device, String ear, Instant at, Instant awake) {}
