package rinsebell.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a device plays, measured from the samples that a browser renders.
 *
 * <p>Source: IEC 60601-1-8. Fundamental within 150 to 1000 Hz and at least four harmonics within 300 to 4000 Hz and 15 dB
 * of it, as suppliers of sounders reproduce table 4; numbers, lengths, spaces and edges of pulses (tables 3 and 4) are
 * from memory.
 */
class SoundIT extends SamplePages {
    private static final int RATE = 48_000;
    private static final Map<String, double[]> RENDERED = new HashMap<>();

    /** Below this a sample is silence: 1 % of full scale. */
    private static final double SILENCE = 0.01;

    private final Page page = chromium.page();

    @AfterEach
    void close() {
        Chromium.close(page);
    }

    /** @param from first sample that is heard, @param until the one after the last */
    private record Pulse(int from, int until) {
        double length() {
            return (until - from) / (double) RATE;
        }

        double pauseAfter(Pulse before) {
            return (from - before.until) / (double) RATE;
        }
    }

    @ParameterizedTest
    @CsvSource({
        "high, 10, 0.075, 0.200, 0.050, 0.125",
        "medium, 3, 0.125, 0.250, 0.125, 0.250",
        "low, 2, 0.125, 0.250, 0.125, 0.250"
    })
    void aBurstHasItsPulses(String urgency, int pulses, double shortest, double longest, double least, double most) {
        var samples = rendered(urgency);
        var heard = pulses(samples);
        assertThat(heard).hasSize(pulses);
        assertThat(heard).allSatisfy(pulse -> assertThat(pulse.length()).isBetween(shortest - 0.01, longest));
        // Between the second and the third pulse of five, and of the groups, it may be longer: the others keep to it.
        var pauses = IntStream.range(1, heard.size())
                .mapToDouble(i -> heard.get(i).pauseAfter(heard.get(i - 1)))
                .sorted()
                .toArray();
        assertThat(pauses[0]).isBetween(least, most + 0.01);
        for (var pulse : heard) {
            assertThat(risen(samples, pulse) / pulse.length()).isBetween(0.10, 0.40);
        }
    }

    @ParameterizedTest
    @CsvSource({"high, 659.26", "medium, 523.25", "low, 392.00"})
    void aPulseHasItsPitchAndItsHarmonics(String urgency, double hertz) {
        var samples = rendered(urgency);
        var pulse = pulses(samples).get(0);
        var fundamental = loudest(samples, pulse, 100, 1_000);
        assertThat(fundamental).isBetween(150.0, 1_000.0).isCloseTo(hertz, within(3.0));
        var base = strength(samples, pulse, fundamental);
        var near = IntStream.rangeClosed(2, 10)
                .mapToDouble(n -> n * fundamental)
                .filter(harmonic -> harmonic >= 300 && harmonic <= 4_000)
                .filter(harmonic -> Math.abs(20 * Math.log10(strength(samples, pulse, harmonic) / base)) <= 15)
                .count();
        assertThat(near).isGreaterThanOrEqualTo(4);
    }

    @Test
    void nothingIsLouderThanFullScale() {
        for (var urgency : List.of("high", "medium", "low")) {
            var loudest = 0.0;
            for (var sample : rendered(urgency)) {
                loudest = Math.max(loudest, Math.abs(sample));
            }
            assertThat(loudest).as(urgency).isBetween(0.2, 1.0);
        }
    }

    /** The first touch lets it sound, and so does the end of its being mute; a low bell would else come a minute later. */
    @Test
    void whatRingsAlreadySoundsAsSoonAsTheDeviceCan() {
        page.navigate(server.url("floor"));
        page.evaluate("() => document.addEventListener('sounded', ({ detail }) => (window.sounded = detail.length))");
        page.waitForFunction("() => document.documentElement.dataset.ring !== undefined");
        page.evaluate("() => { document.documentElement.dataset.ear = 'assistants'; }");
        page.waitForFunction("() => document.documentElement.dataset.ring === 'medium'"
                + " || document.documentElement.dataset.ring === 'high'");
        page.mouse().click(2, 2);
        page.waitForFunction("() => window.sounded > 0", null, new Page.WaitForFunctionOptions().setTimeout(2_000));
    }

    private double[] rendered(String urgency) {
        return RENDERED.computeIfAbsent(urgency, this::render);
    }

    private double[] render(String urgency) {
        page.navigate(server.url("floor"));
        // As one text: a list would come over sample by sample.
        var samples = (String) in(
                page,
                "sound.js",
                "const context = new OfflineAudioContext(1, " + 4 * RATE + ", " + RATE + "); module.burst(context, '"
                        + urgency + "'); const played = await context.startRendering();"
                        + " return [...played.getChannelData(0)].map((sample) => Math.round(sample * 1e6)).join();");
        return Arrays.stream(samples.split(","))
                .mapToDouble(sample -> Integer.parseInt(sample) / 1e6)
                .toArray();
    }

    /** Pieces that are heard, with at least 20 ms of silence between them. */
    private static List<Pulse> pulses(double[] samples) {
        var found = new ArrayList<Pulse>();
        var from = -1;
        var last = -1;
        for (var i = 0; i < samples.length; i++) {
            if (Math.abs(samples[i]) < SILENCE) {
                continue;
            }
            if (from >= 0 && i - last > RATE / 50) {
                found.add(new Pulse(from, last + 1));
                from = -1;
            }
            from = from < 0 ? i : from;
            last = i;
        }
        if (from >= 0) {
            found.add(new Pulse(from, last + 1));
        }
        return found;
    }

    /** Seconds until it is first as loud as nine tenths of its loudest. */
    private static double risen(double[] samples, Pulse pulse) {
        var loudest = 0.0;
        for (var i = pulse.from; i < pulse.until; i++) {
            loudest = Math.max(loudest, Math.abs(samples[i]));
        }
        for (var i = pulse.from; i < pulse.until; i++) {
            if (Math.abs(samples[i]) >= 0.9 * loudest) {
                return (i - pulse.from) / (double) RATE;
            }
        }
        return pulse.length();
    }

    private static double loudest(double[] samples, Pulse pulse, int from, int until) {
        return IntStream.rangeClosed(from * 4, until * 4)
                .mapToDouble(quarter -> quarter / 4.0)
                .boxed()
                .max((one, other) -> Double.compare(strength(samples, pulse, one), strength(samples, pulse, other)))
                .orElseThrow();
    }

    /** How much of a frequency is in a pulse: one term of its Fourier transform, under a Hann window. */
    private static double strength(double[] samples, Pulse pulse, double hertz) {
        var size = pulse.until - pulse.from;
        var real = 0.0;
        var imaginary = 0.0;
        for (var i = 0; i < size; i++) {
            var window = 0.5 - 0.5 * Math.cos(2 * Math.PI * i / (size - 1));
            var angle = 2 * Math.PI * hertz * i / RATE;
            real += window * samples[pulse.from + i] * Math.cos(angle);
            imaginary += window * samples[pulse.from + i] * Math.sin(angle);
        }
        return Math.hypot(real, imaginary);
    }
}
