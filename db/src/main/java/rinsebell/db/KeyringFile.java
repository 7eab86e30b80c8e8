package rinsebell.db;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rinsebell.db.Keyring.Content;
import rinsebell.db.Keyring.Device;
import rinsebell.db.Keyring.Pin;
import rinsebell.db.journal.Forced;
import rinsebell.floor.salon.StaffId;

/** The file of the keyring: JSON, replaced as a whole, so that a crash leaves the one before or the one after. */
final class KeyringFile {

    private static final int VERSION = 1;
    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .build();

    private final Path file;

    KeyringFile(Path file) {
        this.file = file;
    }

    private record Written(
            int version, long lastDevice, List<WrittenDevice> devices, List<WrittenPin> pins, boolean plain) {}

    private record WrittenDevice(
            long id,
            String name,
            String purpose,
            String tokenHash,
            // Files of before do not say; none of their devices came so.
            @Nullable Boolean plain,
            long joinedMs,
            @Nullable Long thrownOutMs) {}

    private record WrittenPin(long staff, String hash, Set<Long> knownOn) {}

    Content read() throws IOException {
        if (!Files.exists(file)) {
            return Content.NONE;
        }
        try {
            return read(JSON.readValue(Files.readAllBytes(file), Written.class));
        } catch (JsonProcessingException | NullPointerException | IllegalArgumentException e) {
            throw new IOException(
                    "the file of devices and PINs, " + file.getFileName()
                            + ", is damaged. Without it every device must "
                            + "be let in anew, and every PIN chosen anew: move it away if you want that",
                    e);
        }
    }

    private static Content read(Written written) {
        if (written.version != VERSION) {
            throw new IllegalArgumentException("a later version of this program wrote version " + written.version);
        }
        return new Content(
                written.lastDevice,
                written.devices.stream().map(KeyringFile::read).toList(),
                written.pins.stream()
                        .map(pin -> new Pin(new StaffId(pin.staff), pin.hash, pin.knownOn))
                        .toList(),
                written.plain);
    }

    private static Device read(WrittenDevice device) {
        return new Device(
                device.id,
                Objects.requireNonNull(device.name),
                Objects.requireNonNull(device.purpose),
                Objects.requireNonNull(device.tokenHash),
                Boolean.TRUE.equals(device.plain),
                Instant.ofEpochMilli(device.joinedMs),
                device.thrownOutMs == null ? null : Instant.ofEpochMilli(device.thrownOutMs));
    }

    /** It is on disk when this returns. */
    void write(Content content) throws IOException {
        Path folder = Objects.requireNonNull(file.getParent(), "the file lies in the data folder");
        Path next = folder.resolve(file.getFileName() + ".new");
        Files.deleteIfExists(next);
        Files.createFile(next, ownersOnly(folder));
        try (FileChannel channel = FileChannel.open(next, StandardOpenOption.WRITE)) {
            ByteBuffer rest =
                    ByteBuffer.wrap(JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(written(content)));
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
        Files.move(next, file, StandardCopyOption.ATOMIC_MOVE);
        Forced.folder(folder);
    }

    private static Written written(Content content) {
        return new Written(
                VERSION,
                content.lastDevice(),
                content.devices().stream().map(KeyringFile::written).toList(),
                content.pins().stream()
                        .map(pin -> new WrittenPin(pin.person().value(), pin.hash(), pin.knownOn()))
                        .toList(),
                content.plain());
    }

    private static WrittenDevice written(Device device) {
        Instant out = device.thrownOut();
        return new WrittenDevice(
                device.id(),
                device.name(),
                device.purpose(),
                device.tokenHash(),
                device.plain(),
                device.joined().toEpochMilli(),
                out == null ? null : out.toEpochMilli());
    }

    /** Windows has no such rights; there whoever may read the data folder may read this. */
    private static FileAttribute<?>[] ownersOnly(Path folder) {
        return folder.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
                }
                : new FileAttribute<?>[0];
    }
}
