package rinsebell.demo.turnaround;

import static rinsebell.floor.salon.Service.BLOW_DRY;
import static rinsebell.floor.salon.Service.BOWL;
import static rinsebell.floor.salon.Service.CUT;
import static rinsebell.floor.salon.Service.TONER;

import java.util.List;
import java.util.random.RandomGenerator;
import rinsebell.floor.salon.Service;

/** What clients come for. Which, and how many of each, is common practice, no source. */
enum Wish {
    COLOUR(What.COLOUR, BOWL, BLOW_DRY),
    COLOUR_AND_CUT(What.COLOUR, BOWL, CUT, BLOW_DRY),
    CUT_FIRST(What.COLOUR, CUT, BOWL, BLOW_DRY),
    FOILS(What.POWDER, BOWL, BLOW_DRY),
    FOILS_AND_TONER(What.POWDER, BOWL, TONER, CUT, BLOW_DRY),
    CREAM_AND_TONER(What.CREAM, BOWL, TONER, BLOW_DRY),
    CREAM(What.CREAM, BOWL, CUT),
    CUT_ALONE(What.COLOUR, CUT, BLOW_DRY);

    /** What goes on. */
    enum What {
        COLOUR,
        POWDER,
        CREAM
    }

    private final What what;
    private final List<Service> services;

    Wish(What what, Service... services) {
        this.what = what;
        this.services = List.of(services);
    }

    What what() {
        return what;
    }

    List<Service> services() {
        return services;
    }

    static Wish any(RandomGenerator dice) {
        return values()[dice.nextInt(values().length)];
    }
}
