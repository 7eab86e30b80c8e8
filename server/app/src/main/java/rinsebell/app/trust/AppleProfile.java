package rinsebell.app.trust;

import java.nio.charset.StandardCharsets;
import java.util.Base64;

/**
 * An authority as an iPad takes it in: a configuration profile with one payload of type {@code com.apple.security.root}, as
 * Apple's documentation of device management describes it under "CertificateRoot". The same authority is always the same
 * profile, so an iPad that takes it in twice has it once.
 */
final class AppleProfile {

    static final String TYPE = "application/x-apple-aspen-config";

    private static final String PROFILE = """
            <?xml version="1.0" encoding="UTF-8"?>
            <!DOCTYPE plist PUBLIC "-//Apple//DTD PLIST 1.0//EN" "http://www.apple.com/DTDs/PropertyList-1.0.dtd">
            <plist version="1.0">
            <dict>
            <key>PayloadType</key><string>Configuration</string>
            <key>PayloadVersion</key><integer>1</integer>
            <key>PayloadIdentifier</key><string>rinsebell.%1$s</string>
            <key>PayloadUUID</key><string>%1$s</string>
            <key>PayloadDisplayName</key><string>%3$s</string>
            <key>PayloadContent</key>
            <array>
            <dict>
            <key>PayloadType</key><string>com.apple.security.root</string>
            <key>PayloadVersion</key><integer>1</integer>
            <key>PayloadIdentifier</key><string>rinsebell.%1$s.authority</string>
            <key>PayloadUUID</key><string>%2$s</string>
            <key>PayloadDisplayName</key><string>%3$s</string>
            <key>PayloadCertificateFileName</key><string>authority.crt</string>
            <key>PayloadContent</key>
            <data>
            %4$s
            </data>
            </dict>
            </array>
            </dict>
            </plist>
            """;

    private AppleProfile() {}

    static byte[] of(Authority authority) {
        Fingerprint fingerprint = authority.fingerprint();
        return PROFILE.formatted(
                        fingerprint.id("profile"),
                        fingerprint.id("authority"),
                        authority.name(),
                        Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(authority.der()))
                .getBytes(StandardCharsets.UTF_8);
    }
}
