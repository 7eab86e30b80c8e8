package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Presses that no server hears at first, in a real browser. Chromium by itself takes plain HTTP on this machine for safe. */
class QueueIT extends SamplePages {
    private static final List<String> PRESSED =
            List.of("Water is on", "Tingling", "Burning, swelling, severe itch", "Hot foil", "Water is on");
    private static final List<String> ADDRESSES = List.of(
            "/visits/71/rinses",
            "/visits/71/discomfort",
            "/visits/71/discomfort",
            "/visits/71/discomfort",
            "/visits/71/rinses");

    private static final String OF =
            "const of = (name) => import(document.querySelector('script[type=module]').src.replace('main.js', name));";

    private BrowserContext tablet;
    private Page page;

    @BeforeEach
    void open() {
        server.presses.clear();
        server.addresses.clear();
        server.sent.clear();
        server.refused.clear();
        server.isAnothers = false;
        server.erasings = 0;
        server.goesOn = false;
        server.isDeaf = false;
        tablet = chromium.device();
        page = tab();
        server.goesOn = true;
    }

    @AfterEach
    void close() {
        Chromium.close(tablet);
    }

    private Page tab() {
        var tab = tablet.newPage();
        tab.setDefaultTimeout(20_000);
        tab.navigate(server.url("chair"));
        return tab;
    }

    private static void touch(Page on, String label) {
        on.locator("main button", new Page.LocatorOptions().setHasText(label))
                .first()
                .click();
    }

    private static void press(Page on, String label) {
        touch(on, label);
        // Only when it is kept can the next touch, or a dead battery, do no harm.
        on.waitForCondition(() -> waiting(on) > 0);
    }

    private void pressFive() {
        for (var i = 0; i < PRESSED.size(); i++) {
            var kept = i + 1;
            press(page, PRESSED.get(i));
            page.waitForCondition(() -> waiting(page) == kept);
        }
    }

    /** The server is back, and the page's feed says so: what waits need not wait for its next attempt. */
    private void up() {
        server.isDeaf = false;
        page.evaluate("() => document.dispatchEvent(new Event('connected'))");
    }

    private Locator water() {
        return page.locator("main form[data-press] button", new Page.LocatorOptions().setHasText("Water is on"))
                .first();
    }

    private void untilTheKnuckleIsOff() {
        var touched = page.evaluate("() => performance.now()");
        page.waitForFunction("touched => performance.now() > touched + 700", touched);
    }

    private static int waiting(Page on) {
        return waiting(on, "one => true");
    }

    private static int waiting(Page on, String which) {
        return ((Number) on.evaluate("async () => { " + OF
                        + " return (await (await of('queue.js')).all('presses')).filter(" + which + ").length; }"))
                .intValue();
    }

    private static void allSent(Page on) {
        on.waitForCondition(() -> waiting(on) == 0);
    }

    private static List<String> values(String field) {
        var value = Pattern.compile("(?:^|&)" + field + "=([^&]*)");
        return server.presses.stream()
                .map(value::matcher)
                .filter(found -> found.find())
                .map(found -> found.group(1))
                .toList();
    }

    /** One that was sent at once may have been held up on its way: its age and when it was sent tell when it was pressed. */
    private static void assertArrivedOnceInOrder() {
        assertThat(server.addresses).isEqualTo(ADDRESSES);
        assertThat(values("press")).hasSize(5).doesNotHaveDuplicates();
        var ages = values("age");
        assertThat(ages).hasSize(5).hasSameSizeAs(server.sent);
        assertThat(IntStream.range(0, ages.size())
                        .mapToLong(i -> Long.parseLong(server.sent.get(i)) - Long.parseLong(ages.get(i)))
                        .boxed()
                        .toList())
                .doesNotHaveDuplicates()
                .isSorted();
    }

    @Test
    void fivePressesArriveOnceInOrderWhenTheServerIsBack() {
        server.isDeaf = true;
        pressFive();
        page.waitForFunction(
                "() => document.querySelector('#kept .waiting')?.textContent.startsWith('5 presses wait')");
        assertThat(page.locator("#kept .waiting").textContent())
                .containsPattern("Water is on 14:2\\d, Tingling 14:2\\d");
        server.isDeaf = false;
        allSent(page);
        assertArrivedOnceInOrder();
        page.waitForFunction("() => !document.querySelector('#kept .waiting')");
    }

