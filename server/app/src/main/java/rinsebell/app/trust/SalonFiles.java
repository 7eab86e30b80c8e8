package rinsebell.app.trust;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rinsebell.app.door.Certificate;
import rinsebell.app.door.CertificateUnfit;

/** A certificate that the salon has from elsewhere, read again whenever its files change. */
final class SalonFiles implements Credentials {

    static final Duration WARNED = Duration.ofDays(14);

    private static final Logger LOG = LoggerFactory.getLogger(SalonFiles.class);
    private static final Duration APART = Duration.ofDays(1);

    private final Path certificate;
    private final Path key;
    private List<String> seen = List.of();
    private Instant ends = Instant.MAX;
    private Instant warnFrom = Instant.MIN;

    SalonFiles(Path certificate, Path key) {
        this.certificate = certificate;
        this.key = key;
    }

    @Override
    public Optional<Certificate> newer(Instant now) throws CertificateUnfit {
        List<String> read = List.of(text(certificate), text(key));
        if (read.equals(seen)) {
            warn(now);
            return Optional.empty();
        }
        seen = read;
        Certificate next = Certificate.read(certificate, key, now);
        ends = next.ends();
        warnFrom = Instant.MIN;
        warn(now);
        return Optional.of(next);
    }

    /** What is not there is told of by whoever reads it. */
    private static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            return "";
        }
    }

    private void warn(Instant now) {
        if (now.isAfter(ends.minus(WARNED)) && !now.isBefore(warnFrom)) {
            LOG.warn(
                    "The certificate in {} ends at {}. Put a newer one there; it is taken up within a minute.",
                    certificate,
                    ends);
            warnFrom = now.plus(APART);
        }
    }

    @Override
    public Optional<Authority> authority() {
        return Optional.empty();
    }
}
