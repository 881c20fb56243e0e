package org.vanewright;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.context.properties.ConfigurationPropertiesScan;

/** Starts the service. */
@SpringBootApplication
@ConfigurationPropertiesScan
public class Vanewright {
    public static void main(String[] args) {
        SpringApplication.run(Vanewright.class, args);
    }
}
