/**
 * Everything SQL and on disk. {@link rinsebell.db.SalonStore} is the door.
 *
 * <h2>The order of writes, and why</h2>
 *
 * <ol>
 *   <li><b>Texts</b> (labels, names, notes) go into a small file and are forced to disk. The journal can't take them,
 *       since it can't forget; and a fact whose label is lost would be worse than a label whose fact never came to be,
 *       which is simply never read.
 *   <li><b>The journal</b> gets one line a fact and is forced once for the whole batch. From here on the presses
 *       count. If this fails the file is cut back and nobody is told that anything was saved; if it can't be cut back
 *       nobody can say what counts, and the process has to stop.
 *   <li><b>The database</b> gets facts, presses, texts, the rows of visits and the place in the journal it has reached,
 *       in one transaction. If this fails the presses still count: they are kept at hand and written with the next
 *       batch, or at the next start. H2 closes its file when a write fails; it is opened again each time somebody asks,
 *       so all is well by itself as soon as there is room, and until then {@link rinsebell.db.DatabaseAway} says what
 *       can't be asked.
 *   <li><b>The file of texts</b> is emptied now and then, after the database was forced to disk. H2 hands a commit to
 *       the operating system and no further, so a power cut may take its last transactions back.
 * </ol>
 *
 * <p>So the journal is never behind the database, and the two can be compared: the database knows how many lines it has
 * taken in and the hash of the last. At a start the journal is read from end to end, what the database lacks is written
 * into it, and a journal that is shorter or another one stops the start with a message, before anything is cut off it. A
 * database is read from end to end, without changing it, before it is opened: one that lacks a part is set aside as it
 * is and made again, under another name until it is whole: facts and rows from the journal, and what stands nowhere else
 * from the newest copy that can be read and whose last line is one of the journal's. What labels, notes and client records
 * may be missing then, {@link rinsebell.db.SalonStore#lastRebuild} says.
 *
 * <h2>What is a row</h2>
 *
 * <p>Facts are rows that never change. The rows of visits, bowls, applications and checks are the fold of those facts,
 * made again as a whole whenever a visit ends or is corrected after its end; a mistake in them never keeps a fact out.
 * Texts and client records are the only rows that can be erased.
 */
@NullMarked
package rinsebell.db;

import org.jspecify.annotations.NullMarked;
