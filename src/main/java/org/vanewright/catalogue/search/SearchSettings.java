package org.vanewright.catalogue.search;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * Settings of the search.
 *
 * @param rebuild whether its index is made anew from the published records after the start
 */
@ConfigurationProperties("vanewright.search")
record SearchSettings(@DefaultValue("false") boolean rebuild) {}
