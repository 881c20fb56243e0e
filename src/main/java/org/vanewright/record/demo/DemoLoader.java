package org.vanewright.record.demo;

import java.util.Comparator;
import java.util.List;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Loads every feature's demonstration data when the profile {@code demo} is on. */
@Component
@Profile("demo")
class DemoLoader implements ApplicationRunner {
    private final List<DemoData> data;

    DemoLoader(List<DemoData> data) {
        this.data =
                data.stream().sorted(Comparator.comparingInt(DemoData::order)).toList();
    }

    @Override
    public void run(ApplicationArguments arguments) {
        data.forEach(DemoData::load);
    }
}
