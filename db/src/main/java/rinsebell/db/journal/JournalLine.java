package rinsebell.db.journal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.zip.CRC32C;

/**
 * One line of the journal, taken apart; the package's own page says what each part is for.
 *
 * @param number the line's number in the whole journal, from 1
 * @param first the number of the first line that was written together with it
 * @param k which fact of its press it is, from 1
 * @param n how many facts the press has
 * @param before SHA-256 of the line before
 */
record JournalLine(long number, long first, int k, int n, String before, String payload) {

    static final String FORMAT = "j1";
    private static final int CHECKED_FROM = FORMAT.length() + 1 + 8 + 1;

    /** The line as it stands in the file, without its line end. */
    byte[] bytes() {
        String checked = number + " " + first + " " + k + "/" + n + " " + before + " " + payload;
        byte[] line = (FORMAT + " 00000000 " + checked).getBytes(UTF_8);
        byte[] head = head(line).getBytes(UTF_8);
        System.arraycopy(head, 0, line, 0, head.length);
        return line;
    }

    /** @throws BadLine if the bytes are not a line that was wholly written */
    static JournalLine parse(byte[] line) throws BadLine {
        if (line.length < CHECKED_FROM) {
            throw new BadLine("the line is too short");
        }
        if (!new String(line, 0, CHECKED_FROM, UTF_8).equals(head(line))) {
            throw new BadLine("the checksum does not fit the line");
        }
        return taken(new String(line, CHECKED_FROM, line.length - CHECKED_FROM, UTF_8));
    }

    /** SHA-256 of a line as it stands in the file, 64 hexadecimal digits. */
    static String hash(byte[] line) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(line));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    boolean endsPress() {
        return k == n;
    }

    private static String head(byte[] line) {
        CRC32C checksum = new CRC32C();
        checksum.update(line, CHECKED_FROM, line.length - CHECKED_FROM);
        return FORMAT + " " + HexFormat.of().toHexDigits((int) checksum.getValue()) + " ";
    }

    private static JournalLine taken(String checked) throws BadLine {
        String[] parts = checked.split(" ", 5);
        String[] fraction = parts.length == 5 ? parts[2].split("/", 2) : new String[0];
        if (fraction.length != 2) {
            throw new BadLine("the line lacks a part");
        }
        return numbered(parts, fraction);
    }

    private static JournalLine numbered(String[] parts, String[] fraction) throws BadLine {
        try {
            return new JournalLine(
                    Long.parseLong(parts[0]),
                    Long.parseLong(parts[1]),
                    Integer.parseInt(fraction[0]),
                    Integer.parseInt(fraction[1]),
                    parts[3],
                    parts[4]);
        } catch (NumberFormatException e) {
            throw new BadLine("the line has a number that is none");
        }
    }
}
