package rinsebell.demo.kill;

import java.io.IOException;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import rinsebell.app.time.MachineTime;
import rinsebell.demo.kill.Answered.Asked;

/**
 * A pair of hands: welcomes a client, works on the head and lets it go, and the next, as fast as answers come, until the
 * server is gone.
 */
final class Presser implements Runnable {
    private static final List<Press> ON_A_HEAD = List.of(
            new Press("strand", "{\"level\":7,\"tone\":\"yellow\",\"again\":5}"),
            new Press("strand", "{\"level\":8}"),
            new Press("scalp", "{\"finding\":\"fine\",\"note\":\"looked at, all well \u2014 \u00fcberall\"}"),
            new Press("label", "{\"label\":\"K\u2019s \u0646\u0648\u0631\"}"),
            new Press("discomfort", "{\"grade\":\"tingling\"}"),
            new Press("heat-on", "{\"heat\":\"dryer\"}"),
            new Press("cover", "{\"cover\":\"film\",\"intent\":\"fact\"}"),
            new Press("discomfort", "{\"grade\":\"burning\"}"),
            new Press("last-on", "{}"));

    private static final int ONE_QUEUED_IN = 3;
    private static final int LONGEST_WAIT_MILLIS = 240_000;

    /** Longer than anything waits to be sent, so that every press can have been made when it is said to. */
    private static final int HERE_MINUTES = 5;

    private final Client client;
    private final Book book;
    private final Random dice;

    private record Press(String name, String body) {}

    Presser(Client client, Book book, Random dice) {
        this.client = client;
        this.book = book;
        this.dice = dice;
    }

    @Override
    public void run() {
        try {
            while (!Thread.interrupted()) {
                oneHead();
            }
        } catch (IOException gone) {
            // Nobody is there to press to any more, and this is what the pressing was for.
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void oneHead() throws IOException, InterruptedException {
        var welcome =
                "{\"label\":\"K. %d\",\"place\":\"bench\",\"scalp\":\"fine\",\"metal\":\"none\",\"minutesAgo\":%d}";
        var welcomed = press("/api/visits", welcome.formatted(dice.nextInt(1_000), HERE_MINUTES));
        var visit = "/api/visits/" + welcomed.facts().get(0) + "/";
        press(visit + "already-on", "{\"minutesAgo\":" + (HERE_MINUTES + dice.nextInt(85)) + "}");
        for (var left = dice.nextInt(6); left > 0; left--) {
            var next = ON_A_HEAD.get(dice.nextInt(ON_A_HEAD.size()));
            press(visit + next.name, next.body, dice.nextInt(ONE_QUEUED_IN) == 0 ? pressedBefore() : 0);
        }
        press(visit + "rinse", "{}");
        press(visit + "leave", "{}");
    }

    /** While the client sat there, and a tablet did not reach the server. */
    private long pressedBefore() {
        return new MachineTime().wallMillis() - 2_000 - dice.nextInt(LONGEST_WAIT_MILLIS);
    }

    private Answered press(String path, String body) throws IOException, InterruptedException {
        return press(path, body, 0);
    }

    private Answered press(String path, String body, long pressedMillis) throws IOException, InterruptedException {
        var asked = new Asked(UUID.randomUUID().toString(), path, body, pressedMillis);
        book.asks(asked);
        var answered = client.press(asked);
        book.answers(answered);
        return answered;
    }
}
