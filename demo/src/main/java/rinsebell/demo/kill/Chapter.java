package rinsebell.demo.kill;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Kills of servers that follow each other on one data folder. */
final class Chapter {
    private static final int MOST_ANSWERS = 60;
    private static final int LONGEST_MORE_MILLIS = 30;
    private static final int LONGEST_START_MILLIS = 1_200;
    private static final int ONE_START_IN = 6;
    private static final int OLDER_ONES = 40;
    private static final int OK = 200;
    private static final Pattern HEAD = Pattern.compile("href=\"(/visits/\\d+)\"");

    private final Life.Way way;
    private final Random dice;
    private final Client client;
    private final Book book = new Book();
    private final Tally tally;
    private Set<String> ringing = Set.of();

    Chapter(Life.Way way, Random dice, Tally tally) {
        this.way = way;
        this.dice = dice;
        this.tally = tally;
        this.client = new Client(way.port());
    }

    /**
     * Kills so many servers and looks at what each has left.
     *
     * @throws IllegalStateException when something that was answered is not there
     */
    void live(int kills) throws IOException, InterruptedException {
        for (var killed = 0; killed < kills; killed++) {
            if (killed > 0 && dice.nextInt(ONE_START_IN) == 0) {
                dieAtTheStart();
            } else {
                dieAtWork();
            }
            Remains.chain(way.data(), book.decided());
        }
        comeBack().close();
        Remains.whole(way.data(), book.decided());
        tally.decided(book.decided());
    }

    /** In the middle of bringing the database up to the journal, perhaps. */
    private void dieAtTheStart() throws IOException {
        try (var life = Life.begin(way)) {
            life.killIn(dice.nextInt(LONGEST_START_MILLIS)).join();
        }
        tally.killedAtStart();
    }

    private void dieAtWork() throws IOException, InterruptedException {
        try (var life = comeBack()) {
            var worked = book.answered(1 + dice.nextInt(MOST_ANSWERS));
            var more = dice.nextInt(LONGEST_MORE_MILLIS);
            try (var hands = new Hands(client, book, dice)) {
                CompletableFuture.anyOf(worked, hands.nobodyThere()).join();
                life.killIn(more).join();
                hands.nobodyThere().join();
            }
        }
        tally.killedAtWork();
    }

    /** Starts a server, whose first words must be the bells, and asks it again what was answered before. */
    private Life comeBack() throws IOException, InterruptedException {
        var linesAtStart = Remains.lines(way.data());
        var life = Life.begin(way);
        try (var knock = new Knock(client)) {
            life.awaitReady();
            bellsRing(knock.first());
            sameAnswers(linesAtStart);
            return life;
        } catch (IOException | InterruptedException | RuntimeException e) {
            life.close();
            throw e;
        }
    }

    /** Nobody touches the heads that the day was told with, so once they ring they ring in every life. */
    private void bellsRing(HttpResponse<String> first) {
        var heads = HEAD.matcher(first.body())
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.toSet());
        if (first.statusCode() != OK || heads.isEmpty() || !heads.containsAll(ringing)) {
            throw new IllegalStateException("the first answer was given before the bells of " + ringing
                    + " were evaluated: " + first.statusCode() + " " + first.body());
        }
        ringing = ringing.isEmpty() ? heads : ringing;
    }

    private void sameAnswers(long linesAtStart) throws IOException, InterruptedException {
        for (var known : toAskAgain()) {
            var again = client.press(known.asked());
            if (!again.equals(known)) {
                throw new IllegalStateException("was answered " + known + " and is answered " + again);
            }
        }
        for (var open : book.open()) {
            var answered = client.press(open);
            tally.swallowed(answered.facts().stream().anyMatch(seq -> seq <= linesAtStart));
            book.answers(answered);
        }
    }

    /** All of the last life, and some of those before. */
    private List<Answered> toAskAgain() {
        var older = new ArrayList<>(book.decided());
        Collections.shuffle(older, dice);
        var again = new ArrayList<>(older.subList(0, Math.min(OLDER_ONES, older.size())));
        again.addAll(book.takeSinceKill());
        return again;
    }
}
