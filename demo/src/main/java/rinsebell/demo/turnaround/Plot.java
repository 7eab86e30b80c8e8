package rinsebell.demo.turnaround;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A calibration as a picture: what was promised against what came true. On the diagonal both are the same. */
final class Plot {
    private static final int SIDE = 400;
    private static final int LEFT = 70;
    private static final int TOP = 50;
    private static final int WIDTH = LEFT + SIDE + 40;
    private static final int HEIGHT = TOP + SIDE + 70;

    private static final String LEARNED = "#14527a";
    private static final String HOUSE = "#9a4a00";

    private final Calibration calibration;
    private final StringBuilder svg = new StringBuilder();

    private Plot(Calibration calibration) {
        this.calibration = calibration;
    }

    /** The text of an SVG file. */
    static String of(Calibration calibration) {
        return new Plot(calibration).drawn();
    }

    private String drawn() {
        line(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%d\"",
                WIDTH, HEIGHT, WIDTH, HEIGHT);
        line("  font-family=\"sans-serif\" font-size=\"14\" fill=\"#222222\">");
        line("<title>Chairs that were free by what was promised at the first bowl</title>");
        line("<rect width=\"%d\" height=\"%d\" fill=\"#ffffff\"/>", WIDTH, HEIGHT);
        axes();
        line("<path d=\"M%s L%s\" stroke=\"#777777\" stroke-dasharray=\"5 4\"/>", point(0, 0), point(1, 1));
        band();
        curve(calibration.house(), HOUSE, "none");
        curve(calibration.learned(), LEARNED, LEARNED);
        legend();
        line("</svg>");
        return svg.toString();
    }

    private void line(String text, Object... args) {
        svg.append(String.format(Locale.ROOT, text, args)).append('\n');
    }

    private static double x(double share) {
        return LEFT + SIDE * share;
    }

    private static double y(double share) {
        return TOP + SIDE * (1 - share);
    }

    private static String point(double promised, double free) {
        return String.format(Locale.ROOT, "%.1f %.1f", x(promised), y(free));
    }

    private void axes() {
        IntStream.rangeClosed(0, 10).forEach(tenth -> {
            var at = tenth / 10.0;
            line(
                    "<path d=\"M%s L%s M%s L%s\" stroke=\"#e2e2e2\"/>",
                    point(at, 0), point(at, 1), point(0, at), point(1, at));
            if (tenth % 2 == 0) {
                line(
                        "<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%d %%</text>",
                        x(at), TOP + SIDE + 20, 10 * tenth);
                line("<text x=\"%d\" y=\"%.1f\" text-anchor=\"end\">%d %%</text>", LEFT - 8, y(at) + 5, 10 * tenth);
            }
        });
        line(
                "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"none\" stroke=\"#444444\"/>",
                LEFT, TOP, SIDE, SIDE);
        line(
                "<text x=\"%d\" y=\"%d\" text-anchor=\"middle\">promised at the first bowl, of a hundred chairs</text>",
                LEFT + SIDE / 2, TOP + SIDE + 50);
        line(
                "<text transform=\"translate(20 %d) rotate(-90)\" text-anchor=\"middle\">free by then</text>",
                TOP + SIDE / 2);
        line("<text x=\"%d\" y=\"28\" font-size=\"16\">%,d simulated chairs</text>", LEFT, calibration.chairs());
    }

    /** Where the promise for nine of ten has to come out. */
    private void band() {
        line(
                "<path d=\"M%s L%s\" stroke=\"#3d8a3d\" stroke-width=\"9\" stroke-opacity=\"0.5\"/>",
                point(0.9, 0.85), point(0.9, 0.95));
    }

    private void curve(List<Promise> promises, String colour, String dots) {
        var points = Promise.PARTS.stream()
                .map(part -> point(part / 100.0, Calibration.share(promises, part)))
                .collect(Collectors.joining(" L"));
        line("<path d=\"M%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"2\"/>", points, colour);
        for (var part : Promise.PARTS) {
            line(
                    "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3\" fill=\"%s\" stroke=\"%s\"/>",
                    x(part / 100.0),
                    y(Calibration.share(promises, part)),
                    dots.equals("none") ? "#ffffff" : dots,
                    colour);
        }
    }

    private void legend() {
        entry(0, LEARNED, LEARNED, "after twenty of each kind were measured");
        entry(1, HOUSE, "#ffffff", "by house numbers, the same chairs");
        line(
                "<path d=\"M%d %d h20\" stroke=\"#3d8a3d\" stroke-width=\"9\" stroke-opacity=\"0.5\"/>",
                LEFT + 12, TOP + 64);
        line("<text x=\"%d\" y=\"%d\">85 to 95 %% at the promise for 90 %%</text>", LEFT + 40, TOP + 69);
    }

    private void entry(int row, String colour, String fill, String text) {
        var y = TOP + 20 + 22 * row;
        line("<path d=\"M%d %d h20\" stroke=\"%s\" stroke-width=\"2\"/>", LEFT + 12, y, colour);
        line("<circle cx=\"%d\" cy=\"%d\" r=\"3\" fill=\"%s\" stroke=\"%s\"/>", LEFT + 22, y, fill, colour);
        line("<text x=\"%d\" y=\"%d\">%s</text>", LEFT + 40, y + 5, text);
    }
}
