package rinsebell.app.trust;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.PrivateKey;
import java.security.cert.X509Certificate;
import java.util.ArrayList;
import java.util.List;
import org.bouncycastle.asn1.pkcs.PrivateKeyInfo;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.openssl.PEMParser;
import org.bouncycastle.openssl.jcajce.JcaPEMKeyConverter;
import org.bouncycastle.openssl.jcajce.JcaPEMWriter;
import org.bouncycastle.openssl.jcajce.JcaPKCS8Generator;
import org.bouncycastle.util.io.pem.PemGenerationException;
import org.jspecify.annotations.Nullable;
import rinsebell.app.door.Certificate;
import rinsebell.app.door.CertificateUnfit;

/**
 * A key and its certificates in one file (PEM, RFC 7468), so that the one is never without the other. It is replaced whole,
 * and where files have owners, only the owner may read it.
 */
final class KeyFile {

    private final Path file;

    KeyFile(Path file) {
        this.file = file;
    }

    boolean exists() {
        return Files.exists(file);
    }

    Path path() {
        return file;
    }

    /** @throws CertificateUnfit if it is damaged, or may not be read */
    Certificate read() throws CertificateUnfit {
        try (PEMParser in = new PEMParser(Files.newBufferedReader(file))) {
            List<X509Certificate> chain = new ArrayList<>();
            PrivateKey key = null;
            for (Object part = in.readObject(); part != null; part = in.readObject()) {
                if (part instanceof X509CertificateHolder certificate) {
                    chain.add(new JcaX509CertificateConverter().getCertificate(certificate));
                } else if (part instanceof PrivateKeyInfo read) {
                    key = new JcaPEMKeyConverter().getPrivateKey(read);
                }
            }
            return whole(chain, key);
        } catch (IOException | GeneralSecurityException | RuntimeException e) {
            throw new CertificateUnfit("The file " + file + " is damaged or may not be read by this user.");
        }
    }

    private Certificate whole(List<X509Certificate> chain, @Nullable PrivateKey key) throws CertificateUnfit {
        if (key == null || chain.size() != 2 || !Certificate.belongTogether(chain.get(0), key)) {
            throw new CertificateUnfit("The file " + file + " is damaged.");
        }
        return Certificate.of(chain, key);
    }

    void write(Certificate certificate) throws IOException {
        Files.createDirectories(file.resolveSibling("."));
        Path next = file.resolveSibling(file.getFileName() + ".next");
        Files.deleteIfExists(next);
        Files.createFile(next, onlyForTheOwner());
        Files.writeString(next, pem(certificate));
        try (FileChannel written = FileChannel.open(next, StandardOpenOption.WRITE)) {
            written.force(true);
        }
        Files.move(next, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    private FileAttribute<?>[] onlyForTheOwner() throws IOException {
        boolean hasOwners =
                Files.getFileStore(file.toAbsolutePath().getParent()).supportsFileAttributeView("posix");
        return hasOwners
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
                }
                : new FileAttribute<?>[0];
    }

    private static String pem(Certificate certificate) {
        StringWriter text = new StringWriter();
        try (JcaPEMWriter out = new JcaPEMWriter(text)) {
            out.writeObject(new JcaPKCS8Generator(certificate.key(), null));
            for (X509Certificate one : certificate.chain()) {
                out.writeObject(one);
            }
        } catch (PemGenerationException e) {
            throw new IllegalArgumentException("a key that can't be written", e);
        } catch (IOException e) {
            throw new UncheckedIOException("text is written in memory", e);
        }
        return text.toString();
    }
}
