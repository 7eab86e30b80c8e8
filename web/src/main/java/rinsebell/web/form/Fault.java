package rinsebell.web.form;

/** What can be wrong with one field. Each has its words in the message bundle. */
public enum Fault {
    MISSING,
    /** No form has a field of this name. */
    NOT_A_FIELD,
    TWO_ANSWERS,
    NOT_A_NUMBER,
    /** It could be meant as thousands, or as a decimal. */
    THOUSANDS,
    NOT_WHOLE,
    /** Arguments: the smallest number allowed. */
    TOO_SMALL,
    /** Arguments: the largest number allowed. */
    TOO_LARGE,
    /** Arguments: how many decimal places are allowed. */
    TOO_FINE,
    /** Arguments: how many characters are allowed. */
    TOO_LONG,
    UNPRINTABLE,
    NOT_A_CHOICE,
    NOT_A_TIME,
    /** A time that is to come has gone by, or is further off than half a day. */
    GONE_BY,
    /** No hours of a day, such as 9:00-13:00. */
    NOT_HOURS,
    NOT_A_DATE,
    /** A day after today. */
    STILL_TO_COME,
    NOT_A_ZONE,
    /** It names something that this floor has not. */
    NOT_KNOWN,
    /** The end lies before the beginning. */
    ENDS_BEFORE,
    /** Arguments: how many are allowed. */
    TOO_MANY,
    /** No mixture of the two has that strength. Arguments: the weakest and the strongest of them, % w/w. */
    OUT_OF_REACH,
    /** Its leaflet does not say how strong it is. */
    STRENGTH_NOT_KNOWN,
    TAKES_NO_DEVELOPER,
    /** A portion would be less than the scale can show. Arguments: the least number, and the scale's step in grams. */
    TOO_LITTLE_TO_WEIGH,
    /** The page showed other grams when it was pressed. */
    SHOWN_OTHERWISE,
    /** Another has that name. Arguments: the name. */
    TAKEN,
    /** No product has that name. Arguments: the name. */
    NOT_ON_SHELF,
    NOT_A_RECIPE_FILE,
    /** Something in a file is wrong. Arguments: where in it, and what. */
    IN_FILE
}
