package rinsebell.db.journal;

import java.io.ByteArrayOutputStream;
import java.util.List;

/**
 * Presses as the bytes that are written for them at one go.
 *
 * @param end the place in the journal behind them
 */
record Batch(byte[] bytes, JournalMark end) {

    static Batch of(List<JournalPress> presses, JournalMark before) {
        Writer writer = new Writer(before);
        presses.forEach(writer::press);
        return new Batch(writer.bytes.toByteArray(), writer.end);
    }

    private static final class Writer {

        private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        private final long first;
        private JournalMark end;

        Writer(JournalMark before) {
            first = before.lines() + 1;
            end = before;
        }

        void press(JournalPress press) {
            int n = press.payloads().size();
            for (int k = 1; k <= n; k++) {
                line(new JournalLine(
                        end.lines() + 1,
                        first,
                        k,
                        n,
                        end.hash(),
                        press.payloads().get(k - 1)));
            }
        }

        private void line(JournalLine line) {
            byte[] text = line.bytes();
            bytes.writeBytes(text);
            bytes.write('\n');
            end = new JournalMark(line.number(), JournalLine.hash(text));
        }
    }
}
