/**
 * Facts as text: what stands in a line of the journal and in a row of the fact table.
 *
 * <p>Every kind of event has a name, a version and two functions that name each field, so that nothing in the floor
 * can be renamed into an unreadable past. A kind's name and the fields of a version that was ever released stay as
 * they are; a change makes a new version, and the reader of the old one stays and lifts it.
 */
@NullMarked
package rinsebell.db.codec;

import org.jspecify.annotations.NullMarked;
