package rinsebell.db;

import java.io.IOException;

/**
 * While it is open the operating system lets this process write nothing beyond a place in any file, as a full disk
 * would. {@code prlimit} of util-linux sets the limit.
 */
final class FullDisk implements AutoCloseable {

    /** Nothing can be written but what stands in a file already. */
    static FullDisk fromTheStart() throws IOException, InterruptedException {
        return new FullDisk(1);
    }

    FullDisk(long fromByte) throws IOException, InterruptedException {
        limit(Long.toString(fromByte));
    }

    @Override
    public void close() throws IOException, InterruptedException {
        limit("unlimited");
    }

    private static void limit(String bytes) throws IOException, InterruptedException {
        long self = ProcessHandle.current().pid();
        int code = new ProcessBuilder("prlimit", "--pid", Long.toString(self), "--fsize=" + bytes + ":")
                .inheritIO()
                .start()
                .waitFor();
        if (code != 0) {
            throw new IOException("prlimit ended with " + code);
        }
    }
}
