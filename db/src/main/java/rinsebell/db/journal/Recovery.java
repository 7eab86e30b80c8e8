package rinsebell.db.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Reads a journal from end to end and changes nothing. Used once. */
final class Recovery {

    private final JournalReader reader;
    private JournalMark end = JournalMark.START;
    private long presses;

    private Recovery(JournalReader reader) {
        this.reader = reader;
    }

    /** The journal as it stands; its last file is the first that is to be written if it has none yet. */
    record State(Segment last, SegmentRead read, long presses) {

        Recovered recovered() {
            return new Recovered(
                    read.end(),
                    presses,
                    last.file(),
                    read.tail().bytes(),
                    read.tail().reason());
        }
    }

    static State read(Path folder, JournalReader reader) throws IOException {
        List<Segment> segments = Segment.in(folder);
        return segments.isEmpty() ? empty(folder) : new Recovery(reader).all(segments);
    }

    private static State empty(Path folder) {
        SegmentRead nothing = new SegmentRead(JournalMark.START, 0, 0, new SegmentRead.Tail(0, 1, ""));
        return new State(Segment.startingAt(folder, 1), nothing, 0);
    }

    private State all(List<Segment> segments) throws IOException {
        for (Segment full : segments.subList(0, segments.size() - 1)) {
            refuseTail(full, one(full));
        }
        Segment last = segments.get(segments.size() - 1);
        return new State(last, one(last), presses);
    }

    private SegmentRead one(Segment segment) throws IOException {
        SegmentRead read = SegmentReader.read(segment, end, reader);
        end = read.end();
        presses += read.presses();
        return read;
    }

    /** A file is forced to disk before the next is begun, so only the last can end in a torn tail. */
    private static void refuseTail(Segment segment, SegmentRead read) {
        if (read.torn()) {
            throw new JournalDamaged(
                    segment.file(), read.tail().line(), read.tail().reason());
        }
    }
}
