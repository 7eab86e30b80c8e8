package rinsebell.floor.salon;

import java.time.ZoneId;

/**
 * The rooms and the clock of the salon.
 *
 * @param chairs how many, numbered from 1
 * @param basins how many, lettered from A; at most 26
 * @param bench how many may wait on the bench
 * @param zone where its clock hangs
 * @param twentyFourHours whether times are shown as 14:05 rather than 2:05 pm
 */
public record House(int chairs, int basins, int bench, ZoneId zone, boolean twentyFourHours) {
    public static final int MOST_CHAIRS = 200;
    public static final int MOST_BASINS = 26;

    public House {
        if (chairs < 1 || chairs > MOST_CHAIRS || basins < 0 || basins > MOST_BASINS || bench < 0) {
            throw new IllegalArgumentException(
                    "no such salon: " + chairs + " chairs, " + basins + " basins, bench " + bench);
        }
    }

    public boolean has(Place place) {
        if (place instanceof Place.Chair chair) {
            return chair.number() >= 1 && chair.number() <= chairs;
        }
        return !(place instanceof Place.Basin basin) || (basin.number() >= 1 && basin.number() <= basins);
    }
}
