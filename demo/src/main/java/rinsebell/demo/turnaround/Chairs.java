package rinsebell.demo.turnaround;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * {@code java -cp rinsebell-demo.jar rinsebell.demo.turnaround.Chairs [salons [seed [file]]]}: so many simulated salons, from
 * one seed on. Each first learns until twenty of each kind are on record; then, for some days, what is promised of each chair
 * at its first bowl is held against when it was really free. The same arguments print the same table, and write the same
 * picture.
 */
public final class Chairs {
    static final int SALONS = 12;
    static final int SEED = 1;
    static final int DAYS = 6;

    private Chairs() {}

    public static void main(String... arguments) throws IOException {
        var salons = arguments.length > 0 ? Integer.parseInt(arguments[0]) : SALONS;
        var seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : SEED;
        var calibration = Calibration.of(seed, salons, DAYS);
        System.out.println(calibration);
        if (arguments.length > 2) {
            Files.writeString(Path.of(arguments[2]), Plot.of(calibration));
        }
    }
}
