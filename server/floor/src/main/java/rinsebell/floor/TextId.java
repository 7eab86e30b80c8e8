package rinsebell.floor;

/**
 * Names an erasable text: a label, a person's name, a note. A fact has at most one, kept under the fact's number, so
 * that erasing the text leaves the fact as it is.
 *
 * @param seq the number of the fact that the text came with
 */
public record TextId(long seq) {}
