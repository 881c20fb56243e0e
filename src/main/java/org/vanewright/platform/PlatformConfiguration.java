package org.vanewright.platform;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.info.License;
import io.swagger.v3.oas.models.servers.Server;
import java.time.Clock;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.jackson.autoconfigure.JsonMapperBuilderCustomizer;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.resource.ResourceUrlEncodingFilter;

/** Beans without a better home. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(LimitSettings.class)
class PlatformConfiguration {
    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }

    /**
     * Would look for each link of a page among the files on the class path, in vain: most of the time that a page took.
     */
    @Bean
    FilterRegistrationBean<ResourceUrlEncodingFilter> resourceUrlEncoding() {
        FilterRegistrationBean<ResourceUrlEncodingFilter> none =
                new FilterRegistrationBean<>(new ResourceUrlEncodingFilter());
        none.setEnabled(false);
        return none;
    }

    @Bean
    JsonMapperBuilderCustomizer strictInput() {
        return StrictJson::configure;
    }

    @Bean
    OpenAPI openApi() {
        return new OpenAPI()
                // Relative to where the description was read: the name that a caller used may be made up.
                .addServersItem(new Server().url("/"))
                .info(new Info()
                        .title("Vanewright")
                        .version("v1")
                        .description("Records of airframes, devices and layouts, and calculations on them. Every"
                                + " property names its unit. A calculated figure is not an approval: the aircraft's"
                                + " operating limitations, the local authority and licensed practice decide.")
                        .license(new License().name("Apache-2.0").identifier("Apache-2.0")));
    }
}
