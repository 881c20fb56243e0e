package org.vanewright.account;

import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

/** Under which address people reach this service, for links that leave it. */
@Component
public class BaseUrl {
    private final String setting;
    private final Environment environment;
    private volatile @Nullable String here;

    BaseUrl(@Value("${vanewright.base-url:}") String setting, Environment environment) {
        this.setting = setting.strip().replaceAll("/+$", "");
        this.environment = environment;
    }

    /** The whole address of a path. */
    public String of(String path) {
        return (setting.isEmpty() ? here() : setting) + path;
    }

    /** Whether somebody said what it is; otherwise it is a guess that holds on this machine only. */
    public boolean isConfigured() {
        return !setting.isEmpty();
    }

    /** The port is known only once the server listens; a page asks a dozen times. */
    private String here() {
        String known = here;
        if (known == null) {
            String listening = environment.getProperty("local.server.port");
            String port = listening == null ? environment.getProperty("server.port", "8080") : listening;
            known = "http://localhost:" + port + environment.getProperty("server.servlet.context-path", "");
            here = listening == null ? null : known;
        }
        return known;
    }
}
