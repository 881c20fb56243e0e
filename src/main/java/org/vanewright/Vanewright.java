package org.vanewright;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.SpringBootConfiguration;
import org.springframework.boot.autoconfigure.AutoConfigurationExcludeFilter;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.boot.context.TypeExcludeFilter;
import org.springframework.boot.security.autoconfigure.UserDetailsServiceAutoConfiguration;
import org.springframework.boot.security.oauth2.client.autoconfigure.OAuth2ClientAutoConfiguration;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.ComponentScan.Filter;
import org.springframework.context.annotation.FilterType;

/** Starts the service. Providers to sign in with are asked when somebody goes there, not at the start. */
@SpringBootConfiguration(proxyBeanMethods = false)
@EnableAutoConfiguration(exclude = {UserDetailsServiceAutoConfiguration.class, OAuth2ClientAutoConfiguration.class})
@ComponentScan(
        resourcePattern = Vanewright.COMPONENTS,
        excludeFilters = {
            @Filter(type = FilterType.CUSTOM, classes = TypeExcludeFilter.class),
            @Filter(type = FilterType.CUSTOM, classes = AutoConfigurationExcludeFilter.class)
        })
public class Vanewright {
    /** Each class that is looked at takes time, so the core is left out: it knows no Spring, by the rules of architecture. */
    static final String COMPONENTS = "{feature:(?!engineering$).+}/**/*.class";

    public static void main(String[] args) {
        SpringApplication.run(Vanewright.class, args);
    }
}
