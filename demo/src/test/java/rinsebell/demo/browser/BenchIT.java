package rinsebell.demo.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rinsebell.demo.DemoHere;

/** From a product to a bowl whose clock runs, at the bench and beside the scale. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BenchIT {
    private static final int MOST_STEPS = 200;

    @SuppressWarnings("NullAway.Init")
    private DemoHere demo;

    @SuppressWarnings("NullAway.Init")
    private Browsing browsing;

    @BeforeAll
    void starts(@TempDir Path folder) throws Exception {
        demo = DemoHere.in(folder.resolve("data"));
        browsing = Browsing.overPlainHttp();
    }

    @AfterEach
    void putsAway() {
        browsing.putAway();
    }

    @AfterAll
    void stops() {
        browsing.close();
        demo.close();
    }

    /** The keyboard does it all; the enter key records nothing; a portion too heavy makes the others follow. */
    @Test
    void aBowlIsReckonedWeighedAndRecordedByTheKeyboardAlone() throws IOException {
        var page = browsing.screen(Size.PHONE);
        page.navigate(demo.url() + "/mixtures");
        var before = bowls();
        press(page, "Brimmow permanent 8 beige");
        press(page, "Brimmow clear");
        to(page, "[id='products.1.per60']");
        page.keyboard().type("7");
        to(page, "#developer input");
        page.keyboard().press("ArrowRight");
        page.keyboard().press("Space");
        assertThat(page.locator("#developer input:checked + span")).containsText("20 vol");
        to(page, "#grams");
        page.keyboard().type("90");
        assertThat(page.locator(".preview .weigh tbody")).containsText("43 g");
        page.keyboard().press("Enter");
        page.waitForURL("**/mixtures?*grams=90*");
        assertThat(page.locator("#grams")).hasValue("90");
        assertThat(page.locator("#developer input:checked + span")).containsText("20 vol");
        assertThat(bowls()).as("the enter key records nothing").isEqualTo(before);

        press(page, "Weigh it");
        assertThat(scale(page)).hasText("43");
        weighs(page, "43");
        assertThat(scale(page)).hasText("5");
        weighs(page, "6");
        assertThat(page.locator("main")).containsText("Nothing is taken out");
        assertThat(page.locator(".pour")).containsText("43 g lie in the bowl: 8 g more");
        page.reload();
        assertThat(page.locator(".pour")).containsText("43 g lie in the bowl: 8 g more");
        weighs(page, "51");
        assertThat(scale(page)).hasText("51");
        weighs(page, "51");
        assertThat(page.locator("main")).containsText("All of it lies in the bowl.");
        Browsing.keep(page, "bench-weighed");
        press(page, "Mixed as it lies");
        assertThat(page.locator("#answer")).containsText("Bowl mixed");
        var bowl = bowls().get(before.size());
        assertThat(bowl.get("portions").findValuesAsText("grams")).containsExactly("51", "6", "51");
        assertThat(browsing.faults()).isEmpty();
    }

    /** Product, strength, mixture, grams, and what is weighed. Ratios: common practice, no source. */
    static Stream<Arguments> threeBowls() {
        return Stream.of(
                Arguments.of("Brimmow mild cream", "20 vol", "", "120", "60 60"),
                Arguments.of("Brimmow powder", "30 vol", "free hand", "105", "60 45"),
                Arguments.of("Brimmow toner pearl", "10 vol", "", "50", "25 25"));
    }

    /** From scratch, without a pointer. */
    @ParameterizedTest
    @MethodSource("threeBowls")
    void anyBowlIsMixedByTheKeyboardAloneOnAPhone(
            String product, String strength, String mixture, String grams, String weighed) throws IOException {
        mixedByTheKeyboardAlone(Size.PHONE, product, strength, mixture, grams, weighed);
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("threeBowls")
    void anyBowlIsMixedByTheKeyboardAloneOnATablet(
            String product, String strength, String mixture, String grams, String weighed) throws IOException {
        mixedByTheKeyboardAlone(Size.TABLET, product, strength, mixture, grams, weighed);
    }

    private void mixedByTheKeyboardAlone(
            Size size, String product, String strength, String mixture, String grams, String weighed)
            throws IOException {
        var page = browsing.screen(size);
        page.navigate(demo.url() + "/mixtures");
        var before = bowls();
        press(page, "^" + product);
        if (!mixture.isEmpty()) {
            choose(page, "#mixture", mixture);
        }
        choose(page, "#developer", strength);
        to(page, "#grams");
        page.keyboard().type(grams);
        var share = weighed.split(" ");
        assertThat(page.locator(".preview .weigh tbody tr").first()).containsText(share[0] + " g");
        assertThat(page.locator(".preview .weigh tbody tr").last()).containsText(share[1] + " g");
        press(page, "Mixed as shown");
        assertThat(page.locator("#answer")).containsText("Bowl mixed");
        var bowl = bowls().get(before.size());
        assertThat(bowl.get("portions").findValuesAsText("grams")).containsExactly(share);
        assertThat(browsing.faults()).isEmpty();
    }

    /** Goes to tiles by the tab key, and from one to the next by the arrow, until this one is chosen. */
    private static void choose(Page page, String tiles, String label) {
        to(page, tiles + " input");
        var chosen = page.locator(tiles + " input:checked + span");
        for (var steps = 0; steps < MOST_STEPS; steps++) {
            page.keyboard().press("Space");
            if (chosen.count() > 0 && chosen.textContent().contains(label)) {
                return;
            }
            page.keyboard().press("ArrowRight");
        }
        throw new AssertionError("no tile " + label);
    }

    /** What leaves the tolerance is said before anything is recorded; the page of the bench has all of it again. */
    @Test
    void whatLeavesTheToleranceIsSaid() throws IOException {
        var page = browsing.screen(Size.TABLET);
        page.navigate(demo.url() + "/mixtures/weigh?products.0.product=" + number("Brimmow permanent 8 beige")
                + "&developer=" + number("Brimmow developer 20 vol") + "&grams=100&weighed.0.grams=50");
        assertThat(page.locator(".verdict").first()).containsText("allowed");
        page.locator("[data-nudge='1']").click(new Locator.ClickOptions().setClickCount(3));
        assertThat(page.locator(".nudged input")).hasValue("53");
        page.locator(".nudged input").fill("60");
        page.getByText("This lies in the bowl").click();
        assertThat(page.locator(".pour")).containsText("50 g lie in the bowl: 10 g more");
        assertThat(page.locator(".verdict.high").first()).containsText("Too much developer");
        assertThat(page.locator(".preview").last()).containsText("9.1 % too much of Brimmow developer 20 vol");
        page.locator(".nudged input").fill("0");
        page.getByText("This lies in the bowl").click();
        assertThat(page.locator(".pour .problem")).containsText("At least 0.1");
        page.goBack();
        page.getByText("Mixed as it lies").click();
        assertThat(page.locator("#answer .reasons")).containsText("Too much developer");
        page.getByText("Not done").click();
        page.getByText("Back to the mixture").click();
        assertThat(page.locator("#grams")).hasValue("100");
        page.locator("#grams").fill("70,5");
        page.reload();
        assertThat(page.locator("#grams")).hasValue("70,5");
    }

    /** Between two strengths, and never beyond them. */
    @Test
    void aStrengthBetweenTwoIsReckoned() throws IOException {
        var page = browsing.screen(Size.TABLET);
        page.navigate(demo.url() + "/mixtures?products.0.product=" + number("Brimmow permanent 8 beige") + "&developer="
                + number("Brimmow developer 10 vol") + "&grams=120&blend=yes");
        page.locator("#otherDeveloper").selectOption("Brimmow developer 40 vol");
        page.locator("#strength").fill("6");
        assertThat(page.locator(".preview .weigh tbody tr")).hasCount(3);
        assertThat(page.locator(".preview")).containsText("Hydrogen peroxide 3 % by weight, 10 volumes");
        page.locator("#strength").fill("13");
        assertThat(page.locator(".preview")).containsText("At most 12");
        page.locator("#strength").fill("2");
        assertThat(page.locator(".preview")).containsText("only what lies between 3 % and 12 %");
    }

    /** The code on a bowl is read by a general reader of QR codes, and a scanner that types opens the bowl anywhere. */
    @Test
    void theTagOfABowlOpensIt() throws Exception {
        var page = browsing.screen(Size.PHONE);
        page.navigate(demo.url() + "/bowls");
        var opened = page.getByText("Tag", new Page.GetByTextOptions().setExact(true))
                .last();
        var address = demo.url() + opened.locator("xpath=ancestor::a").getAttribute("href");
        opened.click();
        page.waitForURL(address);
        assertThat(page.locator(".tag")).containsText("usable until");
        assertThat(Browsing.overflow(page)).isZero();
        assertThat(browsing.violations(page)).isEmpty();
        Browsing.keep(page, "tag");
        assertThat(read(page.locator(".code").screenshot())).isEqualTo(address);

        page.navigate(demo.url() + "/");
        page.keyboard().type(address);
        page.keyboard().press("Enter");
        page.waitForURL(address);
        page.navigate(demo.url() + "/");
        page.keyboard().type("http://elsewhere.test/bowls/1");
        page.keyboard().press("Enter");
        assertThat(page.url()).isEqualTo(demo.url() + "/");
        assertThat(browsing.faults()).isEmpty();
    }

    static String read(byte[] picture) throws Exception {
        var image = ImageIO.read(new ByteArrayInputStream(picture));
        var pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        var source = new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels);
        try {
            return new QRCodeReader()
                    .decode(new BinaryBitmap(new HybridBinarizer(source)), Map.of(DecodeHintType.TRY_HARDER, true))
                    .getText();
        } catch (ReaderException e) {
            var kept = Files.write(
                    Files.createDirectories(Path.of("target", "screenshots")).resolve("unread.png"), picture);
            throw new AssertionError("no code can be read in " + kept, e);
        }
    }

    /** 62 mm is the width of the roll; ISO 216 gives A4. A tag is one page of either. Points are 1/72 inch. */
    @ParameterizedTest
    @CsvSource({"roll, 62", "a4, 210"})
    void aTagIsOnePageOfItsPaper(String paper, double width) {
        var page = browsing.screen(Size.TABLET);
        page.navigate(demo.url() + "/bowls");
        page.getByText("Tag", new Page.GetByTextOptions().setExact(true)).last().click();
        page.locator(".papers a[href$='" + paper + "']").click();
        page.waitForURL("**paper=" + paper);
        var pdf = new String(page.pdf(new Page.PdfOptions().setPreferCSSPageSize(true)), StandardCharsets.ISO_8859_1);
        var boxes = Pattern.compile("/MediaBox \\[0 0 ([0-9.]+)")
                .matcher(pdf)
                .results()
                .toList();
        assertThat(boxes).hasSize(1);
        assertThat(Double.parseDouble(boxes.get(0).group(1)) * 25.4 / 72).isCloseTo(width, within(0.5));
    }

    /** A bowl becomes a recipe, the recipe a larger bowl; and a file that was saved is taken in again by choosing it. */
    @Test
    void aRecipeIsKeptAndMixedAgain(@TempDir Path folder) throws IOException {
        var page = browsing.screen(Size.PHONE);
        page.navigate(demo.url() + "/recipes");
        assertThat(page.locator("main")).containsText("60 g Brimmow powder + 7 g Brimmow clear");
        press(page, "Open Free hand, clear");
        press(page, "Mix one and a half");
        assertThat(page.locator(".preview .weigh tbody")).containsText("67 g");
        press(page, "Keep as a recipe");
        to(page, "#name");
        page.keyboard().type("Long arm");
        page.keyboard().press("Enter");
        page.waitForURL("**/recipes/*");
        assertThat(page.locator("h1")).hasText("Long arm");
        assertThat(page.locator(".intro")).containsText("90 g Brimmow powder + 10 g Brimmow clear + 67 g");

        page.navigate(demo.url() + "/recipes");
        var saved =
                page.waitForDownload(() -> page.getByText("Save them as a file").click());
        var file = folder.resolve("recipes.json");
        Files.writeString(file, Files.readString(saved.path()).replace("Long arm", "Longer arm"));
        page.getByText("Take recipes in").click();
        page.locator("input[type=file]").setInputFiles(file);
        assertThat(page.locator("#document")).hasValue(Pattern.compile("Longer arm"));
        assertThat(Browsing.overflow(page)).isZero();
        assertThat(browsing.violations(page)).isEmpty();
        page.getByText("Take them in").click();
        page.waitForURL("**/recipes?*");
        assertThat(page.locator("main")).containsText("Longer arm");
        assertThat(page.locator("main .rows .line")).hasCount(5);
        assertThat(browsing.faults()).isEmpty();
    }

    /** A form does not go away while the server does not answer: its button says that it waits, and counts once. */
    @Test
    void aFormThatWaitsIsNotSentTwice() throws IOException {
        var page = browsing.screen(Size.PHONE);
        page.navigate(demo.url() + "/mixtures?products.0.product=" + number("Brimmow mild cream") + "&developer="
                + number("Brimmow developer 20 vol") + "&grams=77");
        var before = bowls();
        var main = page.locator(".submit .press.main");
        page.context().setOffline(true);
        main.click();
        assertThat(main).hasAttribute("data-waits", Pattern.compile("waits"));
        // Past what would be one knuckle.
        page.waitForFunction("at => performance.now() > at", page.evaluate("() => performance.now() + 1000"));
        main.click();
        assertThat(page.locator("#kept .waiting")).containsText("Mixed as shown");
        page.waitForFunction("at => performance.now() > at", page.evaluate("() => performance.now() + 500"));
        assertThat(page.locator("#kept .waiting").textContent()).containsOnlyOnce("Mixed as shown");
        page.context().setOffline(false);
        assertThat(page.locator("#answer")).containsText("Bowl mixed");
        assertThat(bowls()).hasSize(before.size() + 1);
    }

    private static Locator scale(Page page) {
        return page.locator(".scale strong");
    }

    private static void weighs(Page page, String grams) {
        to(page, ".nudged input");
        page.keyboard().press("Control+a");
        page.keyboard().type(grams);
        page.keyboard().press("Enter");
    }

    /** Goes to a press or link by the tab key, and presses it. */
    private static void press(Page page, String label) {
        var one = page.locator("main a, main button")
                .filter(new Locator.FilterOptions().setHasText(Pattern.compile(label)))
                .first();
        one.waitFor();
        to(page, one);
        page.keyboard().press("Enter");
    }

    private static void to(Page page, String selector) {
        to(page, page.locator(selector).first());
    }

    private static void to(Page page, Locator one) {
        for (var steps = 0; steps < MOST_STEPS; steps++) {
            if (one.evaluate("one => one === document.activeElement").equals(true)) {
                return;
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError("the keyboard does not reach " + one);
    }

    private long number(String product) throws IOException {
        for (var one : new ObjectMapper().readTree(new Asking(demo.url()).page("/api/products"))) {
            if (one.path("directions").path("name").asText().equals(product)) {
                return one.path("id").asLong();
            }
        }
        throw new AssertionError("not on the shelf: " + product);
    }

    private JsonNode bowls() throws IOException {
        return new ObjectMapper().readTree(new Asking(demo.url()).page("/api/bowls"));
    }
}
