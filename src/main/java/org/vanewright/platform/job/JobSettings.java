package org.vanewright.platform.job;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import java.time.Duration;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.validation.annotation.Validated;

/**
 * How long work is done.
 *
 * @param threads jobs that one instance does at a time; 0 leaves them to the other instances
 * @param polling how often an instance looks for what others left; its own it begins at once
 * @param heartbeat how often an instance says that it is still at it; after six missed ones another takes over
 * @param kept how long a finished job and its file are kept
 */
@Validated
@ConfigurationProperties("vanewright.jobs")
public record JobSettings(
        @Min(0) @Max(64) @DefaultValue("1") int threads,
        @NotNull @DefaultValue("5s") Duration polling,
        @NotNull @DefaultValue("10s") Duration heartbeat,
        @NotNull @DefaultValue("7d") Duration kept) {}
