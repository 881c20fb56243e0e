package org.vanewright;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.context.properties.ConfigurationPropertiesScan;
import org.springframework.boot.security.autoconfigure.UserDetailsServiceAutoConfiguration;
import org.springframework.boot.security.oauth2.client.autoconfigure.OAuth2ClientAutoConfiguration;

/** Starts the service. Providers to sign in with are asked when somebody goes there, not at the start. */
@SpringBootApplication(exclude = {UserDetailsServiceAutoConfiguration.class, OAuth2ClientAutoConfiguration.class})
@ConfigurationPropertiesScan
public class Vanewright {
    public static void main(String[] args) {
        SpringApplication.run(Vanewright.class, args);
    }
}
