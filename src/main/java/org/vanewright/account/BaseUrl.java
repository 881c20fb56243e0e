package org.vanewright.account;

import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

/** Under which address people reach this service, for links that leave it. */
@Component
public class BaseUrl {
    private final String setting;
    private final Environment environment;

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

    private String here() {
        String port = environment.getProperty("local.server.port", environment.getProperty("server.port", "8080"));
        return "http://localhost:" + port + environment.getProperty("server.servlet.context-path", "");
    }
}
