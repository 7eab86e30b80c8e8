package rinsebell.floor.simulation;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rinsebell.floor.Asked;
import rinsebell.floor.Command;
import rinsebell.floor.Floor;

/** Presses as they may come: mostly sensible, some early, late, twice, or about nothing at all. */
final class Presses {
    private final Dice dice;
    private final List<Maker> makers = new ArrayList<>();

    /** Makes a press where one of its kind can be made. */
    @FunctionalInterface
    interface Maker {
        Optional<Command> make(Floor floor, Instant now);
    }

    @FunctionalInterface
    private interface Timeless {
        Optional<Command> make(Floor floor);
    }

    Presses(Dice dice) {
        this.dice = dice;
        var clients = new Clients(dice);
        var bowls = new Bowls(dice);
        var house = new DeskWork(dice);
        comeAndGo(clients);
        onTheBench(bowls);
        onHeads(new Heads(dice, clients, bowls));
        around(house);
        add(7, house::acknowledge);
        add(3, house::shelve);
        add(4, house::setBack);
        add(1, house::outage);
    }

    private void comeAndGo(Clients clients) {
        add(5, clients::welcome);
        add(3, clients::gate);
        add(3, clients::move);
        add(1, clients::handOver);
        add(1, clients::services);
        add(1, clients::relabel);
        add(1, clients::link);
        add(2, clients::leave);
    }

    private void onTheBench(Bowls bowls) {
        add(7, bowls::mix);
        add(2, bowls::fill);
        add(1, bowls::divide);
        add(1, bowls::throwAway);
    }

    private void onHeads(Heads heads) {
        add(10, heads::putOn);
        add(1, heads::already);
        add(4, heads::lastOn);
        add(2, heads::cover);
        add(2, heads::plan);
        add(1, heads::foilsOut);
        add(1, heads::emulsify);
        add(6, heads::strand);
        add(3, heads::heatOn);
        add(2, heads::heatOff);
        add(4, heads::scalp);
        add(1, heads::complain);
        add(5, heads::takeOff);
        add(1, heads::towelDry);
        add(2, heads::judge);
        add(1, heads::stop);
    }

    private void around(DeskWork house) {
        add(1, house::basin);
        add(1, house::onBreak);
        add(1, house::turn);
        add(4, house::withdraw);
        add(1, house::arrange);
        add(1, house::nonsense);
    }

    private void add(int weight, Timeless maker) {
        add(weight, (floor, now) -> maker.make(floor));
    }

    private void add(int weight, Maker maker) {
        for (var i = 0; i < weight; i++) {
            makers.add(maker);
        }
    }

    Command next(Floor floor, Instant now) {
        var made = Optional.<Command>empty();
        while (made.isEmpty()) {
            made = dice.of(makers).make(floor, now);
        }
        return made.get();
    }

    /** Mostly now and as a plan; now and then "that was some minutes ago", or an instant that cannot be. */
    Asked asked(Instant now) {
        var asked = Asked.at(now);
        if (dice.onceIn(4)) {
            asked = asked.typed(now.minus(dice.within(20)));
        } else if (dice.onceIn(20)) {
            asked = asked.typed(dice.onceIn(2) ? now.plusMillis(1 + dice.below(100_000)) : now.minusSeconds(50_000));
        }
        return dice.onceIn(5) ? asked.asFact() : asked;
    }
}
