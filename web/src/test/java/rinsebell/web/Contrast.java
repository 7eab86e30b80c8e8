package rinsebell.web;

/** WCAG 2.2's contrast ratio of two colours written {@code #rrggbb}. */
final class Contrast {
    private Contrast() {}

    static double ratio(String one, String other) {
        var a = luminance(one);
        var b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String colour) {
        return 0.2126 * channel(colour, 1) + 0.7152 * channel(colour, 3) + 0.0722 * channel(colour, 5);
    }

    private static double channel(String colour, int at) {
        var value = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}
