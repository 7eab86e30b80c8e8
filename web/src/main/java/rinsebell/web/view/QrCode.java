package rinsebell.web.view;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/**
 * A QR code (ISO/IEC 18004) to be drawn, of modules one unit wide, with the quiet zone of four that the standard asks for.
 *
 * @param text what it says
 * @param size of the whole square, in modules
 * @param path of the dark modules, as SVG writes it
 */
public record QrCode(String text, int size, String path) {
    private static final int QUIET = 4;

    /** A seventh of it may be smeared with colour: level M. */
    public static QrCode of(String text) {
        try {
            var modules = Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
            return new QrCode(text, modules.getWidth() + 2 * QUIET, path(modules));
        } catch (WriterException e) {
            throw new IllegalArgumentException("no code holds " + text, e);
        }
    }

    private static String path(ByteMatrix modules) {
        var path = new StringBuilder();
        for (var y = 0; y < modules.getHeight(); y++) {
            for (var x = 0; x < modules.getWidth(); x++) {
                if (modules.get(x, y) == 1) {
                    path.append('M')
                            .append(x + QUIET)
                            .append(' ')
                            .append(y + QUIET)
                            .append("h1v1h-1z");
                }
            }
        }
        return path.toString();
    }
}
