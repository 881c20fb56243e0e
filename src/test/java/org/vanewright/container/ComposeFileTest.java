package org.vanewright.container;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * Reads docker-compose.yml and the Dockerfiles, engine or not. {@code src/test/container/smoke.sh}, which {@code .ci/run}
 * calls where an engine is, starts them.
 */
class ComposeFileTest {
    private static final Path COMPOSE = Path.of("docker-compose.yml");
    private static final Path IMAGE = Path.of("src/main/container/Dockerfile");
    private static final Pattern VARIABLE = Pattern.compile("\\$\\{([A-Z_]+)(:-)?");

    private static Map<?, ?> compose = Map.of();

    @BeforeAll
    static void read() throws IOException {
        compose = map(new Yaml(new SafeConstructor(new LoaderOptions())).load(Files.readString(COMPOSE)));
    }

    @Test
    void databaseServiceProxyAndBackupsStartAgainByThemselves() {
        assertThat(map(compose.get("services")).keySet().stream().map(String::valueOf))
                .containsExactlyInAnyOrder("db", "app", "proxy", "backup");
        for (Object service : map(compose.get("services")).values()) {
            assertThat(map(service).get("restart")).isEqualTo("unless-stopped");
        }
        assertThat(service("db").get("image")).asString().contains(":-postgres:17}");
        assertThat(service("backup").get("image")).isEqualTo(service("db").get("image"));
    }

    @Test
    void theServiceHasLittleItCouldMisuse() {
        Map<?, ?> app = service("app");
        assertThat(app.get("read_only")).isEqualTo(true);
        assertThat(app.get("cap_drop")).isEqualTo(List.of("ALL"));
        assertThat(app.get("security_opt")).isEqualTo(List.of("no-new-privileges:true"));
        assertThat(app.get("tmpfs")).isEqualTo(List.of("/tmp"));
        assertThat(app.get("mem_limit")).asString().matches("\\$\\{VANEWRIGHT_MEMORY:-\\d+m}");
        assertThat(app.containsKey("ports"))
                .as("reached through the proxy only")
                .isFalse();
        assertThat(app.get("volumes")).isEqualTo(List.of("files:/service/data"));
    }

    @Test
    void whoeverNeedsAnotherWaitsUntilItIsHealthy() {
        for (String name : List.of("app", "backup")) {
            assertThat(map(map(service(name).get("depends_on")).get("db")).get("condition"))
                    .isEqualTo("service_healthy");
        }
        assertThat(texts(map(service("db").get("healthcheck")).get("test")))
                .last()
                .asString()
                .contains("pg_isready");
        assertThat(texts(map(service("app").get("healthcheck")).get("test")))
                .last()
                .asString()
                .contains("/actuator/health/readiness");
    }

    @Test
    void everyFileAndVolumeThatIsNamedIsThere() {
        Set<String> kept = new TreeSet<>();
        for (Object service : map(compose.get("services")).values()) {
            for (String mount : texts(map(service).get("volumes"))) {
                String from = mount.substring(0, mount.indexOf(':'));
                if (from.startsWith("./")) {
                    assertThat(Path.of(from)).isRegularFile();
                    assertThat(mount).as("never written to").endsWith(":ro");
                } else {
                    kept.add(from);
                }
            }
        }
        assertThat(kept)
                .isEqualTo(new TreeSet<>(texts(map(compose.get("volumes")).keySet())));
        Map<?, ?> build = map(service("app").get("build"));
        assertThat(Path.of(String.valueOf(build.get("context")), String.valueOf(build.get("dockerfile"))))
                .isRegularFile();
    }

    @Test
    void nothingMustBeSetForAFirstStart() throws IOException {
        Matcher variable = VARIABLE.matcher(Files.readString(COMPOSE));
        while (variable.find()) {
            assertThat(variable.group(2)).as(variable.group(1)).isEqualTo(":-");
        }
    }

    @Test
    void theImageRunsAsAnOrdinaryUserFromItsArchiveOfClasses() throws IOException {
        List<String> lines = Files.readAllLines(IMAGE);
        assertThat(lines).contains("USER vanewright", "VOLUME /service/data");
        assertThat(lines.indexOf("USER vanewright"))
                .as("written before, so that the service cannot change it")
                .isGreaterThan(indexOf(lines, "RUN java -XX:ArchiveClassesAtExit=vanewright.jsa"));
        assertThat(lines.get(indexOf(lines, "ENTRYPOINT"))).contains("-XX:SharedArchiveFile=vanewright.jsa");
    }

    /** Of the build's context, by the Dockerfile; the engine refuses what is not there. */
    @Test
    void theImageCopiesWhatThereIs() throws IOException {
        List<String> copied = new ArrayList<>();
        for (String line : Files.readAllLines(IMAGE)) {
            if (line.startsWith("COPY ") && !line.contains("--from=")) {
                copied.add(line.split(" ")[1]);
            }
        }
        assertThat(copied)
                .contains("pom.xml", "src", "db")
                .allSatisfy(path -> assertThat(Path.of(path)).exists());
    }

    private static int indexOf(List<String> lines, String start) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith(start)) {
                return i;
            }
        }
        throw new AssertionError("no line begins with " + start);
    }

    private static Map<?, ?> service(String name) {
        return map(map(compose.get("services")).get(name));
    }

    private static Map<?, ?> map(@Nullable Object value) {
        if (value instanceof Map<?, ?> map) {
            return map;
        }
        throw new AssertionError("no map: " + value);
    }

    private static List<String> texts(@Nullable Object value) {
        if (value instanceof Collection<?> values) {
            return values.stream().map(String::valueOf).toList();
        }
        throw new AssertionError("no list: " + value);
    }
}
