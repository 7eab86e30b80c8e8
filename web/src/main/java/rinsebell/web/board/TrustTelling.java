package rinsebell.web.board;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rinsebell.web.Words;
import rinsebell.web.view.QrCode;
import rinsebell.web.view.TrustPage;

/** Tells how a device comes to trust this server. */
public final class TrustTelling {
    private static final List<String> DEVICES = List.of("ipad", "android", "windows", "macos");
    private static final int MOST_STEPS = 9;

    private final Words words;

    public TrustTelling(Words words) {
        this.words = words;
    }

    /**
     * What a device is told to trust.
     *
     * @param name what devices call it in their lists
     * @param fingerprint SHA-256, in groups of digits
     * @param hosts the names that it can vouch for
     * @param certificate its address as a certificate
     * @param profile its address as an iPad takes it in
     */
    public record Told(String name, List<String> fingerprint, List<String> hosts, String certificate, String profile) {}

    /**
     * The page.
     *
     * @param welcome its address for other devices
     * @param secure addresses over HTTPS, the best first
     */
    public TrustPage page(String welcome, List<String> secure, Optional<Told> authority) {
        return new TrustPage(
                QrCode.of(welcome),
                QrCode.of(secure.get(0)),
                secure.subList(1, secure.size()),
                authority.map(this::authority));
    }

    private TrustPage.Authority authority(Told told) {
        return new TrustPage.Authority(
                words.say("trust.intro", told.name()),
                words.say("trust.bounds", String.join(", ", told.hosts())),
                told.fingerprint(),
                DEVICES.stream().map(device -> walk(device, told)).toList());
    }

    /** Only an iPad takes in a profile. */
    private TrustPage.Walk walk(String device, Told told) {
        var isProfile = device.equals("ipad");
        return new TrustPage.Walk(
                words.say("trust." + device),
                isProfile ? told.profile() : told.certificate(),
                words.say(isProfile ? "trust.profile" : "trust.certificate"),
                steps(device).map(key -> words.say(key, told.name())).toList(),
                words.say("trust." + device + ".back", told.name()));
    }

    private Stream<String> steps(String device) {
        return IntStream.rangeClosed(1, MOST_STEPS)
                .mapToObj(number -> "trust." + device + "." + number)
                .takeWhile(words::knows);
    }
}
