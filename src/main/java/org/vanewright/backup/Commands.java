package org.vanewright.backup;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.springframework.core.env.Environment;

/** {@code backup FILE} and {@code restore FILE}: with the settings of the service, without the service. */
public final class Commands {
    private static final String LOCATIONS = "classpath:db/migration,classpath:db/vendor/{vendor}";

    private Commands() {}

    /**
     * Writes or reads a backup and says what was done.
     *
     * @return 0 where it was done, 1 where it was refused
     */
    public static int run(String command, Path file, Environment settings, PrintStream out, PrintStream err)
            throws IOException {
        try (BackupDatabaseRepository database = BackupDatabaseRepository.open(
                settings.getProperty("spring.datasource.url", ""),
                settings.getProperty("spring.datasource.username", ""),
                settings.getProperty("spring.datasource.password", ""),
                settings.getProperty("spring.flyway.locations", LOCATIONS).split(","))) {
            if (command.equals("backup")) {
                BackupManifest written = new BackupWriter(database, Clock.systemUTC()).write(file);
                out.println(
                        counted(written) + " in " + file + ". It holds password hashes and secrets: keep it as such.");
            } else {
                BackupRefusal.require(Files.isRegularFile(file), "There is no file " + file + ".");
                BackupManifest read = new BackupReader(database).read(file);
                out.println(counted(read) + " of schema " + read.schema() + " are back.");
            }
            return 0;
        } catch (BackupRefusal e) {
            err.println(e.getMessage());
            return 1;
        }
    }

    private static String counted(BackupManifest manifest) {
        List<BackupManifest.Entry> tables = manifest.tables();
        return tables.stream().mapToLong(BackupManifest.Entry::rows).sum() + " rows of " + tables.size() + " tables";
    }
}
