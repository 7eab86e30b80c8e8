package rinsebell.db.journal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;

/** Reads one file of the journal, checks every line and hands on the whole presses. Used once. */
final class SegmentReader {

    private static final byte[] LINE_BEGINS = (JournalLine.FORMAT + " ").getBytes(UTF_8);

    private final Segment segment;
    private final JournalReader reader;
    private final byte[] bytes;
    private final List<String> press = new ArrayList<>();
    private JournalMark line;
    private JournalMark whole;
    private int next;
    private int wholeBytes;
    private long presses;

    private SegmentReader(Segment segment, JournalMark before, JournalReader reader) throws IOException {
        this.segment = segment;
        this.reader = reader;
        this.bytes = Files.readAllBytes(segment.file());
        this.line = before;
        this.whole = before;
    }

    /**
     * Reads a file that follows on {@code before}.
     *
     * @throws JournalDamaged if a line does not fit and can't be the torn tail of the last batch
     */
    static SegmentRead read(Segment segment, JournalMark before, JournalReader reader) throws IOException {
        return new SegmentReader(segment, before, reader).read();
    }

    private SegmentRead read() {
        checkName();
        try {
            while (next < bytes.length) {
                takeLine();
            }
            return upTo(press.isEmpty() ? "" : "the press is not whole");
        } catch (BadLine e) {
            refuseDamage(e.reason());
            return upTo(e.reason());
        }
    }

    private void checkName() {
        if (segment.firstLine() != line.lines() + 1) {
            throw damaged("the file begins with line " + segment.firstLine() + ", but line " + (line.lines() + 1)
                    + " comes next: a file of the journal is missing");
        }
    }

    private void takeLine() throws BadLine {
        int end = endOfLine(next);
        if (end == bytes.length) {
            throw new BadLine("the line has no end");
        }
        byte[] text = Arrays.copyOfRange(bytes, next, end);
        take(JournalLine.parse(text), JournalLine.hash(text));
        next = end + 1;
        if (press.isEmpty()) {
            wholeBytes = next;
        }
    }

    private void take(JournalLine read, String hash) {
        checkPlace(read);
        line = new JournalMark(read.number(), hash);
        press.add(read.payload());
        if (read.endsPress()) {
            handOn();
        }
    }

    /** A line whose checksum fits was written as it stands; one in the wrong place is damage wherever it is. */
    private void checkPlace(JournalLine read) {
        if (read.number() != line.lines() + 1) {
            throw damaged("it says it is line " + read.number());
        }
        if (!read.before().equals(line.hash())) {
            throw damaged("it follows on another line than the one before it");
        }
        if (read.k() != press.size() + 1 || read.k() > read.n()) {
            throw damaged("it says it is fact " + read.k() + " of " + read.n() + " of its press, but fact "
                    + (press.size() + 1) + " comes next");
        }
    }

    private void handOn() {
        whole = line;
        presses++;
        reader.press(new JournalPress(press), whole);
        press.clear();
    }

    /**
     * A bad line is the torn tail of the last batch only if nothing speaks against it: it looks torn, so do all bad
     * ones after it, and no line after it shows that it had been on disk before that line was begun.
     */
    private void refuseDamage(String reason) {
        long bad = line.lines() + 1;
        for (int start = next; start < bytes.length; start = endOfLine(start) + 1) {
            if (firstWrittenWith(start).orElse(isTorn(start) ? 0 : Long.MAX_VALUE) > bad) {
                throw damaged(reason);
            }
        }
        if (bad == 1 && !beginsLikeALine()) {
            throw damaged(reason);
        }
    }

    private OptionalLong firstWrittenWith(int start) {
        try {
            return OptionalLong.of(JournalLine.parse(Arrays.copyOfRange(bytes, start, endOfLine(start)))
                    .first());
        } catch (BadLine e) {
            return OptionalLong.empty();
        }
    }

    /**
     * Where a write stopped, a line lacks its end, and that only; where a disk left part of a write out, zeros stand
     * in it.
     */
    private boolean isTorn(int start) {
        int end = endOfLine(start);
        return has(0, start, end) || (end == bytes.length && !has('\r', start, end));
    }

    private boolean has(int wanted, int start, int end) {
        for (int at = start; at < end; at++) {
            if (bytes[at] == wanted) {
                return true;
            }
        }
        return false;
    }

    /** Of a file in which not one line fits nobody can say that it ever was a journal. */
    private boolean beginsLikeALine() {
        int compared = Math.min(bytes.length, LINE_BEGINS.length);
        return Arrays.equals(bytes, 0, compared, LINE_BEGINS, 0, compared) && !has(0, 0, bytes.length);
    }

    private int endOfLine(int start) {
        int end = start;
        while (end < bytes.length && bytes[end] != '\n') {
            end++;
        }
        return end;
    }

    private SegmentRead upTo(String reason) {
        long torn = (long) bytes.length - wholeBytes;
        return new SegmentRead(
                whole, wholeBytes, presses, new SegmentRead.Tail(torn, line.lines() + 1, torn > 0 ? reason : ""));
    }

    private JournalDamaged damaged(String reason) {
        return new JournalDamaged(segment.file(), line.lines() + 1, reason);
    }
}
