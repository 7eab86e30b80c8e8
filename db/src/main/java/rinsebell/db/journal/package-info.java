/**
 * The journal: the first place on disk where a press counts.
 *
 * <p>A folder of text files, one line a fact. A file is named after the number of its first line and a new one is
 * begun when the last is full, so the names sort in the order of writing. Each line reads
 *
 * <pre>
 * j1 CHECKSUM NUMBER FIRST K/N BEFORE PAYLOAD
 * </pre>
 *
 * <ul>
 *   <li>CHECKSUM: CRC-32C of everything after it on the line, eight hexadecimal digits;
 *   <li>NUMBER: the line's number in the whole journal, from 1;
 *   <li>FIRST: the number of the first line that was written together with it. All lines before FIRST were on disk
 *       already, which is how a torn tail is told from damage in the middle;
 *   <li>K/N: this is fact K of the N facts of one press; all of them count or none;
 *   <li>BEFORE: SHA-256 of the line before (without its line end), zeros for the very first;
 *   <li>PAYLOAD: what the caller wrote, one line of JSON.
 * </ul>
 *
 * <p>What can happen to it: a batch that was being written when the power went ends in a torn tail, which is cut off
 * at the next start, since nobody was told that it was saved; a copy of the tail stays beside the file. Its last line
 * lacks its end, or zeros stand where the disk left something out. Anything else that does not fit is damage: the
 * journal refuses to open, changes nothing, and names the file, the line and the reason.
 */
@NullMarked
package rinsebell.db.journal;

import org.jspecify.annotations.NullMarked;
