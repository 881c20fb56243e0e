package org.vanewright.account;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.validation.annotation.Validated;

/**
 * Attempts to sign in without success before the next must wait.
 *
 * @param account with one account; common practice, no source
 * @param network from one network, where several people may share an address
 * @param tokens refused tokens from one network
 */
@Validated
@ConfigurationProperties("vanewright.attempts")
record AttemptSettings(
        @Min(1) @Max(100) @DefaultValue("5") int account,
        @Min(1) @Max(1_000_000) @DefaultValue("30") int network,
        @Min(1) @Max(1_000_000) @DefaultValue("30") int tokens) {}
