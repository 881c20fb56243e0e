package org.vanewright.testing;

import com.zaxxer.hikari.HikariDataSource;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.awaitility.Awaitility;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.account.NewPeople;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;

/** Several processes of the service on one PostgreSQL, each request to the next of them, the line to it to be cut. */
public final class Instances implements Closeable {
    private final Path directory;
    private final HikariDataSource database;
    private final CutLine line;
    private final RoundRobin front = new RoundRobin();
    private final List<ServiceProcess> processes = new ArrayList<>();
    private final List<String> origins = new ArrayList<>();
    private final Map<String, String> settings;
    private final String address;
    private final CompletableFuture<Boolean> dead = new CompletableFuture<>();
    private final int kilobytes;

    /**
     * Starts two on an empty database.
     *
     * @param kilobytes of the disk on which the second has its temporary and its kept files
     */
    public Instances(Path directory, int kilobytes) {
        this.directory = directory;
        this.database = Databases.empty(Databases.Engine.POSTGRESQL);
        URI address = URI.create(database.getJdbcUrl().substring("jdbc:".length()));
        this.line = new CutLine(address.getHost(), address.getPort());
        this.settings = Map.of(
                "vanewright.jobs.heartbeat", "1s",
                "vanewright.jobs.polling", "200ms",
                "vanewright.jobs.threads", "2",
                "spring.datasource.username", database.getUsername(),
                "spring.datasource.password", database.getPassword(),
                "spring.datasource.hikari.connection-timeout", "1500",
                "spring.datasource.hikari.validation-timeout", "500",
                "spring.datasource.hikari.maximum-pool-size", "5",
                "vanewright.files.disk", "20MB");
        this.address = "jdbc:postgresql://127.0.0.1:" + line.port() + address.getPath() + "?ApplicationName=";
        this.kilobytes = kilobytes;
        processes.add(begin(0));
        processes.add(begin(1));
        processes.forEach(p -> origins.add(p.awaitOrigin()));
        front.serve(origins);
    }

    /** A mount of its own, which ends with the process; who is not root is so in there. */
    private static List<String> onSmallDisk(Path own, int kilobytes) {
        return List.of(
                "unshare",
                System.getProperty("user.name").equals("root") ? "-m" : "-rm",
                "sh",
                "-c",
                "mount -t tmpfs -o size=" + kilobytes + "k tmpfs \"$0\" && exec \"$@\"",
                own.resolve("tmp").toString());
    }

    private ServiceProcess begin(int number) {
        Path own = directory.resolve("instance-" + number);
        try {
            Files.deleteIfExists(own.resolve("log.txt"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Map<String, String> all = new LinkedHashMap<>(settings);
        all.put("vanewright.files.directory", own.resolve("tmp/files").toString());
        all.put("spring.datasource.url", address + name(number));
        return ServiceProcess.begin(own, all, number == 0 ? List.of() : onSmallDisk(own, kilobytes));
    }

    /** Where the process of that number has its temporary files, as it sees them. */
    public Path temporary(int number) {
        String seen = directory
                .resolve("instance-" + number + "/tmp")
                .toAbsolutePath()
                .toString();
        return Path.of("/proc", Long.toString(processes.get(number).pid()), "root", seen);
    }

    public ServiceProcess process(int number) {
        return processes.get(number);
    }

    public String origin(int number) {
        return origins.get(number);
    }

    /** The address under which they stand behind one another. */
    public String front() {
        return front.origin();
    }

    public CutLine line() {
        return line;
    }

    public HikariDataSource database() {
        return database;
    }

    public JdbcClient sql() {
        return JdbcClient.create(database);
    }

    private static String name(int number) {
        return "instance-" + number;
    }

    /** Who got no answer waits here until the killed process has left no trace in the database. */
    public void awaitDead() {
        dead.join();
    }

    /** SIGKILL; returns when the database, too, has done with whatever it was asked by then. */
    public void kill(int number) {
        processes.get(number).kill();
        Awaitility.await("its connections end")
                .until(() -> sql().sql("select count(*) from pg_stat_activity where application_name = :name")
                                .param("name", name(number))
                                .query(Integer.class)
                                .single()
                        == 0);
        dead.complete(true);
    }

    /** Starts one again that was killed. */
    public void restart(int number) {
        processes.set(number, begin(number));
        origins.set(number, processes.get(number).awaitOrigin());
        front.serve(origins);
    }

    public NewPerson newPerson(Role role) {
        return NewPeople.add(database, role);
    }

    public String bearer(NewPerson person, Role role) {
        return NewPeople.bearer(database, person, role);
    }

    public Caller visitor(String origin) {
        return new Caller(origin);
    }

    public SignedIn signIn(String origin, NewPerson person) {
        return new SignedIn(origin, person);
    }

    @Override
    public void close() {
        processes.forEach(ServiceProcess::kill);
        front.close();
        line.close();
        database.close();
    }
}
