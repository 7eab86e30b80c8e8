package rinsebell.db.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;

/** A real disk whose acts fail when told to. */
final class FailingDisk implements Disk {

    boolean openFails;
    boolean writeFailsHalfway;
    int forcesToFail;
    boolean cutFails;
    int forces;

    private final Disk real = new RealDisk();

    @Override
    public OpenFile open(Path file) throws IOException {
        failIf(openFails, "no room for another file");
        return new Failing(real.open(file));
    }

    private static void failIf(boolean fails, String reason) throws IOException {
        if (fails) {
            throw new IOException(reason);
        }
    }

    private final class Failing implements OpenFile {

        private final OpenFile file;

        Failing(OpenFile file) {
            this.file = file;
        }

        @Override
        public void write(byte[] bytes, long at) throws IOException {
            if (writeFailsHalfway) {
                file.write(Arrays.copyOf(bytes, bytes.length / 2), at);
            }
            failIf(writeFailsHalfway, "no space left");
            file.write(bytes, at);
        }

        @Override
        public void force() throws IOException {
            forces++;
            failIf(forcesToFail-- > 0, "the disk did not answer");
            file.force();
        }

        @Override
        public void cut(long length) throws IOException {
            failIf(cutFails, "the disk is gone");
            file.cut(length);
        }

        @Override
        public long length() throws IOException {
            return file.length();
        }

        @Override
        public boolean isInPlace() throws IOException {
            return file.isInPlace();
        }

        @Override
        public boolean isOpen() {
            return file.isOpen();
        }

        @Override
        public void close() throws IOException {
            file.close();
        }
    }
}
