package rinsebell.db;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import rinsebell.floor.salon.StaffId;

/**
 * The devices that are in and the PINs of the staff, in a small file of their own beside the database. It is read once and
 * kept in memory, so bells and presses hang on no table; and since no copy holds it, none brings back a device that was
 * thrown out or a PIN that was changed, and a database that is made again leaves every device in. Any thread may call.
 */
public final class Keyring {

    /** Lies in the data folder while PINs are to be taken away. */
    private static final String RESET = "reset-pins";

    private final KeyringFile file;
    private final Path reset;
    private volatile Content content;

    private Keyring(Path path, Content content) {
        this.file = new KeyringFile(path);
        this.reset = path.resolveSibling(RESET);
        this.content = content;
    }

    /**
     * A device that was let in.
     *
     * @param id never given twice
     * @param purpose what it is for, as a code such as {@code chair-3}
     * @param tokenHash the SHA-256 of what it shows, in hex
     * @param plain whether it came in over plain HTTP, where others could read what it shows
     * @param joined when it was let in
     * @param thrownOut when it was thrown out; null while it is in
     */
    public record Device(
            long id,
            String name,
            String purpose,
            String tokenHash,
            boolean plain,
            Instant joined,
            @Nullable Instant thrownOut) {

        public boolean isIn() {
            return thrownOut == null;
        }
    }

    /**
     * A device that comes in.
     *
     * @param purpose what it is for, as a code
     * @param tokenHash the SHA-256 of what it will show, in hex
     * @param plain whether it comes over plain HTTP
     */
    public record Fresh(String name, String purpose, String tokenHash, boolean plain) {}

    /**
     * The PIN of one of the staff.
     *
     * @param hash as text that says by itself how it was made
     * @param knownOn the numbers of the devices on which it was right once
     */
    public record Pin(StaffId person, String hash, Set<Long> knownOn) {
        public Pin {
            knownOn = Set.copyOf(knownOn);
        }
    }

    /**
     * @param lastDevice the highest number that was given
     * @param plain whether devices may come over plain HTTP
     */
    record Content(long lastDevice, List<Device> devices, List<Pin> pins, boolean plain) {
        static final Content NONE = new Content(0, List.of(), List.of(), false);

        Content {
            devices = List.copyOf(devices);
            pins = List.copyOf(pins);
        }

        Content with(List<Device> others) {
            return new Content(lastDevice, others, pins, plain);
        }

        Content withPins(List<Pin> others) {
            return new Content(lastDevice, devices, others, plain);
        }
    }

    /**
     * Opens the one of a data folder; a folder without one has no devices and no PINs.
     *
     * @throws IOException if the file can't be read, or holds what no version up to this one has written
     */
    public static Keyring open(DataFolder folder) throws IOException {
        return open(folder.keyring());
    }

    static Keyring open(Path path) throws IOException {
        return new Keyring(path, new KeyringFile(path).read());
    }

    /** Every device, those that were thrown out among them; in the order in which they came. */
    public List<Device> devices() {
        return content.devices;
    }

    /** What a device is called, by its number; also of one that was thrown out. */
    public Optional<String> name(long device) {
        return content.devices.stream()
                .filter(one -> one.id == device)
                .map(Device::name)
                .findFirst();
    }

    /**
     * Asks, from another process too, that the managers' PINs be taken away: whoever may write into the data folder may.
     *
     * @throws IOException if nothing can be written there
     */
    public static void askForReset(Path folder) throws IOException {
        Files.writeString(folder.resolve(RESET), "");
    }

    /**
     * Takes the PINs of some away if that was asked for at the console since.
     *
     * @param managers who is in charge now
     * @return whether it was
     */
    public synchronized boolean resetIfAsked(Collection<StaffId> managers) {
        if (!Files.exists(reset)) {
            return false;
        }
        forgetPins(managers);
        try {
            Files.deleteIfExists(reset);
        } catch (IOException e) {
            throw new DatabaseAway(e);
        }
        return true;
    }

    /** The device that shows a token, if it is in. */
    public Optional<Device> device(String tokenHash) {
        return content.devices.stream()
                .filter(Device::isIn)
                .filter(device -> device.tokenHash.equals(tokenHash))
                .findFirst();
    }

    /** Lets a device in; that is on disk when this returns. */
    public synchronized Device letIn(Fresh fresh, Instant now) {
        Device device =
                new Device(content.lastDevice + 1, fresh.name, fresh.purpose, fresh.tokenHash, fresh.plain, now, null);
        change(all -> new Content(device.id, with(all.devices, device), all.pins, all.plain));
        return device;
    }

    /** Throws a device out for good; that is on disk when this returns. One that is out already stays so. */
    public synchronized void throwOut(long id, Instant now) {
        change(all -> all.with(all.devices.stream()
                .map(device -> device.id == id && device.isIn() ? out(device, now) : device)
                .toList()));
    }

    private static Device out(Device device, Instant now) {
        return new Device(device.id, device.name, device.purpose, "", device.plain, device.joined, now);
    }

    public Optional<Pin> pin(StaffId person) {
        return content.pins.stream().filter(pin -> pin.person.equals(person)).findFirst();
    }

    public List<Pin> pins() {
        return content.pins;
    }

    /** Gives somebody a PIN in place of any before; that is on disk when this returns. */
    public synchronized void setPin(StaffId person, String hash) {
        put(new Pin(person, hash, Set.of()));
    }

    private void put(Pin pin) {
        change(all -> all.withPins(with(without(all.pins, List.of(pin.person)), pin)));
    }

    /** Takes their PINs away; that is on disk when this returns. */
    public synchronized void forgetPins(Collection<StaffId> people) {
        change(all -> all.withPins(without(all.pins, people)));
    }

    /** Notes that somebody's PIN was right on a device; that is on disk when this returns. */
    public synchronized void noteKnown(StaffId person, long device) {
        pin(person).filter(pin -> !pin.knownOn.contains(device)).ifPresent(pin -> {
            Set<Long> known = new HashSet<>(pin.knownOn);
            known.add(device);
            put(new Pin(person, pin.hash, known));
        });
    }

    /** Whether devices may come over plain HTTP, where others on the network can read along. */
    public boolean allowsPlain() {
        return content.plain;
    }

    /** Allows that, or not any more; it is on disk when this returns. */
    public synchronized void allowPlain(boolean may) {
        change(all -> new Content(all.lastDevice, all.devices, all.pins, may));
    }

    private static List<Pin> without(List<Pin> pins, Collection<StaffId> people) {
        return pins.stream().filter(pin -> !people.contains(pin.person)).toList();
    }

    private static <T> List<T> with(List<T> all, T one) {
        List<T> more = new ArrayList<>(all);
        more.add(one);
        return more;
    }

    /** What can't be written down does not count. */
    private void change(UnaryOperator<Content> how) {
        Content next = how.apply(content);
        if (!next.equals(content)) {
            try {
                file.write(next);
            } catch (IOException e) {
                throw new DatabaseAway(e);
            }
            content = next;
        }
    }
}
