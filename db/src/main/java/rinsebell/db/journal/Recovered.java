package rinsebell.db.journal;

import java.nio.file.Path;

/**
 * What was found when a journal was read from end to end.
 *
 * @param end the place behind the last whole press
 * @param lastFile the file that the next press goes to
 * @param tornBytes how many bytes stand (after opening: stood) behind the last whole press, of a batch that nobody was
 *     told is saved; 0 as a rule
 * @param tornBecause what is wrong with them, for people; empty if there are none
 */
public record Recovered(JournalMark end, long presses, Path lastFile, long tornBytes, String tornBecause) {}
