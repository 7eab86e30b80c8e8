package rinsebell.web.view;

import java.util.List;
import java.util.Optional;

/**
 * How another device comes to this server, and how it is told to trust it. It says nothing of any salon.
 *
 * @param welcome the address of this page for other devices
 * @param secure the best address over HTTPS
 * @param others further ones
 * @param authority that a device is told to trust; empty where it trusts this server already
 */
public record TrustPage(QrCode welcome, QrCode secure, List<String> others, Optional<Authority> authority)
        implements View {

    /**
     * What a device is told to trust.
     *
     * @param intro what it is, in a sentence
     * @param bounds what it can vouch for, in a sentence
     * @param fingerprint SHA-256, in groups of digits
     * @param walks how it is done, for each kind of device
     */
    public record Authority(String intro, String bounds, List<String> fingerprint, List<Walk> walks) {}

    /**
     * The way on one kind of device.
     *
     * @param device its kind
     * @param file the address of what it takes in
     * @param take what is pressed for that
     * @param steps one after another
     * @param back how it is undone
     */
    public record Walk(String device, String file, String take, List<String> steps, String back) {}

    @Override
    public String template() {
        return "trust.jte";
    }
}
