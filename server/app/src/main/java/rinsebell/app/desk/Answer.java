package rinsebell.app.desk;

import rinsebell.floor.Floor;

/** What the desk says to a press. */
public sealed interface Answer {
    /**
     * It was decided, now or when the same press came before.
     *
     * @param outcome how
     * @param floor as it stands with it
     */
    record Decided(Outcome outcome, Floor floor) implements Answer {}

    /** Another press came under this id before. */
    record OtherPress() implements Answer {}

    /**
     * It could not be made durable; the floor is as it was.
     *
     * @param rings whether it rings all the same, because it is about somebody being hurt
     */
    record NotSaved(boolean rings) implements Answer {}

    /** It is being written, and nobody knows yet whether it counts: the same press again is told. */
    record NotKnown() implements Answer {}

    /** It could not be decided because of a mistake in this program; the floor is as it was. */
    record Bug() implements Answer {}
}