    /** Whatever holds it up from then on is added to its age. */
    @Test
    void aPressTellsWhenItWasSent() {
        var shown = "async () => { " + OF + " return (await of('clock.js')).now(); }";
        var request = page.waitForRequest("**/rinses", () -> touch(page, "Water is on"));
        assertThat(Double.parseDouble(request.headerValue("Rinsebell-Sent")))
                .isCloseTo(((Number) page.evaluate(shown)).doubleValue(), within(1_000.0));
        page.waitForCondition(() -> server.presses.size() == 1);
        allSent(page);
    }

    /** The sign-in page of a network, or another server at this address, answers 200 and records nothing. */
    @Test
    void whatAStrangerTakesIsNotSaved() {
        server.isAnothers = true;
        server.strangers.set(0);
        touch(page, "Water is on");
        page.locator("#kept .waiting").waitFor();
        page.waitForCondition(() -> server.strangers.get() > 3);
        assertThat(waiting(page)).isEqualTo(1);
        assertThat(page.locator("#answer").textContent()).doesNotContain("Sign in", "saved");
        server.isAnothers = false;
        allSent(page);
        assertThat(server.addresses).containsExactly("/visits/71/rinses");
        assertThat(values("press")).hasSize(1);
    }

    /** The Wi-Fi was so weak that the server gave up on the press half-way. */
    @Test
    void whatDidNotComeWholeIsSentAgain() {
        var slow = new AtomicInteger(2);
        page.route("**/rinses", route -> {
            if (slow.getAndDecrement() > 0) {
                route.fulfill(new Route.FulfillOptions().setStatus(408).setHeaders(SampleServer.OURS));
            } else {
                route.resume();
            }
        });
        touch(page, "Water is on");
        page.waitForCondition(() -> server.presses.size() == 1);
        allSent(page);
        assertThat(values("press")).hasSize(1);
        assertThat(page.locator("#kept .question").count()).isZero();
    }

    @Test
    void theyOutliveThePageAndItsTab() {
        server.isDeaf = true;
        pressFive();
        page.reload();
        assertThat(waiting(page)).isEqualTo(5);
        page.close();
        page = tab();
        up();
        allSent(page);
        assertArrivedOnceInOrder();
        page.waitForFunction("() => document.getElementById('answer').textContent.includes('saved now')");
    }

    /** Without Web Locks, as over plain HTTP in a salon, a row of the database stands for one. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void twoTabsSendEachPressOnce(boolean locks) {
        if (!locks) {
            tablet.addInitScript("Object.defineProperty(Navigator.prototype, 'locks', { value: undefined })");
        }
        server.isDeaf = true;
        page.reload();
        var other = tab();
        press(page, "Water is on");
        press(other, "Tingling");
        press(page, "Hot foil");
        // Burning stands in no line, so each has been tried in vain before there is an order to be kept.
        page.waitForCondition(() -> waiting(page, "one => one.again") == 3);
        server.isDeaf = false;
        allSent(page);
        assertThat(values("press")).hasSize(3).doesNotHaveDuplicates();
        assertThat(server.addresses)
                .isEqualTo(List.of("/visits/71/rinses", "/visits/71/discomfort", "/visits/71/discomfort"));
    }

    /** Twice meant is twice pressed, but two touches of one knuckle are one. */
    @Test
    void aSecondPressIsNotLostWhileTheFirstWaits() {
        server.isDeaf = true;
        page.locator("main button", new Page.LocatorOptions().setHasText("Water is on"))
                .dblclick();
        page.waitForCondition(() -> waiting(page) == 1);
        untilTheKnuckleIsOff();
        press(page, "Water is on");
        page.waitForCondition(() -> waiting(page) == 2);
    }

    /** The answer to the first touch has put another press where the second comes down. */
    @Test
    void twoTouchesOfOneKnuckleAreOnePressWhateverLiesThereNow() {
        var water = water();
        water.scrollIntoViewIfNeeded();
        var box = water.boundingBox();
        page.evaluate("() => addEventListener('submit', (event) => setTimeout(() =>"
                + " event.target.setAttribute('action', '/visits/71/leave'), 50), { once: true, capture: true })");
        page.mouse().click(box.x + 30, box.y + 30);
        page.waitForFunction("() => document.querySelector('form[action$=\"/visits/71/leave\"]')");
        page.mouse().click(box.x + 34, box.y + 32);
        page.waitForCondition(() -> server.presses.size() == 1);
        untilTheKnuckleIsOff();
        allSent(page);
        assertThat(server.addresses).containsExactly("/visits/71/rinses");
        page.locator("form[action$='/visits/71/leave'] button").first().click();
        page.waitForCondition(() -> server.presses.size() == 2);
    }

