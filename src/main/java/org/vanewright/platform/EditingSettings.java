package org.vanewright.platform;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * Who may change records.
 *
 * @param openEditing {@code vanewright.open-editing}: anybody who reaches the service may publish; meant for a
 *     demonstration or a club's own network
 */
@ConfigurationProperties("vanewright")
public record EditingSettings(@DefaultValue("false") boolean openEditing) {}
