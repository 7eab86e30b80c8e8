package rinsebell.web.form;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.Optional;
import java.util.regex.Pattern;

/** Turns what fingers type into text and numbers. */
final class Typed {
    /** No number that a salon types is longer; it keeps a long row of digits from being computed with. */
    private static final int LONGEST_NUMBER = 16;

    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+([.,]\\d*)?|[.,]\\d+)");

    /** Letters and signs that are drawn as nothing: the Hangul fillers and the blank Braille cell (Unicode 15). */
    private static final String LOOKS_EMPTY = "\u115F\u1160\u3164\uFFA0\u2800";

    private Typed() {}

    /** Without white space around it, composed; emoji and every script are fine. */
    static String tidy(String typed) {
        return Normalizer.normalize(typed, Normalizer.Form.NFC).strip();
    }

    static boolean isBlank(String tidy) {
        return tidy.codePoints().allMatch(Typed::isInvisible);
    }

    private static boolean isInvisible(int code) {
        return Character.isWhitespace(code)
                || Character.isSpaceChar(code)
                || Character.getType(code) == Character.FORMAT
                || LOOKS_EMPTY.indexOf(code) >= 0
                || (code >= 0xFE00 && code <= 0xFE0F);
    }

    static boolean hasLines(String tidy) {
        return tidy.codePoints().anyMatch(Typed::breaksLine);
    }

    private static boolean breaksLine(int code) {
        return code == '\n' || code == '\r' || code == '\t';
    }

    /** Nothing in it steers a terminal, a line or the direction of what follows; a note may have lines. */
    static boolean isPrintable(String tidy) {
        return tidy.codePoints().noneMatch(Typed::steers);
    }

    private static boolean steers(int code) {
        var type = Character.getType(code);
        return (type == Character.CONTROL && !breaksLine(code))
                || type == Character.SURROGATE
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR
                || turnsDirection(code);
    }

    private static boolean turnsDirection(int code) {
        return (code >= 0x202A && code <= 0x202E) || (code >= 0x2066 && code <= 0x2069);
    }

    /** Three figures behind a comma or a point may be meant as thousands: 1,500 is not taken for one and a half. */
    private static final Pattern THOUSANDS = Pattern.compile("[+-]?\\d{1,3}[.,]\\d{3}");

    /** Whether a number could be meant in two ways. */
    static boolean isAmbiguous(String tidy) {
        return THOUSANDS.matcher(tidy).matches();
    }

    /** A decimal number with a point or a comma; no exponent, no thousands, no NaN. */
    static Optional<BigDecimal> number(String tidy) {
        if (tidy.length() > LONGEST_NUMBER || !NUMBER.matcher(tidy).matches()) {
            return Optional.empty();
        }
        return Optional.of(new BigDecimal(tidy.replace(',', '.')));
    }
}
