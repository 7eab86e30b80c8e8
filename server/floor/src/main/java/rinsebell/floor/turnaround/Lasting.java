package rinsebell.floor.turnaround;

import java.util.List;
import rinsebell.floor.report.Quantile;

/**
 * How long something lasts, as a distribution.
 *
 * @param sorted what was measured, in the order of size, in any unit; empty for a house number
 * @param least of a house number
 * @param usual of a house number
 * @param most of a house number
 */
record Lasting(double[] sorted, double least, double usual, double most) {
    static Lasting of(List<Integer> measured, double least, double usual, double most) {
        var sorted = measured.stream().mapToDouble(number -> number).sorted().toArray();
        return new Lasting(sorted, least, usual, most);
    }

    /**
     * So long it lasts in one part of all cases at most: of a sample after Hyndman and Fan's type 8, of a house number by a
     * triangle.
     *
     * @param part between 0 and 1
     */
    double at(double part) {
        return sorted.length > 0 ? Quantile.ofSorted(sorted, part) : triangle(part);
    }

    private double triangle(double part) {
        var width = most - least;
        if (width <= 0) {
            return usual;
        }
        var turn = (usual - least) / width;
        return part < turn
                ? least + Math.sqrt(part * width * (usual - least))
                : most - Math.sqrt((1 - part) * width * (most - usual));
    }
}