    /** Nobody should wonder whether it was pressed, and press again. */
    @Test
    void whatWaitsSaysSoWhereItWasPressed() {
        server.isDeaf = true;
        press(page, "Water is on");
        var button = water();
        page.waitForFunction("() => document.querySelector('main [data-waits]')");
        assertThat(button.getAttribute("data-waits")).matches("pressed 14:2\\d, waits");
        assertThat(page.locator("main [data-waits]").count()).isEqualTo(1);
        server.isDeaf = false;
        page.waitForFunction("() => !document.querySelector('main [data-waits]')");
    }

    /** A bell that is over by the time that "Heard" arrives needs nobody's answer. */
    @Test
    void heardTooLateAsksNothing() {
        server.isDeaf = true;
        page.navigate(server.url("floor"));
        page.locator("#bells form button").first().click();
        page.waitForCondition(() -> waiting(page) == 1);
        server.refused.add(
                page.locator("#bells form").first().getAttribute("action").replaceAll("\\?.*", ""));
        page.reload();
        up();
        allSent(page);
        assertThat(server.presses).hasSize(1);
        assertThat(page.locator("#kept .question").count()).isZero();
    }

    @Test
    void whatIsRefusedMeanwhileStaysAsAQuestion() {
        server.isDeaf = true;
        server.refused.add("/visits/71/rinses");
        press(page, "Water is on");
        page.reload();
        press(page, "Tingling");
        up();
        allSent(page);
        var question = page.locator("#kept .question");
        question.waitFor();
        page.reload();
        question.waitFor();
        assertThat(question.textContent()).contains("Water is on 14:2", "Already done");
        touch(page, "Hot foil");
        page.waitForCondition(() -> server.presses.size() == 3);
        assertThat(question.count()).isEqualTo(1);
        server.refused.clear();
        allSent(page);
        // By the keyboard: what was saved last lies over the question for some seconds.
        question.locator("button", new Locator.LocatorOptions().setHasText("Already done"))
                .press("Enter");
        question.waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.DETACHED));
        page.waitForCondition(() -> server.presses.size() == 4);
        allSent(page);
        assertThat(server.presses.get(3)).contains("answer=done");
        page.reload();
        assertThat(question.count()).isZero();
    }

    /** A question may name somebody whose record is erased while nobody answers it; nobody can tell whom it names. */
    @Test
    void whatWasErasedGoesFromQuestionsToo() {
        server.isDeaf = true;
        server.refused.add("/visits/71/rinses");
        press(page, "Water is on");
        page.reload();
        up();
        allSent(page);
        var question = page.locator("#kept .question");
        question.waitFor();
        assertThat(questions()).contains("Put a dryer on");
        var other = tab();
        other.locator("#kept .question .reasons").waitFor();
        server.erasings++;
        page.evaluate("() => document.dispatchEvent(new Event('connected'))");
        question.getByText("a client’s record was erased").waitFor();
        assertThat(question.textContent()).contains("Water is on 14:2").doesNotContain("Put a dryer on");
        assertThat(questions()).doesNotContain("Put a dryer on", "powder");
        other.evaluate("() => document.dispatchEvent(new Event('connected'))");
        other.locator("#kept .question")
                .getByText("a client’s record was erased")
                .waitFor();
        page.reload();
        question.getByText("Seen").click();
        page.waitForCondition(() -> questions().equals("[]"));
    }

    private String questions() {
        return (String) page.evaluate(
                "async () => { " + OF + " return JSON.stringify(await (await of('queue.js')).all('questions')); }");
    }

    @Test
    void aBrowserThatKeepsNothingSendsWhileThePageIsOpen() {
        tablet.addInitScript("Object.defineProperty(window, 'indexedDB', { value: undefined })");
        server.isDeaf = true;
        page.reload();
        pressFive();
        up();
        allSent(page);
        assertArrivedOnceInOrder();
    }

    @Test
    void theAgeIsTheSteadyClocksUnlessTheDeviceSlept() {
        var age = OF + " const { age } = await of('send.js'); const { PAGE: own } = await of('turn.js');"
                + " const { utmost: count } = await of('sync.js'); const utmost = count() - 5000;"
                + " return Math.round(age({ page: PAGE, at: performance.now() - 5000, TIME }) / 1000);";
        var own = age.replace("page: PAGE", "page: own");
        var other = age.replace("page: PAGE", "page: 'another'").replace("TIME", "date: Date.now() - WALL");
        assertThat(reckoned(own.replace("TIME", "utmost"))).isEqualTo(5);
        assertThat(reckoned(own.replace("TIME", "utmost: utmost - 3595000")))
                .as("slept")
                .isEqualTo(3600);
        assertThat(reckoned(other.replace("WALL", "7000"))).isEqualTo(7);
        assertThat(reckoned(other.replace("WALL", "-7000"))).as("set back").isZero();
        assertThat(page.evaluate("async () => { " + OF
                        + " return (await of('send.js')).most({ page: 'another', sure: false, date: 0 }); }"))
                .as("pressed when nobody knew the time, on another page")
                .isEqualTo(Double.POSITIVE_INFINITY);
        var known = other.replace("date:", "sure: true, pressed: (await of('clock.js')).now() - 9000, date:");
        assertThat(reckoned(known.replace("WALL", "-7000")))
                .as("set back, but the salon's time is known")
                .isEqualTo(9);
    }

    /** Somebody sets the device's clock back while a press waits; then it sleeps, or its clock is set once more. */
    @ParameterizedTest
    @CsvSource({"40, 40", "0, 0"})
    void aClockThatWasSetBackHidesNoSleep(int slept, int age) {
        tablet.addInitScript("const real = Date.now; window.ahead = 0; Date.now = () => real() + window.ahead;");
        page.reload();
        server.isDeaf = true;
        page.route("**/clock", Route::abort);
        press(page, "Water is on");
        steps(-60_000);
        server.pass(Duration.ofSeconds(slept));
        steps(40_000);
        page.unroute("**/clock");
        server.isDeaf = false;
        allSent(page);
        assertThat(Integer.parseInt(values("age").get(0)) / 1000).isBetween(age, age + 20);
    }

    /** The device's time of day goes on that much further than its steady clock, and the page looks every 250 ms. */
    private void steps(int millis) {
        page.evaluate("by => { window.ahead += by; window.lookedAt = performance.now() + 600; }", millis);
        page.waitForFunction("() => performance.now() > window.lookedAt");
    }

    /**
     * Pressed five seconds ago by the steady clock, an hour ago by the time of day. Only the salon's clock tells whether the
     * device slept for that hour, or somebody set it forward; and it has to be asked.
     */
    @ParameterizedTest
    @CsvSource({"true, 3600, 3600, ''", "true, 5, 5, ''", "false, 3600, 3600, unsure"})
    void aStepOfTheDevicesClockIsSleepWhereTheSalonsClockWentOnToo(
            boolean answers, int secondsOfTheSalon, int age, String told) {
        page.evaluate("async () => (await import(document.querySelector('script[type=module]').src"
                + ".replace('main.js', 'sync.js'))).measure()");
        page.route("**/clock", route -> {
            if (answers) {
                route.resume();
            } else {
                route.abort();
            }
        });
        page.evaluate("""
                async (seconds) => {
                  const of = (name) => import(document.querySelector('script[type=module]').src.replace('main.js', name));
                  const { now, guess } = await of('clock.js');
                  const { add } = await of('queue.js');
                  const { freshId } = await of('press.js');
                  const { PAGE: page } = await of('turn.js');
                  const id = freshId();
                  const utmost = (await of('sync.js')).utmost() - 3600000;
                  const time = { at: performance.now() - 5000, utmost, date: Date.now() - 3600000 };
                  const known = { pressed: Math.round(now()) - seconds * 1000, sure: true };
                  await add('presses', { id, action: location.origin + '/visits/71/rinses', label: 'Water is on', page, again: false,
                    body: `press=${id}`, ...known, ...time });
                  // Its clock is a guess until the server says otherwise, as after a step.
                  guess(now() + 3600000, 1);
                  (await of('send.js')).send();
                }""", secondsOfTheSalon);
        allSent(page);
        assertThat(Integer.parseInt(values("age").get(0)) / 1000).isBetween(age, age + 5);
        assertThat(String.join(",", values("told"))).isEqualTo(told);
    }

    private int reckoned(String code) {
        return ((Number) page.evaluate("async () => { " + code + " }")).intValue();
    }
}
