package rinsebell.web.board;

import rinsebell.floor.bowl.Left;

/** Tells what was left in a bowl. */
public final class LeftTelling {
    private LeftTelling() {}

    /** Such as "a quarter left" or "12.5 g left". */
    public static String say(Moment moment, Left left) {
        return left instanceof Left.Weighed weighed
                ? moment.say("left.weighed", weighed.grams().amount().toPlainString())
                : moment.say(((Left.Estimated) left).quarters());
    }
}
