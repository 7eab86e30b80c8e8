package rinsebell.app.feed;

import java.time.Duration;

/**
 * How the feed treats its screens.
 *
 * @param beat the time between two beats
 * @param waitingBatches how many batches may wait for one screen before it is cut off
 * @param beatsInOneWrite how many beats a single write may take before its screen counts as dead
 * @param screens how many screens may be connected at once
 */
public record FeedLimits(Duration beat, int waitingBatches, int beatsInOneWrite, int screens) {

    /** The limits of a salon: a beat every five seconds, a dead screen found after fifteen. */
    public static FeedLimits usual() {
        return new FeedLimits(Duration.ofSeconds(5), 64, 3, 2_500);
    }
}
