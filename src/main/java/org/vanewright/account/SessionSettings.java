package org.vanewright.account;

import java.time.Duration;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * How long a sign-in lasts.
 *
 * @param idle without any request
 * @param longest however much it is used
 */
@ConfigurationProperties("vanewright.sign-in")
record SessionSettings(
        @DefaultValue("12h") Duration idle,
        @DefaultValue("14d") Duration longest) {}
