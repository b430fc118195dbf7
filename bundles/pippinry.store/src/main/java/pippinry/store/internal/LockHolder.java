package pippinry.store.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Who has a program open; only told, never relied on. */
record LockHolder(String process, String user, String host, String since) {

    private static final String FILE = "lock-holder.txt";
    private static final Path LINUX_HOST = Path.of("/proc/sys/kernel/hostname");

    static LockHolder thisProcess(Instant now) {
        return new LockHolder(
                Long.toString(ProcessHandle.current().pid()),
                System.getProperty("user.name", "unknown"),
                thisHost(),
                now.toString());
    }

    /** Without asking the network, which may take seconds to say that it does not know. */
    private static String thisHost() {
        try {
            if (Files.isReadable(LINUX_HOST)) {
                return Files.readString(LINUX_HOST).strip();
            }
        } catch (IOException e) {
            // The environment may know.
        }
        Map<String, String> environment = System.getenv();
        return environment.getOrDefault("COMPUTERNAME", environment.getOrDefault("HOSTNAME", "this machine"));
    }

    void write(Path folder) throws IOException {
        Files.writeString(
                folder.resolve(FILE),
                "process=" + process + "\nuser=" + user + "\nhost=" + host + "\nsince=" + since + "\n");
    }

    static void remove(Path folder) throws IOException {
        Files.deleteIfExists(folder.resolve(FILE));
    }

    static Optional<LockHolder> read(Path folder) {
        Map<String, String> told = new HashMap<>();
        try {
            for (String line : Files.readAllLines(folder.resolve(FILE))) {
                int equals = line.indexOf('=');
                told.put(line.substring(0, Math.max(equals, 0)), line.substring(equals + 1));
            }
        } catch (IOException e) {
            return Optional.empty();
        }
        return Optional.of(new LockHolder(
                told.getOrDefault("process", "?"),
                told.getOrDefault("user", "?"),
                told.getOrDefault("host", "?"),
                told.getOrDefault("since", "?")));
    }

    @Override
    public String toString() {
        return "process " + process + " of " + user + " on " + host + " since " + since;
    }
}
