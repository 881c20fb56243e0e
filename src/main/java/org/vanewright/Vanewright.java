package org.vanewright;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.boot.Banner;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.SpringBootConfiguration;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.AutoConfigurationExcludeFilter;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.context.TypeExcludeFilter;
import org.springframework.boot.micrometer.metrics.autoconfigure.logging.logback.LogbackMetricsAutoConfiguration;
import org.springframework.boot.security.autoconfigure.UserDetailsServiceAutoConfiguration;
import org.springframework.boot.security.oauth2.client.autoconfigure.OAuth2ClientAutoConfiguration;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.ComponentScan.Filter;
import org.springframework.context.annotation.FilterType;
import org.vanewright.backup.Commands;
import org.vanewright.export.Exports;
import org.vanewright.platform.job.JobProgress;

/**
 * Starts the service, or does what a command says: {@code backup FILE}, {@code restore FILE}, {@code export FILE}. Providers
 * to sign in with are asked when somebody goes there, not at the start.
 */
@SpringBootConfiguration(proxyBeanMethods = false)
@EnableAutoConfiguration(
        exclude = {
            UserDetailsServiceAutoConfiguration.class,
            OAuth2ClientAutoConfiguration.class,
            LogbackMetricsAutoConfiguration.class
        })
@ComponentScan(
        resourcePattern = Vanewright.COMPONENTS,
        excludeFilters = {
            @Filter(type = FilterType.CUSTOM, classes = TypeExcludeFilter.class),
            @Filter(type = FilterType.CUSTOM, classes = AutoConfigurationExcludeFilter.class)
        })
public class Vanewright {
    /** Each class that is looked at takes time, so the core is left out: it knows no Spring, by the rules of architecture. */
    static final String COMPONENTS = "{feature:(?!engineering$).+}/**/*.class";

    private static final Set<String> COMMANDS = Set.of("backup", "restore", "export");

    public static void main(String[] args) throws IOException {
        List<String> words =
                Arrays.stream(args).filter(a -> !a.startsWith("--")).toList();
        if (words.isEmpty()) {
            SpringApplication.run(Vanewright.class, args);
        } else {
            System.exit(command(words, args));
        }
    }

    static int command(List<String> words, String... args) throws IOException {
        if (words.size() != 2 || !COMMANDS.contains(words.get(0))) {
            System.err.println(
                    "Without words the service starts. With words: backup FILE, restore FILE or export FILE.");
            return 2;
        }
        Path file = Path.of(words.get(1)).toAbsolutePath();
        return words.get(0).equals("export") ? export(file, args) : kept(words.get(0), file, args);
    }

    /** What the settings say, and nothing of the service. */
    private static int kept(String command, Path file, String... args) throws IOException {
        SpringApplicationBuilder settings = new SpringApplicationBuilder(Settings.class)
                .web(WebApplicationType.NONE)
                .properties("logging.level.root=warn", "logging.level.org.flywaydb=error")
                .bannerMode(Banner.Mode.OFF)
                .logStartupInfo(false);
        try (ConfigurableApplicationContext context = settings.run(options(args))) {
            return Commands.run(command, file, context.getEnvironment(), System.out, System.err);
        }
    }

    /** Nothing: only its environment is wanted. */
    static final class Settings {}

    /** The parts of the service that are asked for, which run no jobs and serve nobody. */
    private static int export(Path file, String... args) throws IOException {
        if (Files.exists(file)) {
            System.err.println(file + " exists already. Nothing has been written.");
            return 1;
        }
        SpringApplicationBuilder service = new SpringApplicationBuilder(Vanewright.class)
                .web(WebApplicationType.NONE)
                .lazyInitialization(true)
                .bannerMode(Banner.Mode.OFF);
        String[] options = Stream.concat(Arrays.stream(options(args)), Stream.of("--vanewright.jobs.threads=0"))
                .toArray(String[]::new);
        try (ConfigurableApplicationContext context = service.run(options)) {
            context.getBean(Exports.class).write(file, JobProgress.UNSEEN);
        }
        System.out.println("Everything public is in " + file + ".");
        return 0;
    }

    private static String[] options(String... args) {
        return Arrays.stream(args).filter(a -> a.startsWith("--")).toArray(String[]::new);
    }
}
