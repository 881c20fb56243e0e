package org.vanewright.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.test.context.ConfigDataApplicationContextInitializer;
import org.springframework.boot.test.context.runner.ApplicationContextRunner;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;

class EditingPolicyTest {
    @Configuration(proxyBeanMethods = false)
    @EnableConfigurationProperties(EditingSettings.class)
    @Import(EditingPolicy.class)
    static class Context {}

    private final ApplicationContextRunner runner = new ApplicationContextRunner()
            .withInitializer(new ConfigDataApplicationContextInitializer())
            .withUserConfiguration(Context.class);

    @ParameterizedTest
    @CsvSource({
        "vanewright.remark=nothing is said, false",
        "spring.profiles.active=demo, true",
        "vanewright.open-editing=true, true"
    })
    void editingIsClosedUnlessTheSettingsOpenIt(String setting, boolean open) {
        runner.withPropertyValues(setting)
                .run(context -> assertThat(context.getBean(EditingPolicy.class).isOpen())
                        .isEqualTo(open));
    }

    @Test
    void onlyAnOpenPolicyLetsPass() {
        assertThatCode(new EditingPolicy(new EditingSettings(true))::requireOpen)
                .doesNotThrowAnyException();
        assertThatExceptionOfType(EditingClosedException.class)
                .isThrownBy(new EditingPolicy(new EditingSettings(false))::requireOpen);
    }
}
